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

    /// <summary>Sheet.</summary>
    public PageFormat Format { get; init; } = PageFormat.A4;

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
    public static ImmutableArray<Paper> Papers(PaperBundle bundle, PaperChoice choice) =>
    [
        .. PaperShelf.Papers(bundle)
            .Where(p => choice.Kinds.IsEmpty || choice.Kinds.Contains(p.Kind))
            .Where(p => choice.Ids.IsEmpty || choice.Ids.Contains(p.Id))
            .Select(p => choice.Large ? p with { TextSize = Math.Max(18, p.TextSize) } : p),
    ];

    /// <summary>Prints each sheet as a PDF of its own.</summary>
    public static ImmutableArray<PrintedPaper> Print(PaperBundle bundle, PaperChoice choice)
        => [.. Papers(bundle, choice).Select(p => new PrintedPaper(p, PdfWriter.Write(PagePlan.Of(p, choice.Format))))];
}
