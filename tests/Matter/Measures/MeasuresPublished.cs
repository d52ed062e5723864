using Coulisse.Matter.Foods;
using Coulisse.Matter.Measures;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Measures;

/// <summary>Measures against outside tables.</summary>
public sealed class MeasuresPublished
{
    // Teaching-kitchen table (tsp 5 mL, tbsp 15 mL, cup 200 mL); our densities for these foods rest on SR28, so the table is outside them.
    private static readonly (string Japanese, string Id)[] Same =
    [
        ("JP: water, vinegar, sake", "cider-vinegar"), ("JP: mirin, soy sauce, miso", "soy-sauce"), ("JP: salt, refined", "salt"), ("JP: jam, marmalade", "jam"),
        ("JP: flour, soft (hakurikiko)", "plain-flour"), ("JP: mayonnaise", "mayonnaise"), ("JP: oil, butter, lard", "rapeseed-oil"), ("JP: milk", "milk"), ("JP: cream", "cream-35"),
    ];

    [Fact]
    public void Cup_weights_agree_with_the_Japanese_teaching_table()
    {
        Dictionary<string, double> table = SharedData.Rows("data/measures/spoon-and-cup-weights.tsv").Where(r => r["ingredient"].StartsWith("JP:", StringComparison.Ordinal) && r["g_jp_cup_200"].Length > 0)
            .ToDictionary(r => r["ingredient"], r => double.Parse(r["g_jp_cup_200"], System.Globalization.CultureInfo.InvariantCulture));
        double cup = Household.SizeOf("cup", "jp")!.Value.Size.Millilitres;

        List<string> off = [];
        foreach ((string japanese, string id) in Same)
        {
            (string key, Held density) = FoodTable.Default.Find(id)!.DensityFor("cup", null)!.Value;
            Assert.False(density.Assumed, id);
            double error = (density.Value * cup / table[japanese]) - 1;
            if (Math.Abs(error) > 0.10)
            {
                off.Add($"{id} by {key}: {error:P0}");
            }
        }

        // Soy sauce is set at mirin's and miso's weight in that table; one of nine may be off.
        Assert.True(off.Count <= Same.Length / 9, string.Join("; ", off));
    }

    [Fact]
    public void Units_agree_with_the_exact_values_of_a_general_library()
    {
        foreach ((string row, string unit, string system) in new[] { ("us teaspoon", "tsp", "us"), ("us tablespoon", "tbsp", "us"), ("us cup", "cup", "us"), ("us fluid-ounce", "floz", "us"), ("us pint", "pint", "us"), ("us quart", "quart", "us"), ("us gallon", "gallon", "us"), ("imperial fluid ounce", "floz", "uk"), ("imperial pint", "pint", "uk"), ("imperial gallon", "gallon", "uk") })
        {
            IReadOnlyDictionary<string, string> published = SharedData.Rows("data/measures/unit-library-check.tsv").Single(r => r["unit"] == row);
            double library = double.Parse(published["js_quantities_1.8.0"], System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(1, Household.SizeOf(unit, system)!.Value.Size.Millilitres / library, 1e-7);
        }
    }

    [Theory]
    [InlineData("au", 20)]
    [InlineData("nz", 15)]
    [InlineData("metric", 15)]
    [InlineData("jp", 15)]
    public void Tablespoons_differ_by_country(string system, double millilitres)
        => Assert.Equal(millilitres, Household.SizeOf("tbsp", system)!.Value.Size.Millilitres);

    [Fact]
    public void A_large_EU_egg_has_its_parts()
    {
        // Regulation (EC) 589/2008 class L, 68 g: edible 59.8, white 39.5, yolk 20.3 (worked value, shares of USDA).
        HenEgg egg = HenEgg.Of("uk", "large");

        Assert.Equal(59.8, egg.InShell.Grams * HenEgg.ShareOf("egg"), 0.1);
        Assert.Equal(39.5, egg.InShell.Grams * HenEgg.ShareOf("white"), 0.1);
        Assert.Equal(20.3, egg.InShell.Grams * HenEgg.ShareOf("yolk"), 0.1);
    }

    [Fact]
    public void A_US_large_egg_is_heavier_in_class_than_the_50_g_of_household_tables_but_within_7_percent()
        => Assert.InRange(HenEgg.Of("us", "large").InShell.Grams * HenEgg.ShareOf("egg") / 50, 1.0, 1.07);

    [Fact]
    public void Leaves_are_found_by_grade_and_by_bloom()
    {
        Assert.Equal(2.0, GelatineLeaf.Find("gold")!.Leaf.Grams);
        Assert.Equal(2.5, GelatineLeaf.Find("160 bloom")!.Leaf.Grams);
        Assert.Null(GelatineLeaf.Find("best"));
    }

    [Fact]
    public void A_system_without_the_unit_says_so() => Assert.Null(Household.SizeOf("pint", "jp"));
}
