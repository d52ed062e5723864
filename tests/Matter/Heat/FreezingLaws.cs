using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Properties that change with temperature, freezing, wet faces.</summary>
public sealed class FreezingLaws
{
    private static readonly ThermalParts Lean = ThermalParts.FromGrams(75, 21, 3, 0, 0, 1);
    private static readonly Temperature Begins = Temperature.FromCelsius(-1);

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static HeatMaterial Meat(double series = 0.2) => HeatMaterial.Food(Lean, Begins, Fraction.FromValue(series));

    private static BodyFace Face(double h, double medium) => new(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h), Medium.Constant(C(medium)));

    [Fact]
    public void Heat_content_rises_and_its_warm_slope_is_density_times_specific_heat()
    {
        HeatMaterial meat = Meat();
        double last = double.NegativeInfinity;
        for (double t = -40; t <= 150; t += 0.25)
        {
            double h = meat.HeatContent(C(t));
            Assert.True(h > last);
            last = h;
        }

        // lean meat: 1056 kg/m3 at 5 °C, 3.65 kJ/(kg·K) at 60 °C (worked by hand from the polynomials)
        Assert.Equal(1.053e3 * 3.65e3 * 10, meat.HeatContent(C(65)) - meat.HeatContent(C(55)), 3e5);
    }

    [Fact]
    public void Thawing_takes_the_latent_heat_of_its_ice()
    {
        HeatMaterial meat = Meat();
        double perKilogram = (meat.HeatContent(C(0)) - meat.HeatContent(C(-20))) / 1053;
        double ice = ThermalProperties.Of(Lean, C(-20), Begins).IceShare;

        // What is left after the ice is the sensible heat of 20 K at 1.9 to 3.7 kJ/(kg·K).
        Assert.InRange(perKilogram - (ice * 333_600), 20 * 1900, 20 * 3700);
    }

    [Theory]
    [InlineData(-25, 20)]
    [InlineData(60, -18)]
    public void Freezing_and_thawing_close_their_balance_and_end_at_the_medium(double medium, double start)
    {
        BodyRun run = HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(30)], Meat(), Face(50, medium)).Follow(C(start), Duration.FromHours(8), points: 400);
        Assert.InRange(run.Unbalanced, 0, 1e-6);
        Assert.Equal(medium, run.Moments[^1].Core.Celsius, 0.3);
        int step = Math.Sign(medium - start);
        Assert.All(run.Moments.Zip(run.Moments.Skip(1)), p => Assert.True((p.Second.Core.Celsius - p.First.Core.Celsius) * step >= -0.02));
    }

    [Fact]
    public void A_finer_mesh_changes_a_freezing_time_by_less_than_two_percent()
    {
        double Hours(int cells) => HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(30)], Meat(), Face(30, -30), cells).Follow(C(5), Duration.FromHours(6), 0.002, 2000).TimeTo(C(-18))!.Value.TotalHours;
        double fine = Hours(80);
        Assert.InRange(Hours(24) / fine, 0.98, 1.02);
    }

    [Fact]
    public void From_frozen_takes_longer_than_from_the_fridge()
    {
        double Minutes(double start) => HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(30)], Meat(), Face(95, 60)).Follow(C(start), Duration.FromHours(6), points: 2000).TimeTo(C(59.5))!.Value.TotalMinutes;
        Assert.InRange(Minutes(-18) / Minutes(5), 1.15, 2);
    }

    [Theory]
    [InlineData(20, 20, -30)]
    [InlineData(40, 40, -30)]
    [InlineData(80, 15, -35)]
    public void Freezing_time_lies_above_Plank_and_within_a_fifth_of_Pham(double millimetres, double h, double air)
    {
        HeatTransferCoefficient surface = HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h);
        Length half = Length.FromMillimetres(millimetres / 2);
        double ours = HeatBody.Piece(SolidShape.Slab, [half * 2], Meat(0), Face(h, air)).Follow(C(10), Duration.FromHours(40), 0.02, 4000).TimeTo(C(-18))!.Value.TotalHours;
        Assert.True(FreezingTime.Plank(BodyShape.Slab, half, Lean, Begins, C(air), surface).TotalHours < ours);
        Assert.InRange(FreezingTime.Pham(BodyShape.Slab, half, Lean, Begins, C(10), C(air), C(-18), surface).TotalHours / ours, 0.8, 1.2);
    }

    [Fact]
    public void Four_litres_from_sixty_to_five_degrees_take_two_point_six_kilograms_of_ice()
        => Assert.Equal(2.6, IceBath.Ice(4.12, 60, 5), 0.05);

    [Fact]
    public void Wet_bulb_of_thirty_degrees_at_half_humidity_is_twenty_two()
        => Assert.Equal(22.0, new WetSurface(WetSurface.Saturation(30) / 2).WetBulb(30), 0.2);

    [Fact]
    public void A_wet_roast_is_slower_than_a_dry_one_and_its_face_stays_near_the_wet_bulb()
    {
        BodyFace dry = Face(20, 140);
        BodyRun wet = HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(40)], Meat(), dry with { Wet = new WetSurface(3) }).Follow(C(5), Duration.FromHours(5));
        BodyRun open = HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(40)], Meat(), dry).Follow(C(5), Duration.FromHours(5));
        double bulb = new WetSurface(3).WetBulb(140);
        Assert.InRange(bulb, 40, 55);
        Assert.Equal(bulb, wet.Moments[^1].Surface.Celsius, 0.5);
        Assert.True(open.Moments[^1].Surface.Celsius > 120);
        Assert.InRange(wet.Unbalanced, 0, 1e-6);
    }

    [Fact]
    public void Below_zero_without_a_freezing_point_is_outside_the_model()
    {
        HeatMaterial fresh = HeatMaterial.Food(Lean, null, Fraction.FromValue(0.2));
        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(30)], fresh, Face(30, -18)).Follow(C(5), Duration.FromHours(1)));
        Assert.Contains("Outside the model", e.Message, StringComparison.Ordinal);
    }
}
