using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Plating;
using Coulisse.Kitchen.Tests.Needs;

namespace Coulisse.Kitchen.Tests.Plating;

/// <summary>Balance of the demo occasion with diets, twins and tasting; the smallest batch; the plate as the card tells it.</summary>
public sealed class PartBalanceTests
{
    private static ImmutableArray<PartBalance> Parts(IReadOnlyDictionary<string, double>? taken = null) => Assert.IsType<Parsed<ImmutableArray<PartBalance>>.Ok>(PartBalance.Of(Demo.Occasion, taken)).Value;

    private static PartBalance Part(string code, IReadOnlyDictionary<string, double>? taken = null) => Parts(taken).Single(p => p.Row.Component.StartsWith(code + " ", StringComparison.Ordinal));

    [Theory] // the scenario's table of what comes out even: over in the unit made, diets taken off
    [InlineData("C1", 5, 2)]
    [InlineData("C2", 0, 0)]
    [InlineData("C3", 15, 0)]
    [InlineData("C4", 12, 0)]
    [InlineData("C5", 14, 0)]
    [InlineData("C6", 26, 1)]
    [InlineData("C7", 27, 1)]
    public void Every_part_of_the_starter_comes_out_as_the_table_says(string code, double over, int without)
    {
        PartBalance part = Part(code);

        Assert.Equal(over, part.Row.Over, 0.05);
        Assert.Equal(without, part.Without);
        Assert.Equal(BalanceVerdict.Even, part.Row.Verdict);
    }

    [Fact]
    public void What_is_tasted_can_make_a_part_short_and_its_remedy_evens_it_out()
    {
        Assert.Equal(BalanceVerdict.Even, Part("C1", new Dictionary<string, double> { ["C1"] = 5 }).Row.Verdict);
        PartBalance part = Part("C1", new Dictionary<string, double> { ["C1"] = 6 });

        Assert.Equal(BalanceVerdict.Short, part.Row.Verdict);
        Assert.Equal(part.Row.Needed, part.Row.Made * part.Row.Factor, 1e-9);
        Assert.Contains(" times as much: 1 ", part.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Loss_is_what_the_lines_weigh_over_what_is_made()
    {
        // C3: 710 + 70 + 14 + 7 + 40 + 0.8 = 841.8 g of lines make 757 g
        PartBalance purée = Part("C3");

        Assert.Equal((841.8 - 757) / 841.8 * 100, purée.LossPercent!.Value, 0.05);
    }

    [Fact]
    public void A_tin_is_baked_whole_so_pieces_over_are_not_called_too_many()
        => Assert.All(Parts().Where(p => p.Row.Unit == "pieces" && p.Row.Made == 56), p => Assert.Equal(BalanceVerdict.Even, p.Row.Verdict));

    [Fact]
    public void The_smallest_batch_is_the_most_that_any_kit_asks_for()
    {
        Batch batch = Assert.IsType<Parsed<ImmutableArray<Batch>>.Ok>(OccasionBatches.Make(Demo.Occasion)).Value[0];
        SheetKit[] kit = [.. Demo.Occasion.Kit];
        LeastBatch jug = LeastBatch.Of(batch, kit, []).Single(l => l.Component.StartsWith("C3", StringComparison.Ordinal));
        LeastBatch frame = LeastBatch.Of(batch, kit, []).Single(l => l.Component.StartsWith("C1 ", StringComparison.Ordinal));

        Assert.Equal(400, jug.Grams, 1e-6); // a fifth of 2 L
        Assert.Equal(1, frame.Share, 1e-9); // one whole frame, which is what is made
        Assert.True(LeastBatch.Of(batch, kit, []).Single(l => l.Component.StartsWith("C1v", StringComparison.Ordinal)).Share > 1); // 201 g do not cover the blade of a 2 L jug
        Assert.DoesNotContain(LeastBatch.Of(batch, kit, [new KitchenScale(3000, 0.1)]), l => l.Component.StartsWith("C6", StringComparison.Ordinal)); // nothing binds: 2 g of salt go through a master batch
    }

    [Fact]
    public void The_card_says_where_the_parts_lie_P24()
    {
        PlateReading read = PlateReading.Of(Demo.Card("cards/starter.md"), 120)!;
        PlatedPart fan = read.Guide.Parts.Single(p => p.Form is PlateForm.HalfDisc);
        PlatedPart bar = read.Guide.Parts.Single(p => p.Form is PlateForm.Bar);
        PlatedPart gel = read.Guide.Parts.Single(p => p.Form is PlateForm.Dot);

        Assert.Equal([8.7, 9.1, 9.5, 9.9, 10.3], fan.Clock.Select(c => Math.Round(c, 3))); // five, 12 degrees apart about half past nine
        Assert.Equal((4.0, new PlateForm.Bar(40, 30)), (bar.Clock.Single(), bar.Form));
        Assert.Equal([12, 1, 2, 6, 7], gel.Clock);
        Assert.Empty(read.Guide.OverRim);
        Assert.Empty(read.Guide.Overlaps);
        Assert.True(fan.BeforeChill);
        Assert.Equal(["C5", "C6"], read.Parts.Where(p => p.AfterChill).Select(p => p.Part.Component![..2]).Order());
    }

    [Theory]
    [InlineData(new[] { 3.0, 5 }, 4)]
    [InlineData(new[] { 11.0, 1 }, 12)]
    [InlineData(new[] { 10.0, 1 }, 11.5)]
    [InlineData(new[] { 7.0 }, 7)]
    public void The_middle_of_a_stretch_goes_over_noon(double[] hours, double middle) => Assert.Equal(middle, PlateClock.Middle([.. hours]), 1e-9);
}
