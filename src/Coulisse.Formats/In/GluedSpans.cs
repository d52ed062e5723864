using System.Text;
using AngleSharp.Dom;

namespace Coulisse.Formats.In;

/// <summary>"&lt;span&gt;Yield&lt;/span&gt;&lt;span&gt;9 biscuits&lt;/span&gt;": two pieces that a style sets apart on the page and nothing parts in the text. Read as they stand they are one word.</summary>
internal static class GluedSpans
{
    private const int MostNeighbours = 400; // an element looks for its neighbour among all of them, which costs their square
    private const int Fewest = 3;

    /// <summary>True where words would run together: a capital behind a small letter or a bracket, or a figure behind a word. "H" before "ello" and "½" before "cup" stay.</summary>
    public static bool Parts(IElement e, StringBuilder b)
    {
        if (b.Length < Fewest || e is not { ParentElement.ChildNodes.Length: < MostNeighbours, PreviousSibling: IElement { LocalName: "span" } before, FirstChild: IText { Data: [var first, ..] } })
        {
            return false;
        }

        char last = b[^1];
        return char.IsUpper(first) && (char.IsLower(last) || last is ')' or '!') || char.IsUpper(first) && char.IsAsciiDigit(last) && before.TextContent.Contains(' ')
            || char.IsAsciiDigit(first) && char.IsLower(last) && char.IsLetter(b[^2]) && char.IsLetter(b[^3]);
    }
}
