using System.Globalization;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using Coulisse.Tests;
using CsCheck;

namespace Coulisse.Matter.Tests.Substance;

/// <summary>Choi and Okos's polynomials and the mixing bounds, against values worked out apart from this code.</summary>
public sealed class ThermalPropertiesPublished
{
    private static double N(string s) => double.Parse(s, CultureInfo.InvariantCulture);

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static ThermalParts Single(string name) => new(name == "water" ? 1 : 0, name == "protein" ? 1 : 0, name == "fat" ? 1 : 0, name == "carb" ? 1 : 0, name == "fibre" ? 1 : 0, name == "ash" ? 1 : 0);

    private static ThermalParts Named(string name)
    {
        // "lean meat: water 75 protein 21 fat 3 ash 1"
        string[] words = name[(name.IndexOf(':', StringComparison.Ordinal) + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        double Part(string part) => Array.IndexOf(words, part) is var i and >= 0 ? N(words[i + 1]) : 0;
        return ThermalParts.FromGrams(Part("water"), Part("protein"), Part("fat"), Part("carb"), Part("fibre"), Part("ash"));
    }

    [Fact]
    public void Every_row_of_the_separate_reckoning_of_Choi_and_Okos_is_met_to_its_last_digit()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = Heat.HeatTables.Rows("choi-okos-checks");
        foreach (IReadOnlyDictionary<string, string> row in rows)
        {
            bool one = row["kind"] == "component";
            ThermalProperties p = ThermalProperties.Of(one ? Single(row["name"]) : Named(row["name"]), C(N(row["T_C"])));
            Assert.Equal(N(row["k_W_mK"]), p.Fast.WattsPerMetreKelvin, 6e-6);
            Assert.Equal(N(row["rho_kg_m3"]), p.Density.GramsPerMillilitre * 1000, 6e-3);
            Assert.Equal(N(row["cp_kJ_kgK"]), p.Heat.KilojoulesPerKilogramKelvin, 6e-5);
            Assert.Equal(N(row["alpha_1_m2_s"]), p.FastDiffusivity.SquareMetresPerSecond, 6e-12);
            if (!one)
            {
                Assert.Equal(N(row["alpha_2_m2_s"]), p.SlowDiffusivity.SquareMetresPerSecond, 6e-12);
            }
        }

        Assert.True(rows.Count >= 38);
    }

    [Fact]
    public void Pork_shoulder_at_minus_40_has_the_ice_density_and_bounds_of_a_separate_reckoning()
    {
        // Composition of the refrigeration handbook's example; its printed answers were not opened.
        ThermalProperties p = ThermalProperties.Of(ThermalParts.FromGrams(72.63, 19.55, 7.14, 0, 0, 1.02), C(-40), C(-2.2));
        Assert.Equal(0.6125, p.IceShare, 0.003);   // the parts sum to 100.34 and are taken to one
        Assert.Equal(999.6, p.Density.GramsPerMillilitre * 1000, 1.0);
        Assert.Equal(1.83, p.Fast.WattsPerMetreKelvin, 0.01);
        Assert.Equal(0.49, p.Slow.WattsPerMetreKelvin, 0.005);
    }

    [Fact]
    public void Apparent_heat_summed_from_thawed_to_deep_cold_holds_the_heat_of_the_ice()
    {
        ThermalParts meat = ThermalParts.FromGrams(75, 21, 3, 0, 0, 1);
        double sum = 0;
        for (double t = -40; t < -1.5; t += 0.001)
        {
            sum += ThermalProperties.Of(meat, C(t + 0.0005), C(-1.5)).Heat.KilojoulesPerKilogramKelvin * 0.001;
        }

        double ice = ThermalProperties.Of(meat, C(-40), C(-1.5)).IceShare * 333.6;
        Assert.InRange(sum - ice, 38.5 * 1.5, 38.5 * 3.6);   // what is left is warming: between all ice and all water
    }

    [Fact]
    public void Bounds_stand_in_order_for_any_mixture()
        => Gen.Select(Gen.Double[0, 1].Array[6], Gen.Double[0, 120]).Sample((x, t) =>
        {
            ThermalProperties p = ThermalProperties.Of(ThermalParts.FromGrams(x[0] + 1e-3, x[1], x[2], x[3], x[4], x[5]), C(t));
            return p.Slow.WattsPerMetreKelvin <= p.Fast.WattsPerMetreKelvin * (1 + 1e-12) && p.IceShare == 0;
        });

    [Theory]
    [InlineData(-41.0, -1.0)]
    [InlineData(151.0, -1.0)]
    [InlineData(-5.0, double.NaN)]
    [InlineData(-5.0, 1.0)]
    public void Outside_the_fitted_range_there_is_no_answer(double at, double freezing)
        => Assert.Throws<ArgumentOutOfRangeException>(() => ThermalProperties.Of(ThermalParts.FromGrams(75, 21, 3, 0, 0, 1), C(at), double.IsNaN(freezing) ? null : C(freezing)));
}
