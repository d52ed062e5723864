using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Risk;
using Coulisse.Kitchen.Trials;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Trials;

public sealed class TrialTests
{
    private const string Card = "# Leek soup\n\nServes 4.\n\n- 600 g leeks\n- 500 g stock\n\n1. Slice the leeks.\n2. Simmer at 95 °C for 20 min.\n";

    private static Dish Dish => ((Parsed<Dish>.Ok)CardReader.Read(new CardText(Card, "card.md"))).Value;

    private static string Sheet(double slicing = 11, double outGrams = 1000, string good = "Good run.", int version = 3, string marks = "| Ada | 4 | 5 | 4 | 3 | 4 |")
        => FormattableString.Invariant($"""
            # Trial of Leek soup

            Made on 2026-03-01 by Ada. Card version {version}. 1 times the card. {good}

            ## Weighed
            | What | Card, g | Weighed, g |
            |---|---|---|
            | leeks | 600 | 612,5 |
            | stock | 500 | |

            ## Times
            | Part | Step | Minutes |
            |---|---|---|
            | | Slice the leeks. | {slicing} |

            ## Came out
            | Part | In, g | Out, g | Left behind, g |
            |---|---|---|---|
            | Leek soup | 1112 | {outGrams} g | 12 |

            ## Tasting
            | Taster | Looks | Smell | Taste | Bite | Whole |
            |---|---|---|---|---|---|
            {marks}

            ## Notes
            Salt at the end.
            """);

    private static Trial Read(string sheet) => TrialSheet.Read(sheet).Match(t => t, problems => throw new InvalidOperationException(string.Join(' ', problems)));

    private static string[] Codes(string sheet) => [.. Assert.IsType<Parsed<Trial>.Failed>(TrialSheet.Read(sheet)).Problems.Select(p => p.Code)];

    [Fact]
    public void A_filled_sheet_is_read_and_what_was_not_measured_is_not_there()
    {
        Trial t = Read(Sheet());
        Assert.Equal(("Leek soup", 3, new LocalDate(2026, 3, 1), "Ada", true), (t.Card, t.CardVersion, t.Made, t.By, t.Good));
        TrialWeight w = Assert.Single(t.Weights);
        Assert.Equal(("leeks", 600.0, 612.5), (w.What, w.CardGrams, w.Grams));
        Assert.Equal(1000, Assert.Single(t.Yields).OutGrams);
        Assert.Equal(5, Assert.Single(t.Tastings).Marks["Smell"]);
        Assert.Equal("Salt at the end.", t.Notes);
    }

    [Fact]
    public void A_blank_sheet_reads_back_as_a_trial_of_nothing_that_nobody_has_judged()
    {
        Trial t = Read(BlankTrial.Of(Weighing.Weigh(Dish), 2, 3));
        Assert.Equal(("Leek soup", 3, 2.0), (t.Card, t.CardVersion, t.Factor));
        Assert.Null(t.Good);
        Assert.Empty(t.Weights);
        Assert.Empty(t.Times);
        Assert.Empty(t.Tastings);
    }

    [Theory]
    [InlineData("# Leek soup\n", "TRI001")]
    [InlineData("# Trial of x\n\n## Times\n| Part | Step | Minutes |\n|---|---|---|\n| | a | soon |\n", "TRI002")]
    [InlineData("# Trial of x\n\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n| x | 100 | 150 | |\n", "TRI003")]
    [InlineData("# Trial of x\n\nMade on 2026-02-30 by Ada.\n", "TRI004")]
    [InlineData("# Trial of x\n\n## Tasting\n| Taster | Taste |\n|---|---|\n| Ada | 6 |\n", "TRI005")]
    public void A_slip_of_the_pen_is_named(string sheet, string code) => Assert.Equal([code], Codes(sheet));

    [Fact]
    public void A_little_more_out_than_in_is_the_scale_and_stays_silent()
        => Read("# Trial of x\n\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n| x | 100 | 104 | |\n");

    // NIST/SEMATECH e-Handbook, 1.3.5.6: standard deviation about the mean with n - 1; worked by hand for 10, 12, 14: mean 12, deviation 2.
    [Fact]
    public void Mean_and_spread_over_repeats_are_the_sample_ones()
    {
        TrialSummary s = TrialSummary.Of([Read(Sheet(10)), Read(Sheet(12)), Read(Sheet(14))]);
        Repeated minutes = Assert.Single(s.Figures, f => f.Unit == "min");
        Assert.Equal((3, 12.0, 2.0, 10.0, 14.0), (minutes.Count, minutes.Mean, minutes.Deviation!.Value, minutes.Least, minutes.Most));
    }

    [Fact]
    public void One_trial_tells_no_spread() => Assert.Null(Assert.Single(TrialSummary.Of([Read(Sheet())]).Figures, f => f.Unit == "min").Deviation);

    [Fact]
    public void Standardised_needs_three_good_runs_of_one_version_with_the_same_yield()
    {
        Trial good = Read(Sheet());
        Assert.False(TrialSummary.Of([good, good]).Standardised);
        Assert.True(TrialSummary.Of([good, good, good]).Standardised);
        Assert.False(TrialSummary.Of([good, good, Read(Sheet(good: "Not a good run: the pan burnt."))]).Standardised);
        Assert.False(TrialSummary.Of([good, good, Read(Sheet(good: ""))]).Standardised);
        Assert.False(TrialSummary.Of([good, good, Read(Sheet(version: 2))]).Standardised);
        // 1000, 1000, 1090: the last lies 5.8 % off the mean; 1000, 1000, 1070: 4.6 %
        Assert.False(TrialSummary.Of([good, good, Read(Sheet(outGrams: 1090))]).Standardised);
        Assert.True(TrialSummary.Of([good, good, Read(Sheet(outGrams: 1070))]).Standardised);
    }

    [Fact]
    public void What_three_trials_took_is_learnt_and_two_are_not_enough_and_an_edited_step_has_learnt_nothing()
    {
        Trial[] two = [Read(Sheet(10)), Read(Sheet(14))];
        Step slice = Dish.Components.SelectMany(c => c.Steps).First();
        Assert.Null(LearntTime.Of(TrialLearning.Times(Dish, two), slice));
        LearntTime learnt = LearntTime.Of(TrialLearning.Times(Dish, [.. two, Read(Sheet(12))]), slice)!;
        Assert.Equal(12, learnt.Median);
        Assert.Contains("3 trials", learnt.Why);
        Dish edited = ((Parsed<Dish>.Ok)CardReader.Read(new CardText(Card.Replace("Slice the leeks.", "Slice the leeks very thin.", StringComparison.Ordinal), "card.md"))).Value;
        Assert.Null(LearntTime.Of(TrialLearning.Times(Dish, [.. two, Read(Sheet(12))]), edited.Components.SelectMany(c => c.Steps).First()));
    }

    [Fact]
    public void A_trial_of_twice_the_card_counts_half_its_minutes()
    {
        Trial twice = Read(Sheet(20).Replace("1 times the card", "2 times the card", StringComparison.Ordinal));
        Assert.Equal([10.0], Assert.Single(TrialLearning.Times(Dish, [twice])).Minutes);
    }

    [Fact]
    public void The_spread_of_a_task_is_what_trials_took_and_a_task_that_runs_by_itself_is_never_drawn_shorter_than_planned()
    {
        Step slice = Dish.Components.SelectMany(c => c.Steps).First();
        Occasion occasion = Some() with { Learnt = TrialLearning.Times(Dish, [Read(Sheet(10)), Read(Sheet(12)), Read(Sheet(18))]) };
        LocalDateTime ten = new(2026, 3, 7, 10, 0);
        PlannedTask work = new() { Id = "a", Text = "slice", Kind = TaskKind.Work, Start = ten, End = ten.PlusMinutes(24), Dish = "Leek soup", Line = slice.Span.Line };
        Plan plan = new() { Title = "t", SlotStart = ten.PlusHours(4), SlotLength = Duration.FromMinutes(10), Tasks = [work, work with { Id = "b", Kind = TaskKind.Unattended }] };
        Func<PlannedTask, Spread> spread = UsualSpreads.For(occasion, plan);
        // 24 minutes were planned at the median 12, so everything is twice
        Assert.Equal(20, spread(plan.Tasks[0]).Quantile(0), 9);
        Assert.Equal(36, spread(plan.Tasks[0]).Quantile(1), 9);
        Assert.Equal(24, spread(plan.Tasks[1]).Quantile(0), 9);
        Assert.Equal(36, spread(plan.Tasks[1]).Quantile(1), 9);
    }

    [Fact]
    public void A_record_is_read_back_and_more_out_than_was_prepared_is_named()
    {
        const string head = "# Record of Lunch\n\n2026-03-07. 40 covers planned. 38 covers served.\n\n## Food\n| Dish | Part | Planned, g | Prepared, g | Served, g | Left, g | Waste, g |\n|---|---|---|---|---|---|---|\n";
        ProductionRecord r = Assert.IsType<Parsed<ProductionRecord>.Ok>(ProductionRecord.Read(head + "| Soup | Leek soup | 4000 | 4100 | 3800 | 200 | 60 |\n| Soup | Oil | 40 | | | | |\n")).Value;
        Assert.Equal((40, 38, new LocalDate(2026, 3, 7)), (r.CoversPlanned, r.CoversServed, r.Day));
        Assert.Equal(40, r.Parts[0].Unaccounted);
        Assert.Null(r.Parts[1].Unaccounted);
        Assert.Equal("REC003", Assert.Single(Assert.IsType<Parsed<ProductionRecord>.Failed>(ProductionRecord.Read(head + "| Soup | Leek soup | 4000 | 4100 | 3800 | 800 | 60 |\n")).Problems).Code);
    }

    private static Occasion Some() => new()
    {
        Title = "t", Sheet = new Cards.Occasions.OccasionSheet { Title = "t" }, SlotStart = new(2026, 3, 7, 14, 0), SlotLength = Duration.FromMinutes(10), SlotPlace = "stage", Guests = 4, Covers = 4,
        Dishes = [new OccasionDish("Leek soup", Dish, 4, "plates", "", "card.md")],
    };
}
