using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Views.Papers;

namespace Coulisse.Views.Web;

/// <summary>The papers of a planned occasion: what there is, what hangs on the wall already, and what of that no longer holds.</summary>
/// <param name="Plan">Plan they are printed from.</param>
/// <param name="Title">Occasion.</param>
/// <param name="Says">One sentence: how many, how many are stale.</param>
/// <param name="Faults">Faults of the plan, which every sheet will bear.</param>
/// <param name="Gone">Sheets on the wall that nothing prints any more, by name.</param>
/// <param name="Kinds">Sheets by kind, in the order in which they are printed.</param>
/// <param name="People">People who have sheets of their own.</param>
/// <param name="Days">Days that have sheets of their own, ISO and in words.</param>
/// <param name="Shown">What the list is narrowed to.</param>
public sealed record PapersView(
    string Plan, string Title, string Says, ImmutableArray<string> Faults, ImmutableArray<string> Gone, ImmutableArray<PaperKindView> Kinds,
    ImmutableArray<string> People, ImmutableArray<(string Key, string Word)> Days, PaperNarrowing Shown)
{
    /// <summary>Label sheets to choose from, by name.</summary>
    public ImmutableArray<string> LabelSheets { get; init; } = [];

    /// <summary>Lays the shelf out.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="bundle">What would be printed now.</param>
    /// <param name="hung">What was printed before.</param>
    /// <param name="shown">What the list is narrowed to.</param>
    public static PapersView From(string plan, PaperBundle bundle, IReadOnlyDictionary<string, WallSheet> hung, PaperNarrowing shown)
    {
        ImmutableArray<Paper> papers = PaperShelf.Papers(bundle);
        ImmutableHashSet<string> stale = [.. PaperShelf.Stale(hung.ToDictionary(h => h.Key, h => h.Value.Content, StringComparer.Ordinal), papers)];
        string[] names = [.. (bundle.Occasion?.People.Select(p => p.Name) ?? []).Where(n => papers.Any(p => IsOf(p, n)))];
        ImmutableArray<(string, string)> days = [.. papers.Select(p => Day(p)).OfType<string>().Distinct().Order(StringComparer.Ordinal)
            .Select(d => (d, DateTime.ParseExact(d, "yyyy-MM-dd", CultureInfo.InvariantCulture).ToString("dddd d MMMM", bundle.Culture)))];
        ImmutableArray<PaperKindView> kinds = [.. papers
            .Where(p => shown.Who.Length == 0 || IsOf(p, shown.Who))
            .Where(p => shown.Day.Length == 0 || Day(p) == shown.Day)
            .Where(p => !shown.Stale || stale.Contains(p.Id))
            .GroupBy(p => p.Kind, StringComparer.Ordinal)
            .Select(g => new PaperKindView(g.Key, Word(g.Key), [.. g.Select(p => Row(p, hung, stale, bundle.Culture))]))];
        string[] gone = [.. stale.Where(id => papers.All(p => p.Id != id)).Select(id => hung[id].Title).Order(StringComparer.Ordinal)];
        int changed = stale.Count - gone.Length;
        string says = string.Create(bundle.Culture, $"{papers.Length} sheets can be printed; {(hung.Count == 0 ? "none hangs on the wall yet" : $"{hung.Count - stale.Count} on the wall still hold")}{(changed > 0 ? $"; {changed} on the wall {(changed == 1 ? "says" : "say")} something else by now" : "")}{(gone.Length > 0 ? $"; {gone.Length} must come down" : "")}.");
        return new PapersView(plan, bundle.Title, says, bundle.Faults, [.. gone], kinds, [.. names], days, shown);
    }

    /// <summary>A kind in words ("run-sheet": "Run sheet").</summary>
    public static string Word(string kind)
    {
        string words = kind.Replace('-', ' ');
        return words.Length == 0 ? words : char.ToUpper(words[0], CultureInfo.InvariantCulture) + words[1..];
    }

    private static PaperRowView Row(Paper paper, IReadOnlyDictionary<string, WallSheet> hung, ImmutableHashSet<string> stale, CultureInfo culture)
    {
        string printed = hung.TryGetValue(paper.Id, out WallSheet? there) ? there.At.ToString("ddd d MMM HH:mm", culture) : "";
        return new PaperRowView(paper.Id, paper.Title, there is null ? "not printed yet" : stale.Contains(paper.Id) ? $"stale: it changed since {printed}" : $"printed {printed}, still holds", stale.Contains(paper.Id), there is null, there?.Copies ?? 1);
    }

    private static bool IsOf(Paper paper, string person) => paper.Id.EndsWith("-" + Slug.Of(person), StringComparison.Ordinal);

    private static string? Day(Paper paper)
    {
        for (int i = 0; i + 10 <= paper.Id.Length; i++)
        {
            if (DateTime.TryParseExact(paper.Id.AsSpan(i, 10), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            {
                return paper.Id.Substring(i, 10);
            }
        }

        return null;
    }
}

/// <summary>What a list of papers is narrowed to; empty for all.</summary>
/// <param name="Who">One person's sheets.</param>
/// <param name="Day">One day's sheets, ISO.</param>
/// <param name="Stale">Only what no longer holds.</param>
public sealed record PaperNarrowing(string Who, string Day, bool Stale);

/// <summary>Sheets of one kind.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Word">In words.</param>
/// <param name="Rows">Sheets.</param>
public sealed record PaperKindView(string Kind, string Word, ImmutableArray<PaperRowView> Rows);

/// <summary>One sheet.</summary>
/// <param name="Id">Name of the sheet.</param>
/// <param name="Title">Title on it.</param>
/// <param name="State">Whether it hangs and holds, in words.</param>
/// <param name="Stale">True when what hangs says something else.</param>
/// <param name="Fresh">True when it was never printed.</param>
/// <param name="Copies">Copies printed last time; 1 at first.</param>
public sealed record PaperRowView(string Id, string Title, string State, bool Stale, bool Fresh, int Copies);

/// <summary>A sheet that was printed.</summary>
/// <param name="Title">Title on it.</param>
/// <param name="Content">Hash of what it says.</param>
/// <param name="Version">Mark it bears.</param>
/// <param name="At">When, by the kitchen's clock.</param>
/// <param name="Copies">How many.</param>
public sealed record WallSheet(string Title, string Content, string Version, DateTimeOffset At, int Copies)
{
    /// <summary>Kept plan it was printed from; empty for a sheet noted before this was.</summary>
    public string Plan { get; init; } = "";
}
