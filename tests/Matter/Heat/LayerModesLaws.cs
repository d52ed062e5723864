using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Modes of layered bodies against the exact series and against the followed body, which share nothing but the layers.</summary>
public sealed class LayerModesLaws
{
    private static readonly HeatMaterial Moist = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(0.5), Diffusivity.FromSquareMetresPerSecond(1.4e-7));

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static BodyAxis Axis(BodyShape along, double half, double h, int cells, params BodyLayer[] skin)
        => new(along, [new BodyLayer(Moist, Length.FromMillimetres(half), cells), .. skin], null, new BodyFace(double.IsPositiveInfinity(h) ? null : HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h), Medium.Constant(C(65))));

    [Theory]
    [InlineData(BodyShape.Slab)]
    [InlineData(BodyShape.Cylinder)]
    [InlineData(BodyShape.Sphere)]
    public void One_material_is_the_exact_series(BodyShape shape)
    {
        foreach (double h in (double[])[5, 95, 600, double.PositiveInfinity])
        {
            LayerModes modes = new(Axis(shape, 15, h, 24));
            ConductionSeries exact = ConductionSeries.For(shape, h * 0.015 / 0.5);
            foreach (double fo in (double[])[0.05, 0.1, 0.3, 1, 3])
            {
                Duration t = Duration.FromSeconds(fo * 0.015 * 0.015 / 1.4e-7);
                Assert.Equal(65 - (60 * exact.CentreAt(fo)), modes.CoreAfter(C(5), C(65), t).Celsius, 0.005);
                Assert.Equal(65 - (60 * exact.SurfaceAt(fo)), modes.SurfaceAfter(C(5), C(65), t).Celsius, 0.05);
            }

            double to = exact.FourierTo(5 / 60.0) * 0.015 * 0.015 / 1.4e-7;
            Assert.Equal(to, modes.TimeTo(C(5), C(65), C(60))!.Value.TotalSeconds, 0.001 * to);
            Assert.Null(modes.TimeTo(C(5), C(65), C(66)));
            Assert.Equal(Duration.Zero, modes.TimeTo(C(5), C(65), C(4)));
        }
    }

    [Fact]
    public void Layers_are_those_of_the_followed_body()
    {
        foreach (BodyLayer[] skin in (BodyLayer[][])[[new BodyLayer(HeatMaterial.Film, Length.FromMillimetres(0.1), 1)], [new BodyLayer(HeatMaterial.Glass, Length.FromMillimetres(3), 2)], [new BodyLayer(HeatMaterial.AirGap, Length.FromMillimetres(1), 1), new BodyLayer(HeatMaterial.Steel, Length.FromMillimetres(1), 1)]])
        {
            foreach (BodyShape shape in (BodyShape[])[BodyShape.Slab, BodyShape.Cylinder, BodyShape.Sphere])
            {
                BodyAxis axis = Axis(shape, 20, 95, 12, skin);
                (BodyRun run, _) = new HeatBody([axis]).Refined(C(5), Duration.FromMinutes(90), 0.0005, 18);
                LayerModes modes = new(axis);
                Assert.All(run.Moments.Skip(1), m => Assert.Equal(m.Core.Celsius, modes.CoreAfter(C(5), C(65), m.Time).Celsius, 0.01));
            }
        }
    }

    [Fact]
    public void What_changes_or_is_open_on_both_sides_is_refused()
    {
        HeatMaterial meat = HeatMaterial.Food(ThermalParts.FromGrams(75, 21, 3, 0, 0, 1), null, Fraction.FromValue(0.5));
        BodyFace face = new(null, Medium.Constant(C(65)));
        Assert.Throws<ArgumentException>(() => new LayerModes(new BodyAxis(BodyShape.Slab, [new BodyLayer(meat, Length.FromMillimetres(10), 8)], null, face)));
        Assert.Throws<ArgumentException>(() => new LayerModes(new BodyAxis(BodyShape.Slab, [new BodyLayer(Moist, Length.FromMillimetres(10), 8)], face, face)));
        Assert.False(LayerModes.Fits(new BodyAxis(BodyShape.Slab, [new BodyLayer(Moist, Length.FromMillimetres(10), 8)], null, face with { Medium = Medium.Cycling(C(65), TemperatureDelta.FromKelvin(2), Duration.FromMinutes(8)) })));
    }
}
