using AngleSharp.Dom;

namespace Coulisse.Formats.In;

/// <summary>A term and its one short description ("&lt;dt&gt;Water&lt;/dt&gt;&lt;dd&gt;330 g&lt;/dd&gt;") are one line of a list: on two lines the term would head a part, and its amount would stand without a food. A term over several descriptions, or over a list, stays the name of them.</summary>
internal static class TermPair
{
    private const int Longest = 200;
    private const int MostNeighbours = 400; // an element looks for its neighbour among all of them, which costs their square

    /// <summary>True for a term that goes on in the description behind it.</summary>
    public static bool Opens(IElement e) =>
        e is { LocalName: "dt", ParentElement.ChildNodes.Length: < MostNeighbours, ChildElementCount: 0 } && e.TextContent.AsSpan().Trim() is { Length: > 1 and < Longest }
        && e.NextElementSibling is { LocalName: "dd", NextElementSibling: not { LocalName: "dd" }, TextContent.Length: < Longest } told
        && told.TextContent.AsSpan().Trim().Length > 0 && told.QuerySelector("ul,ol,p,div,table,br,dl") is null;

    /// <summary>True for the description that goes on with its term.</summary>
    public static bool Closes(IElement e) => e is { LocalName: "dd", ParentElement.ChildNodes.Length: < MostNeighbours, PreviousElementSibling: { } term } && Opens(term);
}
