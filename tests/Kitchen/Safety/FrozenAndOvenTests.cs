using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Kitchen.Tests.Safety;

/// <summary>Core limits of pieces that go in frozen, of pieces in an oven, and of bags that float or lie on one another: from the card's text on, each with a near miss.</summary>
public sealed class FrozenAndOvenTests
{
    private static Findings Review(string list, string steps) => CardReader.Read(new CardText($"# Fish card\n\n## Fish\n\nSame day only.\n\n{list}\n\n{steps}\n", "card.md")).Match(d => SafetyReview.Review(Weighing.Weigh(d, null), "au"), p => throw new InvalidOperationException(string.Join("; ", p)));

    private static string Bath(int minutes, string before = "", double mm = 20) => string.Create(CultureInfo.InvariantCulture, $"1. {before}Seal in flat bags, nowhere thicker than {mm} mm.\n2. Water bath at 82 °C for {minutes} min. Centre at 80 °C or more for at least 10 min.");

    private static double Needed(Finding f) => double.Parse(Regex.Match(f.Value, @"^[\d.]+").Value, CultureInfo.InvariantCulture);

    [Fact]
    public void A_frozen_piece_needs_the_thaw_and_all_of_the_thawed_pieces_time()
    {
        Finding thawed = Assert.Single(Review("- 800 g carrot", Bath(20)).All, f => f.Rule == "SAF001");
        Finding frozen = Assert.Single(Review("- 800 g frozen carrot", Bath(20)).All, f => f.Rule == "SAF001");
        Assert.Equal(Severity.Stop, frozen.Severity);
        Assert.Contains("from frozen (−18 °C)", frozen.What, StringComparison.Ordinal);
        Assert.Contains("Thawed first at 5 °C or less", frozen.Remedy, StringComparison.Ordinal);

        // 20 mm: the ice alone takes ρλ/ΔT·(L/h + L²/2k) = 9 to 14 min by Plank at 0.4 to 0.6 W/(m·K), by hand; the thawed piece's own minutes come on top.
        Assert.True(Needed(frozen) >= Needed(thawed) + 9, $"{frozen.Value} against {thawed.Value}");
        Assert.True(Needed(frozen) < Needed(thawed) + 35, $"{frozen.Value} against {thawed.Value}");
    }

    [Fact]
    public void Done_as_the_remedy_says_the_frozen_piece_is_silent()
    {
        Finding f = Assert.Single(Review("- 800 g frozen carrot", Bath(60)).All, x => x.Rule == "SAF001");
        int off = int.Parse(Regex.Match(f.Remedy, @"10 % thicker (\d+) min").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.DoesNotContain(Review("- 800 g frozen carrot", Bath(off)).All, x => x.Rule is "SAF001" or "SAF002");
        Assert.Equal(Severity.Warn, Assert.Single(Review("- 800 g frozen carrot", Bath(off - 2)).All, x => x.Rule == "SAF001").Severity);
        double most = double.Parse(Regex.Match(f.Remedy, @" or ([\d.]+) mm\.").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.DoesNotContain(Review("- 800 g frozen carrot", Bath(60, mm: most)).All, x => x.Rule is "SAF001" or "SAF002");
    }

    [Theory]
    [InlineData("- 800 g salmon", "Freeze at -20 °C for 2 days. ", true)]
    [InlineData("- 800 g frozen salmon", "", true)]
    [InlineData("- 800 g salmon", "Take it from the freezer. ", true)]
    [InlineData("- 800 g frozen salmon", "Thaw in the fridge for 24 h. ", false)]
    [InlineData("- 800 g salmon, previously frozen", "", false)]
    [InlineData("- 800 g salmon", "", false)]
    [InlineData("- 800 g carrot\n- 40 g frozen peas", "", false)]
    public void What_is_frozen_is_read_from_line_and_step(string list, string before, bool frozen)
        => Assert.Equal(frozen, Review(list, Bath(15, before)).All.Single(f => f.Rule == "SAF001").What.Contains("from frozen", StringComparison.Ordinal));

    [Fact]
    public void A_thawed_piece_starts_at_nought_not_at_the_fridges_five()
    {
        double usual = Needed(Review("- 800 g salmon", Bath(15)).All.Single(f => f.Rule == "SAF001"));
        double thawed = Needed(Review("- 800 g frozen salmon", Bath(15, "Thaw in the fridge for 24 h. ")).All.Single(f => f.Rule == "SAF001"));
        Assert.True(thawed > usual);
    }

    [Fact]
    public void Raw_egg_from_frozen_is_given_no_minute_of_the_thaw()
    {
        string Base(string before, int minutes) => $"1. Mix. {before}Fill a bag, nowhere thicker than 15 mm.\n2. Water bath at 68 °C for {minutes} min.";
        const string List = "- 120 g egg yolk\n- 100 g caster sugar\n- 280 g cream";
        Assert.DoesNotContain(Review(List, Base("", 30)).All, f => f.Rule == "SAF044");
        Finding f = Assert.Single(Review(List, Base("Freeze at -18 °C for 12 h. ", 30)).All, x => x.Rule == "SAF044");
        Assert.Contains("from frozen", f.What, StringComparison.Ordinal);
        int enough = int.Parse(Regex.Match(f.Remedy, @"→ (\d+) min").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.DoesNotContain(Review(List, Base("Freeze at -18 °C for 12 h. ", enough)).All, x => x.Rule == "SAF044");
    }

    private static string Oven(string words) => $"1. Tie the joint, nowhere thicker than 80 mm.\n2. {words}";

    [Fact]
    public void What_no_oven_can_do_in_the_minutes_given_is_stopped_with_figures()
    {
        Finding f = Assert.Single(Review("- 1500 g beef sirloin", Oven("Roast at 180 °C for 15 min to a core of 56 °C.")).All, x => x.Rule == "SAF001");
        Assert.Equal(Severity.Stop, f.Severity);
        Assert.Matches(@"15 min → \d+ min at the very least; or at most \d+(\.\d)? mm", f.Remedy);
        int least = int.Parse(Regex.Match(f.Remedy, @"→ (\d+) min").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.DoesNotContain(Review("- 1500 g beef sirloin", Oven($"Roast at 180 °C for {least} min to a core of 56 °C.")).All, x => x.Rule == "SAF001");
        Assert.Contains(Review("- 1500 g beef sirloin", Oven("Bake at 70 °C for 6 h to a core of 72 °C.")).All, x => x.Rule == "SAF001" && x.Severity == Severity.Stop);
    }

    [Fact]
    public void What_lies_between_the_bounds_is_a_note_with_both_and_what_is_sure_is_silent()
    {
        Finding note = Assert.Single(Review("- 1500 g beef sirloin", Oven("Roast at 180 °C for 75 min to a core of 56 °C.")).All, x => x.Rule is "SAF001" or "SAF003");
        Assert.Equal((Severity.Note, "SAF003"), (note.Severity, note.Rule));
        Assert.Matches(@"from \d+ min to ", note.What);
        Assert.Contains("stays wet settles at", note.What, StringComparison.Ordinal);

        // a covered terrine for hours is there for certain; ten minutes less than the bound with oven and thickness off is not
        string Terrine(int minutes) => Oven($"Cover with foil and bake at 120 °C for {minutes} min to a core of 65 °C.");
        Finding covered = Assert.Single(Review("- 1500 g beef sirloin", Terrine(60)).All, x => x.Rule is "SAF001" or "SAF003");
        Assert.Equal(Severity.Note, covered.Severity);
        Assert.DoesNotContain(Review("- 1500 g beef sirloin", Terrine(1200)).All, x => x.Rule is "SAF001" or "SAF002" or "SAF003");
    }

    [Theory]
    [InlineData("Roast at 220 °C for 10 min, then at 160 °C to a core of 56 °C.")]
    [InlineData("Roast at 180 °C to a core of 56 °C.")]
    [InlineData("Roast at 180 °C for at least 15 min to a core of 56 °C.")]
    public void A_roast_without_one_length_is_left_to_the_probe(string words)
        => Assert.Equal(Severity.Note, Assert.Single(Review("- 1500 g beef sirloin", Oven(words)).All, x => x.Rule is "SAF001" or "SAF003").Severity);

    [Theory]
    [InlineData("The bags may float.", "floats or holds air")]
    [InlineData("Stack the bags in the rack.", "lie on one another")]
    [InlineData("The bags overlap a little.", "lie on one another")]
    [InlineData("Put the second lot on top of the first.", "lie on one another")]
    [InlineData("Leave a little air in the bag.", "floats or holds air")]
    public void Bags_that_float_overlap_or_hold_air_are_found_with_the_minutes_they_need(string words, string says)
    {
        Finding f = Assert.Single(Review("- 800 g carrot", $"1. Seal in flat bags, nowhere thicker than 20 mm.\n2. Water bath at 82 °C for 120 min. Centre at 80 °C or more for at least 10 min. {words}").All, x => x.Rule == "SAF045");
        Assert.Contains(says, f.What, StringComparison.Ordinal);
        Assert.Matches(@"^\d+ min to 80 °C", f.Value);
        Assert.Matches(@"^[1-9]\d* min later", f.Margin);
    }

    [Theory]
    [InlineData("Weigh the bags down so that none floats.")]
    [InlineData("No bag overlaps another.")]
    [InlineData("Lay them side by side without stacking the bags.")]
    [InlineData("Press the air out of the bag.")]
    [InlineData("If a bag floats, weigh it down.")]
    public void Words_against_it_are_silent(string words)
        => Assert.DoesNotContain(Review("- 800 g carrot", $"1. Seal in flat bags, nowhere thicker than 20 mm.\n2. Water bath at 82 °C for 120 min. {words}").All, x => x.Rule == "SAF045");

    [Theory]
    [InlineData(120, "Work with the lid off.", true)]
    [InlineData(120, "The bath stands open without its lid.", true)]
    [InlineData(120, "Put the lid on and leave it.", false)]
    [InlineData(120, "Take them out and leave uncovered in the fridge.", false)] // not the bath
    [InlineData(45, "Work with the lid off.", false)] // too short for the water to sink
    public void A_bath_left_open_for_long_is_found(int minutes, string words, bool found)
        => Assert.Equal(found, Review("- 800 g carrot", $"1. Seal in flat bags, nowhere thicker than 20 mm.\n2. Water bath at 82 °C for {minutes} min. {words}").All.Any(x => x.Rule == "SAF045"));
}
