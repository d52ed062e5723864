namespace Coulisse.Cards.Layout;

/// <summary>A page that ends in the middle of a sentence ("… au bain-marie à 150 °C pendant", the head of the next page, "45 minutes."): what the printer set between the halves goes beside, and the halves stand one under the other. Where the page ends with a sentence or an item nothing is touched.</summary>
internal static class PageBreaks
{
    private const int MostPages = 400;
    private const int Shortest = 18;

    /// <summary>The lines without the heads and numbers of pages that part a sentence.</summary>
    public static List<RawLine> Off(List<RawLine> lines, List<RawLine> asides, string lang)
    {
        HashSet<int> pages = PageHeads.Of(lines, lang);
        if (pages.Count is 0 or > MostPages)
        {
            return lines;
        }

        HashSet<int>? parted = null;
        for (int i = 1; i + 1 < lines.Count; i++)
        {
            if (!Between(lines, pages, i))
            {
                continue;
            }

            int end = i + 1;
            while (end < lines.Count && Between(lines, pages, end))
            {
                end++;
            }

            if (end < lines.Count && Parted(lines[i - 1].Text, lines[end].Text))
            {
                parted ??= [.. pages];
                parted.UnionWith(Enumerable.Range(i, end - i));
                // What goes on behind the page belongs to the block before it.
                (int from, int block) = (lines[end].Block, lines[i - 1].Block);
                lines = [.. lines.Select(l => l.Block == from ? l with { Block = block } : l)];
            }

            i = end;
        }

        if (parted is null)
        {
            return lines;
        }

        // All of them go: the first is known by the others.
        asides.AddRange(lines.Where((_, i) => parted.Contains(i)));
        return [.. lines.Where((_, i) => !parted.Contains(i))];
    }

    private static bool Between(List<RawLine> lines, HashSet<int> pages, int i) => pages.Contains(i) || Furniture.Page(lines[i].Text) && lines[i].Text.Length < Shortest;

    /// <summary>The upper line hangs, and the lower one goes on in small letters or with a figure.</summary>
    private static bool Parted(string a, string b) =>
        a.Length > Shortest && a[^1] is not ('.' or '!' or '?' or ':' or '。') && (char.IsLower(b[0]) || char.IsAsciiDigit(b[0])) && Reading.Marks.ListNumber(b, 0) == 0 && BrokenLines.Hung(a);
}
