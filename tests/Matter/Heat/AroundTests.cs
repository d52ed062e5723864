using System.Collections.Immutable;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Air, ice, doors, ovens, dryers and layers around a food.</summary>
public sealed class AroundTests
{
    private static readonly HeatCase Food = new(Diffusivity.FromSquareMetresPerSecond(1.4e-7), Diffusivity.FromSquareMetresPerSecond(1.0e-7), Conductivity.FromWattsPerMetreKelvin(0.48), Conductivity.FromWattsPerMetreKelvin(0.4), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static LayeredHeating Slab(Medium medium, bool oneSided = false, WetSurface? wet = null, params ImmutableArray<BodyLayer> skin) => new(SolidShape.Slab, [Length.FromMillimetres(20)], C(5), medium, Food, skin, oneSided, wet);

    // Usual ranges of handbooks (still fridge 6 to 10, fan room 0.5 to 2 m/s 10 to 25, blast chiller 3 to 6 m/s 25 to 50 W/(m²·K)): the best value lies inside, the cautious one never above it.
    [Theory]
    [InlineData(0, 4, 30, 6, 10)]
    [InlineData(0.8, 4, 30, 10, 25)]
    [InlineData(2, 4, 30, 10, 25)]
    [InlineData(4, 2, 30, 25, 50)]
    [InlineData(6, 2, 30, 25, 50)]
    public void Airflow_gives_the_usual_coefficients(double speed, double air, double warmer, double low, double high)
    {
        (HeatTransferCoefficient best, HeatTransferCoefficient slow) = AirFlow.Over(speed, Length.FromMillimetres(300), C(air), TemperatureDelta.FromKelvin(warmer));
        Assert.InRange(best.WattsPerSquareMetreKelvin, low, high);
        Assert.True(slow <= best);
    }

    [Fact]
    public void More_wind_never_takes_less_heat()
    {
        double before = 0;
        for (double v = 0; v <= 10; v += 0.25)
        {
            double h = AirFlow.Over(v, Length.FromMillimetres(300), C(3), TemperatureDelta.FromKelvin(20)).Best.WattsPerSquareMetreKelvin;
            Assert.True(h >= before - 1e-9);
            before = h;
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => AirFlow.Over(12, Length.FromMillimetres(300), C(3), TemperatureDelta.FromKelvin(20)));
    }

    [Fact]
    public void Without_layers_it_is_the_exact_series()
    {
        CoreHeating followed = Slab(Medium.Constant(C(65))).Of(C(60), null);
        CoreHeating exact = CoreHeating.Of(SolidShape.Slab, [Length.FromMillimetres(20)], C(5), C(65), Food, C(60), null);
        Assert.Equal(exact.CautiousToTarget!.Value.TotalMinutes, followed.CautiousToTarget!.Value.TotalMinutes, 0.15);
        Assert.Equal(exact.BestToTarget!.Value.TotalMinutes, followed.BestToTarget!.Value.TotalMinutes, 0.15);
        Assert.Equal(exact.OffToTarget!.Value.TotalMinutes, followed.OffToTarget!.Value.TotalMinutes, 0.15);
    }

    [Fact]
    public void From_one_side_is_twice_the_thickness_and_every_layer_slows()
    {
        double one = Slab(Medium.Constant(C(65)), oneSided: true).Of(C(60), null).CautiousToTarget!.Value.TotalMinutes;
        double twice = (Slab(Medium.Constant(C(65))) with { Sizes = [Length.FromMillimetres(40)] }).Of(C(60), null).CautiousToTarget!.Value.TotalMinutes;
        Assert.Equal(twice, one, 0.3);
        double bare = Slab(Medium.Constant(C(65))).Of(C(60), null).CautiousToTarget!.Value.TotalMinutes;
        foreach (HeatMaterial m in (HeatMaterial[])[HeatMaterial.Film, HeatMaterial.Glass, HeatMaterial.AirGap])
        {
            Assert.True(Slab(Medium.Constant(C(65)), skin: new BodyLayer(m, Length.FromMillimetres(1), 1)).Of(C(60), null).CautiousToTarget!.Value.TotalMinutes > bare);
        }
    }

    [Fact]
    public void A_bath_that_sags_a_door_that_opens_and_a_room_that_was_loaded_are_never_faster()
    {
        double bare = Slab(Medium.Constant(C(65))).Of(C(60), null).CautiousToTarget!.Value.TotalMinutes;
        WaterBath bath = new(Mass.FromGrams(10_000), Power.FromKilowatts(1), Power.FromWatts(0));
        Assert.True(Slab(Medium.Sagging(C(65), bath, Energy.FromKilojoules(400))).Of(C(60), null).CautiousToTarget!.Value.TotalMinutes > bare);
        Assert.True(Slab(Medium.DoorOpened(C(65), TemperatureDelta.FromKelvin(20), Duration.FromMinutes(3), [Duration.FromMinutes(5), Duration.FromMinutes(10)])).Of(C(60), null).CautiousToTarget!.Value.TotalMinutes > bare);
        Assert.Throws<ArgumentOutOfRangeException>(() => Slab(Medium.Constant(C(140))).Of(C(60), null));
    }

    [Fact]
    public void A_timed_preheat_is_given_back_and_a_hotter_setting_takes_longer()
    {
        OvenWarming own = OvenWarming.Timed(Power.FromKilowatts(3), C(20), C(180), Duration.FromMinutes(12));
        Assert.Equal(12, own.Preheat(C(20), C(180))!.Value.TotalMinutes, 6);
        Assert.True(own.Preheat(C(20), C(230)) > own.Preheat(C(20), C(180)));
        Assert.Null(new OvenWarming(Power.FromWatts(100), Energy.FromKilojoules(20), 5).Preheat(C(20), C(180)));
        Assert.Throws<ArgumentOutOfRangeException>(() => own.Preheat(C(20), C(400)));
    }

    [Fact]
    public void Drying_by_diffusion_follows_its_leading_term_and_the_square_of_the_layer()
    {
        DriedTray tray = new(Mass.FromGrams(500), Fraction.FromPercent(90));
        Mass end = Mass.FromGrams(60);   // 10 of 450 g of water left: MR 0.02222

        // late on, MR = 8/π²·exp(−π²·D·t/(4·L²)): t = −ln(0.02222·π²/8)·4·L²/(π²·D), L 3 mm, D 5e-10
        double seconds = -Math.Log(10 / 450.0 * Math.PI * Math.PI / 8) * 4 * 9e-6 / (Math.PI * Math.PI * 5e-10);
        Assert.Equal(seconds / 60, tray.TimeTo(end, 5e-10, Length.FromMillimetres(6), bothFaces: true).TotalMinutes, 0.5);
        Assert.Equal(4 * seconds / 60, tray.TimeTo(end, 5e-10, Length.FromMillimetres(6), bothFaces: false).TotalMinutes, 2);
        Assert.NotNull(DryingFood.Find("mango")!.Outside(C(60), Length.FromMillimetres(8)));
        Assert.Null(DryingFood.Find("mango")!.Outside(C(60), Length.FromMillimetres(3)));
    }
}
