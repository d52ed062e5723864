using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Views.Web;

/// <summary>An occasion: its sheet, what it comes to, and what stands between now and the day.</summary>
/// <param name="Id">Document.</param>
/// <param name="Version">Version.</param>
/// <param name="Title">Title.</param>
/// <param name="Says">Day, hour, place, covers.</param>
/// <param name="Text">Sheet or sentence as kept.</param>
/// <param name="Heading">How many things stand between now and the day, in words.</param>
/// <param name="Stands">Those things, the gravest first.</param>
/// <param name="PlanAt">Newest plan; null for none.</param>
/// <param name="Dishes">Dishes.</param>
/// <param name="Diets">Diets by seat.</param>
/// <param name="Shown">What is shown.</param>
/// <param name="Assumed">What was assumed.</param>
/// <param name="Changes">Changes made by a touch, which can be taken back.</param>
public sealed record OccasionView(
    string Id, int Version, string Title, string Says, string Text, string Heading, ImmutableArray<StandView> Stands, string? PlanAt,
    ImmutableArray<string> Dishes, ImmutableArray<string> Diets, ImmutableArray<string> Shown, ImmutableArray<string> Assumed, ImmutableArray<string> Changes)
{
    /// <summary>How many are shown at first.</summary>
    public const int First = 3;

    private static readonly string[] Counted = ["Nothing", "One thing", "Two things", "Three things", "Four things", "Five things", "Six things", "Seven things", "Eight things", "Nine things"];

    /// <summary>"Three things stand between you and Saturday".</summary>
    public static string HeadingOf(int things, string day) => things == 0
        ? $"Nothing that the bench can see stands between you and {day}"
        : $"{(things < Counted.Length ? Counted[things] : things.ToString(CultureInfo.InvariantCulture) + " things")} {(things == 1 ? "stands" : "stand")} between you and {day}";

    /// <summary>Sentences about the dishes, diets and shows of an occasion.</summary>
    public static (ImmutableArray<string> Dishes, ImmutableArray<string> Diets, ImmutableArray<string> Shown) Sentences(Occasion occasion) => (
        [.. occasion.Dishes.Select(d => string.Create(CultureInfo.InvariantCulture, $"{d.Count} {d.Unit}: {d.Name}{(d.For.Length > 0 ? ", " + d.For : "")}"))],
        [.. occasion.Diets.Select(d => $"{(d.Seats.IsEmpty ? "" : "Seat " + string.Join(", ", d.Seats) + ": ")}{d.Declared}{string.Concat(d.ByDish.OrderBy(x => x.Key, StringComparer.Ordinal).Select(x => $"; {x.Key}: {x.Value}"))}")],
        [.. occasion.Shows.OrderByDescending(s => s.Weight).Select(s => $"{s.Component}{(s.StepText.Length > 1 ? ", " + s.StepText : "")} ({s.How.ToString().ToLowerInvariant()}, weight {s.Weight.ToString(CultureInfo.InvariantCulture)})")]);

    /// <summary>What the cards leave open: stops and warnings first, then questions.</summary>
    public static IEnumerable<StandView> OfCards(ImmutableArray<Batch> batches, ImmutableArray<Findings> findings, Func<string, string> cardAt)
    {
        for (int i = 0; i < batches.Length; i++)
        {
            string title = batches[i].Weighed.Dish.Title;
            Finding[] grave = i < findings.Length ? [.. findings[i].All.Where(f => f.Severity == Severity.Stop)] : [];
            if (grave.Length > 0)
            {
                yield return new StandView(1, $"{title}: {grave[0].What}{(grave.Length > 1 ? $" And {(grave.Length - 1).ToString(CultureInfo.InvariantCulture)} more." : "")}", cardAt(title), "Open the card");
            }

            int doubts = batches[i].Weighed.Dish.Doubts.Length + batches[i].Weighed.Doubts.Length;
            if (doubts > 0)
            {
                yield return new StandView(4, $"{title} asks {(doubts == 1 ? "one question" : doubts.ToString(CultureInfo.InvariantCulture) + " questions")}.", cardAt(title), "Answer");
            }
        }
    }
}

/// <summary>Something that stands between now and the day.</summary>
/// <param name="Rank">Gravest is 0.</param>
/// <param name="Words">What.</param>
/// <param name="At">Where it is settled; empty for a button that plans.</param>
/// <param name="Do">Words of the link.</param>
public sealed record StandView(int Rank, string Words, string At, string Do);
