using AngleSharp.Dom;

namespace Coulisse.Formats.In;

/// <summary>A list of short words without a figure over the title of a page ("About", "Suppliers"): the menu of the site, whatever the element around it is called. Only where a list with figures stands behind the title; else it may be the list of the card.</summary>
internal static class PageMenus
{
    private const int MostLists = 40;
    private const int LongestItem = 30;

    /// <summary>Takes such lists off.</summary>
    public static void Off(IDocument page)
    {
        if (page.QuerySelector("h1") is not { } title)
        {
            return;
        }

        IElement[] over = [.. page.QuerySelectorAll("ul").Take(MostLists).Where(l => Before(l, title) && Words(l))];
        if (over.Length > 0 && page.QuerySelectorAll("li,td").Any(i => i.TextContent.AsSpan().IndexOfAnyInRange('0', '9') >= 0 && Before(title, i)))
        {
            Array.ForEach(over, l => l.Remove());
        }
    }

    private static bool Before(IElement a, IElement b) => a.CompareDocumentPosition(b).HasFlag(DocumentPositions.Following) && !a.Contains(b);

    private static bool Words(IElement list) => list.TextContent.AsSpan().IndexOfAnyInRange('0', '9') < 0 && list.QuerySelectorAll("li").All(i => i.TextContent.Trim().Length is > 0 and < LongestItem);
}
