using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Plating;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Tests.Plating;

/// <summary>The smallest batch by the kit a step needs; the figures are those of the table and of plain geometry, and what needs no machine stays silent.</summary>
public sealed class LeastBatchTests
{
    private static Batch Card(string lines, string step) => Assert.IsType<Parsed<Batch>.Ok>(Scaling.Scale(
        Weighing.Weigh(Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText($"# Trial\n\n{lines}\n\n1. {step}\n", "t"))).Value), new ScaleTo.Factor(1))).Value;

    private static LeastBatch? Least(string lines, string step, params SheetKit[] kit) => LeastBatch.Of(Card(lines, step), kit, []).SingleOrDefault();

    private static SheetKit Kit(string what, double? litres) => new("X", what, "other", "back", 1, "", 0) { Litres = litres };

    [Theory]
    [InlineData("Whip the cream in the mixer with the whisk.", 250)] // a twentieth of 5 L, assumed
    [InlineData("Blend the cream in the food processor.", 450)] // three twentieths of 3 L
    [InlineData("Blend the cream with a stick blender.", 200)] // a fifth of 1 L
    [InlineData("Blend the cream in the thermal mixer.", 400)] // a fifth of 2 L
    [InlineData("Blend the cream until smooth.", 400)] // a jug of 2 L
    [InlineData("Fill the cream into a siphon and charge it.", 200)] // two fifths of half a litre
    [InlineData("Churn the cream.", 600)] // three tenths of 2 L
    [InlineData("Fill the cream into piping bags.", 100)]
    public void The_kit_of_a_step_asks_for_so_many_grams(string step, double grams)
        => Assert.Equal(grams, Least("- 1 kg whipping cream", step)!.Grams, 1e-6);

    [Theory] // near misses: no machine is named, or the work is by hand
    [InlineData("Whip the cream.")]
    [InlineData("Blend the cream by hand.")]
    [InlineData("Pour the cream into a jug.")]
    [InlineData("Chill the cream in a bottle.")]
    public void What_needs_no_machine_has_no_smallest_batch(string step)
        => Assert.Null(Least("- 1 kg whipping cream", step));

    [Fact]
    public void What_the_kitchen_holds_takes_the_place_of_the_usual_litres()
    {
        LeastBatch twenty = Least("- 5 kg whipping cream", "Whip the cream.", Kit("planetary mixer", 20))!;

        Assert.Equal(1000, twenty.Grams, 1e-6); // a twentieth of 20 L; the mixer on the list makes whipping its work
        Assert.DoesNotContain("assumed", twenty.Because, StringComparison.Ordinal);
        Assert.Contains("assumed", Least("- 1 kg whipping cream", "Whip the cream in the mixer.")!.Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("24 cm", 90.478)] // π · 12² cm² · 0.2 cm
    [InlineData("18 cm", 50.894)]
    public void A_reduction_stands_two_millimetres_deep_at_its_end(string pan, double least)
    {
        LeastBatch found = Least("- 690 g beetroot juice", $"Reduce the juice in a {pan} pan until it weighs 165 g.")!;

        Assert.Equal(least / 165, found.Share, 1e-4);
        Assert.Equal(least / 165 * 690, found.Grams, 0.05);
        Assert.Contains(pan, found.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reduction_without_an_end_weight_is_not_judged()
        => Assert.Null(Least("- 690 g beetroot juice", "Reduce the juice in a 24 cm pan."));

    [Fact]
    public void A_step_that_names_one_list_needs_its_kit_for_that_list_alone()
    {
        LeastBatch found = Least("The pickle:\n\n- 1500 g water\n\nThe curd:\n\n- 500 g quark", "Blend the curd smooth.")!;

        Assert.Equal(400.0 / 500, found.Share, 1e-6);
        Assert.Equal(1600, found.Grams, 1e-3); // eight tenths of the whole component, so that 400 g of it are curd
    }

    [Fact]
    public void Every_row_says_where_its_figure_is_from_has_one_and_names_operations_that_there_are()
    {
        ReferenceTable table = ReferenceTable.Load("work/least-batches.tsv");
        ReferenceTable standards = ReferenceTable.Load("work/operations.tsv");
        string[] known = [.. standards.Rows.Select(r => r[standards.Column("operation")])];

        Assert.True(table.Rows.Count >= 14);
        Assert.All(table.Rows, r =>
        {
            Assert.True(r[table.Column("source")].Length > 10);
            Assert.Single(new[] { "share", "least", "depth" }, c => ReferenceTable.Number(r[table.Column(c)]) is > 0);
            Assert.NotEmpty(r[table.Column("words")] + r[table.Column("operations")]);
            Assert.Empty(r[table.Column("operations")].Split('/', StringSplitOptions.RemoveEmptyEntries).Except(known));
        });
    }
}
