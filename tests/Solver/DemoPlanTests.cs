using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Solver.Tests;

/// <summary>The demo occasion and its variations through the planner and the independent validator.</summary>
public sealed class DemoPlanTests
{
    private static readonly OccasionSheet Sheet = OccasionReader.Read(File.ReadAllText(Demo("occasion.md")), new LocalDate(2026, 10, 1))
        .Match(s => s, p => throw new InvalidOperationException(string.Join("; ", p)));

    [Fact]
    public void The_demo_occasion_is_planned_without_a_fault()
    {
        Plan plan = Planned(Sheet);
        Assert.Equal(1500, plan.RunSheet.Sum(s => s.Seconds));
        Assert.True(plan.Objective[0].Proven);
        Assert.All(plan.Twins.Where(t => t.MadeBy is not null), t => Assert.Contains(plan.Tasks, x => x.Id == t.MadeBy));
        HeatedForWhatGoesIn(plan);
        BroughtWhenMade(plan);
        DueOutAtOnce(plan);
        // A moment is called by the sentence with its time, not by the one the step begins with ("Weigh a 24 cm pan empty", "Wrap beets in foil").
        Assert.Contains(plan.Tasks, t => t.Text == "in: Reduce the juices, vinegar and sugar at a steady boil, about 75 min");
        Assert.Contains(plan.Tasks, t => t.Text == "out: Roast at 180 °C for 85 min");
        Assert.Contains(plan.Tasks, t => t.Text == "in: Bake at 160 °C, 38 min");
    }

    // A bath filled on Friday in one place is no heat for Saturday's bags in another. The first plan found is judged, so the twenty minutes may still be overrun; a day may not.
    private static void HeatedForWhatGoesIn(Plan plan)
    {
        PlannedTask[] heats = [.. plan.Tasks.Where(t => t.Kind == TaskKind.Preheat)];
        Assert.NotEmpty(heats);
        Assert.All(heats, h =>
        {
            PlannedTask bath = plan.Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Celsius == h.Celsius && t.Component == h.Component && t.Text.StartsWith("for the stage", StringComparison.Ordinal) == h.Text.StartsWith("for the stage", StringComparison.Ordinal) && t.Start >= h.End).MinBy(t => t.Start)!;
            Assert.True(h.Kit.IsEmpty || h.Kit.SequenceEqual(bath.Kit), $"{h.Text} on {string.Join(",", h.Kit)} for {string.Join(",", bath.Kit)}");
        });
    }

    private static void BroughtWhenMade(Plan plan)
    {
        PlannedTask bring = Assert.Single(plan.Tasks, t => t.Text.StartsWith("bring the ", StringComparison.Ordinal));
        PlannedTask[] made = [.. plan.Twins.Where(t => t.MadeBy is not null && !t.Holds.Contains("in the bath", StringComparison.Ordinal)).Select(t => plan.Tasks.Single(x => x.Id == t.MadeBy))];
        Assert.NotEmpty(made);
        Assert.Equal(bring.Text.Split(' ')[2], plan.Twins.Count(t => t.SetOutBy == bring.Id).ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.All(plan.Twins, t => Assert.Contains(plan.Tasks, x => x.Id == t.SetOutBy && (x.Id == bring.Id || t.Holds.Contains("in the bath", StringComparison.Ordinal))));
        Assert.All(made, m => Assert.True(m.End <= bring.Start, $"{m.Text} is made until {m.End}, the twins are brought at {bring.Start}"));
    }

    // What is due out of an oven or off a ring waits for nothing.
    private static void DueOutAtOnce(Plan plan)
    {
        PlannedTask[] outs = [.. plan.Tasks.Where(t => t.Kind == TaskKind.Moment && t.Text.Contains("out: ", StringComparison.Ordinal))];
        Assert.NotEmpty(outs);
        Assert.All(outs, t => Assert.Equal(Duration.Zero, t.Slack));
    }

    [Fact]
    public void Forty_plates_twenty_minutes_and_one_oven_less_are_planned_without_a_fault()
    {
        Plan plan = Planned(Sheet with
        {
            SlotLength = Duration.FromMinutes(20),
            Guests = 36,
            Over = 4,
            Dishes = [.. Sheet.Dishes.Select(d => d.Unit == "plates" ? d with { Count = 40 } : d)],
            Kit = [.. Sheet.Kit.Where(k => k.Code != "SO")],
            Circuits = [.. Sheet.Circuits.Select(c => c with { Kit = c.Kit.Remove("SO") })],
        });
        Assert.Equal(1200, plan.RunSheet.Sum(s => s.Seconds));
        Assert.DoesNotContain(plan.Tasks, t => t.Kit.Contains("SO"));
    }

    [Fact]
    public void One_sentence_over_a_card_is_planned_on_the_default_kitchen_without_a_fault()
    {
        OccasionSheet sentence = OccasionReader.Read("53 plates, Saturday 14:00, 25 minutes, Ilse and two others", new LocalDate(2026, 10, 5)).Match(s => s, p => throw new InvalidOperationException(string.Join("; ", p)));
        Occasion occasion = OccasionBuilder.Build(sentence, _ => null, [("starter.md", Card("cards/starter.md"))]).Match(o => o, p => throw new InvalidOperationException(string.Join("; ", p)));
        Plan plan = Planned(occasion);
        Assert.Equal(3, occasion.People.Length);
        Assert.Equal(53, occasion.Covers);
        Assert.Equal(1500, plan.RunSheet.Sum(s => s.Seconds));
        Assert.NotEmpty(occasion.Assumed);
    }

    [Fact]
    public void What_must_be_cold_within_ninety_minutes_of_the_bath_is_out_of_the_chiller_by_then()
    {
        Plan plan = Planned(Sheet);
        PlannedTask[] cooled = [.. plan.Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Text.Contains("Blast chill to 8 °C or less within 90 min of leaving the bath", StringComparison.Ordinal))];
        Assert.NotEmpty(cooled);
        Assert.All(cooled, chill =>
        {
            PlannedTask bath = plan.Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Component == chill.Component && t.Kit.Contains("SB") && t.End <= chill.Start).MaxBy(t => t.End)!;
            Assert.InRange(Period.Between(bath.End, chill.End, PeriodUnits.Minutes).Minutes, 1, 90);
        });
    }

    [Fact]
    public void With_nobody_there_on_the_day_the_conflict_is_named()
    {
        OccasionSheet friday = Sheet with { People = [.. Sheet.People.Select(p => p with { Hours = [.. p.Hours.Where(h => h.Start.Date != new LocalDate(2026, 10, 10) || h.Start.TimeOfDay > new LocalTime(13, 0))] })] };
        Occasion occasion = OccasionBuilder.Build(friday, p => Card(p)).Match(o => o, p => throw new InvalidOperationException(string.Join("; ", p)));
        NoPlan no = Assert.IsType<NoPlan>(new CpSatPlanner().Plan(occasion, Batches(occasion), new PlanOptions(120) { FirstOnly = true }));
        Assert.NotEmpty(no.Conflicts);
    }

    private static Plan Planned(OccasionSheet sheet)
        => Planned(OccasionBuilder.Build(sheet, p => Card(p)).Match(o => o, p => throw new InvalidOperationException(string.Join("; ", p))));

    private static Plan Planned(Occasion occasion)
    {
        PlanOutcome outcome = new CpSatPlanner().Plan(occasion, Batches(occasion), new PlanOptions(120) { FirstOnly = true });
        Plan plan = outcome as Plan ?? throw new InvalidOperationException(outcome is NoPlan no ? string.Join("; ", no.Conflicts) : "not yet");
        Assert.Empty(PlanValidator.Check(occasion, plan).Select(f => $"{f.Code} {f.By:0.#} {f.Unit}: {f.Words} {string.Join(",", f.TaskIds)}"));
        return plan;
    }

    private static ImmutableArray<Batch> Batches(Occasion occasion) => OccasionBatches.Make(occasion).Match(b => b, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static Dish Card(string path) => CardReader.Read(new CardText(File.ReadAllText(Demo(path)), path)).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static string Demo(string path) => Path.Combine(SharedData.Repository, "examples", "demo", path);
}
