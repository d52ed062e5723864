using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Coulisse.Papers.Html;
using Coulisse.Papers.Pages;
using Coulisse.Papers.Terminal;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Tests;

public sealed class OtherWritersTests
{
    [Fact]
    public void The_print_page_says_every_word_of_every_sheet()
    {
        var papers = PaperPrinter.Papers(Bundles.Small(), PaperChoice.All);
        IDocument page = new HtmlParser().ParseDocument(HtmlPaper.Write(papers, PageFormat.A4));
        foreach (Paper paper in papers)
        {
            string read = ReadBack.Squeeze(page.GetElementById(paper.Id)!.TextContent);
            Assert.All(PrintTests.Words(paper), w => Assert.Contains(ReadBack.Squeeze(w), read, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void What_looks_like_markup_in_a_card_stays_text()
    {
        Paper paper = PaperShelf.Papers(Bundles.Small())[0] with { Title = "<script>alert(1)</script>", Blocks = [TableOf("<b>&amp;</b>")] };
        IDocument page = new HtmlParser().ParseDocument(HtmlPaper.Write([paper], PageFormat.A4));

        Assert.Empty(page.QuerySelectorAll("script"));
        Assert.Contains("<b>&amp;</b>", page.QuerySelector("td")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_terminal_says_every_word_too()
    {
        foreach (Paper paper in PaperShelf.Papers(Bundles.Small()))
        {
            string read = ReadBack.Squeeze(TextPaper.Write(paper));
            Assert.All(PrintTests.Words(paper), w => Assert.Contains(ReadBack.Squeeze(w), read, StringComparison.Ordinal));
        }
    }

    private static TableBlock TableOf(string cell) => new([new("Head")], [PaperRow.Of(cell)]);
}
