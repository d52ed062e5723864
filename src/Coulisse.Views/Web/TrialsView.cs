using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Trials;

namespace Coulisse.Views.Web;

/// <summary>Trials of a card, or records of an occasion: what is kept, what repeats say, and a sheet to fill in.</summary>
/// <param name="Title">Card or occasion.</param>
/// <param name="Kind">"Trials" or "Records".</param>
/// <param name="At">Address of this page, to which a filled sheet is sent.</param>
/// <param name="Back">Address of the card or the occasions.</param>
/// <param name="Says">In one sentence.</param>
/// <param name="Figures">Mean and spread.</param>
/// <param name="Rows">What is kept.</param>
/// <param name="Sheet">The sheet to fill in, or the one that was refused.</param>
/// <param name="Problems">What is wrong with it.</param>
/// <param name="Files">Whether photographs and probe files may go with it.</param>
public sealed record TrialsView(string Title, string Kind, string At, string Back, string Says, ImmutableArray<TrialFigure> Figures, ImmutableArray<TrialRow> Rows, string Sheet, ImmutableArray<string> Problems, bool Files)
{
    /// <summary>The sheet before anybody wrote in it.</summary>
    public required string Blank { get; init; }

    /// <summary>What the next plan takes from them, a sentence a figure; empty while the card is not standardised.</summary>
    public ImmutableArray<string> Taught { get; init; } = [];

    /// <summary>Figures of a summary.</summary>
    /// <param name="summary">Summary; null for none.</param>
    /// <param name="culture">Culture of the reader.</param>
    public static ImmutableArray<TrialFigure> Of(TrialSummary? summary, CultureInfo culture) => summary is null ? [] :
    [
        .. summary.Figures.Select(f => new TrialFigure(f.What, string.Create(culture, $"{f.Mean:0.#} {f.Unit}"), f.Deviation is { } d ? string.Create(culture, $"± {d:0.#}, {f.Least:0.#} to {f.Most:0.#}") : "once", string.Create(culture, $"{f.Count}"))),
    ];
}

/// <summary>A figure over repeats.</summary>
public sealed record TrialFigure(string What, string Mean, string Spread, string Count);

/// <summary>A kept sheet.</summary>
public sealed record TrialRow(string At, string Title, string Detail);

/// <summary>One kept sheet with what lies beside it.</summary>
public sealed record KeptSheetView(string Title, string Back, string Text, string Detail, ImmutableArray<SheetFile> Files);

/// <summary>A file beside a sheet.</summary>
public sealed record SheetFile(string At, string Name, bool Picture, string Detail);
