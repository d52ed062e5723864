using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Columns of a table that are no amounts: codes and stocks beside a quantity; and a method set in rows. Each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class ColumnSenseKindTests
{
    private static string Sheet(string head) => $"# Prod sheet\n\n| # | Ingredient | Qty | Unit | {head} |\n|---|---|---|---|---|\n| 1 | Butter | 500 | g | 20113 |\n| 2 | Sesame oil | 30 | ml | 30112 |\n| 3 | Egg | 12 | pc | 5001 |\n\n1. Mix.\n";

    [Theory]
    [InlineData("Supplier code")]
    [InlineData("Par level")]
    [InlineData("Lot")]
    [InlineData("Ordered")]
    public void A_full_column_beside_the_quantity_is_no_part(string head) =>
        Assert.Equal([": 500 g Butter", ": 30 ml Sesame oil", ": 12 piece Egg"], Lines(Read(Sheet(head))));

    [Fact]
    public void A_column_with_gaps_or_the_name_of_a_part_stays_one()
    {
        Assert.Contains("Sauce: 20113 g Butter", Lines(Read(Sheet("Sauce"))));
        Assert.Equal(["Qty: 500 g Butter", "Rub: 20 g Butter", "Rub: 5 g Salt"], Lines(Read("# Pie\n\n| Ingredient | Qty | Rub |\n|---|---|---|\n| Butter | 500 g | 20 g |\n| Salt | | 5 g |\n")));
    }

    [Fact]
    public void A_method_in_numbered_rows_is_steps()
    {
        Dish d = Read("# Hollandaise\n\n| Step | What | Temp | Time |\n|---|---|---|---|\n| 1 | Reduce the vinegar and shallot | – | 6 min |\n| 2 | Cook 6 yolks with the reduction in the bath | 65 °C | 45 min |\n| 3 | Blend in 500 g clarified butter | 60 °C | 2 min |\n");

        Assert.Empty(Lines(d));
        Assert.Equal([6, 45, 2], d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times).Select(t => t.MinutesMin ?? 0));
        Assert.Equal([65, 60], d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Temperatures).Select(t => t.Celsius));
    }

    [Fact]
    public void Numbered_rows_of_foods_are_no_steps() =>
        Assert.Equal([": 500 g Butter", ": 30 g Salt"], Lines(Read("# Pie\n\n| No | Food | Qty |\n|---|---|---|\n| 1 | Butter | 500 g |\n| 2 | Salt | 30 g |\n")));
}
