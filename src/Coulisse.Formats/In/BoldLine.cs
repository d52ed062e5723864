using AngleSharp.Dom;

namespace Coulisse.Formats.In;

/// <summary>
/// Bold words that are a line of their own over a list ("&lt;p&gt;&lt;strong&gt;Garniture&lt;/strong&gt;&lt;/p&gt;&lt;ul&gt;…", "&lt;b&gt;Finitura&lt;/b&gt;&lt;br&gt;1 mazzetto di …"): the page's way to head a part.
/// Bold words inside a sentence, a cell or an item, and bold words over prose, head nothing.
/// </summary>
internal static class BoldLine
{
    private const int Longest = 60;
    private const int MostNeighbours = 5000; // an element looks for its neighbour among all of them, which costs their square

    /// <summary>True for such an element.</summary>
    public static bool Is(IElement e)
    {
        if (e.LocalName is not ("b" or "strong") || e.ParentElement is not { LocalName: "p" or "div" or "section" or "article" or "main" or "body" } holder || holder.ChildNodes.Length > MostNeighbours || holder.Parent is { ChildNodes.Length: > MostNeighbours } || Back(e) is not (null or IElement { LocalName: "br" or "p" or "div" or "ul" or "ol" or "h1" or "h2" or "h3" or "h4" or "h5" or "h6" }))
        {
            return false;
        }

        string words = e.TextContent.Trim();
        bool named = words.Length is > 1 and <= Longest && !char.IsAsciiDigit(words[0]) && words[^1] is not ('.' or '!' or '?' or ';' or ',' or '。') && !words.Contains('*', StringComparison.Ordinal);
        return named && (Next(e) switch
        {
            null => Next(holder) is IElement { LocalName: "ul" or "ol" or "table" },
            IElement { LocalName: "ul" or "ol" or "table" } => true,
            IElement { LocalName: "br" } line => Next(line) is IText { Data: var item } && item.AsSpan().TrimStart() is { Length: > 0 } first && (char.IsNumber(first[0]) || first[0] is '-' or '–' or '•'),
            _ => false,
        });
    }

    private static INode? Back(INode n)
    {
        INode? at = n.PreviousSibling;
        while (at is IText t && string.IsNullOrWhiteSpace(t.Data))
        {
            at = at.PreviousSibling;
        }

        return at;
    }

    /// <summary>What stands behind; blanks and a colon alone are nothing.</summary>
    private static INode? Next(INode n)
    {
        INode? at = n.NextSibling;
        while (at is IText t && t.Data.AsSpan().Trim() is "" or ":" or "：")
        {
            at = at.NextSibling;
        }

        return at;
    }
}
