using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Pages;

/// <summary>A paper laid out: pages in points, before any writer. The same paper gives the same pages.</summary>
/// <param name="Paper">What was laid out.</param>
/// <param name="Format">On which sheet.</param>
/// <param name="Pages">Its pages.</param>
public sealed record PagePlan(Paper Paper, PageFormat Format, ImmutableArray<LaidPage> Pages)
{
    private const double HeadRoom = 26;
    private const double FootRoom = 24;

    /// <summary>Lays a paper out.</summary>
    public static PagePlan Of(Paper paper, PageFormat format)
    {
        PageFormat sheet = paper.Landscape ? format.Turned : format;
        double left = sheet.Margin;
        double top = (sheet.Margin * 0.8) + HeadRoom;
        double bottom = sheet.Height - (sheet.Margin * 0.8) - FootRoom;
        double width = sheet.Width - (2 * sheet.Margin);
        ImmutableArray<Slab> slabs = [.. new BlockSetter(width, paper.TextSize, bottom - top).Set(paper)];
        List<List<Laid>> pages = [[]];
        double y = top;
        for (int i = 0; i < slabs.Length;)
        {
            // A chain of slabs that may not be parted.
            int end = i;
            double need = 0;
            while (true)
            {
                need += slabs[end].Height + (end == i && pages[^1].Count == 0 ? 0 : slabs[end].Before);
                if (!slabs[end].KeepNext || end + 1 >= slabs.Length)
                {
                    break;
                }

                end++;
            }

            bool full = pages[^1].Count > 0 && y + need > bottom;
            if (pages[^1].Count > 0 && (full || slabs[i].PageFirst))
            {
                // A chain longer than a page is cut where it must be; then starting it here wastes no page.
                if (slabs[i].PageFirst || need <= bottom - top || y > top + ((bottom - top) * 0.7))
                {
                    pages.Add([]);
                    y = top;
                }
            }

            for (; i <= end; i++)
            {
                Slab slab = slabs[i];
                double before = pages[^1].Count == 0 ? 0 : slab.Before;
                if (pages[^1].Count > 0 && y + before + slab.Height > bottom + 0.01)
                {
                    pages.Add([]);
                    y = top;
                    before = 0;
                }

                if (pages[^1].Count == 0 && slab.Head is { } head)
                {
                    pages[^1].Add(new Laid(left, y, head));
                    y += head.Height;
                }

                y += before;
                pages[^1].Add(new Laid(left, y, slab));
                y += slab.Height;
            }
        }

        return new PagePlan(paper, sheet, [.. pages.Select((p, n) => new LaidPage(sheet.Width, sheet.Height, [.. p], Furniture(paper, sheet, n + 1, pages.Count)))]);
    }

    private static Piece Furniture(Paper paper, PageFormat sheet, int page, int of)
    {
        double size = sheet.Width < 320 ? 6.5 : 8.5;
        double left = sheet.Margin;
        double right = sheet.Width - sheet.Margin;
        double headAt = (sheet.Margin * 0.8) + 8;
        double footAt = sheet.Height - (sheet.Margin * 0.8);
        string of1 = string.Create(CultureInfo.InvariantCulture, $"page {page} of {of}");
        string mark = $"version {paper.Mark.Version} · sheet {paper.Content} · printed {paper.Mark.Printed}";
        string kind = paper.Title;
        string what = paper.Occasion.Length > 0 && paper.Dish.Length > 0 && paper.Dish != paper.Occasion ? $"{paper.Dish} · {paper.Occasion}" : paper.Dish.Length > 0 ? paper.Dish : paper.Occasion;
        double half = (right - left) * 0.6;
        string whatFit = Fit(what, half, size, true);
        string kindFit = Fit(kind, right - left - half - 10, size, false);
        string markFit = Fit(mark, right - left - Measure.Width(of1, size, true) - 8, size, false);
        return new Piece(PieceTag.Artifact,
        [
            new TextOp(left, headAt, whatFit, size, true),
            new TextOp(right - Measure.Width(kindFit, size, false), headAt, kindFit, size, false),
            new RuleOp(left, headAt + 5, right, headAt + 5, 0.5),
            new RuleOp(left, footAt - 11, right, footAt - 11, 0.5),
            new TextOp(left, footAt, markFit, size, false),
            new TextOp(right - Measure.Width(of1, size, true), footAt, of1, size, true),
        ]);
    }

    /// <summary>Head and foot are one line: what does not fit ends in three points; it stands in full in the title of the sheet.</summary>
    private static string Fit(string text, double width, double size, bool strong)
    {
        string clean = Measure.Clean(text).Replace('\n', ' ');
        if (Measure.Width(clean, size, strong) <= width)
        {
            return clean;
        }

        int n = clean.Length;
        while (n > 0 && Measure.Width(clean[..n].TrimEnd() + "…", size, strong) > width)
        {
            n--;
            n -= n > 0 && char.IsHighSurrogate(clean[n - 1]) ? 1 : 0;
        }

        return clean[..n].TrimEnd() + "…";
    }
}
