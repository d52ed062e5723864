using System.Text.Json;
using System.Text.RegularExpressions;

namespace Coulisse.Commands.Tests;

/// <summary>Answers worked out by hand for the demo occasion (P5, P7, P8, P9, P21) come out of the product, through its commands.</summary>
public sealed class WorkedAnswers(PlannedDemo demo) : IClassFixture<PlannedDemo>
{
    [Theory]
    [InlineData("18", 63.8)]
    [InlineData("55", 26.9)]
    public void P5_minutes_until_twenty_litres_are_at_82_degrees(string from, double minutes)
        => Close(minutes, Bench.Run("heat", "bath", "--litres", "20", "--kilowatts", "1.4", "--start", from, "--medium", "82", "--json").Json.GetProperty("minutesToHeat").GetDouble(), 0.01);

    [Fact]
    public void P6_two_cold_bags_pull_the_bath_down_and_it_comes_back()
    {
        JsonElement bath = Bench.Run("heat", "bath", "--litres", "20", "--kilowatts", "1.4", "--start", "18", "--medium", "82", "--load-grams", "1490", "--load-celsius", "8", "--load-heat", "3.2", "--json").Json;
        Close(352.8, bath.GetProperty("loadKilojoules").GetDouble(), 0.01);
        Close(4.21, bath.GetProperty("fallKelvin").GetDouble(), 0.01);
        Close(4.2, bath.GetProperty("minutesToRegain").GetDouble(), 0.01);
    }

    [Fact]
    public void P7_the_draft_is_stopped_with_both_remedies()
    {
        Ran ran = Bench.Run("safety", Bench.Demo("cards/royale-draft.md"), "--json");
        JsonElement finding = Assert.Single(ran.Json.GetProperty("findings").EnumerateArray(), f => f.GetProperty("severity").GetString() == "stop");
        Close(56.9, Number(finding, "value", @"([\d.]+) min needed"), 0.02);
        Close(79.67, Number(finding, "what", @"at ([\d.]+) °C after 45 min"), 0.001);
        Close(16.3, Number(finding, "remedy", @"at most ([\d.]+) mm in 45 min"), 0.02);
        Close(73.6, Number(finding, "remedy", @"10 % thicker ([\d.]+) min"), 0.02);
        Close(13.2, Number(finding, "remedy", @"min or ([\d.]+) mm"), 0.02);
        Assert.Equal(1, ran.Exit);
    }

    [Fact]
    public void P7_the_corrected_card_is_not_stopped()
        => Assert.DoesNotContain(Bench.Run("safety", Bench.Demo("cards/starter.md"), "--json").Json.GetProperty("findings").EnumerateArray(), f => f.GetProperty("severity").GetString() == "stop");

    [Theory]
    // The surface at the bath's temperature at once; a film of 95 W/(m²·K); a bath a degree low; 10 % thicker.
    [InlineData("20mm", "82", "1.4e-7", null, 18.8)]
    [InlineData("20mm", "82", "1.15e-7", "95", 46.9)]
    [InlineData("10mm", "82", "1.4e-7", null, 4.7)]
    [InlineData("10mm", "81", "1.4e-7", null, 5.5)]
    [InlineData("11mm", "81", "1.4e-7", null, 6.7)]
    [InlineData("10mm", "82", "1.15e-7", "95", 18.0)]
    [InlineData("10mm", "81", "1.15e-7", "95", 21.3)]
    [InlineData("11mm", "82", "1.15e-7", "95", 20.4)]
    [InlineData("11mm", "81", "1.15e-7", "95", 24.1)]
    public void P7_minutes_to_80_degrees_in_the_middle_of_the_bag(string thick, string bath, string diffusivity, string? film, double minutes)
    {
        string[] surface = film is null ? ["--h", "100000"] : ["--h", film];
        JsonElement core = Bench.Run(["heat", "core", "--shape", "slab", "--size", thick, "--start", "5", "--medium", bath, "--until", "80", "--diffusivity", diffusivity, "--conductivity", "0.46", .. surface, "--json"]).Json;
        Close(minutes, core.GetProperty("minutesToTarget").GetProperty("cautious").GetDouble(), 0.02);
    }

    [Fact]
    public void P8_the_frame_takes_1346_grams_and_gives_56_bars()
    {
        JsonElement fit = Bench.Run("fit", "grid", "330x220x18", "40x30", "--edge", "5", "--density", "1.03", "--json").Json;
        Assert.Equal(56, fit.GetProperty("count").GetInt32());
        Close(1346.0, fit.GetProperty("grams").GetDouble(), 0.005);
        Close(22.25, fit.GetProperty("pieceGrams").GetDouble(), 0.005);
        Close(100.1, fit.GetProperty("trimGrams").GetDouble(), 0.005);
    }

    [Theory]
    [InlineData("92x80", "60", "1.2", "3", 280, 0, 39, 8, 2836.3)]
    [InlineData("150x132", "60", "1.2", "4", 280, 0, 170, 2, 3110.2)]
    [InlineData("120", "50", "1", "4", 120, 0, 162, 1, 904.8)]
    public void P10_P25_P26_roots_to_buy_for_discs(string root, string disc, string slice, string peel, int count, int spare, int good, int buy, double grams)
    {
        JsonElement cut = Bench.Run("fit", "root", root, disc, "--slice", slice, "--peel", peel, "--count", $"{count}", "--spare", $"{spare}", "--json").Json;
        Assert.Equal(good, cut.GetProperty("good").GetInt32());
        Assert.Equal(buy, cut.GetProperty("buy").GetInt32());
        Close(grams, cut.GetProperty("boughtGrams").GetDouble(), 0.001);
    }

    [Fact]
    public void P11_curd_in_a_folded_disc_and_in_the_line_that_is_piped()
    {
        Close(1.79, Bench.Run("fit", "fold", "60", "6", "--reach", "18", "--density", "1.02", "--json").Json.GetProperty("grams").GetDouble(), 0.01);
        Close(1.759, Bench.Run("fit", "piped", "line", "8x35", "--json").Json.GetProperty("pieceMillilitres").GetDouble(), 0.001);
    }

    [Fact]
    public void P3_P12_plates_on_trays_and_discs_on_cloths()
    {
        JsonElement plates = Bench.Run("fit", "tray", "530x325", "160", "--count", "52", "--slots", "12", "--json").Json;
        Assert.Equal((6, 9, true), (plates.GetProperty("perTray").GetInt32(), plates.GetProperty("trays").GetInt32(), plates.GetProperty("fits").GetBoolean()));
        JsonElement discs = Bench.Run("fit", "rounds", "530x325", "60", "--gap", "1", "--json").Json;
        Assert.Equal((48, 40), (discs.GetProperty("count").GetInt32(), discs.GetProperty("square").GetInt32()));
    }

    [Fact]
    public void P13_P14_the_order_with_its_spares_is_the_worked_one_to_the_cent()
    {
        Ran ran = Bench.Run("order", Bench.Demo("occasion.md"), "--prices", Bench.Demo("prices.csv"), "--extra", "kohlrabi=1 piece", "--extra", "swede=1 piece", "--json");
        Assert.Equal((0, 181.35m), (ran.Exit, ran.Json.GetProperty("total").GetDecimal()));
        Assert.Equal([2.90m, 53.45m, 89.50m, 35.50m], ran.Json.GetProperty("suppliers").EnumerateArray().Select(s => s.GetProperty("total").GetDecimal()));
        JsonElement[] packs = [.. ran.Json.GetProperty("packs").EnumerateArray()];
        Assert.Equal(5, packs.Where(p => p.GetProperty("item").GetString() == "quark, full fat").Sum(p => p.GetProperty("count").GetInt32()));
        // The worked answer has the butter thin as well (3.7 % over, 1,205 g needed). Here it is 1,176.5 g: the bowl in which rubbing in is shown is a tenth of the dough (decision 0164), 21.5 g of its 215 g butter, where the
        // worked answer's chef chose a bowl of 100 g flour and 50 g butter that no sheet and no card states: 28.5 g less.
        string[] thin = [.. ran.Json.GetProperty("margins").EnumerateArray().Where(m => m.GetProperty("thin").GetBoolean()).Select(m => m.GetProperty("item").GetString()!).Order(StringComparer.Ordinal)];
        Assert.Equal(["beetroot, tops off", "plum butter, unsweetened"], thin);
    }

    [Fact]
    public void P9_fifty_bars_are_plated_and_six_stay_in_one_block()
    {
        JsonElement block = Assert.Single(demo.Json.GetProperty("twins").EnumerateArray(), t => t.GetProperty("stage").GetString()!.Contains("left for the stage", StringComparison.Ordinal));
        int uncut = block.GetProperty("count").GetInt32();
        int bars = Bench.Run("fit", "grid", "330x220x18", "40x30", "--edge", "5", "--json").Json.GetProperty("count").GetInt32();
        Assert.Equal(6, uncut);
        Assert.Equal(50, bars - uncut);
    }

    [Fact]
    public void P21_the_segments_add_up_to_the_slot_and_a_tenth_can_be_dropped()
    {
        Assert.Equal(0, demo.Exit);
        JsonElement[] sheet = [.. demo.Json.GetProperty("runSheet").EnumerateArray()];
        Assert.Equal(1500, sheet.Sum(s => s.GetProperty("seconds").GetInt32()));
        Assert.True(sheet.Sum(s => s.GetProperty("droppableSeconds").GetInt32()) >= 150);
        int at = 0;
        Assert.All(sheet, s =>
        {
            Assert.Equal(at, s.GetProperty("start").GetInt32());
            at += s.GetProperty("seconds").GetInt32();
        });
    }

    private static double Number(JsonElement finding, string key, string pattern)
        => double.Parse(Regex.Match(finding.GetProperty(key).GetString()!, pattern).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);

    private static void Close(double expected, double actual, double relative) => Assert.InRange(actual, expected * (1 - relative), expected * (1 + relative));
}
