using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Plating;
using Coulisse.Kitchen.Tests.Needs;
using CsCheck;

namespace Coulisse.Kitchen.Tests.Plating;

/// <summary>Worked answers of the demo occasion: expected.json P9, P17 to P19, P24, and the table "Do the components come out even?".</summary>
public sealed class PlatingPublished
{
    private static readonly PlatingTask[] Base = [new("purée", 8), new("bar", 6), new("fan", 30), new("gel", 8), new("condiment", 6)];

    [Fact]
    public void Three_people_plate_52_in_17_3_minutes_when_no_more_than_two_stand_together_P18()
    {
        PlatingLine line = PlatingLine.Best(Base, 3, 52);

        Assert.Equal(17.3, line.Minutes, 0.05);
        Assert.Equal(50.3, line.PersonMinutes, 0.05);
        Assert.Equal([1, 2], line.Stations.Select(s => s.People).Order());
        Assert.Equal(20, line.Narrow.Tasks.Sum(t => t.Seconds));
    }

    [Fact]
    public void The_split_with_the_gel_beside_the_purée_is_narrow_at_24_3_minutes_P18()
        => Assert.Equal(24.3, new PlatingLine([new([Base[0], Base[1], Base[3], Base[4]], 1), new([Base[2]], 2)], 52).Minutes, 0.05);

    [Theory] // both do both 44.0; one pipes and one folds 52.8; one pipes and two fold 35.2
    [InlineData(new[] { 2 }, 44.0)]
    [InlineData(new[] { 1, 1 }, 52.8)]
    [InlineData(new[] { 1, 2 }, 35.2)]
    public void Piping_and_folding_264_pieces_takes_as_long_as_its_narrow_place_P17(int[] people, double minutes)
    {
        PlatingTask pipe = new("pipe", 8);
        PlatingTask fold = new("fold", 12);
        PlatingLine line = new(people.Length == 1 ? [new([pipe, fold], people[0])] : [new([pipe], people[0]), new([fold], people[1])], 264);

        Assert.Equal(minutes, line.Minutes, 0.05);
    }

    [Fact]
    public void Crumb_by_one_takes_153_seconds_and_crisps_by_two_127_5_P19()
    {
        Assert.Equal(153, new PlatingLine([new([new("crumb", 3)], 1)], 51).Minutes * 60, 1e-9);
        Assert.Equal(127.5, new PlatingLine([new([new("crisps", 5)], 2)], 51).Minutes * 60, 1e-9);
    }

    [Fact]
    public void Fifty_two_plates_on_trays_of_six_go_out_in_waves_of_18_18_16()
        => Assert.Equal([18, 18, 16], PlatingLine.Best(Base, 3, 52).Waves(6, 6.5)); // the occasion's plan: waves of 18, 18, 16, about 6 min each

    [Fact]
    public void No_split_tried_one_by_one_is_faster()
        => Gen.Select(Gen.Int[1, 40].Array[1, 5], Gen.Int[1, 4], Gen.Int[1, 3]).Sample((seconds, people, together) =>
        {
            PlatingTask[] tasks = [.. seconds.Select((s, i) => new PlatingTask($"{i}", s))];
            PlatingLine line = PlatingLine.Best(tasks, people, 10, together);
            return Math.Abs(line.Pace - Brute(seconds, new int[seconds.Length], 0, Math.Min(people, seconds.Length * together), together)) < 1e-9
                && line.Stations.Sum(s => s.Tasks.Length) == seconds.Length && line.Stations.Sum(s => s.People) <= people && line.Stations.All(s => s.People <= together);
        }, iter: 60);

    [Fact]
    public void The_fan_clears_the_dots_and_the_rim_at_12_degrees_and_not_at_15_P24()
    {
        PlateGuide plate = Guide(12);

        Assert.Equal([58.5, 58.0, 59.6], plate.Parts.Select(PlateGuide.Reach).Select(r => Math.Round(r, 1)));
        Assert.Empty(plate.OverRim);
        Assert.Empty(plate.Overlaps);
        Assert.Equal(1.2, plate.Clearances.Single(c => c is { One: "fan", Other: "gel" }).Millimetres, 0.06);
        Assert.Equal(1.7, Guide(15).Overlaps.Single(c => c is { One: "fan", Other: "gel" }).Millimetres, 0.06);
        Assert.Equal(17.2, new PlateForm.Dot(1.4, 1.05).Across, 0.05);
    }

    [Fact]
    public void The_components_come_out_as_the_table_says()
    {
        Batch batch = Assert.IsType<Parsed<ImmutableArray<Batch>>.Ok>(OccasionBatches.Make(Demo.Occasion)).Value[0];
        string Name(string code) => batch.Components.Single(c => c.Weighed.Component.Code == code).Weighed.Component.Name;
        ImmutableArray<BalanceRow> rows = Balance.Of(batch, 53, new Dictionary<string, int> { [Name("C1")] = 2, [Name("C6")] = 1, [Name("C7")] = 1 });

        Assert.Equal(
            [("C1", 5.0, 9.8), ("C2", 0, 0), ("C3", 15, 2.0), ("C4", 12, 3.2), ("C5", 14, 13.2), ("C6", 26, 12.5), ("C7", 27, 10.4)],
            rows.Select(r => (r.Component[..2], Math.Round(r.Over, 1), Math.Round(r.OverPercent, 1))));
    }

    [Fact]
    public void A_part_that_is_short_says_by_what_the_batch_grows()
    {
        BalanceRow row = Balance.Row("purée", "g", 700, 742);

        Assert.Equal((BalanceVerdict.Short, 1.06), (row.Verdict, row.Factor));
        Assert.Equal(BalanceVerdict.Even, Balance.Row("purée", "g", 742, 742).Verdict);
        Assert.Equal(BalanceVerdict.Over, Balance.Row("purée", "g", 900, 742).Verdict);
    }

    [Fact]
    public void Forty_eight_guests_are_fifty_three_covers() => Assert.Equal(53, Balance.Covers(48)); // 4.8 over, rounded up

    [Fact]
    public void The_fine_scale_weighs_every_line_but_the_least()
    {
        ImmutableArray<Batch> batches = Assert.IsType<Parsed<ImmutableArray<Batch>>.Ok>(OccasionBatches.Make(Demo.Occasion)).Value;
        KitchenScale[] scales = [.. Demo.Occasion.Kit.Select(KitchenScale.Of).OfType<KitchenScale>()];

        Assert.Contains(new KitchenScale(200, 0.01), scales);
        Assert.Empty(batches.SelectMany(b => ScaleCheck.Of(b, scales))); // least line 0.4 g: half of 0.01 g is 1.25 %
        ScaleFinding xanthan = ScaleCheck.Of(batches[0], [new KitchenScale(3000, 0.1)]).Single(f => f.Line.Weighed.Food.Food.StartsWith("xanthan", StringComparison.Ordinal));
        Assert.Equal(6.25, xanthan.ErrorPercent, 1e-6); // 0.05 g of 0.8 g
        MasterBatch master = xanthan.Master!;
        Assert.Equal(0.8, master.TakeGrams * master.AgentGrams / (master.AgentGrams + master.CarrierGrams), 1e-9);
        Assert.True(master.AgentGrams >= 2.5 - 1e-9 && master.TakeGrams >= 2.5 - 1e-9);
    }

    private static PlateGuide Guide(double degrees) => new(120,
    [
        new("bar", 22, 1, "palette knife", new PlateForm.Bar(40, 30), 25, [4]),
        new("fan", 26, 2, "fingers", new PlateForm.HalfDisc(30), 28, PlatedPart.Fan(9.5, 5, degrees)) { Shingled = true },
        new("gel", 7, 0.7, "bottle", new PlateForm.Dot(1.4, 1.05), 51, [12, 1, 2, 6, 7]),
    ]);

    private static double Brute(int[] seconds, int[] station, int at, int people, int together)
    {
        if (at == seconds.Length)
        {
            int n = station.Max() + 1;
            return Staff(seconds, station, 0, n, people, together);
        }

        double best = double.PositiveInfinity;
        for (int s = 0; s <= (at == 0 ? 0 : station[..at].Max() + 1); s++)
        {
            station[at] = s;
            best = Math.Min(best, Brute(seconds, station, at + 1, people, together));
        }

        return best;
    }

    private static double Staff(int[] seconds, int[] station, int at, int stations, int people, int together)
    {
        if (at == stations)
        {
            return 0;
        }

        double best = double.PositiveInfinity;
        for (int own = 1; own <= Math.Min(people, together); own++)
        {
            best = Math.Min(best, Math.Max(seconds.Where((_, i) => station[i] == at).Sum() / (double)own, Staff(seconds, station, at + 1, stations, people - own, together)));
        }

        return best;
    }
}
