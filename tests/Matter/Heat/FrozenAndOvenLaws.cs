using System.Collections.Immutable;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Pieces that go into a bath frozen and pieces in an oven: never short, ordered, between closed bounds.</summary>
public sealed class FrozenAndOvenLaws
{
    private const double Latent = 0.9 * 1050 * 333.6e3;
    private static readonly FlatBag Slow = new(0.995e-7, 0.4, HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static Length Mm(double mm) => Length.FromMillimetres(mm);

    private static FrozenBag Bag(double start = -18, double latent = Latent) => new(Slow, latent, C(start));

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(40)]
    [InlineData(70)]
    public void From_frozen_is_never_sooner_than_the_thawed_piece_and_its_thaw(double mm)
    {
        foreach ((double bath, double core) in new[] { (82.0, 80.0), (60.0, 58.0), (65.0, 60.0) })
        {
            double thaw = Bag().Thaws(Mm(mm), C(bath))!.Value.TotalMinutes;
            double frozen = Bag().TimeTo(Mm(mm), C(bath), C(core))!.Value.TotalMinutes;
            double thawed = Slow.TimeTo(Mm(mm), C(5), C(bath), C(core))!.Value.TotalMinutes;

            // Plank's time is of the latent heat alone: ρλ/ΔT·(L/h + L²/2k), so a lower bound of the thaw
            double l = mm / 2000;
            double plank = Latent / bath * ((l / 95) + (l * l / 0.8)) / 60;
            Assert.True(thaw > plank, $"{thaw} against {plank}");
            Assert.True(thaw < 1.8 * plank, $"{thaw} against {plank}");
            Assert.True(frozen >= thaw + thawed, $"{frozen} against {thaw} and {thawed}");
        }
    }

    [Fact]
    public void Two_stages_in_a_row_are_never_sooner_than_one_run_through_ice_and_all()
    {
        // The same slow material followed in one go, without starting the thawed piece anew at 0 °C.
        foreach (double mm in (double[])[20, 40])
        {
            HeatMaterial material = HeatMaterial.Thawing(Conductivity.FromWattsPerMetreKelvin(0.4), Diffusivity.FromSquareMetresPerSecond(0.995e-7), Latent);
            double one = HeatBody.Piece(SolidShape.Slab, [Mm(mm)], material, new BodyFace(Slow.Surface, Medium.Constant(C(82))), 24).Follow(C(-18), Duration.FromHours(12), 0.02, 4000).TimeTo(C(80))!.Value.TotalMinutes;
            double two = Bag().TimeTo(Mm(mm), C(82), C(80))!.Value.TotalMinutes;
            Assert.InRange(two, one, 1.35 * one);
        }
    }

    [Fact]
    public void Thicker_colder_wetter_and_cooler_baths_are_never_faster()
    {
        double Of(double mm = 20, double start = -18, double latent = Latent, double bath = 65) => Bag(start, latent).TimeTo(Mm(mm), C(bath), C(60))!.Value.TotalMinutes;
        Assert.True(Of(22) > Of() && Of(start: -30) > Of() && Of(latent: 0.7 * Latent) < Of() && Of(bath: 63) > Of());
        Assert.Null(Bag().TimeTo(Mm(20), C(59), C(60)));
        Assert.Null(Bag().Thaws(Mm(20), C(0.2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bag(-50).Thaws(Mm(20), C(60)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bag(latent: 5e8).Thaws(Mm(20), C(60)));
        Length most = Bag().ThickestIn(Duration.FromMinutes(60), C(65), C(60))!.Value;
        Assert.True(Of(most.Millimetres) <= 60 && Of(most.Millimetres + 0.2) > 60);
        ImmutableArray<(double Minute, Temperature At)> curve = Bag().Curve(Mm(20), C(65), Enumerable.Range(0, 100).Select(i => (double)i));
        Assert.All(curve.Zip(curve.Skip(1)), p => Assert.True(p.Second.At.Celsius >= p.First.At.Celsius - 0.05));
        Assert.Equal(60, Bag().Curve(Mm(20), C(65), [Of()])[0].At.Celsius, 0.01);
    }

    [Fact]
    public void Slab_times_from_frozen_are_no_shorter_than_the_published_table()
    {
        // Baldwin's guide, frozen, to half a degree below the bath (45 to 80 °C; 60 taken): cautious figures must not undercut any row from 10 mm.
        foreach (IReadOnlyDictionary<string, string> r in HeatTables.Rows("baldwin-heating-frozen").Where(r => r.N("slab_like_min") > 0 && r.N("thickness_mm") >= 10))
        {
            double ours = Bag().TimeTo(Mm(r.N("thickness_mm")), C(60), C(59.5))!.Value.TotalMinutes;
            Assert.True(ours > r.N("slab_like_min"), $"{r["thickness_mm"]}: {ours} against {r["slab_like_min"]}");
        }
    }

    [Fact]
    public void An_oven_answers_between_a_dry_ball_and_a_slab_that_is_covered_or_stays_wet()
    {
        OvenPiece open = new(Slow, C(180), Covered: false);
        OvenPiece covered = open with { Covered = true };
        Duration least = open.AtLeast(Mm(60), C(5), C(60))!.Value;
        Assert.Null(open.AtMost(Mm(60), C(5), C(60)));                     // the wet bulb of dry air at 180 °C lies below 60 °C
        Assert.InRange(open.Settles.Celsius, 45, 60);
        Assert.True(covered.AtMost(Mm(60), C(5), C(60)) > least);
        Assert.True(covered.AtMost(Mm(66), C(5), C(60)) > covered.AtMost(Mm(60), C(5), C(60)));
        Assert.True(open.AtMost(Mm(30), C(5), C(40)) > open.AtLeast(Mm(30), C(5), C(40)));
        Assert.True(open.AtLeast(Mm(60), C(5), C(60)) < open.AtLeast(Mm(70), C(5), C(60)));
        Length most = open.ThickestAtAll(least, C(5), C(60))!.Value;
        Assert.Equal(60, most.Millimetres, 0.1);
        Assert.Null(open.ThickestAtAll(Duration.FromSeconds(2), C(5), C(60)));
        Assert.Throws<ArgumentOutOfRangeException>(() => (open with { Oven = C(400) }).AtLeast(Mm(60), C(5), C(60)));

        // every real food in every usual oven lies above the shortest time: 1.5e-7 m²/s, h 40, a cube
        Assert.True(least < SolidBody.Of(SolidShape.Brick, [Mm(60), Mm(60), Mm(60)], Diffusivity.FromSquareMetresPerSecond(1.5e-7), Conductivity.FromWattsPerMetreKelvin(0.55), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(40)).TimeTo(C(5), C(180), C(60)));
    }
}
