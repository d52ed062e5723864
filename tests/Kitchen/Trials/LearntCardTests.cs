using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Plating;
using Coulisse.Kitchen.Safety;
using Coulisse.Kitchen.Trials;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Trials;

/// <summary>What good runs of a standardised card teach: yields, boil-off, h. Two runs teach nothing, and nothing that is learnt makes a safety case easier.</summary>
public sealed class LearntCardTests
{
    private const string Card = """
        # Jus and egg

        Serves 10.

        One plate: 60 g beef jus, 50 g egg mix.

        ## Beef jus

        Makes 600 g.

        - 2 kg beef stock
        - 300 g red wine

        1. Reduce at a steady boil, about 60 min.

        ## Egg mix

        - 600 g pasteurised egg yolk

        1. Seal in a vacuum pouch, nowhere thicker than 20 mm. Bath 90 min at 82 °C, until the core has been at 80 °C for at least 10 min.
        """;

    private static Dish Dish => CardReader.Read(new CardText(Card, "card.md")).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static Trial Run(double jus, double minutes = 60, double h = 80, string good = "Good run.", double into = 2300, double left = 20, int version = 1, double times = 1)
        => TrialSheet.Read(FormattableString.Invariant($"""
            # Trial of Jus and egg

            Made on 2026-03-01 by Ada. Card version {version}. {times} times the card. {good}

            ## Times
            | Part | Step | Minutes |
            |---|---|---|
            | Beef jus | Reduce at a steady boil, about 60 min. | {minutes} |

            ## Came out
            | Part | In, g | Out, g | Left behind, g |
            |---|---|---|---|
            | Beef jus | {into} | {jus} | {left} |

            ## Core
            | Part | Step | File | Shape | Size, mm | Medium, °C | h, W/(m²·K) |
            |---|---|---|---|---|---|---|
            | Egg mix | {Dish.Components[1].Steps[0].Text} | | | | | {h} |
            """)).Match(t => t, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static Trial[] Three(double h = 80) => [Run(540, 60, h), Run(552, 62, h + 4), Run(546, 64, h + 10)];

    private static LearntCard Learnt(params Trial[] trials) => Assert.IsType<LearntCard>(TrialLearning.Card(Dish, trials));

    private static Occasion Occasion(params Trial[] trials) => new()
    {
        Title = "t", Sheet = new OccasionSheet { Title = "t" }, SlotStart = new LocalDateTime(2026, 10, 10, 12, 0), SlotLength = Duration.Zero, SlotPlace = "front", Guests = 10, Covers = 10,
        Dishes = [new OccasionDish("Jus", Dish, 10, "plates", "", "card.md")],
        LearntCards = TrialLearning.Card(Dish, trials) is { } learnt ? [learnt] : [],
    };

    private static Batch Made(Occasion occasion) => Assert.Single(OccasionBatches.Make(occasion).Match(b => b, p => throw new InvalidOperationException(string.Join("; ", p))));

    // By hand: 540, 552, 546: mean 546, deviation 6.
    [Fact]
    public void Three_good_runs_teach_what_a_part_weighs_with_its_spread()
    {
        Measured jus = Assert.Single(Learnt(Three()).Parts).Grams;
        Assert.Equal((3, 546.0, 540.0, 552.0), (jus.Runs, jus.Mean, jus.Least, jus.Most));
        Assert.Equal(6, jus.Deviation, 9);
    }

    [Fact]
    public void Two_runs_teach_nothing_nor_do_three_of_which_one_was_not_good_or_came_out_otherwise_or_was_of_another_version()
    {
        Trial[] three = Three();
        Assert.Null(TrialLearning.Card(Dish, three[..2]));
        Assert.Null(TrialLearning.Card(Dish, [.. three[..2], Run(546, good: "Not a good run.")]));
        Assert.Null(TrialLearning.Card(Dish, [.. three[..2], Run(546, good: "")]));
        Assert.Null(TrialLearning.Card(Dish, [.. three[..2], Run(640)]));
        Assert.Null(TrialLearning.Card(Dish, [.. three[..2], Run(546, version: 2)]));
        PartBalance asWritten = Row(Occasion(three[..2]));
        Assert.Equal((600.0, null, ""), (asWritten.Row.Made, asWritten.Row.MadeLeast, asWritten.Row.Learnt));
    }

    [Fact]
    public void A_run_of_twice_the_card_counts_half_its_grams()
    {
        Trial[] three = [.. Three()[..2], Run(1092, 124, into: 4600, left: 40, times: 2)];
        Assert.Equal(546, Assert.Single(Learnt(three).Parts).Grams.Mean, 9);
    }

    // By hand: ten plates of 60 g need 600 g. The card's 600 g are just enough; in the kitchen 546 g came out, at the least 540: 600 / 540 = 1.1111 times the card fills the plates even on that day.
    [Fact]
    public void What_was_learnt_makes_the_batch_larger_and_the_balance_says_where_its_figure_is_from()
    {
        Occasion occasion = Occasion(Three());
        Batch batch = Made(occasion);
        BatchComponent jus = batch.Components[0];
        Assert.Equal(600 / 540.0, jus.Factor, 9);
        Assert.Equal(1, Made(Occasion()).Components[0].Factor, 9);
        PartBalance row = Row(occasion);
        Assert.Equal(546 * 600 / 540.0, row.Row.Made, 6);
        Assert.Equal(600, row.Row.MadeLeast!.Value, 6);
        Assert.Equal(BalanceVerdict.Even, row.Row.Verdict);
        Assert.Contains("learnt from 3 runs: 546 g, 540 to 552", row.Row.Learnt, StringComparison.Ordinal);
        Assert.Contains("the card says 600 g", row.Row.Learnt, StringComparison.Ordinal);
        double Stock(Occasion o) => OccasionNeeds.Of(o).Match(n => n, p => throw new InvalidOperationException(string.Join("; ", p))).Needs.Where(n => n.Food.Contains("stock", StringComparison.OrdinalIgnoreCase)).Sum(n => n.Grams);
        Assert.Equal(Stock(Occasion()) * 600 / 540.0, Stock(occasion), 6);
    }

    [Fact]
    public void A_batch_of_a_stated_size_is_short_when_the_leanest_run_would_be()
    {
        Dish taught = LearntCard.Onto(Dish, [Learnt(Three())]);
        Batch asCard = Scaling.Scale(Weighing.Weigh(taught), new ScaleTo.Factor(1)).Match(b => b, p => throw new InvalidOperationException());
        // 545 g: less than the mean of 546, more than the least of 540
        BalanceRow row = Balance.Of(asCard, 545 / 60.0).First();
        Assert.Equal(BalanceVerdict.Short, row.Verdict);
        Assert.Equal(545 / 540.0, row.Factor, 9);
        Assert.Equal(BalanceVerdict.Even, Balance.Of(asCard, 540 / 60.0).First().Verdict);
    }

    // By hand: 2300 in, 540 out and 20 in the pan, 60 min: 1740 / 60 = 29 g/min; 2300 - 572 = 1728 / 62 = 27.87; 2300 - 566 = 1734 / 64 = 27.09.
    [Fact]
    public void The_pace_of_a_reduction_is_what_the_scale_lost_by_the_minute_and_what_sticks_to_the_pan_is_no_steam()
    {
        Measured pace = Learnt(Three()).Steps.Single(s => s.BoiledOffPerMinute is not null).BoiledOffPerMinute!;
        Assert.Equal((1740 / 60.0 + 1728 / 62.0 + 1734 / 64.0) / 3, pace.Mean, 9);
        Assert.Equal(1734 / 64.0, pace.Least, 9);
        Assert.Equal(560 / 2300.0, Learnt(Three()).Steps.Single(s => s.LeftShare is not null).LeftShare!.Least, 9);
    }

    [Fact]
    public void A_slower_pan_than_the_ring_could_make_it_takes_longer_for_more_and_a_quicker_one_never_less_than_the_ring_gives()
    {
        double Cautious(Trial[] trials)
        {
            Occasion occasion = Occasion(trials) with { Dishes = [Occasion().Dishes[0] with { Count = 50 }] };
            BatchStep step = ScaledTimes.For(Made(occasion), KitFacts.Of([new SheetKit("H1", "induction ring", "hob", "back", 1, "", 1) { Kilowatts = 2 }])).Components[0].Steps[0];
            Assert.Contains("learnt from 3 runs", step.Why, StringComparison.Ordinal);
            return step.MinutesCautious!.Value;
        }

        // The card gives no end weight. By hand: 560/2300 left at the least, 50 / 10 · 600 / 540 times 2300 g; one ring of 2 kW at its poor end gives 1.2 kW, 31.9 g/min.
        double water = 5 * 600 / 540.0 * 2300 * (1 - (560 / 2300.0));
        double ring = water * 2.257 / 1.2 / 60;
        Assert.Equal(water / (1734 / 64.0), Cautious(Three()), 0.51);
        // 1740 g in 30 min is 58 g/min, more than the ring's poor end: it stays with the ring
        Assert.Equal(ring, Cautious([Run(540, 30), Run(552, 31), Run(546, 32)]), 0.51);
    }

    [Fact]
    public void A_part_that_also_loses_weight_otherwise_teaches_no_pace()
    {
        Dish strained = CardReader.Read(new CardText(Card.Replace("about 60 min.\n", "about 60 min.\n2. Strain through a fine sieve.\n", StringComparison.Ordinal), "card.md")).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));
        Assert.Contains(strained.Components[0].Steps, s => s.Operations.Contains("strain") || s.Operation == "strain" || s.Operations.Contains("sieve_fine"));
        LearntCard learnt = Assert.IsType<LearntCard>(TrialLearning.Card(strained, Three()));
        Assert.All(learnt.Steps, s => Assert.Null(s.BoiledOffPerMinute));
        Assert.Equal(546, Assert.Single(learnt.Parts).Grams.Mean, 9);
    }

    [Fact]
    public void An_edited_step_has_learnt_no_pace_and_a_note_that_was_added_unteaches_nothing()
    {
        Dish slower = Read(Card.Replace("about 60 min", "about 80 min", StringComparison.Ordinal));
        Dish noted = Read(Card + "\nThe pan with the thick base is the better one.\n");
        Dish richer = Read(Card.Replace("2 kg beef", "2.5 kg beef", StringComparison.Ordinal));
        Assert.DoesNotContain(LearntCard.Onto(slower, [Learnt(Three())]).Components[0].Steps, s => s.BoiledOffPerMinute is not null);
        Assert.True(TrialLearning.SameMake(Dish, noted));
        Assert.False(TrialLearning.SameMake(Dish, slower));
        Assert.False(TrialLearning.SameMake(Dish, richer));
    }

    // The law of the safety side: whatever is learnt, the margin of no finding grows and no finding goes.
    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(94)]
    [InlineData(95)]
    [InlineData(140)]
    [InlineData(900)]
    public void No_trial_makes_a_safety_case_easier(double h)
    {
        Findings before = Reviewed(Dish);
        Findings after = Reviewed(LearntCard.Onto(Dish, [Learnt(Three(h))]));
        Assert.True(before.All.All(f => after.All.Any(g => g.Rule == f.Rule && g.Line == f.Line && g.Severity >= f.Severity)), $"h {h}: {string.Join("; ", after.All.Select(f => f.What))}");
        if (h >= 95)
        {
            Assert.Equal(before.All.Select(f => f.What), after.All.Select(f => f.What));
        }
    }

    // Slower water than Baldwin's: 20 mm of yolk that were through in time are not any more, and the finding says whose figure it is.
    [Fact]
    public void A_bath_that_was_shown_to_be_slow_is_judged_by_the_slowest_of_its_runs()
    {
        Assert.DoesNotContain(Reviewed(Dish).All, f => f.Rule == "SAF001");
        Dish taught = LearntCard.Onto(Dish, [Learnt(Three(20))]);
        Assert.Equal(20, taught.Components[1].Steps[0].SurfaceWatts!.Least);
        Finding slow = Assert.Single(Reviewed(taught).All, f => f.Rule == "SAF001");
        Assert.Contains("h 20 W/(m²·K), the least of the bath's own probe curves (learnt from 3 runs", slow.Source, StringComparison.Ordinal);
        Assert.Contains("no trial loosens this bound", Assert.Single(CoreTrace.Of(Weighing.Weigh(LearntCard.Onto(Dish, [Learnt(Three(140))])))).Why, StringComparison.Ordinal);
        // two curves are not used
        Trial[] two = [.. Three(20)[..2], Run(546) with { Cores = [] }];
        Assert.Null(LearntCard.Onto(Dish, [Learnt(two)]).Components[1].Steps[0].SurfaceWatts);
    }

    // What was boiled off in trials must not make a jar look drier or a syrup stronger than the card makes it.
    [Fact]
    public void Safety_judges_the_end_weight_of_the_card_not_what_was_left_in_trials()
    {
        Dish taught = LearntCard.Onto(Dish, [Learnt(Three())]);
        Assert.NotNull(taught.Components[0].Steps[0].LeftShare);
        Assert.Equal(MethodFold.Run(Weighing.Weigh(Dish).Components[0]).Stages[^1].After, MethodFold.Run(Weighing.Weigh(taught).Components[0]).Stages[^1].After);
    }

    [Theory]
    [InlineData("| | Bath. | a.csv | slab | | 60 | |", "TRI010")]
    [InlineData("| | Bath. | a.csv | cube | 20 | 60 | |", "TRI010")]
    [InlineData("| | Bath. | a.csv | cylinder | 20 | 60 | |", "TRI010")]
    [InlineData("| | Bath. | | | | | 4000 |", "TRI009")]
    [InlineData("| | Bath. | | | | | fast |", "TRI002")]
    public void A_curve_that_cannot_be_fitted_is_named(string row, string code)
        => Assert.Contains(code, Assert.IsType<Parsed<Trial>.Failed>(TrialSheet.Read($"# Trial of x\n\n## Core\n| Part | Step | File | Shape | Size, mm | Medium, °C | h, W/(m²·K) |\n|---|---|---|---|---|---|---|\n{row}\n")).Problems.Select(p => p.Code));

    [Fact]
    public void An_empty_row_of_the_core_table_says_nothing_and_a_blank_sheet_has_the_table_only_for_what_lies_in_a_bath()
    {
        string blank = BlankTrial.Of(Weighing.Weigh(Dish));
        Assert.Contains("| Egg mix |", blank[blank.IndexOf("## Core", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.Empty(TrialSheet.Read(blank).Match(t => t.Cores, p => throw new InvalidOperationException(string.Join("; ", p))));
        Assert.DoesNotContain("## Core", BlankTrial.Of(Weighing.Weigh(Read("# Soup\n\n- 600 g leeks\n\n1. Simmer 20 min.\n"))), StringComparison.Ordinal);
    }

    private static Dish Read(string card) => CardReader.Read(new CardText(card, "card.md")).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static Findings Reviewed(Dish dish) => SafetyReview.Review(Weighing.Weigh(dish), "au");

    private static PartBalance Row(Occasion occasion) => PartBalance.Of(occasion).Match(p => p, p => throw new InvalidOperationException(string.Join("; ", p))).First(p => p.Row.Component == "Beef jus");
}
