using System.Globalization;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Shapes;

/// <summary>Row by row against outside tables: best-known packings in a ring with the ratios a separate search reached, packings in a square, tin volumes.</summary>
public sealed class TablesPublished
{
    // own_ratio of the outside table comes from a search of its own, not from the published list our table carries.
    [Fact]
    public void Every_ring_of_the_table_holds_its_rounds_and_a_slightly_smaller_one_does_not()
    {
        int rows = 0;
        foreach (IReadOnlyDictionary<string, string> row in SharedData.Rows("data/measures/circles-in-circle.tsv"))
        {
            int n = (int)D(row["N"]);
            double ratio = D(row["ratio_R_over_r"]);
            Assert.True(RoundsInRing.Fit(Mm(20 * ratio * (1 + 1e-7)), Mm(20)).Count >= n, $"{n}");
            Assert.True(RoundsInRing.Fit(Mm(20 * ratio * (1 - 1e-4)), Mm(20)).Count < n, $"{n} in a smaller ring");
            if (row["own_result"] == "found")
            {
                Assert.Equal(D(row["own_ratio"]), 1000 / RoundsInRing.RoundFor(Mm(1000), n).Millimetres, 1e-6);
            }

            rows++;
        }

        Assert.Equal(127, rows);
    }

    [Fact]
    public void Places_of_the_outside_table_stand_clear_in_our_smallest_ring()
    {
        foreach (IGrouping<int, (double X, double Y)> set in SharedData.Rows("data/measures/circles-in-circle-coordinates.tsv").Select(r => ((int)D(r["N"]), (D(r["x"]), D(r["y"])))).GroupBy(r => r.Item1, r => r.Item2))
        {
            (double X, double Y)[] centres = [.. set];
            double ring = 2 / RoundsInRing.RoundFor(Mm(1), set.Key).Millimetres / 2;

            Assert.Equal(set.Key, centres.Length);
            Assert.All(centres, c => Assert.True(Math.Sqrt((c.X * c.X) + (c.Y * c.Y)) + 1 <= ring * (1 + 6e-4), $"{set.Key}"));
            for (int i = 0; i < centres.Length; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    Assert.True(Math.Sqrt(Math.Pow(centres[i].X - centres[j].X, 2) + Math.Pow(centres[i].Y - centres[j].Y, 2)) >= 2 - 1e-6, $"{set.Key}");
                }
            }
        }
    }

    [Fact]
    public void Every_square_of_the_table_holds_its_rounds_and_never_fewer_than_plain_rows()
    {
        int rows = 0;
        foreach (IReadOnlyDictionary<string, string> row in SharedData.Rows("data/measures/circles-in-square.tsv"))
        {
            int n = (int)D(row["N"]);
            RoundsInSquare fit = RoundsInSquare.Fit(Mm(10 * D(row["side_over_r"]) * (1 + 1e-7)), Mm(20));

            Assert.True(fit.Count >= n, $"{n}");
            Assert.True(RoundsInSquare.Fit(Mm(10 * D(row["side_over_r"]) * (1 - 1e-5)), Mm(20)).Count < n, $"{n} in a smaller square");
            Assert.True(fit.Count >= fit.InRows);
            rows++;
            Assert.True(RoundsInSquare.Fit(Mm(10 * D(row["plain_grid_side_over_r"])), Mm(20)).Count >= n, $"{n} in plain rows");
        }

        Assert.Equal(50, rows);
    }

    [Fact]
    public void Every_tin_of_the_table_has_its_volume_and_batter()
    {
        int met = 0;
        int rows = 0;
        foreach (IReadOnlyDictionary<string, string> row in SharedData.Rows("data/measures/tin-volumes.tsv"))
        {
            rows++;
            if (Tin(row["geometry"], row["tin"]) is not { } tin)
            {
                Assert.Fail($"{row["tin"]}: {row["geometry"]} is not read");
                continue;
            }

            Assert.Equal(D(row["volume_mL"]), tin.Volume.Millilitres, 0.51);
            if (row["fill"].Length > 0 && row["batter_g"].Length > 0)
            {
                Assert.Equal(D(row["batter_g"]), MouldFill.Share(tin, Density.FromGramsPerMillilitre(D(row["density_batter"])), Fraction.FromValue(D(row["fill"]))).Mass.Grams, 0.6);
            }

            met++;
        }

        Assert.Equal(rows, met);
        Assert.Equal(52, rows);
    }

    private static Mould? Tin(string geometry, string name)
    {
        double[] v = [.. System.Text.RegularExpressions.Regex.Matches(geometry, @"(?<=[=x ])\d+(\.\d+)?").Select(m => D(m.Value))];
        return (geometry.Split(' ')[0], v.Length) switch
        {
            ("cylinder", 2) => new RoundMould(Mm(v[0]), Mm(v[1])),
            ("frustum", 3) => new TaperedMould(Mm(v[0]), Mm(v[1]), Mm(v[2])),
            ("box", 3) => new BoxMould(Mm(v[0]), Mm(v[1]), Mm(v[2])),
            ("prismatoid", 5) => new LoafMould(Mm(v[0]), Mm(v[1]), Mm(v[2]), Mm(v[3]), Mm(v[4])),
            ("cylinder", 0) when Named(name) is { Length: 2 } d => new RoundMould(Mm(d[0]), Mm(d[1])), // "… 200 x 50" says it in its name
            ("box", 0) when Named(name) is { Length: 2 } d => new BoxMould(Mm(d[0]), Mm(d[0]), Mm(d[1])),
            ("prismatoid", 4) when Named(name) is { Length: 3 } d => new LoafMould(Mm(v[0]), Mm(v[1]), Mm(v[2]), Mm(v[3]), Mm(d[2])),
            ("half", 1) when geometry.Contains("ellipsoid") && Named(name) is { Length: 3 } d => new ShellMould(Mm(d[0]), Mm(d[1]), Mm(d[2])),
            ("half", 1) when geometry.Contains("sphere") => DomeMould.HalfSphere(Mm(v[0])),
            ("half", 2) when geometry.Contains("torus") => new RingMould(Mm(v[0] + v[1]), Mm(v[1])),
            _ => null,
        };
    }

    private static double[] Named(string name) => [.. System.Text.RegularExpressions.Regex.Matches(name, @"(?<=\s)\d+(\.\d+)?(?=\s|$)").Select(m => D(m.Value))];

    private static double D(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
