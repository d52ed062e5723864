using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;
using CsCheck;

namespace Coulisse.Matter.Tests.Substance;

/// <summary>Solutions against handbook figures and numbers worked apart from this code (file check-values of the outside data; ids in brackets).</summary>
public sealed class SubstancePublished
{
    [Theory]
    // [aw_s20 to aw_s65] Norrish, sucrose.
    [InlineData(20, 0.9859)]
    [InlineData(40, 0.9589)]
    [InlineData(60, 0.8953)]
    [InlineData(65, 0.8654)]
    public void Water_activity_of_sucrose(double brix, double aw)
        => Assert.Equal(aw, WaterActivity.Norrish(new Solution { Water = 100 - brix, Sucrose = brix }), 0.0005);

    [Fact]
    public void A_mix_of_sugars_is_a_band_from_five_models()
    {
        // [aw_mixA] 100 water, 120 sucrose, 30 glucose.
        WaterActivity band = WaterActivity.Of(new Solution { Water = 100, Sucrose = 120, Hexoses = 30 });

        Assert.Equal([0.8830, 0.8909, 0.9148, 0.8924, 0.8775], band.Models.Select(m => Math.Round(m.Value!.Value, 4)));
        Assert.Equal((0.8775, 0.8924), (Math.Round(band.Low, 4), Math.Round(band.High, 4)));
    }

    [Fact]
    public void Ross_multiplies_sugar_glycerol_and_salt()
        // [aw_mixB] 0.9635 × 0.9608 × 0.9723.
        => Assert.Equal(0.9001, WaterActivity.Ross(new Solution { Water = 100, Sucrose = 60, Glycerol = 20, Salt = 5 }), 0.0005);

    [Fact]
    public void Saturated_salt_reads_as_the_reference_humidity()
        // Greenspan 1977: sodium chloride 75.3 % at 25 °C.
        => Assert.Equal(0.753, WaterActivity.Norrish(new Solution { Water = 100, Salt = 40 }), 0.003);

    [Theory]
    // Handbook (from memory): sucrose 10, 20, 30 % freeze at −0.63, −1.47, −2.64 °C.
    [InlineData(10, -0.63)]
    [InlineData(20, -1.47)]
    [InlineData(30, -2.64)]
    public void Sucrose_freezes_where_the_handbook_says(double brix, double celsius)
        => Assert.Equal(celsius, Freezing.Point(new Solution { Water = 100 - brix, Sucrose = brix })!.Value, 0.03);

    [Theory]
    // [fp1, ice5 to ice18] water 60, sucrose 14, glucose 4, milk solids 10.
    [InlineData(-5, 0.348)]
    [InlineData(-10, 0.643)]
    [InlineData(-12, 0.694)]
    [InlineData(-18, 0.782)]
    public void A_frozen_mix_has_its_share_of_ice(double celsius, double share)
    {
        Solution mix = new() { Water = 60, Sucrose = 14, Hexoses = 4, Lactose = 5.45, MilkSolids = 10 };

        Assert.Equal(-3.12, Freezing.Point(mix)!.Value, 0.05);
        Assert.Equal(share, Freezing.IceShare(mix, celsius), 0.005);
        Assert.Equal(0, Freezing.IceShare(mix, -3.0));
    }

    [Fact]
    public void Milk_from_the_food_table_freezes_where_dairies_check_it()
    {
        // Cow's milk freezes at about −0.52 to −0.55 °C (dairy practice, from memory).
        Solution milk = Solution.Of(FoodTable.Default.Find("milk")!.Composition, 100)!;

        Assert.InRange(Freezing.Point(milk)!.Value, -0.65, -0.45);
    }

    [Fact]
    public void Syrups_dilute_mix_and_reduce()
    {
        Assert.Equal(583.3, Syrup.Dilution(500, 65, 30), 0.1); // [sy2]
        Assert.Equal(640, Syrup.Reduced(2400, 8, 30), 1); // [sy4]
        Assert.Equal(1.2296, Syrup.Density(50)!.Value, 0.001); // [sy5]
        Assert.Equal(77.4, Syrup.OverrunPercent(1.10, 0.62), 0.1); // [ov1]
        Assert.Throws<ArgumentOutOfRangeException>(() => Syrup.Dilution(500, 65, 70));
        Assert.Throws<ArgumentOutOfRangeException>(() => Syrup.Reduced(500, 30, 20));
    }

    [Theory]
    // Brown 1912 (open table): 62 Brix boils 3.4 °C, 74 Brix 8.4 °C above water.
    [InlineData(62, 103.4, 0.3)]
    [InlineData(74, 108.4, 0.3)]
    public void Boiling_points_between_the_held_rows_match_the_others(double brix, double celsius, double tolerance)
        => Assert.Equal(celsius, Syrup.BoilingPoint(brix)!.Value, tolerance);

    [Fact]
    public void Stages_come_earlier_on_the_thermometer_on_a_mountain()
    {
        Assert.Equal("soft ball", Syrup.Stage(115));
        Assert.Equal("soft ball", Syrup.Stage(110, 1500));
        Assert.Null(Syrup.Stage(90));
        Assert.Equal(Syrup.BrixBoilingAt(108)!.Value, Syrup.BrixBoilingAt(105, 900)!.Value, 1e-6);
    }

    [Fact]
    public void Alcohol_by_volume_and_after_cooking()
    {
        Assert.Equal(15.78, Spirit.EthanolGrams(50, 40), 0.01); // [al1]
        Assert.Equal(5.39, Spirit.EthanolGrams(150, 13) * Spirit.LeftAfter(30).Best, 0.01); // [al2]
        Assert.Equal(40, Spirit.PercentVolume(15.785, 50), 0.01);
        Assert.True(Spirit.LeftAfter(600).Low > 0, "a long simmer never makes a dish free of alcohol");
    }

    [Fact]
    public void A_dose_of_gelatine_is_judged_and_raw_pineapple_named()
    {
        SettingAgent gelatine = SettingAgent.Find("gelatine")!;
        AgentSetting litre = new(1000);

        Assert.Equal("within", gelatine.Judge(17.5, new AgentSetting(1500) { Raw = ["milk"] }).Verdict);
        Assert.Equal("above", gelatine.Judge(60, litre).Verdict);
        Assert.Contains("pineapple", gelatine.Judge(15, litre with { Raw = ["pineapple"] }).Remarks[0], StringComparison.Ordinal);
        Assert.DoesNotContain(gelatine.Judge(15, litre with { Raw = ["apple"] }).Remarks, r => r.StartsWith("raw", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("gelatine", "alcohol", 25, 15)]
    [InlineData("gelatine", "salt", 3, 2)]
    [InlineData("gelatine", "pH", 3.2, 4.5)]
    [InlineData("gelatine", "acid", 1, 0.2)]
    [InlineData("agar", "boil", 70, 100)]
    [InlineData("alginate", "pH", 3.2, 4.5)]
    [InlineData("pectin", "soluble solids", 40, 60)]
    [InlineData("gellan", "dissolves", 60, 90)]
    public void What_works_against_an_agent_is_named_and_what_does_not_is_silent(string agent, string word, double against, double fine)
    {
        // Limits: open review PMC6961714 Table 6 and the hydrocolloid reference page; salt on gelatine from memory.
        AgentSetting With(double x) => word switch
        {
            "alcohol" => new AgentSetting(1000) { AlcoholPercentVolume = x },
            "salt" => new AgentSetting(1000) { SaltPercent = x },
            "pH" => new AgentSetting(1000) { Ph = x },
            "acid" => new AgentSetting(1000) { AcidPercent = x },
            "soluble solids" => new AgentSetting(1000) { SolubleSolids = x },
            _ => new AgentSetting(1000) { Hottest = x },
        };
        SettingAgent judged = SettingAgent.Find(agent)!;
        double dose = judged.Low * 10 * 1.2;
        int silent = judged.Judge(dose, new AgentSetting(1000)).Remarks.Length;

        Assert.Contains(judged.Judge(dose, With(against)).Remarks, r => r.Contains(word, StringComparison.Ordinal));
        Assert.Equal(silent, judged.Judge(dose, With(fine)).Remarks.Length);
    }

    [Fact]
    public void Gelatine_of_another_bloom_is_said_by_both_rules_and_judged_by_the_root()
    {
        // 10 g of 250 bloom are 12.5 g of 200 by bloom and 11.18 g by its root (maker's table, check values ge200_160 turned round).
        AgentVerdict v = SettingAgent.Find("gelatine")!.Judge(10, new AgentSetting(1000) { Bloom = 250 });

        Assert.Contains("11.18 g of 200 bloom by √bloom, 12.5 g by bloom", v.Remarks[0], StringComparison.Ordinal);
        Assert.DoesNotContain(SettingAgent.Find("gelatine")!.Judge(10, new AgentSetting(1000) { Bloom = 200 }).Remarks, r => r.Contains("bloom set", StringComparison.Ordinal));
    }

    [Fact]
    public void Ice_in_hot_water_ends_where_the_balance_says()
    {
        // By hand: (500·4.18·80 − 200·333.6)/(700·4.18) = 34.3 °C.
        ThermalParts water = ThermalParts.FromGrams(1, 0, 0, 0, 0, 0);
        MixingTemperature met = MixingTemperature.Of([new("water", 500, water, 80), new("ice", 200, water, -0.5, -0.0005)]);

        Assert.Equal(34.3, met.Celsius, 0.3);
        Assert.Equal(0, met.IceGrams);
    }

    [Fact]
    public void Too_much_ice_leaves_ice_at_its_freezing_point()
    {
        ThermalParts water = ThermalParts.FromGrams(1, 0, 0, 0, 0, 0);
        MixingTemperature met = MixingTemperature.Of([new("water", 100, water, 20, -0.0005), new("ice", 500, water, -10, -0.0005)]);

        // By hand, 2.05 kJ/(kg·K) for ice: 100·4.18·20 − 500·2.05·10 = −1,890 J, so 5.7 g of the water freezes on: about 505.7 g of ice at 0 °C.
        Assert.Equal(0, met.Celsius, 0.05);
        Assert.Equal(500 + ((((500 * 2.05 * 10) - (100 * 4.18 * 20)) / 333.6)), met.IceGrams, 2.0);
    }

    [Fact]
    public void Cold_butter_cools_more_than_its_sensible_heat_because_its_fat_melts()
    {
        ThermalParts butter = ThermalParts.Of(Foods("butter"))!;
        ThermalParts milk = ThermalParts.Of(Foods("milk"))!;
        double With(FatMelting? fat) => MixingTemperature.Of([new("milk", 500, milk, 80), new("butter", 250, butter, 5, null, fat)]).Celsius;

        // Half of 0.81 · 250 g of fat solid at 5 °C, 110 kJ/kg: 11 kJ over about 2.5 kJ/K is some 4.5 °C.
        Assert.InRange(With(null) - With(FatMelting.Of("butter")), 3.0, 6.0);
        Assert.Equal(["butter"], MixingTemperature.Of([new("milk", 500, milk, 80), new("butter", 250, butter, 5)]).FatLeftOut);
    }

    [Fact]
    public void A_mixing_temperature_lies_between_and_does_not_depend_on_the_order()
        => Gen.Select(Gen.Double[1, 500], Gen.Double[0, 100], Gen.Double[1, 500], Gen.Double[0, 100]).Sample((a, ta, b, tb) =>
        {
            ThermalParts milk = ThermalParts.Of(Foods("milk"))!, sugar = ThermalParts.Of(Foods("sugar"))!;
            double one = MixingTemperature.Of([new("a", a, milk, ta), new("b", b, sugar, tb)]).Celsius;
            double two = MixingTemperature.Of([new("b", b, sugar, tb), new("a", a, milk, ta)]).Celsius;
            return Math.Abs(one - two) < 1e-6 && one >= Math.Min(ta, tb) - 0.01 && one <= Math.Max(ta, tb) + 0.01;
        }, iter: 200);

    [Theory]
    [InlineData(65, 1.316)]
    [InlineData(50, 1.2296)]
    [InlineData(20, 1.081)]
    public void Density_of_syrups_is_the_handbooks(double brix, double published)
        => Assert.Equal(published, MixVolume.Density(new Composition { Water = 100 - brix, Protein = 0, Fat = 0, Carbohydrate = brix })!.Value, 0.006 * published);

    [Fact]
    public void Strength_of_a_mixture_counts_that_spirit_and_water_shrink()
    {
        // 500 mL of 40 % vol with 500 mL of water: 157.8 g ethanol (al1) in 474.0 + 499.1 g, 16.22 % by mass, so 20.0 % by volume (table of the US Pharmacopeia: 20 % vol is 16.2 % by mass).
        double mass = 100 * 157.8 / (474.0 + 499.1);
        Assert.Equal(20.0, MixVolume.PercentVolume(new Composition { Water = 100 - mass, Alcohol = mass, Protein = 0, Fat = 0, Carbohydrate = 0 })!.Value, 0.1);
        Assert.Equal(77.4, Syrup.OverrunPercent(1.10, 0.62), 0.1); // [ov1]
    }

    private static Composition Foods(string id) => FoodTable.Default.Find(id)!.Composition;

    [Fact]
    public void More_sugar_never_raises_water_activity_nor_the_freezing_point()
        => Check.Sample(Gen.Select(Gen.Double[1, 200], Gen.Double[0.1, 50]), p =>
        {
            (double sugar, double more) = p;
            Solution thin = new() { Water = 100, Sucrose = sugar };
            Solution thick = thin with { Sucrose = sugar + more };
            return WaterActivity.Norrish(thick) < WaterActivity.Norrish(thin) && (Freezing.Point(thick) ?? -40) <= Freezing.Point(thin);
        });
}
