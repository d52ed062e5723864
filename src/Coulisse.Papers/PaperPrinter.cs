using System.Collections.Immutable;
using Coulisse.Papers.Pages;
using Coulisse.Papers.Pdf;
using Coulisse.Views.Papers;

namespace Coulisse.Papers;

/// <summary>What is wanted of a bundle; empty lists mean all.</summary>
public sealed record PaperChoice
{
    /// <summary>Everything on A4.</summary>
    public static PaperChoice All { get; } = new();

    /// <summary>Kinds of papers ("run-sheet"); empty for all.</summary>
    public ImmutableArray<string> Kinds { get; init; } = [];

    /// <summary>Sheets by id; empty for all. Used to print only what went stale.</summary>
    public ImmutableArray<string> Ids { get; init; } = [];

    /// <summary>Only sheets of these people; empty for all. A sheet that is nobody's is then left out.</summary>
    public ImmutableArray<string> People { get; init; } = [];

    /// <summary>Only sheets of these days (2026-10-09), of those that are of one day; empty for all.</summary>
    public ImmutableArray<string> Days { get; init; } = [];

    /// <summary>Copies of each sheet in its file, 1 or more.</summary>
    public int Copies { get; init; } = 1;

    /// <summary>All sheets in one file.</summary>
    public bool OneFile { get; init; }

    /// <summary>Sheet.</summary>
    public PageFormat Format { get; init; } = PageFormat.A4;

    /// <summary>Sheet of labels; null for eight on the chosen page.</summary>
    public LabelSheet? Labels { get; init; }

    /// <summary>True for the edition in large print: no running text under 18 pt.</summary>
    public bool Large { get; init; }
}

/// <summary>One sheet as a file.</summary>
/// <param name="Paper">What it says.</param>
/// <param name="Pdf">How it is printed.</param>
public sealed record PrintedPaper(Paper Paper, WrittenPdf Pdf);

/// <summary>Prints a bundle: every sheet from the same values, in the order of the shelf.</summary>
public static class PaperPrinter
{
    /// <summary>Sheets of a bundle that were asked for.</summary>
    public static ImmutableArray<Paper> Papers(PaperBundle bundle, PaperChoice choice) => Chosen(PaperShelf.Papers(bundle), choice);

    /// <summary>Of all sheets those that were asked for.</summary>
    public static ImmutableArray<Paper> Chosen(ImmutableArray<Paper> all, PaperChoice choice) =>
    [
        .. all
            .Where(p => choice.Kinds.IsEmpty || choice.Kinds.Contains(p.Kind))
            .Where(p => choice.Ids.IsEmpty || choice.Ids.Contains(p.Id))
            .Where(p => choice.People.IsEmpty || choice.People.Contains(p.Person))
            .Where(p => choice.Days.IsEmpty || p.Day is not { } day || choice.Days.Contains(day.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture)))
            .Select(p => choice.Large ? p with { TextSize = Math.Max(18, p.TextSize) } : p),
    ];

    /// <summary>Prints each sheet as a PDF of its own.</summary>
    public static ImmutableArray<PrintedPaper> Print(PaperBundle bundle, PaperChoice choice)
        => Print(Papers(bundle, choice), choice);

    /// <summary>Prints sheets already chosen.</summary>
    public static ImmutableArray<PrintedPaper> Print(ImmutableArray<Paper> papers, PaperChoice choice)
        => [.. PrintEach(papers, choice)];

    /// <summary>Prints sheets already chosen, each when its turn comes, so that nobody need hold more than one.</summary>
    public static IEnumerable<PrintedPaper> PrintEach(ImmutableArray<Paper> papers, PaperChoice choice)
        => papers.Select(p => new PrintedPaper(p, PdfWriter.Write([.. Enumerable.Repeat(PagePlan.Of(p, choice.Format, choice.Labels), choice.Copies)])));

    /// <summary>Prints sheets into one file, one after another.</summary>
    public static WrittenPdf PrintOne(ImmutableArray<Paper> papers, PaperChoice choice)
        => PdfWriter.Write(papers, papers.SelectMany(p => Enumerable.Repeat(PagePlan.Of(p, choice.Format, choice.Labels), choice.Copies)));
}
