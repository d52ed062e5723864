using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Plating;

/// <summary>How what is made stands to what the plates take.</summary>
public enum BalanceVerdict
{
    /// <summary>Less is made than the plates take.</summary>
    Short,

    /// <summary>Enough, and no more over than the rule allows.</summary>
    Even,

    /// <summary>More over than the rule allows.</summary>
    Over,
}

/// <summary>One part of the plate: made, needed, over.</summary>
/// <param name="Component">Component.</param>
/// <param name="Unit">Unit of both, as the card makes it.</param>
/// <param name="Made">What the batch makes.</param>
/// <param name="Needed">What the plates take.</param>
/// <param name="Verdict">Short, even or over.</param>
/// <param name="Factor">Smallest change that evens out: the batch times this makes exactly what is needed; 1 when nothing need change.</param>
public sealed record BalanceRow(string Component, string Unit, double Made, double Needed, BalanceVerdict Verdict, double Factor)
{
    /// <summary>Made less needed; below 0 it is short.</summary>
    public double Over => Made - Needed;

    /// <summary>The least it made in good runs, at this amount; null when the card's word is all there is. Short is judged on it.</summary>
    public double? MadeLeast { get; init; }

    /// <summary>The most it made in good runs, at this amount; null as above.</summary>
    public double? MadeMost { get; init; }

    /// <summary>Where the figure was learnt, in words; empty when the card says it.</summary>
    public string Learnt { get; init; } = "";

    /// <summary>Over in percent of the need.</summary>
    public double OverPercent => Needed > 0 ? Over / Needed * 100 : 0;
}

/// <summary>Do the components come out even?</summary>
public static class Balance
{
    /// <summary>Covers to make for guests: so many percent over, rounded up. Common catering practice is 10 % for up to 100 guests.</summary>
    /// <param name="guests">Guests.</param>
    /// <param name="percent">Percent over.</param>
    public static int Covers(int guests, double percent = 10) => (int)Math.Ceiling((guests * (1 + (percent / 100))) - 1e-9);

    /// <summary>One row for each part of the plate whose component says what it makes in a unit the plate counts by.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="covers">Plates.</param>
    /// <param name="without">Plates that go without a component (diets), by component name.</param>
    /// <param name="allowedOverPercent">More than this is called over; the default leaves room for a broken piece in six.</param>
    public static ImmutableArray<BalanceRow> Of(Batch batch, double covers, IReadOnlyDictionary<string, int>? without = null, double allowedOverPercent = 15)
    {
        ImmutableArray<BalanceRow>.Builder rows = ImmutableArray.CreateBuilder<BalanceRow>();
        foreach (PlatePart part in batch.Weighed.Dish.Plate.Where(p => p.Component is not null))
        {
            BatchComponent? component = batch.Components.FirstOrDefault(c => c.Weighed.Component.Name.Equals(part.Component, StringComparison.OrdinalIgnoreCase));
            CardYield? makes = component?.Weighed.Component.Makes.FirstOrDefault(m => m.Amount > 0 && (m.Unit == "g" ? part.Grams : part.Pieces) is not null);
            if (component is null || makes is null)
            {
                continue;
            }

            double each = (makes.Unit == "g" ? part.Grams : part.Pieces)!.Value;
            double plates = covers - (without is not null && without.TryGetValue(component.Weighed.Component.Name, out int less) ? less : 0);
            rows.Add(Row(component.Weighed.Component.Name, makes.Unit, makes.Amount * component.Factor, plates * each, allowedOverPercent, makes.Measured?.Least * component.Factor) with
            {
                MadeMost = makes.Measured?.Most * component.Factor,
                Learnt = makes.Measured is null ? "" : makes.Text,
            });
        }

        return rows.ToImmutable();
    }

    /// <summary>One row from figures.</summary>
    /// <param name="component">Component.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="made">What is left after losses, 0 or more.</param>
    /// <param name="needed">What the plates take, 0 or more.</param>
    /// <param name="allowedOverPercent">More than this is called over.</param>
    /// <param name="least">The least it made in good runs; null when not learnt. It decides whether it is short, and by how much.</param>
    public static BalanceRow Row(string component, string unit, double made, double needed, double allowedOverPercent = 15, double? least = null)
    {
        double sure = least ?? made;
        BalanceVerdict verdict = sure < needed - 1e-9 ? BalanceVerdict.Short : needed > 0 && (made - needed) / needed * 100 > allowedOverPercent ? BalanceVerdict.Over : BalanceVerdict.Even;
        return new(component, unit, made, needed, verdict, verdict == BalanceVerdict.Even || sure <= 0 ? 1 : needed / sure) { MadeLeast = least };
    }
}
