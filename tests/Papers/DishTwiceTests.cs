using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Tests;

/// <summary>Two batches of one dish are two sheets with two names.</summary>
public sealed class DishTwiceTests
{
    [Fact]
    public void The_same_dish_twice_gives_sheets_that_can_be_told_apart()
    {
        Batch eight = Bundles.Card(Bundles.Tart, new ScaleTo.Covers(8));
        Batch forty = Bundles.Card(Bundles.Tart, new ScaleTo.Covers(40));
        ImmutableArray<Paper> papers = PaperShelf.Papers(new PaperBundle { Mark = Bundles.Mark, Batches = [eight, forty, forty with { Factor = forty.Factor }] });

        foreach (IGrouping<string, Paper> kind in papers.GroupBy(p => p.Kind))
        {
            Assert.Equal(kind.Count(), kind.Select(p => p.Title).Distinct().Count());
            Assert.Equal(kind.Count(), kind.Select(p => p.Id).Distinct().Count());
        }

        Assert.Contains(papers, p => p.Kind == CardPaper.Kind && p.Title.Contains("8 covers", StringComparison.Ordinal));
    }

    [Fact]
    public void One_dish_alone_keeps_its_plain_title()
        => Assert.Equal("Pear and oat tart", PaperShelf.Papers(Bundles.Small()).First(p => p.Kind == CardPaper.Kind).Title);
}
