using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Plating;

/// <summary>A scale of the kitchen.</summary>
/// <param name="CapacityGrams">Most it takes.</param>
/// <param name="StepGrams">Its division.</param>
public sealed record KitchenScale(double CapacityGrams, double StepGrams)
{
    /// <summary>Least that it weighs within 2 %: half a division is 2 % of 25 divisions.</summary>
    public double LeastGrams => StepGrams / 2 / ScaleCheck.Within;

    /// <summary>A scale as a sheet writes it: "scale 5 kg × 1 g"; null when it is none.</summary>
    /// <param name="kit">Row of the kit table.</param>
    public static KitchenScale? Of(SheetKit kit)
    {
        if (kit.Type != "scale")
        {
            return null;
        }

        string[] words = kit.What.Replace('×', ' ').Replace(" x ", " ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        double[] grams = [.. words.Zip(words.Skip(1)).Where(p => p.Second is "g" or "kg" && double.TryParse(p.First, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _))
            .Select(p => double.Parse(p.First, CultureInfo.InvariantCulture) * (p.Second == "kg" ? 1000 : 1))];
        return grams.Length == 2 && grams[0] > grams[1] && grams[1] > 0 ? new(grams[0], grams[1]) : null;
    }
}

/// <summary>A line that no scale weighs within 2 %, and a mixture that makes it possible.</summary>
/// <param name="Component">Component.</param>
/// <param name="Line">The line.</param>
/// <param name="ErrorPercent">What half a division of the finest scale is of it.</param>
/// <param name="Master">Weigh this much of it …; null when the component holds nothing to mix it into.</param>
public sealed record ScaleFinding(string Component, BatchLine Line, double ErrorPercent, MasterBatch? Master);

/// <summary>A small weight taken as a share of a larger mixture with another line of the same component.</summary>
/// <param name="AgentGrams">Weigh of the small line.</param>
/// <param name="Carrier">Line it is mixed into.</param>
/// <param name="CarrierGrams">Weigh of that.</param>
/// <param name="TakeGrams">Take of the mixture.</param>
/// <param name="CarrierLeftGrams">Weigh of the carrier still to be added plain.</param>
public sealed record MasterBatch(double AgentGrams, string Carrier, double CarrierGrams, double TakeGrams, double CarrierLeftGrams);

/// <summary>Which lines the kitchen's scales cannot weigh within 2 %.</summary>
public static class ScaleCheck
{
    /// <summary>Share a weight may be wrong by: 2 %, half a division counted. Common practice, no source.</summary>
    public const double Within = 0.02;

    /// <summary>Lines below what the finest scale weighs within 2 %, each with a master batch from its own component.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="scales">Scales of the kitchen, one or more.</param>
    public static ImmutableArray<ScaleFinding> Of(Batch batch, IReadOnlyCollection<KitchenScale> scales)
    {
        if (scales.Count == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(scales), 0, "Name one scale or more, with its division.");
        }

        KitchenScale finest = scales.MinBy(s => s.StepGrams)!;
        ImmutableArray<ScaleFinding>.Builder found = ImmutableArray.CreateBuilder<ScaleFinding>();
        foreach (BatchComponent component in batch.Components)
        {
            foreach (BatchLine line in component.Lines.Where(l => l.Grams > 0 && l.Weighed.Food.FromComponent is null && l.Grams < finest.LeastGrams - 1e-9))
            {
                BatchLine? carrier = component.Lines.Where(l => l != line && l.Weighed.Food.FromComponent is null).MaxBy(l => l.Grams);
                found.Add(new(component.Weighed.Component.Name, line, finest.StepGrams / 2 / line.Grams * 100, carrier is null ? null : Master(line.Grams, carrier, finest)));
            }
        }

        return found.ToImmutable();
    }

    /// <summary>
    /// Weigh k times the line, k the least whole number that the scale weighs within 2 %; mix it into k times so much of the carrier that the part taken is weighed within 2 % too.
    /// </summary>
    private static MasterBatch? Master(double grams, BatchLine carrier, KitchenScale scale)
    {
        double k = Math.Ceiling((scale.LeastGrams / grams) - 1e-9);
        double share = Math.Max(scale.LeastGrams - grams, 9 * grams);
        return carrier.Grams < share ? null : new(k * grams, carrier.Weighed.Food.Food, k * share, grams + share, carrier.Grams - share);
    }
}
