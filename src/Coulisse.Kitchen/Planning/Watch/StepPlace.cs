using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>Where food is.</summary>
internal enum Place
{
    /// <summary>In the cold.</summary>
    Cold,

    /// <summary>Between cold and hot.</summary>
    Out,

    /// <summary>In heat that keeps it hot.</summary>
    Hot,

    /// <summary>Being cooled: the cooling rule judges it.</summary>
    Cooling,
}

/// <summary>What a step of a card says of where its food is while it is worked and afterwards.</summary>
internal static class StepPlace
{
    private const double Hot = 60;
    private static readonly string[] Chilling = ["chill", "chill_fridge", "refrigerate", "blast_chill", "chill_ice", "freeze"];
    private static readonly string[] ColdWords = ["fridge", "keep cold", "in the cold", "to the cold", "cold room", "over ice", "blast chill", "freezer", "coolroom"];
    private static readonly string[] Warmth = ["hob", "oven", "bath"];

    /// <summary>While a task of the step runs.</summary>
    public static Place During(PlannedTask task, Step? step, bool heatedElsewhere, Func<string, string> kitType)
    {
        if (task.Kind is TaskKind.Unattended && task.Kit.Any(k => Warmth.Contains(kitType(k))))
        {
            return Place.Hot;
        }

        if (task.Kind is TaskKind.Unattended && task.Kit.Any(k => kitType(k) is "chiller" or "fridge" or "dehydrator"))
        {
            return Place.Cooling;
        }

        return step is null || heatedElsewhere ? Place.Out : FoodTraits.Cooks(step) || Degrees(step) >= Hot ? Place.Hot : Cools(step) ? Place.Cooling : Place.Out;
    }

    /// <summary>After the step: cold, hot, out for a stated rest, or null when it does not say.</summary>
    public static Place? After(Step step)
    {
        string[] does = [.. step.Operations.Append(step.Operation).OfType<string>()];
        if (does.Any(o => o is "hold_hot" or "bain_marie_hold"))
        {
            return Place.Hot;
        }

        if (step.Storage.Any(s => s.Where is "fridge" or "freezer") || step.Temperatures.Any(t => t.Of is TemperatureOf.Fridge or TemperatureOf.Freezer) || (Cools(step) && ToCold(step)) || ColdWords.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase) && w != "over ice"))
        {
            return Place.Cold;
        }

        return step.Storage.Any(s => s.Where is "room" or "airtight" or "dry") || step.Times.Any(t => t.Kind == TimeKind.Rest && (t.MinutesMin ?? t.MinutesMax) >= 20) ? Place.Out : null;
    }

    /// <summary>Cooked through: what was out before it no longer counts.</summary>
    public static bool Kills(Step step) => FoodTraits.Cooks(step) || step.Temperatures.Any(t => t.Of == TemperatureOf.Oven && t.Celsius >= 100) || Degrees(step) >= Hot;

    /// <summary>Most minutes one lot is out, where the card says so ("no cloth stays out of the fridge longer than 30 min").</summary>
    public static double? LotLimit(Step step) => step.Text.Contains("out of the fridge", StringComparison.OrdinalIgnoreCase) || step.Text.Contains("out of the cold", StringComparison.OrdinalIgnoreCase)
        ? step.Times.Where(t => t.Kind == TimeKind.Limit || t.Bound == Bound.AtMost).Min(t => t.MinutesMax ?? t.MinutesMin)
        : null;

    /// <summary>Words by which a step names food of animals in a part that holds plants too; empty when it holds only one of the two.</summary>
    public static ImmutableArray<string> Animal(WeighedComponent c)
    {
        WeighedLine[] animal = [.. FoodTraits.LinesThat(c, l => FoodTraits.IsEgg(l.Food) || FoodTraits.IsFlesh(l.Food) || l.Food.FromComponent is not null || FoodTraits.Contains(l, "milk") || FoodTraits.Contains(l, "fish") || FoodTraits.Contains(l, "mollusc") || FoodTraits.Contains(l, "crustacean"))];
        return animal.Length == 0 || animal.Length == c.Lines.Length ? [] : [.. animal.SelectMany(l => (l.Food.Food + " " + (l.Source.Group ?? "")).Split(' ', ',', '-', ':')).Where(w => w.Length >= 4).Select(w => w.ToLowerInvariant()).Distinct()];
    }

    private static bool Cools(Step step) => step.Operations.Append(step.Operation).Any(o => Chilling.Contains(o)) || step.Text.Contains("over ice", StringComparison.OrdinalIgnoreCase) || step.Text.Contains("ice water", StringComparison.OrdinalIgnoreCase) || step.Text.Contains("ice bath", StringComparison.OrdinalIgnoreCase);

    // "Stir over ice to 30 °C" leaves it warm; a chill that names no end is taken at its word.
    private static bool ToCold(Step step) => step.Temperatures.Where(t => t.Of is TemperatureOf.Food or TemperatureOf.Core).Select(t => t.Celsius).DefaultIfEmpty(5).Min() <= 10;

    private static double Degrees(Step step) => step.Temperatures.Where(t => t.Bound != Bound.AtMost && t.Of is TemperatureOf.Bath or TemperatureOf.Core or TemperatureOf.Food or TemperatureOf.Pan && !t.Inherited).Select(t => t.Celsius).DefaultIfEmpty(0).Max();
}
