using System.Globalization;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Shapes;

/// <summary>Against outside figures: worked examples P3 to P26 of the scenario, and the tables of measures.</summary>
public sealed class ShapesPublished
{
    private static Length Mm(double v) => Length.FromMillimetres(v);

    private static Density Gml(double v) => Density.FromGramsPerMillilitre(v);

    private static double D(string s) => double.Parse(s, CultureInfo.InvariantCulture);

    [Fact]
    public void Small_plates_take_nine_trays_and_large_ones_twenty_six_P3()
    {
        Assert.Equal(26, RoundsOnTray.Fit(Mm(530), Mm(325), Mm(240)).TraysFor(52));
        Assert.Equal(9, RoundsOnTray.Fit(Mm(530), Mm(325), Mm(160)).TraysFor(52));
        Assert.Equal(4, BoxesOnTray.Fit(Mm(530), Mm(325), Mm(120), Mm(90)).TraysFor(48));
    }

    [Fact]
    public void Swede_discs_on_a_dryer_tray_P4()
    {
        RoundsOnTray tray = RoundsOnTray.Fit(Mm(330), Mm(300), Mm(50), Mm(5));

        Assert.Equal((30, 33, 30), (tray.Square, tray.OffsetAlong, tray.OffsetAcross));
        Assert.Equal(4, tray.TraysFor(120));
    }

    [Fact]
    public void Frame_of_royale_P8()
    {
        FrameCut cut = FrameCut.Of(new BoxMould(Mm(330), Mm(220), Mm(18)), Gml(1.03), Mm(40), Mm(30), edge: Mm(5));

        Assert.Equal(1306.8, cut.Fill.Millilitres, 6);
        Assert.Equal(1346.0, cut.FillMass.Grams, 0.05);
        Assert.Equal(56, cut.Cut.Count);
        Assert.Equal(22.25, cut.PieceMass.Grams, 0.005);
        Assert.Equal(100.1, cut.TrimMass.Grams, 0.05);
    }

    [Fact]
    public void Kohlrabi_discs_P10_and_giant_bulbs_P25_and_swede_P26()
    {
        BulbCut small = BulbCut.Discs(new(Mm(92), Mm(80)), Mm(3), Mm(1.2), Mm(60), Fraction.FromPercent(10));
        BulbCut giant = BulbCut.Discs(new(Mm(150), Mm(132)), Mm(4), Mm(1.2), Mm(60), Fraction.FromPercent(10));
        BulbCut swede = BulbCut.Discs(Bulb.Ball(Mm(120)), Mm(4), Mm(1), Mm(50), Fraction.FromPercent(10));

        Assert.Equal((44, 39, 8), (small.Slices, small.Good, small.ToBuy(280)));
        Assert.Equal(10, small.ToBuy(280, 2));
        Assert.Equal(53.0, small.Peeled.HeightAtLeast(Mm(60)).Millimetres, 0.05);
        Assert.Equal(2836.3, 8 * small.Whole.Volume.Millilitres, 0.05);
        Assert.Equal((189, 170, 2), (giant.Pieces, giant.Good, giant.ToBuy(280)));
        Assert.Equal([new(42, 3), new(12, 2), new(39, 1)], giant.Counts);
        Assert.Equal((180, 162, 1), (swede.Pieces, swede.Good, swede.ToBuy(120)));
    }

    [Fact]
    public void Curd_in_a_half_moon_P11()
    {
        FoldedDisc fold = FoldedDisc.Of(Mm(60), Mm(6), Mm(18), Gml(1.02));

        Assert.Equal(0.2003, fold.Angle, 0.00005);
        Assert.Equal(3.606, fold.Wedge.Millilitres, 0.0005);
        Assert.Equal(0.488, fold.FilledShare.Value, 0.0005);
        Assert.Equal(1.760, fold.Filling.Millilitres, 0.0005);
        Assert.Equal(1.759, Piped.Line(Mm(8), Mm(35)).Millilitres, 0.0005);
        Assert.Equal(2.4, FoldedDisc.Of(Mm(60), Mm(8), Mm(18), Gml(1.02)).Mass.Grams, 0.05);
    }

    [Fact]
    public void Discs_on_cloths_P12()
    {
        RoundsOnTray cloth = RoundsOnTray.Fit(Mm(530), Mm(325), Mm(60), Mm(1));
        RoundsOnTray wider = RoundsOnTray.Fit(Mm(530), Mm(325), Mm(60), Mm(2));

        Assert.Equal((40, 48, 6), (cloth.Square, cloth.Count, cloth.TraysFor(280)));
        Assert.Equal(61.2, cloth.LargestPitch!.Value.Millimetres, 0.05);
        Assert.Equal((40, 41, 7), (wider.Square, wider.OffsetAcross, wider.TraysFor(280)));
    }

    [Fact]
    public void Every_tray_count_of_the_table_is_met()
    {
        foreach (IReadOnlyDictionary<string, string> row in SharedData.Rows("data/measures/tray-counts.tsv"))
        {
            RoundsOnTray t = RoundsOnTray.Fit(Mm(D(row["L"])), Mm(D(row["W"])), Mm(D(row["d"])), Mm(D(row["gap"])));

            Assert.Equal((D(row["square"]), D(row["hexagonal"]), D(row["best"])), (t.Square, Math.Max(t.OffsetAlong, t.OffsetAcross), t.Count));
            Assert.Equal(t.Count, t.Centres.Length);
        }
    }

    [Fact]
    public void Every_rolled_tube_of_the_table_is_met()
    {
        foreach (IReadOnlyDictionary<string, string> row in SharedData.Rows("data/measures/rolled-tubes.tsv"))
        {
            RolledTube t = RolledTube.Of(Mm(D(row["hole_d"])), Mm(D(row["t"])), (int)D(row["turns"]), Mm(D(row["overlap"])), Mm(10));

            Assert.Equal(D(row["length"]), t.StripLength.Millimetres, 0.0501);
            Assert.Equal(D(row["outer"]), t.Outer.Millimetres, 1e-6);
            Assert.Equal(D(row["at_seam"]), t.AtSeam.Millimetres, 1e-6);
            Assert.Equal(D(row["fill_mL_per_10mm"]), t.HoleVolume.Millilitres, 0.000501);
        }
    }

    [Theory]
    [InlineData(15.0, 21)]
    [InlineData(16.0, 19)]
    [InlineData(16.4, 19)]
    [InlineData(17.6, 15)]
    [InlineData(20.0, 11)]
    [InlineData(25.0, 7)]
    public void Tubes_in_a_ring_of_80_mm(double tube, int count) => Assert.Equal(count, RoundsInRing.Fit(Mm(80), Mm(tube)).Count);

    [Fact]
    public void Closed_forms_of_small_rings_are_met() // elementary geometry: 2, 3, 4, 6 and 7, 8 rounds
    {
        double[] ratios = [2, 1 + (2 / Math.Sqrt(3)), 1 + Math.Sqrt(2), 3, 1 + (1 / Math.Sin(Math.PI / 7))];

        Assert.All([2, 3, 4, 7, 8], (n, i) => Assert.Equal(100 / ratios[i], RoundsInRing.RoundFor(Mm(100), n).Millimetres, 1e-9));
    }

    [Fact]
    public void Tins_by_closed_form_tables()
    {
        Assert.Equal(1571, new RoundMould(Mm(200), Mm(50)).Volume.Millilitres, 0.5);
        Assert.Equal(99.9, new TaperedMould(Mm(50), Mm(70), Mm(35)).Volume.Millilitres, 0.1);
        Assert.Equal(1402, new LoafMould(Mm(190), Mm(90), Mm(210), Mm(110), Mm(70)).Volume.Millilitres, 0.5);
        Assert.Equal(1145, new RingMould(Mm(240), Mm(75)).Volume.Millilitres, 0.5);
        Assert.Equal(33, DomeMould.HalfSphere(Mm(50)).Volume.Millilitres, 0.5);
        Assert.Equal(32, new ShellMould(Mm(75), Mm(45), Mm(18)).Volume.Millilitres, 0.5);
        Assert.Equal(2709, 800 * MouldScaling.SameDepth(new RoundMould(Mm(200), Mm(50)), new BoxMould(Mm(380), Mm(280), Mm(50)), Mm(30)).Factor, 0.5);
        Assert.Equal(62.2, SpiralRoll.Of(Mm(8), Mm(380)).Diameter.Millimetres, 0.1);
        Assert.Equal(23.6, Piped.Quenelle(Mm(60), Mm(30), Mm(25)).Millilitres, 0.1);
        Assert.Equal(17.2, Piped.DotAcross(Mass.FromGrams(1.4) / Gml(1.05)).Millimetres, 0.05);
    }

    [Fact]
    public void A_tray_of_580_by_380_cuts_into_72() => Assert.Equal(72, Cutting.Fit(Mm(580), Mm(380), Mm(90), Mm(30), Mm(1.5)).Straight);

    [Fact]
    public void A_zero_thickness_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RolledTube.Of(Mm(14), default, 1, Mm(8), Mm(40)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RoundMould(Mm(0), Mm(50)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Cutting.Fit(Mm(100), Mm(100), Mm(0), Mm(30)));
    }

    [Theory] // the system of EN 631-1: a fraction says how many fill one 1/1, in whatever way they lie
    [InlineData("1/2", 2)]
    [InlineData("1/3", 3)]
    [InlineData("1/4", 4)]
    [InlineData("1/6", 6)]
    [InlineData("1/9", 9)]
    [InlineData("2/4", 2)]
    [InlineData("1/1", 1)]
    public void So_many_of_a_gastronorm_fraction_fill_one_whole(string size, int count)
    {
        Gastronorm whole = Gastronorm.Find("GN 1/1")!;
        Gastronorm part = Gastronorm.Find(size)!;

        Assert.Equal(count, BoxesOnTray.Fit(whole.Along, whole.Across, part.Along, part.Across).PerTray);
        Assert.Equal(1.0 / count, part.Along.Millimetres * part.Across.Millimetres / (530.0 * 325), 0.02 / count * 1.2); // walls and ledges take up to two in a hundred
        Assert.All(part.Litres, l => Assert.True(l.Value <= part.Box(Mm(l.Key)).Volume.Millilitres / 1000, $"{size}, {l.Key} mm: more than the box round it"));
    }

    [Theory] // en.wikipedia.org, "Gastronorm sizes", and chromonorm.de/ratgeber, list of sizes; both read 29 November 2026, neither is a source of our table
    [InlineData("2/1", 650, 530)]
    [InlineData("1/1", 530, 325)]
    [InlineData("2/3", 354, 325)]
    [InlineData("2/4", 530, 162)]
    [InlineData("1/2", 325, 265)]
    [InlineData("1/3", 325, 176)]
    [InlineData("1/4", 265, 162)]
    [InlineData("1/6", 176, 162)]
    [InlineData("1/9", 176, 108)]
    public void The_sizes_of_EN_631_are_held(string size, double along, double across)
        => Assert.Equal((along, across), (Gastronorm.Find(size)!.Along.Millimetres, Gastronorm.Find(size)!.Across.Millimetres));

    [Fact]
    public void No_gastronorm_size_is_held_that_was_not_looked_up() => Assert.Equal(9, Gastronorm.All.Length);

    [Fact]
    public void Two_thirds_and_a_third_and_two_wholes_close_too()
    {
        Gastronorm whole = Gastronorm.Find("1/1")!;
        Assert.Equal((530, 325), (whole.Along.Millimetres, whole.Across.Millimetres));
        Assert.Equal(whole.Along.Millimetres, Gastronorm.Find("2/3")!.Along.Millimetres + Gastronorm.Find("1/3")!.Across.Millimetres, 1e-9);
        Gastronorm twice = Gastronorm.Find("2/1")!;
        Assert.Equal(2, BoxesOnTray.Fit(twice.Along, twice.Across, whole.Along, whole.Across).PerTray);
    }
}
