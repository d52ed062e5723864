using System.Text;

namespace Coulisse.Formats.In;

/// <summary>Cuts how deep a page nests before it is parsed: a parser walks the open elements at every tag, so that depth costs its square. Tags too deep become breaks; no word is lost.</summary>
internal static class PageDepth
{
    /// <summary>The deepest nesting kept. Real pages stay under 60.</summary>
    public const int Most = 200;

    private const int LongestTag = 8192; // attributes are no words, and a parser compares each with each

    private static readonly HashSet<string> Void = new(StringComparer.OrdinalIgnoreCase) { "area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "param", "source", "track", "wbr", "keygen", "frame", "bgsound", "basefont" };

    // Closed by the next of their kind, so that leaving out their end nests nothing.
    private static readonly HashSet<string> Implied = new(StringComparer.OrdinalIgnoreCase) { "p", "li", "td", "th", "tr", "dt", "dd", "option", "optgroup", "thead", "tbody", "tfoot", "colgroup", "caption", "html", "head", "body", "rb", "rt", "rp", "rtc" };
    private static readonly HashSet<string> Raw = new(StringComparer.OrdinalIgnoreCase) { "script", "style", "textarea", "title", "xmp", "iframe", "noembed", "noframes" };

    /// <summary>The page, nested no deeper than <see cref="Most"/>, and how many tags were too deep. The same string when none was.</summary>
    public static (string Html, int Cut) Of(string html)
    {
        StringBuilder? b = null;
        List<string> open = [];
        Dictionary<string, int> cutOpen = new(StringComparer.OrdinalIgnoreCase);
        int kept = 0; // everything before is in b, or needs no b
        int cut = 0;
        for (int i = html.IndexOf('<'); i >= 0 && i < html.Length; i = i < html.Length ? html.IndexOf('<', i) : -1)
        {
            if (html.AsSpan(i).StartsWith("<!--"))
            {
                int close = html.IndexOf("-->", i + 4, StringComparison.Ordinal);
                i = close < 0 ? html.Length : close + 3;
                continue;
            }

            bool ends = i + 1 < html.Length && html[i + 1] == '/';
            int nameAt = i + (ends ? 2 : 1);
            if (nameAt >= html.Length || !char.IsAsciiLetter(html[nameAt]))
            {
                i++;
                continue;
            }

            int nameEnd = nameAt;
            while (nameEnd < html.Length && html[nameEnd] is not (' ' or '>' or '/' or '\t' or '\n' or '\r' or '\f'))
            {
                nameEnd++;
            }

            int end = TagEnd(html, nameEnd);
            string name = nameEnd - nameAt > 40 ? "x-long" : html[nameAt..nameEnd];
            string? instead = null;
            if (Void.Contains(name) || Implied.Contains(name))
            {
                instead = end - i > LongestTag ? "<" + name + ">" : null;
            }
            else if (!ends)
            {
                if (open.Count >= Most)
                {
                    cut++;
                    cutOpen[name] = cutOpen.GetValueOrDefault(name) + 1;
                    instead = "<br>";
                }
                else
                {
                    instead = end - i > LongestTag ? "<" + name + ">" : null;
                    open.Add(name);
                }
            }
            else if (cutOpen.GetValueOrDefault(name) is var n and > 0)
            {
                cutOpen[name] = n - 1;
                instead = "<br>";
            }
            else if (open.FindLastIndex(o => o.Equals(name, StringComparison.OrdinalIgnoreCase)) is var at and >= 0)
            {
                open.RemoveRange(at, open.Count - at);
            }

            if (instead is not null)
            {
                b ??= new StringBuilder(html.Length);
                b.Append(html, kept, i - kept).Append(instead);
                kept = end;
            }

            i = end;
            if (!ends && instead != "<br>" && Raw.Contains(name))
            {
                // what a script holds is no tag, and it has no tags inside
                i = html.IndexOf("</" + name, end, StringComparison.OrdinalIgnoreCase) is var close and >= 0 ? close : html.Length;
            }
        }

        return b is null ? (html, cut) : (b.Append(html, kept, html.Length - kept).ToString(), cut);
    }

    // behind the ">" that closes a tag; a ">" inside quotes closes none
    private static int TagEnd(string html, int i)
    {
        while (i < html.Length && html[i] != '>')
        {
            if (html[i] == '=')
            {
                i++;
                while (i < html.Length && char.IsWhiteSpace(html[i]))
                {
                    i++;
                }

                if (i < html.Length && html[i] is '"' or '\'')
                {
                    int close = html.IndexOf(html[i], i + 1);
                    i = close < 0 ? html.Length : close + 1;
                }
            }
            else
            {
                i++;
            }
        }

        return Math.Min(i + 1, html.Length);
    }
}
