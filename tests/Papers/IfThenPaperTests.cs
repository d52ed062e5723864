using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;
using Coulisse.Papers.Pages;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Tests;

/// <summary>Fifty failures stand on one page, none left out; who does what otherwise stands on a sheet behind it.</summary>
public sealed class IfThenPaperTests
{
    private static readonly ImmutableArray<IfThen> Cases =
    [
        .. Enumerable.Range(1, 14).Select(i => new IfThen("kit", $"K{i} (hob ring number {i}) fails Fri night", i % 3 == 0 ? $"Go on without K{i}: all stands ready on time." : "Nothing changes: it is not needed any more.", i % 3 == 0 ? ["Ada: peels at 12:00 instead of 12:09."] : []) { Subject = $"K{i}", Holds = true }),
        .. ((string[])["Ada", "Bo", "Cy", "Di", "Ed"]).Select(p => new IfThen("person", $"{p} does not come on Saturday", $"Go on without {p}: all stands ready on time.", ["Bo: takes over the crumb."]) { Subject = p, Holds = true }),
        .. Enumerable.Range(1, 10).SelectMany(s => Enumerable.Range(1, 3).Select(m => new IfThen("delay", $"segment {s} begins {m}:00 late", s > 8 ? $"Change nothing: the slot ends {m}:00 late." : $"Shorten segment 7 by {m}:00: the slot ends on time.", []) { Subject = $"{s}", Holds = s <= 8 })),
    ];

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void All_cases_stand_on_one_page(string format)
    {
        Paper wall = PaperShelf.Papers(Bundles.Small() with { IfThens = Cases }).Single(p => p.Id == "if-then");
        PagePlan plan = PagePlan.Of(wall, format == "A4" ? PageFormat.A4 : PageFormat.Letter);
        Assert.Single(plan.Pages);

        string said = string.Join('\n', PaperLines.Of(wall));
        Assert.All(Cases, c => Assert.Contains(c.Answer, said, StringComparison.Ordinal));
        Assert.Contains("segment 1, 2, 3, 4, 5, 6, 7, 8 begins 2:00 late", said, StringComparison.Ordinal);
        Assert.All(Cases.Where(c => c.Case == "kit"), c => Assert.Contains(c.Subject + " ", said, StringComparison.Ordinal));
    }

    [Fact]
    public void Who_does_what_stands_behind_it_for_the_cases_that_change_something()
    {
        Paper behind = PaperShelf.Papers(Bundles.Small() with { IfThens = Cases }).Single(p => p.Id == "if-then-who");
        Assert.Equal(Cases.Count(c => !c.Changes.IsEmpty), behind.Blocks.OfType<HeadingBlock>().Count());
    }

    [Fact]
    public void Without_solved_cases_there_is_no_sheet()
        => Assert.DoesNotContain(PaperShelf.Papers(Bundles.Small()), p => p.Kind == IfThenPaper.Kind);
}
