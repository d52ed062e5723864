using Coulisse.Kitchen.Planning;
using Coulisse.Papers.Pages;
using Coulisse.Papers.Pdf;
using Coulisse.Views.Papers;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Coulisse.Papers.Tests;

public sealed class PrintTests
{
    [Fact]
    public void Every_word_of_every_sheet_is_read_back_from_its_PDF()
    {
        foreach (PrintedPaper printed in PaperPrinter.Print(Bundles.Small(), PaperChoice.All))
        {
            string read = ReadBack.Letters(printed.Pdf.Bytes);
            foreach (string word in Words(printed.Paper))
            {
                foreach (string line in word.Split('\n', ' '))
                {
                    Assert.Contains(ReadBack.Squeeze(line), read, StringComparison.Ordinal);
                }
            }
        }
    }

    [Fact]
    public void Every_page_bears_dish_occasion_version_hour_and_its_number()
    {
        foreach (PrintedPaper printed in PaperPrinter.Print(Bundles.Small(), PaperChoice.All))
        {
            using PdfDocument pdf = ReadBack.Open(printed.Pdf.Bytes);
            foreach (Page page in pdf.GetPages())
            {
                string read = ReadBack.Letters(page);
                Assert.Contains("Pearandoattart·Orchardevening", read, StringComparison.Ordinal);
                Assert.Contains("version3f9c1a", read, StringComparison.Ordinal);
                Assert.Contains("printedFri9Oct202618:20", read, StringComparison.Ordinal);
                Assert.Contains($"page{page.Number}of{pdf.NumberOfPages}", read, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Fonts_are_embedded_and_nothing_else_is_used()
    {
        byte[] bytes = PaperPrinter.Print(Bundles.Small(), PaperChoice.All)[0].Pdf.Bytes;
        using PdfDocument pdf = ReadBack.Open(bytes);
        string[] names = [.. pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.FontName ?? "").Distinct()];
        Assert.NotEmpty(names);
        // A subset that is embedded bears six capitals and a plus before its name (ISO 32000-1, 9.6.4).
        Assert.All(names, n => Assert.Matches("^[A-Z]{6}\\+", n));
        Assert.True(bytes.Length < 300_000, $"{bytes.Length} bytes: whole fonts were embedded");
    }

    [Fact]
    public void The_same_bundle_gives_the_same_pages()
    {
        foreach ((Paper a, Paper b) in PaperPrinter.Papers(Bundles.Small(), PaperChoice.All).Zip(PaperPrinter.Papers(Bundles.Small(), PaperChoice.All)))
        {
            Assert.Equal(Geometry(a), Geometry(b));
        }
    }

    [Fact]
    public void After_a_change_only_the_sheets_that_say_something_else_are_stale()
    {
        Dictionary<string, string> hung = PaperShelf.Papers(Bundles.Small()).ToDictionary(p => p.Id, p => p.Content);
        PaperBundle same = Bundles.Small() with { Mark = new("later", "Sat") };
        Plan plan = Bundles.Plan();
        PaperBundle changed = Bundles.Small() with { Plan = plan with { Twins = plan.Twins.SetItem(0, plan.Twins[0] with { Place = "shelf 3" }) } };

        Assert.Empty(PaperShelf.Stale(hung, PaperShelf.Papers(same)));
        // The one who brings that twin is told the new place too, and its label names it; nobody else’s sheet does.
        Assert.Equal(["brief-bo", "labels", "swap-outs"], PaperShelf.Stale(hung, PaperShelf.Papers(changed)));
    }

    [Fact]
    public void A_sign_that_no_face_has_is_printed_as_a_box_and_remarked_on()
    {
        Paper paper = PaperShelf.Papers(Bundles.Small())[0] with { Blocks = [new ParagraphBlock("pear 🥮 tart"), new ParagraphBlock("plain")] };
        WrittenPdf pdf = PdfWriter.Write(PagePlan.Of(paper, PageFormat.A4));

        string remark = Assert.Single(pdf.Remarks);
        Assert.Contains("U+1F96E", remark, StringComparison.Ordinal);
        Assert.Contains("peartart", ReadBack.Letters(pdf.Bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void Hebrew_names_are_set_from_right_to_left_and_lose_nothing()
    {
        Paper paper = PaperShelf.Papers(Bundles.Small())[0] with { Blocks = [new ParagraphBlock("for שרה at 12")] };
        WrittenPdf pdf = PdfWriter.Write(PagePlan.Of(paper, PageFormat.A4));

        Assert.Empty(pdf.Remarks);
        Assert.Contains("forהרשat12", ReadBack.Letters(pdf.Bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_plan_made_by_hand_prints_and_can_be_looked_at()
    {
        PaperBundle demo = Bundles.Demo();
        var printed = PaperPrinter.Print(demo, PaperChoice.All);
        Assert.All(printed, p => Assert.Empty(p.Pdf.Remarks));
        Assert.All(demo.Plan!.Tasks.SelectMany(t => t.People).Distinct(), person => Assert.Contains(printed, p => p.Paper.Kind == PrepListPaper.Kind && p.Paper.Title.StartsWith(person, StringComparison.Ordinal)));
        if (Environment.GetEnvironmentVariable("COULISSE_LOOK") is { } folder)
        {
            foreach (PrintedPaper p in printed.Concat(PaperPrinter.Print(Bundles.Small(), PaperChoice.All)).Concat(PaperPrinter.Print(Demo.Planned(), PaperChoice.All)))
            {
                File.WriteAllBytes(Path.Combine(folder, p.Paper.Id + ".pdf"), p.Pdf.Bytes);
            }
        }
    }

    internal static IEnumerable<string> Words(Paper paper) => paper.Blocks.SelectMany(b => b switch
    {
        HeadingBlock h => [h.Text],
        ParagraphBlock p => [p.Text],
        FactsBlock f => f.Facts.SelectMany(x => new[] { x.Label, x.Value }),
        ListBlock l => l.Entries.SelectMany(x => new[] { x.Mark, x.Text }),
        TableBlock t => [t.Caption, .. t.Columns.Select(c => c.Head), .. t.Rows.SelectMany(r => r.Cells.Select(c => c.Words))],
        CalloutBlock c => [c.Title, c.Text],
        FigureBlock f => [f.Caption],
        LabelBlock l => l.Words,
        PenLinesBlock p => [p.Label],
        _ => Array.Empty<string>(),
    });

    private static string Geometry(Paper paper) => string.Join('\n', PagePlan.Of(paper, PageFormat.A4).Pages.SelectMany(p => p.Body.SelectMany(l => l.Ops).Concat(p.Furniture.Ops)).Select(o => o.ToString()));
}
