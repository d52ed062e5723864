using System.Collections.Immutable;
using System.Text;
using Coulisse.Papers.Fonts;
using Coulisse.Papers.Pages;
using Coulisse.Papers.Pdf;
using Coulisse.Tests;
using Coulisse.Views.Papers;
using CsCheck;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Coulisse.Papers.Tests;

/// <summary>Laws of the page: nothing beyond the margins, nothing over something else, no row lost, parted from its head or alone.</summary>
public sealed class GeometryTests
{
    private static readonly string[] Odd = ["黄身の丸い", "żółtko", "яичный", "½", "82\u202F°C", "Γάλα", "a/b/c", "crème-fraîche", "🥮"];

    private static readonly Gen<string> Word = Gen.OneOf(
        Gen.String[Gen.Char["abcdefghijklmnopqrstuvwxyz"], 1, 12],
        Gen.Int[0, Odd.Length - 1].Select(i => Odd[i]),
        Gen.String[Gen.Char["abcdefgh"], 60, 130]);

    private static readonly Gen<string> Line = Word.Array[0, 9].Select(w => string.Join(' ', w));

    private static readonly Gen<PaperRow> Row = Gen.Select(Line.Array[5, 5], Gen.Int[0, 20]).Select((cells, k) => k switch
    {
        0 => PaperRow.Group(cells[0][..Math.Min(60, cells[0].Length)]),
        1 => new PaperRow([PaperCell.Tick, cells[1], PaperCell.Blank, cells[3], cells[4]]),
        _ => PaperRow.Of(cells),
    });

    private static readonly Gen<TableBlock> Table = Gen.Select(Row.Array[1, 60], Line).Select((rows, caption) => new TableBlock(
        [new("No", Side.Right), new("What is done"), new("By hand", Pen: 15), new("Grams", Side.Right, Strong: true), new("Where", Side.Centre)], [.. rows, PaperRow.Total("", "sum", "", "7 g", "")], caption));

    private static readonly Gen<Block> Any = Gen.OneOf<Block>(
        Line.Select(l => (Block)new HeadingBlock(1, l)),
        Line.Array[1, 20].Select(l => (Block)new ParagraphBlock(string.Join(' ', l))),
        Line.Array[1, 7].Select(l => (Block)new FactsBlock([.. l.Select(x => new Fact("label", x))])),
        Line.Array[1, 9].Select(l => (Block)new ListBlock([.. l.Select((x, i) => new ListEntry($"{i}", x))])),
        Gen.Select(Line, Line).Select((a, b) => (Block)new CalloutBlock(a, b)),
        Table.Select(t => (Block)t),
        Gen.Int[1, 4].Select(n => (Block)new PenLinesBlock("here", n)),
        Gen.Const((Block)new PageBreakBlock()));

    private static readonly Gen<Paper> Papers = Gen.Select(Any.Array[1, 7], Gen.Double[8, 18], Gen.Bool, Line).Select((blocks, size, landscape, title) =>
        new Paper { Id = "x", Kind = "x", Title = title, Dish = title, Occasion = "by chance", Mark = Bundles.Mark, TextSize = size, Landscape = landscape, Blocks = [.. blocks] });

    [Fact]
    public void Nothing_overflows_overlaps_or_gets_lost() => Gen.Select(Papers, Gen.Bool.Select(a4 => a4 ? PageFormat.A4 : PageFormat.Letter)).Sample(
        (paper, format) => Lawful(paper, format), iter: LongRun.On ? 1000 : 30, threads: 1, print: x => x.Item2.Name + " " + string.Join("; ", x.Item1.Blocks.Select(b => b.GetType().Name)));

    [Fact]
    public void A_row_longer_than_a_page_is_cut_and_loses_nothing()
    {
        string text = string.Join(' ', Enumerable.Range(0, 4000).Select(i => $"w{i}"));
        Paper paper = new() { Id = "x", Kind = "x", Title = "t", Dish = "d", Mark = Bundles.Mark, Blocks = [new TableBlock([new("a"), new("b")], [PaperRow.Of("first", text), PaperRow.Of("last", "end")])] };
        Lawful(paper, PageFormat.A4);
    }

    [Fact]
    public void Four_hundred_lines_carry_their_head_to_every_page()
    {
        Paper paper = new() { Id = "x", Kind = "x", Title = "t", Dish = "d", Mark = Bundles.Mark, Blocks = [new TableBlock([new("Ingredient"), new("Weight", Side.Right)], [.. Enumerable.Range(0, 400).Select(i => PaperRow.Of($"thing {i}", $"{i} g"))])] };
        WrittenPdf pdf = PdfWriter.Write(PagePlan.Of(paper, PageFormat.A4));
        using PdfDocument read = ReadBack.Open(pdf.Bytes);
        Assert.True(read.NumberOfPages > 5);
        Assert.All(read.GetPages(), p => Assert.Contains("IngredientWeight", ReadBack.Letters(p), StringComparison.Ordinal));
        Assert.All(Enumerable.Range(0, 400), i => Assert.Contains($"thing{i}{i}g", ReadBack.Letters(pdf.Bytes), StringComparison.Ordinal));
    }

    [Fact]
    public void Rows_under_one_head_stay_on_one_page_where_the_table_says_so()
    {
        Paper At(int filler, bool together) => new()
        {
            Id = "x", Kind = "x", Title = "t", Dish = "d", Mark = Bundles.Mark, TextSize = 12,
            Blocks =
            [
                .. Enumerable.Range(0, filler).Select(i => new ParagraphBlock($"line {i}")),
                new TableBlock([new("Dish"), new("Gets")], [.. Enumerable.Range(0, 6).SelectMany(g => Enumerable.Range(0, 5).Select(r => PaperRow.Of($"g{g} row {r}", "as the others")).Prepend(PaperRow.Group($"g{g} head")))]) { Together = together },
            ],
        };
        int Parted(bool together) => Enumerable.Range(0, 45).Count(filler =>
        {
            string[] pages = [.. PagePlan.Of(At(filler, together), PageFormat.A4).Pages.Select(p => string.Join('|', p.Body.SelectMany(l => l.Ops).OfType<TextOp>().Select(o => o.Text)))];
            return Enumerable.Range(0, 6).Any(g => pages.Count(p => p.Contains($"g{g} ", StringComparison.Ordinal)) > 1);
        });

        Assert.Equal(0, Parted(together: true));
        Assert.NotEqual(0, Parted(together: false));

        // Longer than a page: it is cut all the same, and nothing is lost.
        Lawful(new Paper { Id = "x", Kind = "x", Title = "t", Dish = "d", Mark = Bundles.Mark, Blocks = [new TableBlock([new("a")], [PaperRow.Group("head"), .. Enumerable.Range(0, 200).Select(i => PaperRow.Of($"row {i}"))]) { Together = true }] }, PageFormat.A4);
    }

    internal static void Lawful(Paper paper, PageFormat format, bool pdf = true)
    {
        PagePlan plan = PagePlan.Of(paper, format);
        double margin = format.Margin;
        foreach (LaidPage page in plan.Pages)
        {
            double below = margin * 0.8;
            foreach (Laid laid in page.Body)
            {
                Assert.True(laid.Y >= below - 0.01, $"a slab begins at {laid.Y:0.##} although the one before ends at {below:0.##}");
                below = laid.Y + laid.Slab.Height;
                Assert.True(below <= page.Height - (margin * 0.8), $"a slab ends at {below:0.##} on a page of {page.Height:0.##}");
                foreach (TextOp t in laid.Ops.OfType<TextOp>())
                {
                    Assert.True(t.X >= margin - 0.1 && t.X + Measure.Width(t.Text, t.Size, t.Strong) <= page.Width - margin + 0.6, $"“{t.Text}” leaves the page");
                    Assert.True(t.Y <= laid.Y + laid.Slab.Height + 0.1 && t.Y - (t.Size * 0.75) >= laid.Y - 0.5, $"“{t.Text}” leaves its slab");
                }

                Assert.True(NoTwoTexts(laid), "texts overlap in a slab");
            }

            if (page.Body[^1].Slab is { Pieces: [{ Tag: PieceTag.HeadCell }, ..] } && page != plan.Pages[^1])
            {
                Assert.Fail("a group head ends a page");
            }
        }

        // Every sign of the blocks is on a page (text read from the plan; the PDF is read back elsewhere).
        string laidText = ReadBack.Squeeze(string.Concat(plan.Pages.SelectMany(p => p.Body).SelectMany(l => l.Ops).OfType<TextOp>().Select(t => t.Text)));
        Dictionary<char, int> onPaper = laidText.GroupBy(c => c).ToDictionary(g => g.Key, g => g.Count());
        foreach (IGrouping<char, char> sign in PrintTests.Words(paper).SelectMany(ReadBack.Squeeze).GroupBy(c => c))
        {
            // Heads of tables stand there once a page, so there may be more, never fewer.
            Assert.True(onPaper.GetValueOrDefault(sign.Key) >= sign.Count(), $"of {sign.Count()} “{sign.Key}” only {onPaper.GetValueOrDefault(sign.Key)} are on paper");
        }

        if (!pdf)
        {
            return;
        }

        WrittenPdf written = PdfWriter.Write(plan);
        using PdfDocument read = ReadBack.Open(written.Bytes);
        Assert.Equal(plan.Pages.Length, read.NumberOfPages);
        foreach (Page page in read.GetPages())
        {
            Assert.All(page.Letters, l => Assert.True(l.StartBaseLine.X >= margin - 0.2 && l.EndBaseLine.X <= (double)page.Width - margin + 1, $"{l.Value} stands outside the margins"));
            Assert.All(page.Letters, l => Assert.InRange(l.StartBaseLine.Y, (margin * 0.8) - 1, (double)page.Height - (margin * 0.8)));
            Assert.True(Overlapping(page) is null, $"on page {page.Number} of the PDF “{Overlapping(page)}” stand in each other");

            // What the PDF shows is all that was laid: no sign of a page is lost on the way.
            Dictionary<string, int> shown = page.Letters.GroupBy(l => l.Value).ToDictionary(g => g.Key, g => g.Count());
            LaidPage laid = plan.Pages[page.Number - 1];
            foreach (IGrouping<string, Rune> sign in laid.Body.SelectMany(l => l.Ops).Concat(laid.Furniture.Ops).OfType<TextOp>().SelectMany(t => t.Text.EnumerateRunes()).Where(r => !Rune.IsWhiteSpace(r) && FontChain.Regular.FaceFor(r) is not null && Rune.IsLetterOrDigit(r)).GroupBy(r => r.ToString()))
            {
                Assert.True(shown.GetValueOrDefault(sign.Key) >= sign.Count(), $"of {sign.Count()} “{sign.Key}” page {page.Number} of the PDF shows {shown.GetValueOrDefault(sign.Key)}");
            }
        }
    }

    // Two letters of one line that share paper by more than a hair.
    private static string? Overlapping(Page page)
    {
        foreach (IGrouping<double, Letter> line in page.Letters.Where(l => l.Value.Trim().Length > 0 && l.EndBaseLine.X > l.StartBaseLine.X).GroupBy(l => Math.Round(l.StartBaseLine.Y, 1)))
        {
            Letter[] across = [.. line.OrderBy(l => l.StartBaseLine.X)];
            for (int i = 1; i < across.Length; i++)
            {
                if (across[i - 1].EndBaseLine.X - across[i].StartBaseLine.X > 0.35)
                {
                    return across[i - 1].Value + across[i].Value;
                }
            }
        }

        return null;
    }

    private static bool NoTwoTexts(Laid laid)
    {
        TextOp[] texts = [.. laid.Ops.OfType<TextOp>().Where(t => t.Text.Length > 0)];
        for (int i = 0; i < texts.Length; i++)
        {
            for (int j = i + 1; j < texts.Length; j++)
            {
                TextOp a = texts[i];
                TextOp b = texts[j];
                bool lines = Math.Abs(a.Y - b.Y) < Math.Min(a.Size, b.Size) * 0.7;
                if (lines && a.X < b.X + Measure.Width(b.Text, b.Size, b.Strong) - 0.3 && b.X < a.X + Measure.Width(a.Text, a.Size, a.Strong) - 0.3)
                {
                    return false;
                }
            }
        }

        return true;
    }

    // What is worked out for a sheet is worked out once: a hash of all its words for each of its pages made a long sheet dear in time and memory.
    [Fact]
    public void A_sheet_four_times_as_long_takes_four_times_the_memory_to_lay_out_and_not_sixteen()
    {
        static long Allocated(int rows)
        {
            Paper paper = new() { Id = "x", Kind = "k", Title = "Long", Dish = "d", Mark = Bundles.Mark, Blocks = [new TableBlock([new("What"), new("Why")], [.. Enumerable.Range(0, rows).Select(i => PaperRow.Of($"row {i} of the long table", "so that it goes on over the page and over the next one, too"))])] };
            PagePlan.Of(paper, PageFormat.A4);
            long before = GC.GetAllocatedBytesForCurrentThread();
            PagePlan.Of(paper, PageFormat.A4);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Assert.InRange((double)Allocated(4000) / Allocated(1000), 3, 5.5);
    }
}
