using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards.Occasions;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Watch;
using Coulisse.Kitchen.Safety;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Planning.Watch;

/// <summary>Baths that a plan loads: more than a third of the water, and water pulled down so far that the middle is late.</summary>
public sealed class BathLoadTests
{
    private static readonly LocalDateTime Noon = new(2026, 10, 10, 12, 0);

    // The bath step stands on line 12.
    private static string Card(double grams, int minutes) => string.Create(CultureInfo.InvariantCulture, $"# Carrots\n\nServes 10.\n\n## Carrots\n\nKeeps 1 day at 5 °C or less.\n\n- {grams:0} g carrot\n\n1. Seal in flat bags, nowhere thicker than 20 mm.\n2. Water bath at 85 °C for {minutes} min. Centre at 80 °C or more for at least 10 min.\n");

    private static Finding[] Judge(double grams, int written, int planned) => [.. Review(grams, written, planned).All.Where(f => f.Rule == "SAF046")];

    private static Findings Review(double grams, int written, int planned)
    {
        Occasion o = new()
        {
            Title = "t", Sheet = new OccasionSheet { Title = "t" }, SlotStart = Noon, SlotLength = Duration.FromMinutes(25), SlotPlace = "front", Guests = 10, Covers = 10,
            Dishes = [new OccasionDish("Carrots", CardReader.Read(new CardText(Card(grams, written))).Match(d => d, p => throw new InvalidOperationException(p[0].Message)), 10, "plates", "", "card.md")],
            Kit = [new SheetKit("SB", "bath", "bath", "back", 1, "", 1) { Litres = 20, Kilowatts = 1.4 }],
        };
        PlannedTask bath = new() { Id = "b", Text = "bath", Kind = TaskKind.Unattended, Dish = "Carrots", Component = "Carrots", Line = 12, Start = Noon.PlusMinutes(-400), End = Noon.PlusMinutes(planned - 400), Kit = ["SB"] };
        Plan plan = new() { Title = "p", SlotStart = Noon, SlotLength = Duration.FromMinutes(25), Tasks = [bath] };
        ImmutableArray<Batch> batches = OccasionBatches.Make(o).Match(b => b, p => throw new InvalidOperationException(p[0].Message));
        return PlanSafety.Review(o, batches, plan, "au")[0];
    }

    [Fact]
    public void A_bath_takes_a_third_of_its_water_and_a_plan_gives_every_load_its_time()
    {
        // 15 kg in 20 l: 20/3 = 6.67 kg at once, so three loads of 5 kg and 3 · 120 = 360 min (by hand).
        Finding f = Assert.Single(Judge(15_000, 120, 150));
        Assert.Equal(Severity.Stop, f.Severity);
        Assert.Contains("3 loads of 5 kg, 360 min in all", f.Remedy, StringComparison.Ordinal);
        Assert.Contains("a bath of 45 l", f.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain(Judge(15_000, 120, 390), x => x.Severity == Severity.Stop);
    }

    [Fact]
    public void A_load_that_pulls_the_water_down_makes_the_middle_late_with_minutes_and_kilograms()
    {
        // 6 kg from 5 °C take 6 · 3.7 · 80 = 1776 kJ: 20 l fall by 1776/83.72 = 21.2 K and are back after 1776/1.4 s = 21 min (by hand).
        // The plan gives one minute more than the piece by itself needs.
        int alone = (int)Math.Ceiling(Review(6_000, 200, 200).Again.Single().Needed!.Value) + 1;
        Finding f = Assert.Single(Judge(6_000, alone, alone));
        Assert.Equal(Severity.Warn, f.Severity);
        Assert.Contains("down by 21.2 °C; it is back after 21 min", f.What, StringComparison.Ordinal);
        int enough = int.Parse(Regex.Match(f.Remedy, @"→ (\d+) min").Groups[1].Value, CultureInfo.InvariantCulture);
        double kilograms = double.Parse(Regex.Match(f.Remedy, @"at most ([\d.]+) kg").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.InRange(enough, alone + 1, alone + 21);
        Assert.Empty(Judge(6_000, alone, enough));
        Assert.Empty(Judge(kilograms * 1000, alone, alone));
        Assert.NotEmpty(Judge((kilograms * 1000) + 100, alone, alone));
    }

    [Fact]
    public void Every_bath_of_a_plan_is_judged_again_with_bath_and_thickness_off_and_the_figures_are_kept()
    {
        JudgedAgain kept = Assert.Single(Review(1_000, 120, 120).Again);
        Assert.True(kept.Kept && kept.Minutes == 120 && kept.Needed < kept.Off && kept.Off < 120, kept.Words);
        Assert.Contains("with the bath 1 °C low and the piece 10 % thicker: kept", kept.Words, StringComparison.Ordinal);

        // the plan cuts it to a minute short of what both off need: no longer kept, and the card is warned
        Findings cut = Review(1_000, 120, (int)Math.Floor(kept.Off!.Value) - 1);
        Assert.False(Assert.Single(cut.Again).Kept);
        Assert.Equal(Severity.Warn, Assert.Single(cut.All, f => f.Rule == "SAF001").Severity);
    }
}
