using AngleSharp.Dom;

namespace Coulisse.Formats.In;

/// <summary>A cell of a table with several lines in it ("200 g flour&lt;br&gt;2 eggs", a list of foods beside its method): they stay in their row. Cells that lay out a page hold headings, pictures or tables, and their lines stay lines.</summary>
internal static class CellLines
{
    private const int Longest = 1200;

    /// <summary>True for such a cell of a table with a head.</summary>
    public static bool Breaks(IElement cell) =>
        cell.LocalName is "td" && cell.ParentElement is { LocalName: "tr", Children.Length: > 1 and < 12 } && cell.QuerySelector("br,li,p + p") is not null
        && cell.QuerySelector("table,h1,h2,h3,h4,h5,h6,img,form") is null && cell.TextContent.Length < Longest && cell.Closest("table")?.QuerySelector("th") is { } head && head.ParentElement?.Children.Length > 1;
}
