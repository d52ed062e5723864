using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>One choice of what is shown, with what it costs.</summary>
/// <param name="Number">Number, 1 for the most shown.</param>
/// <param name="Shows">Rows of the sheet that are shown.</param>
/// <param name="Value">Their weights together.</param>
/// <param name="Twins">Twins that must stand ready.</param>
/// <param name="Grams">Grams of food that those take beyond what is served.</param>
public sealed record ShowPoint(int Number, ImmutableArray<SheetShow> Shows, double Value, int Twins, double Grams);

/// <summary>What can be shown against what it takes: every choice that no other beats in value, twins and food at once.</summary>
/// <remarks>
/// Up to <see cref="Exhaustive"/> rows every choice is looked at. Beyond that rows are taken away one by one, the best
/// <see cref="Kept"/> choices of each number kept, so a point may be missed; none that is told is wrong.
/// </remarks>
public static class ShowFrontier
{
    /// <summary>Rows up to which every choice is looked at.</summary>
    public const int Exhaustive = 10;

    private const int Kept = 8;

    /// <summary>The frontier, the most shown first; empty when the sheet names nothing to show.</summary>
    /// <param name="occasion">The occasion.</param>
    public static ImmutableArray<ShowPoint> Of(Occasion occasion)
    {
        // What does not fit the slot together is no choice; what is shown of all is where taking away begins.
        ImmutableArray<SheetShow> all = LiveSlot.Decide(occasion).Shown;
        List<ShowPoint> seen = all.Length <= Exhaustive
            ? [.. Enumerable.Range(0, 1 << all.Length).Select(bits => Point(occasion, [.. all.Where((_, i) => (bits >> i & 1) == 1)]))]
            : TakenAway(occasion, all);
        ShowPoint[] best = [.. seen.Where(p => p.Shows.Length > 0 && !seen.Exists(q => Beats(q, p))).DistinctBy(p => (p.Value, p.Twins, p.Grams))
            .OrderByDescending(p => p.Value).ThenBy(p => p.Twins).ThenBy(p => p.Grams)];
        return [.. best.Select((p, i) => p with { Number = i + 1 })];
    }

    private static List<ShowPoint> TakenAway(Occasion occasion, ImmutableArray<SheetShow> all)
    {
        List<ShowPoint> seen = [Point(occasion, all)];
        List<ShowPoint> front = [.. seen];
        while (front.Count > 0 && front[0].Shows.Length > 1)
        {
            List<ShowPoint> next = [.. front.SelectMany(p => p.Shows.Select(s => p.Shows.Remove(s))).DistinctBy(s => string.Join(',', s.Select(x => x.Line))).Select(s => Point(occasion, s))];
            seen.AddRange(next);

            // Kept: those that nothing beats, those that save most food or twins for what they give up among them.
            front = [.. next.Where(p => !next.Exists(q => Beats(q, p))).OrderByDescending(p => p.Value - (p.Grams / 200) - p.Twins).Take(Kept)];
        }

        return seen;
    }

    private static bool Beats(ShowPoint a, ShowPoint b) => a.Value >= b.Value && a.Twins <= b.Twins && a.Grams <= b.Grams && (a.Value > b.Value || a.Twins < b.Twins || a.Grams < b.Grams);

    private static ShowPoint Point(Occasion occasion, ImmutableArray<SheetShow> shows)
    {
        if (shows.IsEmpty)
        {
            return new ShowPoint(0, shows, 0, 0, 0);
        }

        SlotPlan slot = LiveSlot.Decide(occasion with { Shows = shows });
        return new ShowPoint(0, slot.Shown, slot.Shown.Sum(s => s.Weight), slot.Twins.Length, slot.Twins.Where(t => t.OwnBatch || t.Beyond).Sum(t => t.Twin.Grams ?? 0));
    }
}
