using System.Globalization;
using Coulisse.Matter.Measures;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Substance;

/// <summary>Tables of outside data read whole: alcohol left, egg sizes, sucrose in water, worked check values of gelatine, syrups and alcohol.</summary>
public sealed class PublishedSolutionsTests
{
    [Fact]
    public void Alcohol_left_meets_every_time_of_the_retention_table()
    {
        // USDA retention factors, release 6: a check of the carrying-over and of what lies between, not of the source.
        (double Minutes, double Percent)[] rows = [.. SharedData.Rows("data/measures/alcohol-retention.tsv").Where(r => r["minutes"].Length > 0 && !r["process"].Contains("not stirred", StringComparison.Ordinal)).Select(r => (N(r["minutes"]), N(r["retained_pct"])))];

        Assert.Equal(6, rows.Length);
        Assert.All(rows, r => Assert.Equal(r.Percent / 100, Spirit.LeftAfter(r.Minutes).Best, 1e-9));
        Assert.All(rows.Zip(rows.Skip(1)), p => Assert.InRange(Spirit.LeftAfter((p.First.Minutes + p.Second.Minutes) / 2).Best, p.Second.Percent / 100, p.First.Percent / 100));
    }

    [Fact]
    public void Eggs_of_the_published_classes_have_their_weight_and_parts()
    {
        // Limits of Reg. (EC) 589/2008; parts by SR26 01123 to 01125 (12 % shell, 33 g white and 17 g yolk in 50 g).
        IReadOnlyDictionary<string, string>[] rows = [.. SharedData.Rows("data/measures/egg-sizes.tsv").Where(r => r["regime"] == "EU/UK" && r["size"] is "S" or "M" or "L" or "XL" && r["regime"] == "EU/UK")];

        Assert.Equal(4, rows.Length);
        Assert.All(rows, r =>
        {
            HenEgg egg = HenEgg.Of("uk", r["size"]);
            Assert.Equal(N(r["mid_g"]), egg.InShell.Grams, 1e-9);
            Assert.Equal(N(r["edible_g"]), egg.InShell.Grams * HenEgg.ShareOf("egg"), 0.1);
            Assert.Equal(N(r["yolk_g"]), egg.InShell.Grams * HenEgg.ShareOf("yolk"), 0.1);
            Assert.Equal(N(r["white_g"]), egg.InShell.Grams * HenEgg.ShareOf("white"), 0.15);
        });
    }

    [Fact]
    public void Sucrose_freezes_and_binds_water_as_the_table_worked_by_another_hand()
    {
        IReadOnlyDictionary<string, string>[] rows = [.. SharedData.Rows("data/measures/sugar-solutions.tsv").Where(r => N(r["brix"]) is >= 5 and <= 65)];

        Assert.True(rows.Length >= 8);
        Assert.All(rows, r =>
        {
            Solution s = new() { Water = 100 - N(r["brix"]), Sucrose = N(r["brix"]) };
            Assert.Equal(N(r["aw_25C"]), WaterActivity.Norrish(s), 0.0015);
            if (r["fp_depression_C"].Length > 0)
            {
                Assert.Equal(-N(r["fp_depression_C"]), Freezing.Point(s)!.Value, Math.Max(0.05, 0.02 * N(r["fp_depression_C"])));
            }
        });
    }

    [Fact]
    public void Worked_values_of_gelatine_syrups_and_alcohol_come_out()
    {
        Dictionary<string, string> expected = SharedData.Rows("data/measures/check-values.tsv").ToDictionary(r => r["id"], r => r["expected"], StringComparer.Ordinal);
        Assert.Equal(75, expected.Count);
        (string Id, double[] Ours, double Tolerance)[] worked =
        [
            ("ge200_250", Bloom(10, 200, 250), 0.01), ("ge200_160", Bloom(10, 200, 160), 0.01), ("ge240_200", Bloom(12, 240, 200), 0.01),
            ("sy2", [Syrup.Dilution(500, 65, 30)], 0.1), ("sy4", [Syrup.Reduced(2400, 8, 30)], 1), ("ov1", [Syrup.OverrunPercent(1.10, 0.62)], 0.1),
            ("aw_s20", [Norrish(20)], 0.0005), ("aw_s40", [Norrish(40)], 0.0005), ("aw_s60", [Norrish(60)], 0.0005), ("aw_s65", [Norrish(65)], 0.0005),
            ("aw_r", [WaterActivity.Raoult(new Solution { Water = 80, Glycerol = 20 })], 0.0005), ("al1", [Spirit.EthanolGrams(50, 40)], 0.01), ("al2", [Spirit.EthanolGrams(150, 13) * Spirit.LeftAfter(30).Best], 0.01),
        ];
        Assert.All(worked, w => Assert.All(w.Ours.Zip(Figures(expected[w.Id])), p => Assert.True(Math.Abs(p.First - p.Second) <= w.Tolerance, $"{w.Id}: {p.First} against {p.Second}")));
    }

    private static double[] Bloom(double grams, double from, double to) => GelatineStrength.Convert(Mass.FromGrams(grams), from, to) is var g ? [g.Linear.Grams, g.SquareRoot.Grams] : [];

    private static double Norrish(double brix) => WaterActivity.Norrish(new Solution { Water = 100 - brix, Sucrose = brix });

    private static double[] Figures(string text) => [.. System.Text.RegularExpressions.Regex.Matches(text, @"\d+(\.\d+)?").Select(m => N(m.Value))];

    private static double N(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
