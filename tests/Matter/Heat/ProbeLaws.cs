using System.Collections.Immutable;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

public sealed class ProbeLaws
{
    private static readonly HeatMaterial Moist = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(0.48), Diffusivity.FromSquareMetresPerSecond(1.4e-7));

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static ProbeChannel Channel(params (double Minute, double Celsius)[] points) => new("core", [.. points.Select(p => (p.Minute, C(p.Celsius)))]);

    private static ProbeVerdict Judge(ProbeChannel c, double accuracy = 0, double? target = null, CoolingRule? rule = null, params ImmutableArray<Organism> organisms)
        => ProbeVerdict.Of(c, TemperatureDelta.FromKelvin(accuracy), target is { } t ? C(t) : null, rule, organisms);

    [Fact]
    public void Reached_and_held_are_read_between_the_readings()
    {
        ProbeVerdict v = Judge(Channel((0, 50), (10, 60), (20, 70), (30, 60), (40, 50)), 1, 65);
        Assert.Equal(15, v.Reached.Best!.Value, 1e-9);
        Assert.Equal(16, v.Reached.Cautious!.Value, 1e-9);
        Assert.Equal(10, v.Held.Best, 1e-9);
        Assert.Equal(8, v.Held.Cautious, 1e-9);
        Assert.Equal(70, v.Hottest.Celsius);
    }

    [Fact]
    public void Two_short_holds_are_not_one_long_one()
        => Assert.Equal(10, Judge(Channel((0, 70), (10, 70), (11, 60), (12, 70), (18, 70)), 0, 70).Held.Best, 0.2);

    [Fact]
    public void Cooling_inside_the_two_stages_is_kept_and_a_degree_of_doubt_may_undo_it()
    {
        ProbeChannel quick = Channel((0, 85), (30, 60), (120, 21), (300, 4));
        Assert.All(Judge(quick, 0, null, CoolingRule.Of("au")).Cooling, s => Assert.True(s.Kept));

        // 60 to 21 °C in 119 min; a degree higher it is 61 to 22
        ProbeChannel close = Channel((0, 85), (10, 60), (129, 21), (300, 4.5));
        Assert.True(Judge(close, 0, null, CoolingRule.Of("au")).Cooling.All(s => s.Kept));
        Assert.False(Judge(close, 1, null, CoolingRule.Of("au")).Cooling.All(s => s.Kept));
    }

    [Fact]
    public void Cooling_that_was_not_seen_from_sixty_degrees_shows_nothing()
        => Assert.False(Judge(Channel((0, 40), (60, 21), (200, 4)), 0, null, CoolingRule.Of("au")).Cooling[0].Kept);

    [Fact]
    public void Nothing_above_the_colder_end_is_credited_in_a_gap()
    {
        (double, double)[] every = [.. Enumerable.Range(0, 61).Select(i => ((double)i, i < 20 ? 55.0 : 63.0))];
        Organism o = Organism.Named("salmonella")[0];
        ProbeVerdict whole = Judge(Channel(every), 0, null, null, o);
        ProbeVerdict torn = Judge(Channel([.. every.Where(p => p.Item1 is < 15 or > 35)]), 0, null, null, o);
        Assert.Single(torn.Gaps);
        Assert.True(torn.Lethality[0].Best < whole.Lethality[0].Best);
        Assert.True(torn.Lethality[0].Best <= whole.Lethality[0].Best * 26 / 40);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(95)]
    [InlineData(200)]
    public void A_fit_finds_the_coefficient_a_curve_was_made_with(double h)
    {
        ProbeFit fit = ProbeFit.Of(Made(20, h, 0.05), x => Body(20, x), 3, 3000);
        Assert.InRange(fit.Value / h, 0.85, 1.2);
        Assert.InRange(fit.Misfit, 0, 0.1);
        Assert.True(fit.Low <= h && (fit.High is null || fit.High >= h));
    }

    [Fact]
    public void A_fit_finds_the_thickness_and_says_when_a_large_coefficient_hardly_shows()
    {
        ProbeFit thick = ProbeFit.Of(Made(24, 95, 0.05), x => Body(x, 95), 5, 80);
        Assert.Equal(24, thick.Value, 0.5);
        Assert.Null(ProbeFit.Of(Made(30, 3000, 0.3), x => Body(30, x), 3, 3000).High);
    }

    [Fact]
    public void A_curve_that_does_not_move_cannot_be_fitted()
        => Assert.Throws<ArgumentException>(() => ProbeFit.Of(Channel((0, 5), (1, 5), (2, 5), (3, 5), (4, 5)), x => Body(20, x), 3, 3000));

    private static HeatBody Body(double mm, double h) => HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(mm)], Moist, new BodyFace(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h), Medium.Constant(C(60))), 16);

    /// <summary>A curve from the exact series with noise as a probe has it, seeded.</summary>
    private static ProbeChannel Made(double mm, double h, double noise)
    {
        SolidBody exact = SolidBody.Of(SolidShape.Slab, [Length.FromMillimetres(mm)], Diffusivity.FromSquareMetresPerSecond(1.4e-7), Conductivity.FromWattsPerMetreKelvin(0.48), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h));
        Random random = new(11);
        return Channel([.. Enumerable.Range(0, 90).Select(i => (i * 0.5, exact.CoreAfter(C(5), C(60), Duration.FromMinutes(i * 0.5)).Celsius + (noise * ((2 * random.NextDouble()) - 1))))]);
    }
}
