using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>The figures of the traps, each table reckoned apart from this code and read whole: a sweet egg base in a bag, puree in the cold, a low roast.</summary>
public sealed class TrapTablesPublished
{
    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static SolidBody Body(SolidShape shape, double alpha, double k, double h, params double[] mm)
        => SolidBody.Of(shape, [.. mm.Select(Length.FromMillimetres)], Diffusivity.FromSquareMetresPerSecond(alpha), Conductivity.FromWattsPerMetreKelvin(k), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h));

    private static ImmutableArray<(double Minute, Temperature At)> Course(SolidBody body, double start, double medium, double minutes, int steps)
        => [.. Enumerable.Range(0, steps + 1).Select(i => minutes * i / steps).Select(m => (m, body.CoreAfter(C(start), C(medium), Duration.FromMinutes(m))))];

    [Fact]
    public void Every_row_of_the_egg_base_in_a_bag()
    {
        // The diffusivity is printed to three digits, so to half a percent of the time: a tenth of a kelvin at twenty minutes, and by 10^(ΔT/z) 5 to 8 % of the logs.
        // No floor here: the table credits below 55 °C too, which the product does not.
        HeatResistance sweet = new("Salmonella", "sugared yolk", C(60), 4.0, 4.6, "Garibaldi 1969");
        HeatResistance yolk = new("Salmonella", "yolk, resistant", C(60), 0.69, 4.7, "kinetic study");
        HeatResistance egg = new("Salmonella", "whole egg, resistant", C(56.7), 4.09, 4.6, "Brackett 2001");
        HeatResistance cream = new("Listeria", "ice-cream mix", C(79.4), 0.5 / 60, 7.0, "Bradshaw 1987");
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/traps-egg-base-bag.tsv");
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            (double alpha, double k) = r["properties"] == "mid" ? (1.33e-7, 0.417) : (1.15e-7, 0.36);
            SolidBody bag = Body(SolidShape.Slab, alpha, k, 95, r.N("thickness_mm"));
            (double start, double bath) = (r.N("start_C"), r.N("bath_C"));
            Assert.Equal(r.N("T_core_20min_C"), bag.CoreAfter(C(start), C(bath), Duration.FromMinutes(20)).Celsius, 0.15);
            Assert.Equal(r.N("min_to_bath_minus_1"), bag.TimeTo(C(start), C(bath), C(bath - 1))!.Value.TotalMinutes, 1.1 + (0.005 * r.N("min_to_bath_minus_1")));   // printed in whole minutes, rounded up
            ImmutableArray<(double, Temperature)> course = Course(bag, start, bath, 360, 720);
            double[] Logs(HeatResistance x) => [.. Enumerable.Range(0, course.Length).Select(i => i == 0 ? 0 : Lethality.Log10(x, [course[i - 1], course[i]], C(0), C(200)))];
            void At20(HeatResistance x, string column) => Assert.Equal(r.N(column), Logs(x).Take(41).Sum(), 0.006 + (0.08 * r.N(column)));
            void Minutes(HeatResistance x, double logs, string column)
            {
                double sum = 0;
                double? at = null;
                double[] steps = Logs(x);
                for (int i = 1; i < steps.Length && at is null; i++)
                {
                    sum += steps[i];
                    at = sum >= logs ? i / 2.0 : null;
                }

                if (r[column].StartsWith('>'))
                {
                    Assert.Null(at);
                }
                else
                {
                    Assert.Equal(r.N(column), at!.Value, 1.1 + (0.005 * r.N(column)));   // whole minutes, rounded one way or up
                }
            }

            At20(sweet, "log20_SY");
            At20(yolk, "log20_RY");
            At20(egg, "log20_RW");
            At20(cream, "log20_LM");
            Minutes(yolk, 7, "min_RY_7log");
            Minutes(egg, 7, "min_RW_7log");
            Minutes(sweet, 5, "min_SY_5log");
            Minutes(sweet, 7, "min_SY_7log");
            Minutes(cream, 6, "min_LM_6log");
        }

        Assert.Equal(72, rows.Count);
    }

    [Fact]
    public void Every_row_of_the_low_roast()
    {
        // The table credits below 54.4 °C too, which the product does not.
        HeatResistance line = new("Salmonella", "red meat, regulatory line", C(60), 1.77, 5.56, "FSIS Appendix A");
        SolidBody roast = Body(SolidShape.Slab, 1.3e-7, 0.49, 95, 60);
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/heat/traps-low-roast.tsv");
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            ImmutableArray<(double, Temperature)> course = Course(roast, 5, r.N("bath_C"), 60 * r.N("hours"), 720);
            Assert.Equal(r.N("core_end_C"), course[^1].Item2.Celsius, 0.06);
            Range(r["Cperf_log_no_lag"], PerfringensGrowth.Log10(course, lag: false));
            Range(r["Cperf_log_lag"], PerfringensGrowth.Log10(course));
            if (double.TryParse(r["salmonella_log"], NumberStyles.Float, CultureInfo.InvariantCulture, out double logs))
            {
                Assert.Equal(logs, Lethality.Log10(line, course, C(0), C(200)), Math.Max(0.06, 0.02 * logs));
            }
        }

        Assert.Equal(24, rows.Count);
    }

    [Fact]
    public void Every_row_of_puree_in_the_cold()
    {
        CoolingRule rule = CoolingRule.Of("au");
        int rows = 0;
        foreach (IReadOnlyDictionary<string, string> r in SharedData.Rows("data/heat/traps-cooling.tsv"))
        {
            rows++;
            ImmutableArray<(double, Temperature)> course = Cooled(r["case"], r.N("h_W_m2K"), r["h_W_m2K"], r["medium"].Contains("ice", StringComparison.Ordinal) ? 0.5 : 4);
            ImmutableArray<(CoolingStage Stage, double? Hours, bool Kept)> judged = rule.Judge(course);
            Assert.Equal(r.N("h_60_to_21"), judged[0].Hours!.Value, Math.Max(0.056, 0.01 * r.N("h_60_to_21")));
            Assert.Equal(r.N("h_21_to_5"), judged[1].Hours!.Value, Math.Max(0.056, 0.01 * r.N("h_21_to_5")));
            Assert.Equal(r["pass_two_stage"] == "yes", judged.All(j => j.Kept));
            Range(r["Cperf_log_no_lag"], PerfringensGrowth.Log10(course, lag: false));
            Range(r["Cperf_log_lag"], PerfringensGrowth.Log10(course));
        }

        Assert.Equal(29, rows);
    }

    // What each row says of itself: a pot of 20 by 12.7 cm, a layer of a thickness from both faces or from the top, a flat bag; alpha 1.4e-7 and k 0.55, bags 1.3e-7 and 0.50; from 85 °C.
    private static ImmutableArray<(double, Temperature)> Cooled(string what, double h, string written, double medium)
    {
        double Number(string before) => double.Parse(System.Text.RegularExpressions.Regex.Match(what, before + @" (\d+)").Groups[1].Value, CultureInfo.InvariantCulture);
        if (what.Contains("stirred (lumped)", StringComparison.Ordinal))
        {
            // 4.12 kg at 3.8 kJ/(kg·K) behind sides and bottom: as a layer of volume over area that conducts so well that it is one temperature
            double depth = 0.004 / ((Math.PI * 0.2 * 0.127) + (Math.PI * 0.01));
            HeatMaterial stirred = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(500), Diffusivity.FromSquareMetresPerSecond(500 / (4.12 * 3800 / 0.004)));
            double u = double.Parse(written[2..], CultureInfo.InvariantCulture);
            return HeatBody.Piece(SolidShape.Slab, [Length.FromMetres(2 * depth)], stirred, new BodyFace(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(u), Medium.Constant(C(medium))), 4).Follow(C(85), Duration.FromHours(4), 0.005, 4000).History;
        }

        SolidBody body = what.StartsWith("4 L pot", StringComparison.Ordinal) ? Body(SolidShape.Cylinder, 1.4e-7, 0.55, h, 200, 127)
            : what.StartsWith("flat bag", StringComparison.Ordinal) ? Body(SolidShape.Slab, 1.3e-7, 0.5, h, Number("bag"))
            : Body(SolidShape.Slab, 1.4e-7, 0.55, h, Number("layer") * (what.Contains("top face only", StringComparison.Ordinal) ? 2 : 1));
        return Course(body, 85, medium, 60 * 40, 9600);
    }

    private static void Range(string printed, (double Least, double Most) ours)
    {
        string[] ends = printed.Split('-');
        Assert.Equal(double.Parse(ends[0], CultureInfo.InvariantCulture), ours.Least, 0.11);
        Assert.Equal(double.Parse(ends[^1], CultureInfo.InvariantCulture), ours.Most, 0.11);
    }
}
