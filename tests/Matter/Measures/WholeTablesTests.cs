using System.Globalization;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Measures;
using Coulisse.Matter.Substance;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Measures;

/// <summary>Outside tables read row by row: salts of a meter, factors of energy, eggs of every country, alcohol left by every process.</summary>
public sealed class WholeTablesTests
{
    [Fact]
    public void Every_saturated_salt_is_met_at_every_temperature()
    {
        // Greenspan 1977 (J. Res. NBS 81A) against the handbook's form A exp(B/T), whose claim is 2 %. Two salts have no coefficients in our source.
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/measures/saturated-salts.tsv");
        Dictionary<string, MeterSalt> held = MeterSalt.All.ToDictionary(s => s.Salt);
        string[] off = [.. rows.Where(r => held.ContainsKey(r["salt"])).SelectMany(r => new[] { 5, 10, 15, 20, 25 }.Where(t => Math.Abs((100 * held[r["salt"]].Activity(t) / N(r[$"rh_{t}C"])) - 1) > 0.02).Select(t => $"{r["salt"]} {t}"))];

        Assert.Equal(7, rows.Count);
        Assert.Equal(["potassium carbonate", "sodium bromide"], rows.Select(r => r["salt"]).Where(s => !held.ContainsKey(s)));
        Assert.Empty(off);

        // Table salt is also what the models of water activity end at: saturated, 6.15 mol/kg.
        Assert.Equal(N(rows.Single(r => r["salt"] == "sodium chloride")["rh_25C"]) / 100, WaterActivity.Norrish(new Solution { Water = 100, Salt = 40 }), 0.005);
        Assert.Equal(("sodium chloride", "potassium chloride", "magnesium chloride"), (MeterSalt.Nearest(0.7).Salt, MeterSalt.Nearest(0.95).Salt, MeterSalt.Nearest(0.2).Salt));
    }

    // What our composition does not tell apart: polyols by kind, fats that are no fat, fibre that dissolves.
    private static readonly string[] NotToldApart = ["salatrims", "erythritol", "glycerol", "isomalt", "lactitol", "maltitol", "mannitol", "polydextrose", "sorbitol", "D-tagatose", "xylitol", "hydrogenated starch hydrolysates",
        "carbohydrate less non-digestible carbohydrate and sugar alcohols", "soluble non-digestible carbohydrate", "insoluble non-digestible carbohydrate"];

    [Fact]
    public void Every_factor_of_energy_is_ours_or_not_told_apart()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/food/energy-factors.tsv");
        List<string> off = [];
        List<string> apart = [];
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            string part = r["component"].Split(" (")[0];
            if (NotToldApart.Contains(part))
            {
                apart.Add(part);

                // Counted higher than by their own factor, never lower, but for glycerol and salatrims.
                double taken = r["regime"] switch { "ANZ" => 14, "US" => 4, _ => part == "salatrims" ? 37 : 10 };
                if (N(r["regime"] == "US" ? r["kcal_per_g"] : r["kj_per_g"]) > taken && part != "glycerol")
                {
                    off.Add($"{r["regime"]} {part} counted too low");
                }

                continue;
            }

            Composition gram = part switch
            {
                "carbohydrate" or "available carbohydrate" or "total carbohydrate" => new() { Carbohydrate = 1 }, "polyols" => new() { Carbohydrate = 1, Polyols = 1 }, "protein" => new() { Protein = 1, NitrogenFactor = 6.25 },
                "fat" or "total fat" => new() { Fat = 1 }, "alcohol" => new() { Alcohol = 1 }, "organic acid" or "organic acids" => new() { Acid = 1 }, "fibre" or "unavailable carbohydrate" => new() { Fibre = 1 },
                _ => throw new InvalidOperationException($"{r["regime"]} {part} is a row nobody answers for"),
            };
            Composition c = gram with { Protein = gram.Protein ?? 0, Fat = gram.Fat ?? 0, Carbohydrate = gram.Carbohydrate ?? 0 };
            (double? kj, double? kcal) = r["regime"] switch
            {
                "EU" => (FoodEnergy.EuKilojoules(c), FoodEnergy.EuKilocalories(c)), "ANZ" => (FoodEnergy.AnzKilojoules(c), null), "US" => ((double?)null, FoodEnergy.UsKilocalories(c)),
                _ => (null, FoodEnergy.Specific(0, 0, 0, 1, 4, 9, 4)),
            };
            off.AddRange(new[] { (r["kj_per_g"], kj, "kJ"), (r["kcal_per_g"], kcal, "kcal") }.Where(x => x.Item1.Length > 0 && !(Math.Abs((x.Item2 ?? double.NaN) - N(x.Item1)) < 1e-9)).Select(x => $"{r["regime"]} {part}: {x.Item2} {x.Item3} for {x.Item1}"));
        }

        Assert.Equal(41, rows.Count);
        Assert.Empty(off);
        Assert.Equal(NotToldApart.Order(StringComparer.Ordinal), apart.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Eggs_of_every_country_have_their_class_and_parts()
    {
        // Our table carries the same classes, so this is a check of the carrying-over and of size words; the parts are worked out by our shares.
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/measures/egg-sizes.tsv");
        Dictionary<string, string> regimes = new() { ["EU/UK"] = "uk", ["US (per-egg average of the dozen)"] = "us", ["Japan"] = "jp", ["Australia"] = "au", ["New Zealand"] = "nz", ["Canada"] = "ca", ["South Africa"] = "za" };
        string[] off = [.. rows.Where(r =>
        {
            HenEgg egg = HenEgg.Of(regimes[r["regime"]], r["size"]);
            double g = egg.InShell.Grams;
            return Math.Abs(g - N(r["mid_g"])) > 1e-9 || (r["min_g"].Length > 0 && Math.Abs(egg.Least.Grams - N(r["min_g"])) > 1e-9) || (r["max_g"].Length > 0 && Math.Abs(egg.Most.Grams - N(r["max_g"])) > 1e-9)
                || Math.Abs((g * HenEgg.ShareOf("egg")) - N(r["edible_g"])) > 0.1 || Math.Abs((g * HenEgg.ShareOf("white")) - N(r["white_g"])) > 0.15 || Math.Abs((g * HenEgg.ShareOf("yolk")) - N(r["yolk_g"])) > 0.1;
        }).Select(r => $"{r["regime"]} {r["size"]}")];

        Assert.Equal(32, rows.Count);
        Assert.Empty(off);
    }

    [Theory]
    // USDA SR26 01123, edible grams of one egg by size; the weight class is of the dozen's average, so ours lie up to 7 % above.
    [InlineData("Small", 38)]
    [InlineData("Medium", 44)]
    [InlineData("Large", 50)]
    [InlineData("Extra Large", 56)]
    [InlineData("Jumbo", 63)]
    public void Edible_grams_of_American_sizes_lie_near_the_household_weights(string size, double edible)
        => Assert.InRange(HenEgg.Of("us", size).InShell.Grams * HenEgg.ShareOf("egg") / edible, 1.0, 1.07);

    [Theory]
    [InlineData("data/measures/alcohol-retention.tsv", "process")]
    [InlineData("data/heat/alcohol-retention.tsv", "method")]
    public void Alcohol_left_is_that_of_every_process_and_every_time(string table, string column)
    {
        // USDA retention factors, release 6: a check of the carrying-over of every row.
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows(table);
        string[] off = [.. rows.Select(r => (Process: r[column], Minutes: r["minutes"], Left: N(r["retained_pct"]) / 100)).Where(r => Math.Abs(Ours(r.Process, r.Minutes) - r.Left) > 1e-9).Select(r => $"{r.Process} {r.Minutes}: {Ours(r.Process, r.Minutes)}")];

        Assert.True(rows.Count >= 10);
        Assert.Empty(off);

        static double Ours(string process, string minutes) => process switch
        {
            "none, eaten at once" => 1,
            "flamed" => Spirit.LeftBy("flamed"),
            _ when process.Contains("off the heat", StringComparison.Ordinal) || process.Contains("removed from heat", StringComparison.Ordinal) => Spirit.LeftBy("off the heat"),
            _ when process.Contains("overnight", StringComparison.Ordinal) => Spirit.LeftBy("stood overnight"),
            _ when process.Contains("not stirred in", StringComparison.Ordinal) => Spirit.LeftBy("baked"),
            _ => Spirit.LeftAfter(N(minutes)).Best,
        };
    }

    [Fact]
    public void Between_the_times_of_the_table_what_is_left_lies_between_its_figures()
    {
        (double Minutes, double Left)[] rows = [.. SharedData.Rows("data/measures/alcohol-retention.tsv").Where(r => r["minutes"].Length > 0 && !r["process"].Contains("not stirred", StringComparison.Ordinal)).Select(r => (N(r["minutes"]), N(r["retained_pct"]) / 100))];

        Assert.Equal(6, rows.Length);
        Assert.All(rows.Zip(rows.Skip(1)), p => Assert.InRange(Spirit.LeftAfter((p.First.Minutes + p.Second.Minutes) / 2).Best, p.Second.Left, p.First.Left));
    }

    [Fact]
    public void Every_row_of_sugar_in_water_is_met()
    {
        // Density: NBS circular 440; boiling: Brown 1912; freezing and water activity worked by another hand.
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = SharedData.Rows("data/measures/sugar-solutions.tsv");
        List<string> off = [];
        foreach (IReadOnlyDictionary<string, string> r in rows)
        {
            double brix = N(r["brix"]);
            Solution s = new() { Water = 100 - brix, Sucrose = brix };
            void Check(string column, double? ours, double allowed)
            {
                if (r[column].Length > 0 && !(Math.Abs((ours ?? double.NaN) - N(r[column])) <= allowed))
                {
                    off.Add(string.Create(CultureInfo.InvariantCulture, $"{brix} Brix, {column}: {ours:0.####} for {r[column]}"));
                }
            }

            Check("density_g_per_mL", Syrup.Density(brix), 0.001);
            Check("g_sucrose_per_L", Syrup.Density(brix) * 10 * brix, 1.1);
            Check("bpe_C", Syrup.BoilingPoint(brix) - 100, 0.15);
            Check("fp_depression_C", -Freezing.Point(s), Math.Max(0.05, 0.02 * (r["fp_depression_C"].Length > 0 ? N(r["fp_depression_C"]) : 0)));
            Check("aw_25C", WaterActivity.Norrish(s), 0.0015);
        }

        Assert.Equal(17, rows.Count);
        Assert.Empty(off);
    }

    private static double N(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
