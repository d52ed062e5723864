using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Coulisse.Formats.In;

/// <summary>A page as card text: its recipe data when it carries some, else its headings, lists, tables and sentences. Scripts, styles and menus are left out; nothing is fetched.</summary>
public static class RecipePage
{
    private static readonly HashSet<string> Left = new(StringComparer.OrdinalIgnoreCase) { "script", "style", "nav", "footer", "form", "noscript", "svg", "iframe", "aside", "template", "head", "button", "select", "object", "embed", "math", "canvas", "audio", "video", "figure" };
    private static readonly HashSet<string> Blocks = new(StringComparer.OrdinalIgnoreCase) { "p", "div", "section", "article", "header", "main", "ul", "ol", "br", "hr", "blockquote", "dl", "dt", "dd", "table", "tbody", "thead", "pre", "address", "body", "details", "summary" };

    /// <summary>The card text.</summary>
    /// <param name="html">The page or a piece of one.</param>
    public static string Read(string html)
    {
        (html, int deep) = PageDepth.Of(html);
        string card = Card(html);
        return deep == 0 ? card : string.Create(CultureInfo.InvariantCulture, $"{card.TrimEnd()}\n\nNote: the page nests {deep} of its tags deeper than {PageDepth.Most}; these were read as line ends.\n");
    }

    private static string Card(string html)
    {
        using AngleSharp.Html.Dom.IHtmlDocument page = new HtmlParser().ParseDocument(html);
        foreach (IElement data in page.QuerySelectorAll("script[type='application/ld+json']"))
        {
            if (RecipeJson.InPage(data.TextContent) is { } card)
            {
                return card;
            }
        }

        IElement? marked = page.QuerySelector("[itemtype*='schema.org/Recipe']");
        if (marked is not null && marked.QuerySelector("[itemprop='recipeIngredient'],[itemprop='ingredients']") is not null)
        {
            return Microdata(marked);
        }

        StringBuilder b = new();
        if (page.QuerySelector("h1") is null && page.Title is { Length: > 0 } title)
        {
            b.Append("# ").AppendLine(Line(title)).AppendLine();
        }

        PageMenus.Off(page);
        Walk((INode?)page.QuerySelector("article") ?? (INode?)page.QuerySelector("main") ?? page.Body ?? (INode)page, b);
        return b.ToString();
    }

    /// <summary>The words of a piece of a page, breaks as line ends.</summary>
    internal static string Words(string html)
    {
        if (!html.Contains('<'))
        {
            return html;
        }

        using AngleSharp.Html.Dom.IHtmlDocument piece = new HtmlParser().ParseDocument(PageDepth.Of(html).Html);
        StringBuilder b = new();
        Walk(piece.Body ?? (INode)piece, b, marks: false);
        return b.ToString();
    }

    private static string Microdata(IElement recipe)
    {
        StringBuilder b = new();
        b.Append("# ").AppendLine((recipe.QuerySelector("[itemprop='name']") is { } name ? Flat(name) : "Untitled")).AppendLine();
        if (recipe.QuerySelector("[itemprop='recipeYield']") is { } made)
        {
            string y = made.GetAttribute("content") is { } content ? Line(content) : Flat(made);
            b.Append(y.Length > 0 && char.IsAsciiDigit(y[0]) ? y.All(char.IsAsciiDigit) ? "Serves " : "Makes " : "").AppendLine(y).AppendLine();
        }

        foreach (IElement i in recipe.QuerySelectorAll("[itemprop='recipeIngredient'],[itemprop='ingredients']"))
        {
            b.Append("- ").AppendLine(Flat(i));
        }

        b.AppendLine().AppendLine("## Method").AppendLine();
        int n = 0;
        foreach (IElement i in recipe.QuerySelectorAll("[itemprop='recipeInstructions']"))
        {
            // steps by their items; where there are none, each paragraph and line is one
            IElement[] items = [.. i.QuerySelectorAll("li,[itemprop='text']").Where(x => x.ParentElement?.Closest("li,[itemprop='text']") is not { } outer || !i.Contains(outer))];
            foreach (string step in items.Length > 0 ? items.Select(Flat) : Told(i).Split('\n').Select(Line))
            {
                if (step.Length > 0)
                {
                    b.Append((++n).ToString(CultureInfo.InvariantCulture)).Append(". ").AppendLine(step);
                }
            }
        }

        return b.ToString();
    }

    // The words of an element with its breaks as line ends, or on one line: what stands in two paragraphs is not one word.
    private static string Told(IElement e)
    {
        StringBuilder b = new();
        Walk(e, b, marks: false);
        return b.ToString();
    }

    private static string Flat(IElement e) => Line(Told(e));

    /// <summary>Walks without recursion, so that no nesting is too deep, and by place, as a node looks for its neighbour among all of them.</summary>
    private static void Walk(INode root, StringBuilder b, bool marks = true)
    {
        Stack<(INode Node, int Next)> open = new([(root, 0)]);
        Open(root, null, b, marks);
        while (open.TryPop(out (INode Node, int Next) at))
        {
            INodeList children = at.Node.ChildNodes;
            if (at.Next >= children.Length)
            {
                Close(at.Node, b);
                continue;
            }

            INode child = children[at.Next];
            open.Push((at.Node, at.Next + 1));
            if (child.NodeType is not NodeType.Comment && !(child is IElement e && Left.Contains(e.LocalName)))
            {
                // what stands behind a raised figure tells whether it is the upper half of a fraction
                INode? behind = child is IElement { LocalName: "sup" } && at.Next + 1 < children.Length ? children[at.Next + 1] : null;
                if (behind is not null && child.ChildNodes.Length == 1 && child.FirstChild is IText raised && Raised(raised, behind, b))
                {
                    continue;
                }

                if (marks && child is IElement bold && BoldLine.Is(bold))
                {
                    b.Append("**").Append(Line(child.TextContent)).Append("**");
                    Close(child, b);
                    continue;
                }

                if (marks && child is IElement cell && CellLines.Breaks(cell))
                {
                    b.AppendJoin("<br>", Told(cell).Split('\n').Select(l => Line(l).TrimEnd(' ', '|')).Where(l => l.Length > 0));
                    Close(child, b);
                    continue;
                }

                Open(child, child is IText && at.Node is IElement { LocalName: "sup" } ? at.Node : null, b, marks);
                open.Push((child, 0));
            }
        }
    }

    private static void Open(INode n, INode? raisedIn, StringBuilder b, bool marks)
    {
        if (raisedIn is not null && n is IText raised && Raised(raised, null, b))
        {
            return;
        }

        if (n is IText text)
        {
            string words = string.Join(' ', text.Data.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            if (words.Length > 0)
            {
                bool space = b.Length > 0 && !char.IsWhiteSpace(b[^1]) && char.IsWhiteSpace(text.Data[0]);
                b.Append(space ? " " : "").Append(words).Append(char.IsWhiteSpace(text.Data[^1]) ? " " : "");
            }
            else if (text.Data.Length > 0 && b.Length > 0 && !char.IsWhiteSpace(b[^1]))
            {
                // White space alone between two inline elements parts their words; between blocks the line ends anyway.
                b.Append(' ');
            }

            return;
        }

        if (n is not IElement e)
        {
            return;
        }

        switch (e.LocalName)
        {
            case "li":
                NewLine(b);
                // A list inside an item stands under it, as it does on the page.
                b.Append(' ', marks ? 2 * Math.Min(MostNested, Nested(e)) : 0).Append(!marks ? "" : e.ParentElement?.LocalName == "ol" ? "1. " : "- ");
                break;
            case "h1" or "h2" or "h3" or "h4" or "h5" or "h6":
                NewLine(b);
                b.AppendLine().Append(!marks ? "" : new string('#', e.LocalName[1] - '0') + " ");
                break;
            case "tr":
                NewLine(b);
                b.Append(marks ? "| " : "");
                break;
            case "s" or "del" or "strike":
                b.Append("~~");
                break;
            case "span":
                b.Append(GluedSpans.Parts(e, b) ? "  " : "");
                break;
            default:
                if (Blocks.Contains(e.LocalName) && !TermPair.Closes(e))
                {
                    NewLine(b);
                }

                break;
        }
    }

    /// <summary>A raised figure stays raised: behind a food it is a footnote, behind "cm" a power, and no part of the word; "1 ½" in two pieces is no eleven.</summary>
    private static bool Raised(IText text, INode? behind, StringBuilder b)
    {
        string figures = text.Data.Trim();
        if (figures.Length is 0 or > 3 || b.Length == 0)
        {
            return false;
        }

        bool fraction = figures.Any(c => c is '/' or '\u2044') || behind is IText next && next.Data.AsSpan().TrimStart() is ['/' or '\u2044', ..];
        if (fraction && char.IsAsciiDigit(figures[0]))
        {
            b.Append(char.IsAsciiDigit(b[^1]) ? " " : "").Append(figures);
            return true;
        }

        if (!figures.All(char.IsAsciiDigit))
        {
            return false;
        }

        b.Append(string.Concat(figures.Select(c => "⁰¹²³⁴⁵⁶⁷⁸⁹"[c - '0'])));
        return true;
    }

    private const int MostNested = 6;

    private static int Nested(IElement item)
    {
        int depth = 0;
        for (IElement? up = item.ParentElement; up is not null && depth < MostNested; up = up.ParentElement)
        {
            depth += up.LocalName == "li" ? 1 : 0;
        }

        return depth;
    }

    private static void Close(INode? n, StringBuilder b)
    {
        if (n is IElement e)
        {
            if (e.LocalName is "td" or "th")
            {
                b.Append(" | ");
            }
            else if (e.LocalName is "s" or "del" or "strike")
            {
                b.Append("~~");
            }
            else if (e.LocalName is "h1" or "h2" or "h3" or "h4" or "h5" or "h6" or "p" or "ul" or "ol" or "table")
            {
                NewLine(b);
                b.AppendLine();
            }
            else if (TermPair.Opens(e))
            {
                b.Append(e.TextContent.AsSpan().TrimEnd() is [.., ':' or '：'] ? " " : ": ");
            }
            else if (e.LocalName is "li" or "tr" || Blocks.Contains(e.LocalName))
            {
                NewLine(b);
            }
        }
    }

    private static void NewLine(StringBuilder b)
    {
        while (b.Length > 0 && b[^1] == ' ')
        {
            b.Length--;
        }

        if (b.Length > 0 && b[^1] != '\n')
        {
            b.AppendLine();
        }
    }

    private static string Line(string s) => string.Join(' ', s.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
