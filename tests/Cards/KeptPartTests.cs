using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>How long a part keeps belongs to the part it names. Readings as a cook gives them: common practice, no source.</summary>
public sealed class KeptPartTests
{
    private const string Parts = "Lemon tart\n\nPastry\n250 g flour\n125 g butter\n\nRub in, rest 1 h.\n\nLemon curd\n200 g lemon juice\n200 g sugar\n\nCook to 82°C, pass.\n";

    private static string[] Keeps(string card) => [.. Read(card).Components.SelectMany(c => c.Keeps.Select(k => FormattableString.Invariant($"{c.Name}: {k.Hours} {k.Where}")))];

    [Fact]
    public void Named_under_another_part_or_in_the_notes_it_belongs_to_the_part_it_names()
    {
        Assert.Equal(["Pastry: 336 freezer"], Keeps(Parts + "The pastry keeps 2 weeks in the freezer.\n"));
        Assert.Equal(["Pastry: 336 freezer", "Lemon curd: 120 fridge"], Keeps(Parts + "\nNotes\nThe curd keeps 5 days in the fridge.\nThe pastry keeps 2 weeks in the freezer.\n"));
    }

    [Fact]
    public void Without_a_name_or_with_one_of_no_part_it_stays_where_it_was_told()
    {
        Assert.Equal(["Lemon curd: 120 fridge"], Keeps(Parts + "Keeps 5 days in the fridge.\n"));
        Assert.Empty(Keeps(Parts + "\nNotes\nThe tart keeps 1 day in the fridge.\n"));
    }
}
