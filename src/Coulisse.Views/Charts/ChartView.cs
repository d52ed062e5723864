using System.Collections.Immutable;

namespace Coulisse.Views.Charts;

/// <summary>A chart as a drawing and as the table that says the same.</summary>
/// <param name="Key">Short name for addresses ("core-12").</param>
/// <param name="Title">What is shown.</param>
/// <param name="Says">What it says, one or two sentences, with limit and source.</param>
/// <param name="Svg">The drawing, a whole SVG document without style of its own: it takes the ink of the page.</param>
/// <param name="Heads">Column heads of the table.</param>
/// <param name="Rows">Rows of the table.</param>
public sealed record ChartView(string Key, string Title, string Says, string Svg, ImmutableArray<string> Heads, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>Where the same question is asked further, as an address of the bench; empty for nowhere.</summary>
    public string FurtherAt { get; init; } = "";

    /// <summary>How it came about, a step a line.</summary>
    public ImmutableArray<string> Steps { get; init; } = [];

    /// <summary>Words of that link.</summary>
    public string Further { get; init; } = "";
}
