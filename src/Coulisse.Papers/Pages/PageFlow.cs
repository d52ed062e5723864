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

    /// <summary>A last page filled less than this is worth a second try.</summary>
    private const double Scant = 0.3;

    private const double LessAir = 0.5;

    /// <summary>Lays a paper out.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="format">On which sheet.</param>
    /// <param name="labels">For a paper of labels: how the sheet is parted; null parts it for scissors.</param>
    public static PagePlan Of(Paper paper, PageFormat format, LabelSheet? labels = null)
    {
        ArgumentNullException.ThrowIfNull(paper);
        if (paper.Blocks.Any(b => b is LabelBlock))
        {
            return LabelPages.Of(paper, labels ?? LabelSheet.ForScissors(format));
        }

        PageFormat sheet = paper.Landscape ? format.Turn() : format;
        double left = sheet.Margin;
        double top = (sheet.Margin * 0.8) + HeadRoom;
        double bottom = sheet.Height - (sheet.Margin * 0.8) - FootRoom;
        double width = sheet.Width - (2 * sheet.Margin);
        ImmutableArray<Slab> Slabs(double air) => [.. new BlockSetter(width, paper.TextSize, bottom - top, air).Set(paper).SelectMany(s => SlabCut.Cut(s, bottom - top))];
        List<List<Laid>> pages = Flow(Slabs(1), left, top, bottom);

        // A last page with next to nothing on it is one more sheet to lose: with less air between the lines it may not be needed.
        if (pages.Count > 1 && pages[^1][^1] is var last && last.Y + last.Slab.Height - top < (bottom - top) * Scant && Flow(Slabs(LessAir), left, top, bottom) is var tight && tight.Count < pages.Count)
        {
            pages = tight;
        }

        // The hash of a sheet is of all its words and drawings: worked out once, not for each page.
        string mark = Mark(paper);
        return new PagePlan(paper, sheet, [.. pages.Select((p, n) => new LaidPage(sheet.Width, sheet.Height, [.. p], Furniture(paper, mark, sheet, n + 1, pages.Count)))]);
    }

    /// <summary>Slabs onto pages.</summary>
    private static List<List<Laid>> Flow(ImmutableArray<Slab> slabs, double left, double top, double bottom)
    {
        List<List<Laid>> pages = [[]];
        double y = top;
        for (int i = 0; i < slabs.Length;)
        {
            // A chain of slabs that may not be parted; wishes yield to what must be when a page is too short for both.
            double head0 = slabs[i].Head?.Height ?? 0;
            (int end, double need) = Chain(slabs, i, wishes: true, pages[^1].Count == 0);
            if (need > bottom - top - head0)
            {
                (end, need) = Chain(slabs, i, wishes: false, pages[^1].Count == 0);
            }

            for (; i <= end; i++)
            {
                Slab slab = slabs[i];
                double before = pages[^1].Count == 0 ? 0 : slab.Before;
                double head = slab.Head?.Height ?? 0;
                double rest = before;
                for (int k = i; k <= end; k++)
                {
                    rest += slabs[k].Height + (k > i ? slabs[k].Before : 0);
                }

                // A chain longer than a page is cut as early as its rest fits one.
                bool restMoves = y + rest > bottom && rest - before <= bottom - top - head;
                bool mustMove = y + before + slab.Height > bottom + 0.01;
                if (pages[^1].Count > 0 && (slab.PageFirst || restMoves || mustMove))
                {
                    pages.Add([]);
                    y = top;
                    before = 0;
                }

                if (pages[^1].Count == 0 && slab.Head is { } again)
                {
                    pages[^1].Add(new Laid(left, y, again));
                    y += again.Height;
                }

                y += before;
                pages[^1].Add(new Laid(left, y, slab));
                y += slab.Height;
            }
        }

        return pages;
    }

    private static (int End, double Need) Chain(ImmutableArray<Slab> slabs, int from, bool wishes, bool pageIsEmpty)
    {
        double need = pageIsEmpty ? 0 : slabs[from].Before;
        int end = from;
        need += slabs[end].Height;
        while (end + 1 < slabs.Length && (slabs[end].KeepNext || (wishes && slabs[end].KeepIfCan)))
        {
            end++;
            need += slabs[end].Before + slabs[end].Height;
        }

        return (end, need);
    }

    /// <summary>Version, content and hour as they stand in the foot of every page.</summary>
    internal static string Mark(Paper paper) => $"version {paper.Mark.Version} · sheet {paper.Content} · printed {paper.Mark.Printed}";

    private static Piece Furniture(Paper paper, string mark, PageFormat sheet, int page, int of)
    {
        double size = sheet.Width < 320 ? 6.5 : 8.5;
        double left = sheet.Margin;
        double right = sheet.Width - sheet.Margin;
        double headAt = (sheet.Margin * 0.8) + 8;
        double footAt = sheet.Height - (sheet.Margin * 0.8);
        string of1 = string.Create(CultureInfo.InvariantCulture, $"page {page} of {of}");
        string kind = paper.Title;
        double half = (right - left) * 0.68;
        string whatFit = What(paper, half, size);
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

    /// <summary>Dishes and occasion in one line; when both are too long the dishes give way first, so that the occasion stays to be read.</summary>
    private static string What(Paper paper, double room, double size)
    {
        bool both = paper.Occasion.Length > 0 && paper.Dish.Length > 0 && paper.Dish != paper.Occasion;
        if (!both)
        {
            return Fit(paper.Dish.Length > 0 ? paper.Dish : paper.Occasion, room, size, true);
        }

        string occasion = Fit(paper.Occasion, room * 0.5, size, true);
        return Fit(paper.Dish, room - Measure.Width(" · " + occasion, size, true), size, true) + " · " + occasion;
    }

    /// <summary>Head and foot are one line: what does not fit ends in three points; it stands in full in the title of the sheet.</summary>
    internal static string Fit(string text, double width, double size, bool strong)
    {
        string clean = Measure.Clean(text).Replace('\n', ' ');
        if (Measure.Width(clean, size, strong) <= width)
        {
            return clean;
        }

        // One pass: how wide the text is up to each sign, and the last place where it and the points fit. Blanks before the points fall away, so no cut is made behind one.
        double room = width - Measure.Width("…", size, strong);
        double wide = 0;
        int fits = 0;
        int at = 0;
        foreach (System.Text.Rune rune in clean.EnumerateRunes())
        {
            wide += Measure.Width(rune, size, strong);
            at += rune.Utf16SequenceLength;
            if (wide > room)
            {
                break;
            }

            fits = System.Text.Rune.IsWhiteSpace(rune) ? fits : at;
        }

        return clean[..fits] + "…";
    }
}
