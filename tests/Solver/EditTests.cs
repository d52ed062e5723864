using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Solver.Tests;

/// <summary>What a person pins, forbids and puts in order is kept by the plan, or the conflict is named.</summary>
public sealed class EditTests
{
    [Fact]
    public void Names_of_tasks_are_unique_and_do_not_depend_on_the_plan()
    {
        Assert.Distinct(DemoOccasion.Work.Tasks.Select(t => t.Key));
        Assert.All(DemoOccasion.Work.Tasks, t => Assert.NotEmpty(t.Key));
    }

    [Fact]
    public void A_start_a_person_a_piece_of_kit_and_an_order_are_kept()
    {
        Plan plain = Planned(PlanEdits.None);
        // Far from the meal, where seven minutes later nobody would work.
        PlannedTask one = plain.Tasks.First(t => t is { Kind: TaskKind.Work, People.Length: 1, Line: > 0 } && t.Start.Date == plain.SlotStart.Date.PlusDays(-1) && t.Start.Hour is < 11 or > 13 && t.Slack > Duration.FromMinutes(40));
        PlannedTask baked = plain.Tasks.First(t => t.Kind == TaskKind.Unattended && t.Kit.Any(k => DemoOccasion.Occasion.Kit.First(x => x.Code == k).Type == "oven"));
        PlannedTask[] pair = [.. plain.Tasks.Where(t => t is { Kind: TaskKind.Work, Line: > 0 } && t.Component != one.Component && t.Start.Date == one.Start.Date).DistinctBy(t => t.Component).Take(2)];
        PlanEdits edits = new()
        {
            Pins = [new Pin(one.Key, one.Start.PlusMinutes(7))],
            Forbids = [new Forbid(baked.Key, baked.Start, baked.Start.PlusMinutes(5)), new Forbid(pair[0].Key, null, null, pair[0].People[0])],
            Sequences = [new Sequence(pair[1].Key, pair[0].Key)],
        };
        Plan made = Planned(edits);
        Assert.Equal(one.Start.PlusMinutes(7), made.Tasks.Single(t => t.Key == one.Key).Start);
        Assert.DoesNotContain(pair[0].People[0], made.Tasks.Single(t => t.Key == pair[0].Key).People);
        Assert.NotEqual(baked.Start, made.Tasks.Single(t => t.Key == baked.Key).Start);
        Assert.True(made.Tasks.Single(t => t.Key == pair[1].Key).End <= made.Tasks.Single(t => t.Key == pair[0].Key).Start);

        // The rule that checks it is seen to fail: the plan without edits breaks every one of them.
        string[] codes = [.. PlanValidator.Check(DemoOccasion.Occasion, plain with { Edits = edits }).Select(f => f.Code).Distinct()];
        Assert.Contains("pin-not-kept", codes);
        Assert.Contains("forbidden", codes);
    }

    [Fact]
    public void A_pin_that_cannot_be_kept_is_named_in_the_conflict_and_giving_it_up_is_a_remedy()
    {
        PrepTask plate = DemoOccasion.Work.Tasks.First(t => t.Kind == TaskKind.Plate);
        PlanEdits night = new() { Pins = [new Pin(plate.Key, DemoOccasion.Occasion.SlotStart.Date.At(new LocalTime(3, 0)))] };
        NoPlan no = Assert.IsType<NoPlan>(new CpSatPlanner().Plan(DemoOccasion.Occasion, DemoOccasion.Batches, new PlanOptions(120) { FirstOnly = true, Edits = night }));
        Assert.Contains(no.Conflicts, c => c.Contains("you pinned", StringComparison.Ordinal) && c.Contains(plate.Key, StringComparison.Ordinal));
        Assert.Contains(no.Remedies, r => r.Contains("Do not pin", StringComparison.Ordinal));
    }

    [Fact]
    public void Edits_of_nothing_are_refused_with_the_nearest_names()
    {
        PrepWork work = DemoOccasion.Work with { Edits = new PlanEdits { Pins = [new Pin(DemoOccasion.Work.Tasks[0].Key + "x", DemoOccasion.Occasion.SlotStart.PlusHours(-5)), new Pin(DemoOccasion.Work.Tasks[0].Key, null, "Nobody")] } };
        string[] codes = [.. EditReview.Check(DemoOccasion.Occasion, work).Select(p => p.Code)];
        Assert.Equal(["PLN010", "PLN012"], codes);
        // Near miss: the right name and somebody who is there say nothing.
        Assert.Empty(EditReview.Check(DemoOccasion.Occasion, DemoOccasion.Work with { Edits = new PlanEdits { Pins = [new Pin(DemoOccasion.Work.Tasks[0].Key, null, DemoOccasion.Occasion.People[0].Name)] } }));
    }

    [Theory]
    [InlineData("curd-34 = Sat 09:30", "2026-10-10T09:30:00", null, null)]
    [InlineData("curd-34=2026-10-09T17:05", "2026-10-09T17:05:00", null, null)]
    [InlineData("curd-34=SO", null, null, "SO")]
    public void Pins_are_read_from_one_line(string text, string? start, string? person, string? kit)
    {
        Pin pin = EditReader.Pin(text, DemoOccasion.Occasion).Match(p => p, p => throw new InvalidOperationException(p[0].Message));
        Assert.Equal(("curd-34", start, person, kit), (pin.Task, pin.Start?.ToString("uuuu-MM-dd'T'HH:mm:ss", System.Globalization.CultureInfo.InvariantCulture), pin.Person, pin.Kit));
    }

    [Theory]
    [InlineData("curd-34", "PLN011")]
    [InlineData("curd-34=noon", "PLN012")]
    public void What_cannot_be_read_says_what_would_be_right(string text, string code)
        => Assert.Equal(code, EditReader.Pin(text, DemoOccasion.Occasion).Match(_ => "", p => p[0].Code));

    private static Plan Planned(PlanEdits edits)
    {
        PlanOutcome outcome = new CpSatPlanner().Plan(DemoOccasion.Occasion, DemoOccasion.Batches, new PlanOptions(120) { FirstOnly = true, Edits = edits });
        Plan plan = outcome as Plan ?? throw new InvalidOperationException(outcome is NoPlan no ? string.Join("; ", no.Conflicts) : "not yet");
        Assert.Empty(PlanValidator.Check(DemoOccasion.Occasion, plan).Select(f => $"{f.Code} {f.By:0.#} {f.Unit}: {f.Words} {string.Join(",", f.TaskIds)}"));
        return plan;
    }
}
