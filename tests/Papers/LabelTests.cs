using Coulisse.Papers.Pages;
using Coulisse.Papers.Pdf;
using Coulisse.Views.Papers;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Coulisse.Papers.Tests;

/// <summary>Labels: every word on paper, inside its own label, never under the legal letter size.</summary>
public sealed class LabelTests
{
    public static TheoryData<string> Sheets() => [.. LabelSheet.All.Select(s => s.Name), ""];

    private static LabelSheet Find(string name) => LabelSheet.Find(name) ?? LabelSheet.ForScissors(PageFormat.A4);

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_label_stands_inside_its_own_field_with_letters_that_may_be_read(string name)
    {
        LabelSheet sheet = Find(name);
        foreach (Paper paper in PaperShelf.Papers(Demo.Planned()).Where(p => p.Kind is "labels" or "box-labels"))
        {
            PagePlan plan = PagePlan.Of(paper, PageFormat.A4, sheet);
            foreach (Laid laid in plan.Pages.SelectMany(p => p.Body))
            {
                Assert.All(laid.Ops.OfType<TextOp>(), t =>
                {
                    Assert.InRange(t.X, laid.X, laid.X + (sheet.Width * PageFormat.Millimetre) - Measure.Width(t.Text, t.Size, t.Strong) + 0.6);
                    Assert.InRange(t.Y, laid.Y + (t.Size * 0.7), laid.Y + laid.Slab.Height);
                });
                TextOp[] body = [.. laid.Ops.OfType<TextOp>().SkipLast(1)];
                Assert.All(body, t => Assert.True(t.Size >= 7));

                // Lines one under another, none over the foot of the label.
                Assert.All(body.Zip(body.Skip(1)), p => Assert.True(p.Second.Y - p.First.Y >= p.Second.Size * 0.9));
                Assert.True(body[^1].Y <= laid.Ops.OfType<TextOp>().Last().Y - 5);
            }

            string read = ReadBack.Letters(PdfWriter.Write(plan).Bytes);
            foreach (string word in paper.Blocks.OfType<LabelBlock>().SelectMany(l => l.Words).SelectMany(w => w.Split(' ')))
            {
                Assert.Contains(ReadBack.Squeeze(word), read, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void The_batch_mark_of_a_part_without_something_never_says_with()
    {
        string[] marks = [.. PaperShelf.Papers(Demo.Planned()).Where(p => p.Kind == "labels").SelectMany(p => p.Blocks.OfType<LabelBlock>()).SelectMany(l => l.Facts.Where(f => f.Label == "Batch").Select(f => f.Value)).Where(m => m.Contains("ramekin", StringComparison.Ordinal))];
        Assert.NotEmpty(marks);
        Assert.All(marks, m => Assert.Contains("ramekin-without-gluten", m, StringComparison.Ordinal));
    }

    [Fact]
    public void A_text_too_long_for_one_label_goes_on_to_the_next_and_loses_nothing()
    {
        string text = string.Join(' ', Enumerable.Range(0, 700).Select(i => $"w{i}"));
        Paper paper = new() { Id = "x", Kind = "labels", Title = "t", Dish = "d", Mark = Bundles.Mark, Blocks = [new LabelBlock("Crumb", [new("Made", "")], [text], "abc")] };
        PagePlan plan = PagePlan.Of(paper, PageFormat.A4, LabelSheet.Find("a4-21"));
        string read = ReadBack.Letters(PdfWriter.Write(plan).Bytes);

        Assert.True(plan.Pages.SelectMany(p => p.Body).Count() > 2);
        Assert.Contains("label1of", read, StringComparison.Ordinal);
        Assert.Equal(Enumerable.Range(0, 700), System.Text.RegularExpressions.Regex.Matches(read, "w(\\d+)").Select(m => int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void The_square_code_is_read_by_another_reader_and_says_batch_part_made_and_use_by()
    {
        Paper paper = PaperShelf.Papers(Demo.Planned()).First(p => p.Kind == "labels");
        LabelBlock[] labels = [.. paper.Blocks.OfType<LabelBlock>()];
        PagePlan plan = PagePlan.Of(paper, PageFormat.A4);
        Laid[] laid = [.. plan.Pages.SelectMany(p => p.Body)];
        Assert.Equal(labels.Length, laid.Length);
        foreach ((LabelBlock label, Laid on) in labels.Zip(laid))
        {
            Assert.Equal(label.Code, Decoded([.. on.Ops.OfType<BoxOp>().Where(b => b.Fill == 0)]));
        }

        Assert.Matches(@"^\d{6}-.+\|.+\|made 2026-10-\d\dT\d\d:\d\d\|use by ", labels[0].Code);
    }

    // The dark runs as pixels, then the reader of a library that did not write them.
    private static string? Decoded(BoxOp[] dark)
    {
        const int Side = 400;
        double left = dark.Min(b => b.X);
        double top = dark.Min(b => b.Y);
        double wide = dark.Max(b => b.X + b.Width) - left;
        byte[] grey = [.. Enumerable.Repeat((byte)255, Side * Side)];
        double k = (Side - 80) / wide;
        foreach (BoxOp b in dark)
        {
            for (int y = (int)Math.Round((b.Y - top) * k); y < (int)Math.Round((b.Y + b.Height - top) * k); y++)
            {
                for (int x = (int)Math.Round((b.X - left) * k); x < (int)Math.Round((b.X + b.Width - left) * k); x++)
                {
                    grey[((y + 40) * Side) + x + 40] = 0;
                }
            }
        }

        ZXing.BinaryBitmap picture = new(new ZXing.Common.HybridBinarizer(new ZXing.RGBLuminanceSource(grey, Side, Side, ZXing.RGBLuminanceSource.BitmapFormat.Gray8)));
        return new ZXing.QrCode.QRCodeReader().decode(picture)?.Text;
    }

    [Fact]
    public void Every_page_of_labels_bears_version_hour_and_its_number()
    {
        Paper paper = PaperShelf.Papers(Demo.Planned()).First(p => p.Kind == "box-labels");
        using PdfDocument read = ReadBack.Open(PdfWriter.Write(PagePlan.Of(paper, PageFormat.A4)).Bytes);
        foreach (Page page in read.GetPages())
        {
            string letters = ReadBack.Letters(page);
            Assert.Contains("version" + paper.Mark.Version, letters, StringComparison.Ordinal);
            Assert.Contains($"page{page.Number}of{read.NumberOfPages}", letters, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_part_without_a_known_making_has_no_use_by_but_a_place_to_write_one()
    {
        LabelBlock label = PaperShelf.Papers(Demo.Unplanned()).First(p => p.Kind == "labels").Blocks.OfType<LabelBlock>().First();

        Assert.Equal("", label.Facts.Single(f => f.Label == "Use by").Value);
        Assert.Equal("", label.Facts.Single(f => f.Label == "Made").Value);
    }
}
