using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Measures;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Formulas;

/// <summary>Judges the setting agents of a component against what stands on the card: dose, alcohol, salt, acid, a pH someone wrote down, raw fruit, heat in the method.</summary>
internal static partial class AgentJudging
{
    private static readonly string[] Boils = ["boil_food", "boil_agar", "simmer", "reduce", "cook_syrup", "caramel", "make_roux_sauce", "cook_rice", "make_stock"];
    private static readonly string[] Cooked = ["cooked", "boiled", "poached", "roasted", "tinned", "canned", "stewed", "pasteurised", "pasteurized", "candied", "cuit", "gekocht", "cocid", "cott"];

    public static ImmutableArray<AgentVerdict> Of(Dish dish, WeighedComponent component, WeighedLine[] weighed, Composition? mixed, Solution? phase)
    {
        (WeighedLine Line, SettingAgent Agent)[] agents = [.. weighed.Where(l => l.Food.FoodId is not null).Select(l => (l, SettingAgent.Find(l.Food.FoodId!))).Where(x => x.Item2 is not null).Select(x => (x.l, x.Item2!))];
        if (agents.Length == 0)
        {
            return [];
        }

        double grams = weighed.Sum(l => l.Grams);
        AgentSetting into = new(grams)
        {
            AlcoholPercentVolume = mixed is null ? 0 : MixVolume.PercentVolume(mixed) ?? 0,
            SaltPercent = (mixed?.SodiumMilligrams ?? 0) * 2.5 / 1000,
            AcidPercent = weighed.Sum(l => Sour(l) * l.Grams) / grams,
            Ph = StatedPh(component.Component),
            SolubleSolids = phase?.SolubleSolidsPercent,
            Raw = [.. weighed.Where(l => l.Food.FoodId is not null && !IsCooked(component.Component, l)).Select(l => l.Food.FoodId!)],
        };
        return [.. agents.Select(a => a.Agent.Judge(a.Line.Grams, into with { Hottest = Hottest(dish, component, weighed, a.Agent), Bloom = Bloom(a.Line.Food) }))];
    }

    /// <summary>pH as someone wrote it into list, method or notes; null when nobody did.</summary>
    internal static double? StatedPh(Component component)
    {
        Match found = component.Notes.Select(n => n.Text).Concat(component.Steps.Select(s => s.Text)).Concat(component.Ingredients.Select(i => i.Text)).Select(t => PhWritten().Match(t)).FirstOrDefault(m => m.Success) ?? Match.Empty;
        return found.Success && double.TryParse(found.Groups["ph"].Value.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double ph) && ph is > 0 and < 14 ? ph : null;
    }

    // The acid of milk's own foods is held by their salts and moves the pH little.
    private static double Sour(WeighedLine line) => line.Known is { } food && !food.Contains.Contains("milk") ? food.Composition.Acid ?? 0 : 0;

    // What is stated cold says nothing of heat; only a card that nowhere heats says so, and only for an agent that must boil: a filling is baked in its case.
    private static double? Hottest(Dish dish, WeighedComponent component, WeighedLine[] weighed, SettingAgent agent)
    {
        if (component.Component.Steps.IsEmpty)
        {
            return null;
        }

        double hottest = component.Component.Steps.Max(HottestOf);
        bool comesHot = weighed.Any(l => l.Food.FromComponent is not null || $"{l.Food.State} {l.Food.Preparation} {l.Source.Text}".Contains("hot", StringComparison.OrdinalIgnoreCase));
        return hottest >= 40 ? hottest : agent.Boil && !comesHot && !dish.Components.SelectMany(c => c.Steps).Any(s => HottestOf(s) >= 75) ? 20 : null;
    }

    private static double HottestOf(Step step) => step.Operations.Append(step.Operation).Any(o => o is not null && Boils.Contains(o)) || step.Text.Contains("boil", StringComparison.OrdinalIgnoreCase)
        ? 100
        : step.Temperatures.Where(t => !t.Inherited).Select(t => t.Of is TemperatureOf.Oven ? 100 : t.Celsius).DefaultIfEmpty(0).Max();

    private static bool IsCooked(Component component, WeighedLine line)
    {
        string words = $"{line.Food.Food} {line.Food.Preparation} {line.Food.State}";
        return Cooked.Any(c => words.Contains(c, StringComparison.OrdinalIgnoreCase))
            || component.Steps.Any(s => HottestOf(s) >= 75 && (s.Uses.Any(u => u.Line == line.Source.Span.Line) || s.Text.Contains(line.Food.Food, StringComparison.OrdinalIgnoreCase)));
    }

    private static double? Bloom(FoodAmount food)
    {
        if (food.Grade is { } grade && GelatineLeaf.Find(grade) is { } leaf)
        {
            return leaf.Bloom;
        }

        Match found = BloomWritten().Match($"{food.Grade} {food.Preparation} {food.Food}");
        return found.Success && double.TryParse(found.Groups["bloom"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out double bloom) ? bloom : null;
    }

    [GeneratedRegex(@"\bpH(?: of| is|:)? ?(?<ph>\d{1,2}(?:[.,]\d{1,2})?)\b")]
    private static partial Regex PhWritten();

    [GeneratedRegex(@"\b(?<bloom>\d{2,3})[ -]?bloom\b", RegexOptions.IgnoreCase)]
    private static partial Regex BloomWritten();
}
