using AngleSharp.Dom;

namespace Coulisse.Formats.In;

/// <summary>
/// Bold or underlined words that are a line of their own over a list ("&lt;p&gt;&lt;strong&gt;Garniture&lt;/strong&gt;&lt;/p&gt;&lt;ul&gt;…", "&lt;p&gt;&lt;u&gt;Bechamel&lt;/u&gt;&lt;/p&gt;&lt;ul&gt;…", "&lt;b&gt;Finitura&lt;/b&gt;&lt;br&gt;1 mazzetto di …"): the page's way to head a part.
/// Such words inside a sentence, a cell or an item, and over prose, head nothing.
/// </summary>
internal static class BoldLine
{
    private const int Longest = 60;
    private const int LongestRow = 80;
    private const int MostWrapped = 4;
    private const int MostNeighbours = 5000; // an element looks for its neighbour among all of them, which costs their square

    /// <summary>True for such an element.</summary>
    public static bool Is(IElement e)
    {
        if (!Stressed(e) || e.ParentElement is not { LocalName: "p" or "div" or "section" or "article" or "main" or "body" } holder || holder.ChildNodes.Length > MostNeighbours || holder.Parent is { ChildNodes.Length: > MostNeighbours } || Back(e) is not (null or IElement { LocalName: "br" or "p" or "div" or "ul" or "ol" or "h1" or "h2" or "h3" or "h4" or "h5" or "h6" }))
        {
            return false;
        }

        string words = e.TextContent.Trim();
        bool named = words.Length is > 1 and <= Longest && !char.IsAsciiDigit(words[0]) && words[^1] is not ('.' or '!' or '?' or ';' or ',' or '。') && !words.Contains('*', StringComparison.Ordinal);
        return named && (Next(e) switch
        {
            null => Next(holder) is IElement under && (under.LocalName is "ul" or "ol" or "dl" or "table" || under.LocalName is "p" or "div" && Rows(under)),
            IElement { LocalName: "ul" or "ol" or "dl" or "table" } => true,
            IElement { LocalName: "br" } line => Next(line) is IText { Data: var item } && item.AsSpan().TrimStart() is { Length: > 0 } first && (char.IsNumber(first[0]) || first[0] is '-' or '–' or '•'),
            _ => false,
        });
    }

    /// <summary>True for a paragraph that is a list without its marks: it opens with an amount, and breaks its lines or is one short line.</summary>
    private static bool Rows(IElement e) =>
        e.FirstChild is IText { Data: var told } && told.AsSpan().TrimStart() is { Length: > 2 } first && char.IsNumber(first[0]) && (e.QuerySelector("br") is not null || e.TextContent.Length < LongestRow && e.TextContent.AsSpan().TrimEnd()[^1] is not ('.' or '!' or '?'));

    /// <summary>Bold or underlined as a whole, in whatever wrappings.</summary>
    private static bool Stressed(IElement e)
    {
        for (int deep = 0; deep < MostWrapped; deep++)
        {
            if (e.LocalName is "b" or "strong" or "u")
            {
                return true;
            }

            if (e.LocalName is not ("span" or "font" or "em" or "i") || e.ChildNodes.Length != 1 || e.FirstChild is not IElement only)
            {
                return false;
            }

            e = only;
        }

        return false;
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
