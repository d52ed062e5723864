using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

public sealed class ConductionSeriesPublished
{
    private static double N(string s) => s == "inf" ? double.PositiveInfinity : double.Parse(s, CultureInfo.InvariantCulture);

    private static BodyShape Shape(string s) => s switch { "slab" => BodyShape.Slab, "sphere" => BodyShape.Sphere, _ => BodyShape.Cylinder };

    [Fact]
    public void Centre_and_mean_match_the_independent_table_of_three_shapes()
    {
        int checkedRows = 0;
        foreach (IReadOnlyDictionary<string, string> row in HeatTables.Rows("conduction-checks").Where(r => r["shape"] is "slab" or "cyl" or "sphere"))
        {
            ConductionSeries s = ConductionSeries.For(Shape(row["shape"]), N(row["Bi"]));
            Assert.Equal(N(row["theta_centre"]), s.CentreAt(N(row["Fo"])), 1e-6);
            Assert.Equal(N(row["theta_mean"]), s.MeanAt(N(row["Fo"])), 1e-6);
            checkedRows++;
        }

        Assert.Equal(99, checkedRows);
    }

    [Fact]
    public void Roots_match_the_independent_table()
    {
        foreach (IReadOnlyDictionary<string, string> row in HeatTables.Rows("conduction-roots"))
        {
            ConductionSeries s = ConductionSeries.For(Shape(row["shape"]), N(row["Bi"]));
            for (int i = 0; i < 6; i++)
            {
                Assert.Equal(N(row[$"zeta{i + 1}"]), s.Roots[i], 1e-6);
                Assert.Equal(N(row[$"C{i + 1}"]), s.Coefficients[i], 2e-6);
            }
        }
    }

    [Fact]
    public void Crossed_shapes_are_products()
    {
        // Finite cylinder Bi_R 5, Bi_L 4, Fo 0.3 and 0.2; brick Bi 2, 4, 8, Fo 0.5, 0.3, 0.1: rows of the same table.
        Assert.Equal(0.401348, ConductionSeries.For(BodyShape.Cylinder, 5).CentreAt(0.3) * ConductionSeries.For(BodyShape.Slab, 4).CentreAt(0.2), 1e-6);
        Assert.Equal(0.485218, ConductionSeries.For(BodyShape.Slab, 2).CentreAt(0.5) * ConductionSeries.For(BodyShape.Slab, 4).CentreAt(0.3) * ConductionSeries.For(BodyShape.Slab, 8).CentreAt(0.1), 1e-6);
    }

    [Fact]
    public void A_tiny_Biot_number_is_outside_the_model() => Assert.Throws<ArgumentOutOfRangeException>(() => ConductionSeries.For(BodyShape.Slab, 0.001));

    [Theory]
    [InlineData(20, 82, 46.9, 18.8)]
    [InlineData(10, 82, 18.0, 4.7)]
    [InlineData(10, 81, 21.3, 5.5)]
    [InlineData(11, 81, 24.1, 6.7)]
    [InlineData(22, 81, 63.6, double.NaN)]
    public void Flat_bag_reaches_80_when_the_hand_reckoning_says(double millimetres, double bath, double cautious, double best)
    {
        Assert.Equal(cautious, FlatBag.Cautious.TimeTo(Length.FromMillimetres(millimetres), C(5), C(bath), C(80))!.Value.TotalMinutes, 0.06);
        if (!double.IsNaN(best))
        {
            Assert.Equal(best, FlatBag.Best.TimeTo(Length.FromMillimetres(millimetres), C(5), C(bath), C(80))!.Value.TotalMinutes, 0.06);
        }
    }

    [Fact]
    public void A_bath_below_the_core_wanted_never_gets_there() => Assert.Null(FlatBag.Best.TimeTo(Length.FromMillimetres(10), C(5), C(79), C(80)));

    [Fact]
    public void Bath_fill_load_and_reduction_match_the_hand_reckoning()
    {
        WaterBath bath = new(Mass.FromGrams(20_000), Power.FromWatts(1400), Power.FromWatts(0));
        Assert.Equal(63.8, bath.TimeToHeat(C(18), C(82))!.Value.TotalMinutes, 0.1);
        Assert.Equal(26.9, bath.TimeToHeat(C(55), C(82))!.Value.TotalMinutes, 0.1);
        Energy taken = WaterBath.HeatTakenUp(Mass.FromGrams(1490), SpecificHeat.FromKilojoulesPerKilogramKelvin(3.2), C(8), C(82));
        Assert.Equal(352.8, taken.Kilojoules, 0.1);
        Assert.Equal(4.21, bath.Fall(taken).Kelvin, 0.01);
        Assert.Equal(4.2, bath.Regain(taken)!.Value.TotalMinutes, 0.01);
        Reduction pan = new(Mass.FromGrams(690), Mass.FromGrams(165));
        Assert.Equal(1185, pan.Heat.Kilojoules, 0.5);
        Assert.Null(new WaterBath(Mass.FromGrams(20_000), Power.FromWatts(500), Power.FromWatts(500)).TimeToHeat(C(18), C(82)));
    }

    [Fact]
    public void Exact_ramp_gives_the_independent_total_of_the_meat_trade_example()
    {
        // z 10 °F, T_ref 150 °F, exact-ramp total 0.830 min at reference; the printed trapezoid gives 0.874 and credits too much.
        HeatResistance r = new("example", "meat", Temperature.FromFahrenheit(150), 1, 50 / 9.0, "worked example");
        ImmutableArray<(double, Temperature)> history = [.. HeatTables.Rows("lethality-check").Select(x => (N(x["t_min"]), Temperature.FromFahrenheit(N(x["T_F"]))))];
        Assert.Equal(0.830, Lethality.Log10(r, history, C(0), C(100)), 5e-4);
        double halves = Lethality.Log10(r, history[..9], C(0), C(100)) + Lethality.Log10(r, history[8..], C(0), C(100));
        Assert.Equal(Lethality.Log10(r, history, C(0), C(100)), halves, 1e-12);
        Assert.Equal(10, Lethality.Log10(r, [(0, C(90)), (10, C(90))], C(54.4), Temperature.FromFahrenheit(150)), 1e-9);
        Assert.Equal(0, Lethality.Log10(r, [(0, C(54)), (600, C(54))], C(54.4), C(100)));
    }

    private static Temperature C(double t) => Temperature.FromCelsius(t);
}
