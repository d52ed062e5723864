using System.Collections.Immutable;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

public sealed class ConductionLaws
{
    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static Conduction Body(BodyShape shape, double millimetres, double h = 95) => new(shape, Length.FromMillimetres(millimetres), 1.4e-7, 0.5, HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h));

    [Theory]
    [InlineData(BodyShape.Slab, 10, 95)]
    [InlineData(BodyShape.Slab, 25, 600)]
    [InlineData(BodyShape.Cylinder, 25, 95)]
    [InlineData(BodyShape.Sphere, 22, 300)]
    public void Finite_volumes_stay_within_0_05_K_of_the_exact_series(BodyShape shape, double millimetres, double h)
    {
        double l = millimetres / 1000;
        ConductionSeries exact = ConductionSeries.For(shape, h * l / 0.5);
        ImmutableArray<BodyMoment> run = Body(shape, millimetres, h).Follow(C(5), _ => C(60), Duration.FromMinutes(60));
        Assert.True(run.Length > 20);
        foreach (BodyMoment m in run.Skip(1))
        {
            double fo = 1.4e-7 * m.Time.TotalSeconds / (l * l);
            Assert.Equal(60 - 55 * exact.CentreAt(fo), m.Core.Celsius, 0.05);
        }
    }

    [Fact]
    public void Thicker_never_faster_and_hotter_never_slower()
    {
        double At(double mm, double bath) => Body(BodyShape.Slab, mm).Follow(C(5), _ => C(bath), Duration.FromMinutes(20))[^1].Core.Celsius;
        Assert.True(At(10, 60) > At(11, 60));
        Assert.True(At(10, 61) > At(10, 60));
    }

    [Fact]
    public void A_bath_that_sags_heats_slower_than_one_that_does_not()
    {
        Conduction bag = Body(BodyShape.Slab, 10);
        double steady = bag.Follow(C(5), _ => C(60), Duration.FromMinutes(20))[^1].Core.Celsius;
        double sagging = bag.Follow(C(5), t => C(60 - 4 * Math.Exp(-t.TotalMinutes / 4)), Duration.FromMinutes(20))[^1].Core.Celsius;
        Assert.InRange(steady - sagging, 0.1, 4);
    }

    [Fact]
    public void A_body_of_no_size_is_outside_the_model() => Assert.Throws<ArgumentOutOfRangeException>(() => Body(BodyShape.Slab, 0).Follow(C(5), _ => C(60), Duration.FromMinutes(1)));
}
