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
/// <param name="Shown">What is shown.</param>
/// <param name="Assumed">What was assumed.</param>
/// <param name="Changes">Changes made by a touch, which can be taken back.</param>
public sealed record OccasionView(
    string Id, int Version, string Title, string Says, string Text, string Heading, ImmutableArray<StandView> Stands, string? PlanAt,
    ImmutableArray<string> Dishes, ImmutableArray<string> Shown, ImmutableArray<string> Assumed, ImmutableArray<string> Changes)
{
    /// <summary>Diets by seat, to be written in.</summary>
    public DietTable DietTable { get; init; } = new([], []);

    /// <summary>Sites of the kitchen; fewer than two leave nothing to choose.</summary>
    public ImmutableArray<string> Sites { get; init; } = [];

    /// <summary>The site it is made at.</summary>
    public string Site { get; init; } = "";

    /// <summary>How many are shown at first.</summary>
    public const int First = 3;

    private static readonly string[] Counted = ["Nothing", "One thing", "Two things", "Three things", "Four things", "Five things", "Six things", "Seven things", "Eight things", "Nine things"];

    /// <summary>"Three things stand between you and Saturday".</summary>
    public static string HeadingOf(int things, string day) => things == 0
        ? $"Nothing that the bench can see stands between you and {day}"
        : $"{(things < Counted.Length ? Counted[things] : things.ToString(CultureInfo.InvariantCulture) + " things")} {(things == 1 ? "stands" : "stand")} between you and {day}";

    /// <summary>Sentences about the dishes and shows of an occasion.</summary>
    public static (ImmutableArray<string> Dishes, ImmutableArray<string> Shown) Sentences(Occasion occasion) => (
        [.. occasion.Dishes.Select(d => string.Create(CultureInfo.InvariantCulture, $"{d.Count} {d.Unit}: {d.Name}{(d.For.Length > 0 ? ", " + d.For : "")}"))],
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

/// <summary>The diets of a sheet as a table that is written in.</summary>
/// <param name="Columns">Heads: seat, what was declared, and for each dish what they get.</param>
/// <param name="Rows">Rows as written; blank ones at the end.</param>
public sealed record DietTable(ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>Names of the heading in a sheet.</summary>
    public static ImmutableArray<string> Headings { get; } = ["Guests' diets", "Diets"];

    private const int Blank = 2;

    /// <summary>The table of a sheet; a new one has a column for each dish.</summary>
    /// <param name="columns">Heads as the sheet has them; empty when it has no such table.</param>
    /// <param name="rows">Rows as the sheet has them.</param>
    /// <param name="dishes">Dishes of the occasion.</param>
    public static DietTable Of(ImmutableArray<string> columns, ImmutableArray<ImmutableArray<string>> rows, IEnumerable<string> dishes)
    {
        ImmutableArray<string> heads = columns.IsEmpty ? ["Seat", "Declared", .. dishes.Distinct(StringComparer.Ordinal).Take(4)] : columns;
        return new DietTable(heads, [.. rows.Select(r => Enumerable.Range(0, heads.Length).Select(i => i < r.Length ? r[i] : "").ToImmutableArray()), .. Enumerable.Repeat(heads.Select(_ => "").ToImmutableArray(), Blank)]);
    }
}
