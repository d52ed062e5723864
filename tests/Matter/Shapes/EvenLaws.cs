using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;
using CsCheck;

namespace Coulisse.Matter.Tests.Shapes;

/// <summary>The neighbours that are named come out even, and nothing between them and what was asked does: the row itself, and each shape by counting again at and beside the named size.</summary>
public sealed class EvenLaws
{
    private static readonly Gen<double> Side = Gen.Double[60, 500];
    private static readonly Gen<double> Small = Gen.Double[0, 6];

    private static Length Mm(double mm) => Length.FromMillimetres(mm);

    [Fact]
    public void Whole_units_by_hand() // 52 plates, six a tray: 48 and 54 (expected.json P3: nine trays)
    {
        ComesOutEven plates = ComesOutEven.Multiples(52, 6);

        Assert.Equal(new EvenAmount(8, 48), plates.Smaller);
        Assert.Null(plates.Exactly);
        Assert.Equal(new EvenAmount(9, 54), plates.Larger);
        Assert.Equal(9, plates.Taken);
        Assert.Equal(2, plates.Over);
    }

    [Fact]
    public void What_comes_out_even_is_said_to_and_has_neighbours_of_its_own()
    {
        ComesOutEven plates = ComesOutEven.Multiples(54, 6);

        Assert.Equal((48, 54, 60), ((int)plates.Smaller!.Value.Amount, (int)plates.Exactly!.Value.Amount, (int)plates.Larger!.Value.Amount));
        Assert.Equal(9, plates.Taken);
        Assert.Equal(0, plates.Over);
        Assert.Null(ComesOutEven.Multiples(4, 6).Smaller); // less than one tray
    }

    [Fact]
    public void Among_whole_units_nothing_lies_between()
        => Gen.Select(Gen.Int[1, 5000], Gen.Int[1, 300]).Sample((asked, each) =>
        {
            ComesOutEven e = ComesOutEven.Multiples(asked, each);
            int[] even = [.. Enumerable.Range(1, (asked / each) + 2).Select(k => k * each)];
            return (int?)e.Smaller?.Amount == even.Where(x => x < asked).Select(x => (int?)x).LastOrDefault()
                && (e.Exactly is not null) == even.Contains(asked)
                && (int)e.Larger!.Value.Amount == even.First(x => x > asked)
                && e.Larger.Value.Units * each == (int)e.Larger.Value.Amount;
        });

    [Fact]
    public void Shares_of_a_whole_use_it_up_and_nothing_lies_between()
        => Gen.Select(Gen.Double[1, 90], Gen.Double[100, 3000], Small).Sample((asked, whole, kerf) =>
        {
            ComesOutEven e = ComesOutEven.Shares(asked, whole, kerf);
            bool Uses(EvenAmount a) => Math.Abs((a.Units * a.Amount) + ((a.Units - 1) * kerf) - whole) < 1e-6 * whole;
            return e.Larger is { } l && Uses(l) && (e.Smaller is not { } s || (Uses(s) && s.Units == l.Units + 1 + (e.Exactly is null ? 0 : 1) && s.Amount < asked)) && l.Amount > asked;
        });

    [Fact]
    public void The_widths_named_for_a_tray_just_fit_and_no_other_width_between_does()
        => Gen.Select(Side, Side, Gen.Double[12, 160], Small).Sample((l, w, d, g) =>
        {
            int Held(double x) => x < 1 ? int.MaxValue : RoundsOnTray.Fit(Mm(l), Mm(w), Mm(x), Mm(g)).Count;
            return JustFits(RoundsOnTray.Sizes(Mm(l), Mm(w), Mm(d), Mm(g)), Held);
        }, iter: 60);

    [Fact]
    public void The_widths_named_for_a_ring_just_fit_and_no_other_width_between_does()
        => Gen.Select(Side, Gen.Double[2.2, 10.5]).Sample((ring, ratio)
            => JustFits(RoundsInRing.Sizes(Mm(ring), Mm(ring / ratio)), x => RoundsInRing.Fit(Mm(ring), Mm(x)).Count), iter: 100);

    [Fact]
    public void The_widths_named_for_a_square_just_fit_and_no_other_width_between_does()
        => Gen.Select(Side, Gen.Double[1.2, 6.5]).Sample((side, ratio)
            => JustFits(RoundsInSquare.Sizes(Mm(side), Mm(side / ratio)), x => RoundsInSquare.Fit(Mm(side), Mm(x)).Count), iter: 100);

    [Fact]
    public void Seven_rounds_are_named_where_six_are_as_wide() // ratio 3 for both, elementary geometry
    {
        ComesOutEven e = RoundsInRing.Sizes(Mm(90), Mm(31));

        Assert.Equal(7, e.Smaller!.Value.Units);
        Assert.Equal(30, e.Smaller.Value.Amount, 1e-9);
        Assert.Equal(5, e.Larger!.Value.Units);
    }

    [Fact]
    public void Cut_pieces_named_use_the_block_up_and_no_grid_between_keeps_rows_and_columns()
        => Gen.Select(Side, Side, Gen.Double[35, 160], Gen.Double[35, 160], Gen.Double[0, 3]).Sample((l, w, a, b, k) =>
        {
            CutPlan p = Cutting.Fit(Mm(l), Mm(w), Mm(a), Mm(b), Mm(k));
            bool Uses(EvenCut c) => Math.Abs((c.Columns * (c.Along.Millimetres + k)) - k - l) < 1e-6 && Math.Abs((c.Rows * (c.Across.Millimetres + k)) - k - w) < 1e-6
                && Cutting.Fit(Mm(l), Mm(w), c.Along, c.Across, Mm(k)).Straight == c.Count;
            if (p.Even is not { } grid)
            {
                return p.NextMore is null || Uses(p.NextMore);
            }

            (int Count, int C, int R)[] grids = [.. from c in Enumerable.Range(1, p.Count + 2) from r in Enumerable.Range(1, p.Count + 2) select (c * r, c, r)];
            int? fewer = grids.Where(g => g.C <= grid.Columns && g.R <= grid.Rows && g.Count < p.Count).Select(g => (int?)g.Count).Max();
            int more = grids.Where(g => g.C >= grid.Columns && g.R >= grid.Rows && g.Count > p.Count).Min(g => g.Count);
            return p.NextFewer?.Count == fewer && (p.NextFewer is null || Uses(p.NextFewer)) && p.NextMore is { } next && next.Count == more && Uses(next);
        }, iter: 60);

    [Fact]
    public void Strips_named_use_the_sheet_up()
        => Gen.Select(Side, Gen.Double[8, 55], Gen.Double[0, 2]).Sample((w, strip, k) =>
        {
            Strips s = Strips.Of(Mm(300), Mm(w), Mm(strip), Mm(k));
            bool Even(EvenAmount a) => Strips.Of(Mm(300), Mm(w), Mm(a.Amount), Mm(k)) is var t && t.Count == a.Units && t.Plan.TrimShare.Value >= 0 && (t.Widths.Exactly is { } e && e.Units == a.Units);
            return s.Widths.Larger is { } l && Even(l) && s.Widths.Smaller is { } m && Even(m) && s.Count == l.Units + (s.Widths.Exactly is null ? 0 : 1);
        }, iter: 100);

    [Fact]
    public void Strips_and_sheets_named_close_in_whole_turns()
        => Gen.Select(Gen.Double[6, 40], Gen.Double[0.5, 4], Gen.Double[0, 12], Gen.Double[200, 700]).Sample((hole, t, overlap, length) =>
        {
            ComesOutEven tube = RolledTube.WholeTurns(Mm(hole), Mm(t), Mm(overlap), Mm(length));
            ComesOutEven roll = SpiralRoll.WholeTurns(Mm(t), Mm(length), Mm(hole));
            bool Tube(EvenAmount a) => Math.Abs(RolledTube.Of(Mm(hole), Mm(t), a.Units, Mm(overlap), Mm(10)).StripLength.Millimetres - a.Amount) < 1e-6;
            bool Roll(EvenAmount a) => Math.Abs(SpiralRoll.Of(Mm(t), Mm(a.Amount), Mm(hole)).Turns - a.Units) < 1e-6;
            return tube.Smaller is { } ts && Tube(ts) && tube.Larger is { } tl && Tube(tl) && tl.Units == ts.Units + 1
                && roll.Smaller is { } rs && Roll(rs) && roll.Larger is { } rl && Roll(rl) && rl.Units == rs.Units + 1 && rs.Amount < length && length < rl.Amount;
        }, iter: 100);

    [Fact]
    public void A_filling_shared_out_reaches_so_far_and_seams_so_wide()
        => Gen.Select(Gen.Double[40, 120], Gen.Double[2, 12], Gen.Double[0.1, 0.95]).Sample((disc, mouth, share) =>
        {
            FoldedDisc fold = FoldedDisc.Of(Mm(disc), Mm(mouth), Mm(disc / 2 * share), Density.FromGramsPerMillilitre(1));
            Dumpling closed = Dumpling.Of(Mm(disc), Mm(2), Mm(disc / 2 * (1 - share)), Density.FromGramsPerMillilitre(1.2), Density.FromGramsPerMillilitre(1));
            return Math.Abs(fold.ReachFor(fold.Filling)!.Value.Millimetres - (disc / 2 * share)) < 1e-6
                && Math.Abs(Dumpling.SeamFor(Mm(disc), closed.Filling)!.Value.Millimetres - (disc / 2 * (1 - share))) < 1e-6
                && fold.ReachFor(fold.Wedge * 1.01) is null && Dumpling.SeamFor(Mm(disc), Volume.FromMillilitres(disc * disc * disc)) is null;
        }, iter: 100);

    [Fact]
    public void Slices_and_a_core_never_weigh_more_than_the_root()
        => Gen.Select(Gen.Double[60, 150], Gen.Double[60, 150], Gen.Double[0.8, 6]).Sample((across, tall, t) =>
        {
            BulbCut slices = BulbCut.SlicesOf(new Bulb(Mm(across), Mm(tall)), Mm(3), Mm(t), Mm(30), Fraction.FromValue(0));
            PeeledSheet sheet = PeeledSheet.Of(Mm(across), Mm(tall), Mm(2), Mm(t), Mm(20));
            double core = Math.PI * 20 * 20 / 4 * tall / 1000;
            double ring = Math.PI * (across - 4) * (across - 4) / 4 * tall / 1000;
            return slices.Slices * slices.PieceVolume.Millilitres <= slices.Peeled.Volume.Millilitres + 1e-6 && slices.Good == slices.Slices
                && Math.Abs(sheet.Volume.Millilitres + core - ring) < 1e-6 * ring;
        }, iter: 100);

    [Fact]
    public void A_turned_root_by_hand() // π (56² − 20²) / (4 · 1) = 2148.8 mm
        => Assert.Equal(2148.8, PeeledSheet.Of(Mm(60), Mm(100), Mm(2), Mm(1), Mm(20)).Sheet.Millimetres, 0.05);

    // At the named width so many fit, a hair wider fewer; between the named widths and the asked one the count does not change.
    private static bool JustFits(ComesOutEven e, Func<double, int> held)
    {
        const double Hair = 1 + 1e-6;
        bool Fills(EvenAmount a) => held(a.Amount * (1 - 1e-9)) == a.Units && held(a.Amount * Hair) < a.Units;
        bool larger = e.Larger is not { } l || (Fills(l) && (e.Exactly is not null || held(e.Asked) == l.Units) && held((e.Asked + l.Amount) / 2) == l.Units);
        bool smaller = e.Smaller is not { } s || (Fills(s) && held(s.Amount * Hair) == held(e.Asked) && held((e.Asked + s.Amount) / 2) == held(e.Asked));
        return larger && smaller && (e.Larger is not null || held(e.Asked) == 0 || e.Exactly is not null);
    }
}
