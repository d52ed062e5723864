using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Watch;
using Coulisse.Kitchen.Safety;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Planning.Watch;

/// <summary>Time out of the cold through a plan: sums reckoned by hand, each trap with a near miss.</summary>
public sealed class TimeOutTests
{
    private static readonly LocalDateTime Noon = new(2026, 10, 10, 12, 0);

    // Lines 1 to 16: the steps stand on 13 to 16.
    private const string Cold = "# Plate\n\nServes 10.\n\nOne plate: 60 g crab salad.\n\n## Crab salad\n\nKeeps 1 day at 5 °C or less.\n\n- 500 g crab meat, cooked\n- 100 g mayonnaise\n\n1. Pick over the crab.\n2. Mix with the mayonnaise.\n3. Back to the fridge.\n";
    private const string Silent = "# Plate\n\nServes 10.\n\nOne plate: 60 g crab salad.\n\n## Crab salad\n\n- 500 g crab meat, cooked\n- 100 g mayonnaise\n\n1. Pick over the crab.\n2. Mix with the mayonnaise.\n";

    private static Occasion Occasion(string card, string unit = "plates", string why = "") => new()
    {
        Title = "t", Sheet = new OccasionSheet { Title = "t" }, SlotStart = Noon, SlotLength = Duration.FromMinutes(25), SlotPlace = "front", Guests = 10, Covers = 10,
        Dishes = [new OccasionDish("Plate", CardReader.Read(new CardText(card)).Match(d => d, p => throw new InvalidOperationException(p[0].Message)), 10, unit, why, "card.md")],
        Kit = [new SheetKit("OV", "oven", "oven", "back", 1, "", 1), new SheetKit("BC", "blast chiller", "chiller", "back", 1, "", 2), new SheetKit("SB", "bath", "bath", "back", 1, "", 3)],
    };

    private static PlannedTask Task(int line, int from, int to, TaskKind kind = TaskKind.Work, string kit = "", string text = "work") => new()
    {
        Id = "t" + line.ToString(CultureInfo.InvariantCulture), Text = text, Kind = kind, Dish = "Plate", Component = kind == TaskKind.Plate ? "" : "Crab salad", Line = line, Start = Noon.PlusMinutes(from), End = Noon.PlusMinutes(to), Kit = kit.Length > 0 ? [kit] : [],
    };

    private static readonly PlannedTask Plating = Task(0, -60, -40, TaskKind.Plate, text: "plate 10 plates, back to the cold");

    private static Plan Plan(params PlannedTask[] tasks) => new() { Title = "p", SlotStart = Noon, SlotLength = Duration.FromMinutes(25), Tasks = [.. tasks] };

    private static ImmutableArray<Batch> Batches(Occasion o) => OccasionBatches.Make(o).Match(b => b, p => throw new InvalidOperationException(p[0].Message));

    private static (TimeOut Part, Finding[] Found) Judge(Occasion o, Plan plan, string code = "au")
    {
        TimeOut part = TimesOut.Of(o, Batches(o), plan).Single(t => t.Part is "Crab salad" or "Plate");
        return (part, [.. PlanSafety.Review(o, Batches(o), plan, code)[0].All.Where(f => f.Rule is "SAF040" or "SAF041" or "SAF042")]);
    }

    [Fact]
    public void Hands_short_waits_plating_and_service_add_up_and_the_cold_does_not_set_them_back()
    {
        // 30 picking, 10 standing, 20 mixing, then the fridge; 20 plating; 15 carried out and eaten: 95 min by hand.
        (TimeOut part, Finding[] found) = Judge(Occasion(Cold), Plan(Task(14, -300, -270), Task(15, -260, -240), Task(16, -240, -239), Plating));
        Assert.Equal(96, part.Minutes, 3);
        Assert.Equal(81, part.BackAfter, 3);
        Assert.Empty(part.Unsaid);
        Assert.Empty(found);
    }

    [Fact]
    public void Over_four_hours_is_a_stop_with_a_remedy_that_fits_and_just_under_is_silent_where_the_code_has_no_two_hours()
    {
        Plan Long(int hands) => Plan(Task(14, -600, -600 + hands), Task(15, -600 + hands + 30, -600 + hands + 50), Task(16, -600 + hands + 50, -600 + hands + 51), Plating);
        (TimeOut part, Finding[] found) = Judge(Occasion(Cold), Long(160), "us");   // 160 + 30 + 20 + 1 + 20 + 15 = 246
        Assert.Equal(246, part.Minutes, 3);
        Finding f = Assert.Single(found);
        Assert.Equal((Severity.Stop, "SAF040", "4 h 06", "4 h 00", "6 min too long"), (f.Severity, f.Rule, f.Value, f.Limit, f.Margin));
        Assert.Contains("(30 min): then 3 h 36.", f.Remedy, StringComparison.Ordinal);
        Assert.Empty(Judge(Occasion(Cold), Long(150), "us").Found);                  // 236
        Finding way = Assert.Single(Judge(Occasion(Cold), Long(150)).Found);         // Australia: it went back into the cold after 221 min
        Assert.Equal((Severity.Warn, "SAF041", "3 h 41"), (way.Severity, way.Rule, way.Value));
    }

    [Fact]
    public void Work_alone_over_the_limit_is_cut_into_lots()
    {
        Finding f = Assert.Single(Judge(Occasion(Cold), Plan(Task(14, -700, -420), Task(16, -420, -419), Plating), "us").Found);
        Assert.Contains("Work it in 2 lots", f.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wait_whose_place_nobody_says_cannot_be_shown_safe_and_one_word_makes_it_silent()
    {
        PlannedTask[] tasks = [Task(12, -700, -690), Task(13, -690, -680), Plating];
        Finding f = Assert.Single(Judge(Occasion(Silent), Plan(tasks)).Found);
        Assert.Equal(("SAF041", Severity.Warn), (f.Rule, f.Severity));
        Assert.StartsWith("It cannot be shown safe", f.What, StringComparison.Ordinal);
        Assert.Equal(13, f.Line);
        Assert.Empty(Judge(Occasion(Silent.Replace("with the mayonnaise.", "with the mayonnaise and put it in the fridge.", StringComparison.Ordinal)), Plan(tasks)).Found);
    }

    [Fact]
    public void Cooked_through_sets_it_back_and_chilling_does_not()
    {
        const string Baked = "# Plate\n\nServes 10.\n\nOne plate: 60 g crab salad.\n\n## Crab salad\n\nKeeps 1 day at 5 °C or less.\n\n- 500 g whole milk\n- 200 g whole egg, pasteurised\n\n1. Mix.\n2. Bake at 160 °C for 40 min.\n3. Chill to 5 °C.\n4. Cut.\n";
        Plan plan = Plan(Task(14, -900, -700), Task(15, -700, -660, TaskKind.Unattended, "OV"), Task(16, -660, -570, TaskKind.Unattended, "BC"), Task(17, -200, -180), Plating);
        (TimeOut part, _) = Judge(Occasion(Baked), plan);
        Assert.Equal(20 + 20 + 15, part.Minutes, 3);   // what was mixed before the oven no longer counts; chilling is the cooling rule's
    }

    [Fact]
    public void Food_that_needs_no_cold_is_not_traced()
    {
        const string Jam = "# Plate\n\nServes 10.\n\nOne plate: 60 g crab salad.\n\n## Crab salad\n\nKeeps 30 days at room temperature.\n\n- 400 g strawberries\n- 600 g caster sugar\n\n1. Boil to 105 °C. You should have 900 g.\n";
        Occasion o = Occasion(Jam);
        Assert.Empty(TimesOut.Of(o, Batches(o), Plan(Task(14, -900, -700), Plating)));
    }

    [Fact]
    public void What_is_taken_away_says_until_when()
    {
        Occasion o = Occasion("# Cakes\n\nMakes 10 pieces. Keeps 2 days at 5 °C or less.\n\n- 500 g quark\n- 200 g whole egg, pasteurised\n- 100 g caster sugar\n\n1. Mix.\n2. Bake at 160 °C for 30 min.\n3. Chill to 5 °C.\n4. Cut.\n", "pieces", "boxes");
        Plan plan = Plan([.. new[] { Task(9, -300, -280), Task(10, -280, -250, TaskKind.Unattended, "OV"), Task(11, -250, -160, TaskKind.Unattended, "BC"), Task(12, -60, -30) }.Select(t => t with { Component = "Plate" })]);
        Finding f = PlanSafety.Review(o, Batches(o), plan, "au")[0].All.Single(x => x.Rule == "SAF042");
        Assert.Equal(Severity.Note, f.Severity);
        Assert.Contains("eat by 15:00", f.Remedy, StringComparison.Ordinal);   // 12:25 and four hours less 30 min of cutting and 55 of standing until then
    }

    [Theory]
    [InlineData(45, 0)]
    [InlineData(30, 1)]
    public void A_bath_the_plan_cuts_short_is_judged_by_the_plans_minutes(int minutes, int stops)
    {
        const string Bag = "# Plate\n\nServes 10.\n\nOne plate: 60 g crab salad.\n\n## Crab salad\n\nKeeps 1 day at 5 °C or less.\n\n- 600 g whipping cream (35 % fat)\n- 100 g whole milk\n\n1. Fill a bag, nowhere thicker than 10 mm.\n2. Bath 45 min at 82 °C. Centre at 80 °C or more for at least 10 min.\n3. Chill to 5 °C.\n";
        Occasion o = Occasion(Bag);
        Plan plan = Plan(Task(14, -300, -290), Task(15, -290, -290 + minutes, TaskKind.Unattended, "SB"), Task(16, -200, -100, TaskKind.Unattended, "BC"), Plating);
        Assert.Equal(stops, PlanSafety.Review(o, Batches(o), plan, "au")[0].All.Count(f => f.Rule == "SAF001"));
    }

    [Fact]
    public void Guests_at_risk_on_the_sheet_make_the_verdict_stricter()
    {
        Occasion o = Occasion("# Plate\n\nServes 10.\n\n- 40 g egg yolk\n- 200 g olive oil\n\n1. Whisk.\n");
        Assert.Equal(Severity.Warn, PlanSafety.Review(o, Batches(o), null, "au")[0].All.Single(f => f.Rule == "SAF020").Severity);
        Occasion at = o with { Diets = [new SheetDiet([4], "pregnant", ImmutableDictionary<string, string>.Empty, 1)] };
        Assert.Equal(Severity.Stop, PlanSafety.Review(at, Batches(at), null, "au")[0].All.Single(f => f.Rule == "SAF020").Severity);
    }

    [Fact]
    public void More_minutes_out_never_read_safer()
    {
        double before = 0;
        for (int hands = 10; hands <= 400; hands += 15)
        {
            double now = Judge(Occasion(Cold), Plan(Task(14, -700, -700 + hands), Task(16, -700 + hands, -699 + hands), Plating)).Part.Minutes;
            Assert.True(now > before);
            before = now;
        }
    }
}
