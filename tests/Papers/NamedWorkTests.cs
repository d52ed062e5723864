using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Papers.Tests;

/// <summary>What a reader looked for on the papers and did not find: a name, a door, a gram, what to do.</summary>
public sealed class NamedWorkTests
{
    private static readonly PaperBundle Demo = Papers.Tests.Demo.Planned();

    private static PaperBundle With(params PlannedTask[] tasks) => Demo with { Plan = Demo.Plan! with { Tasks = [.. tasks] } };

    private static PlannedTask Plating => new() { Id = "p", Text = "plate 52 plates of x, diets first, back to the cold", Kind = TaskKind.Plate, Start = Demo.Plan!.SlotStart.PlusHours(-2), End = Demo.Plan.SlotStart.PlusHours(-1), Dish = Demo.Occasion!.Dishes[0].Name, People = ["Bram", "Noor", "Petra"] };

    private static string Text(IEnumerable<Paper> papers) => string.Join('\n', papers.SelectMany(p => PaperLines.Of(p)));

    [Fact]
    public void One_of_those_who_plate_has_the_plates_for_diets_and_nobody_else_reads_that_they_have_them()
    {
        PaperBundle bundle = With(Plating);
        Assert.Contains("Petra plates them", Text(PlatingPaper.Of(bundle)), StringComparison.Ordinal);
        foreach (Paper sheet in HelperPaper.Of(bundle).Concat(PrepListPaper.Of(bundle)))
        {
            Assert.Equal(sheet.Person == "Petra", Text([sheet]).Contains("You plate these first, with clean tools: seats 4, 5, 17, 23, 40", StringComparison.Ordinal));
        }

        // Without diets there is nothing to be first.
        Assert.DoesNotContain("plates them", Text(PlatingPaper.Of(bundle with { Occasion = bundle.Occasion! with { Diets = [] } })), StringComparison.Ordinal);
    }

    [Fact]
    public void The_fridge_of_the_plates_is_named_where_they_are_plated()
    {
        // 52 plates at 6 a tray are 9 trays: F1 has 12 slots and F2 three.
        Assert.Contains("F1 (back): 9 / 12", Text(PlatingPaper.Of(With(Plating))), StringComparison.Ordinal);
        Assert.Contains("F1 (back): 9 / 12", Text(PrepListPaper.Of(With(Plating))), StringComparison.Ordinal);
        PaperBundle small = With(Plating) with { Occasion = Demo.Occasion! with { Dishes = Demo.Occasion.Dishes.SetItem(0, Demo.Occasion.Dishes[0] with { Count = 13 }) } };
        Assert.Contains("F2 (stage): 2 / 3", Text(PlatingPaper.Of(small)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_curd_of_a_plate_has_its_grams_and_what_is_not_piped_has_none()
    {
        PaperRow[] rows = [.. PlatingPaper.Of(Demo).First().Blocks.OfType<TableBlock>().First().Rows];

        // By hand: five half-moons with a line of 1.8 g each.
        Assert.Contains(rows, r => r.Cells[0].Text.StartsWith("C2", StringComparison.Ordinal) && r.Cells[0].Text.Contains("1.8\u202Fg each, 9\u202Fg a plate", StringComparison.Ordinal));
        Assert.Single(rows, r => r.Cells[0].Text.Contains("piped", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_two_tins_are_made_the_grams_of_a_step_are_said_for_both_and_where_one_is_none_are()
    {
        PaperBundle bundle = Demo;
        int slice = Array.FindIndex([.. bundle.Occasion!.Dishes], d => d.Name.StartsWith("Buckwheat", StringComparison.Ordinal));
        Cards.Step press = bundle.Batches[slice].Weighed.Dish.Components[0].Steps.Single(s => s.Text.StartsWith("Press", StringComparison.Ordinal));
        PlannedTask task = new() { Id = "a", Text = press.Text, Kind = TaskKind.Work, Start = Demo.Plan!.SlotStart.PlusHours(-2), End = Demo.Plan.SlotStart.PlusHours(-1), Dish = bundle.Occasion.Dishes[slice].Name, Component = "Dough", Line = press.Span.Line, People = ["Noor"] };

        // By hand: 485 and 273 g of the card, two tins.
        const string Both = "485\u202Fg × 2 = 970\u202Fg; 273\u202Fg × 2 = 546\u202Fg";
        Assert.Contains(Both, Text(PrepListPaper.Of(With(task))), StringComparison.Ordinal);
        Assert.Contains(Both, Text(CardPaper.Of(bundle)), StringComparison.Ordinal);
        string stage = Text(PrepListPaper.Of(With(task with { Text = "for the stage: " + press.Text })));
        Assert.DoesNotContain("× 2", stage, StringComparison.Ordinal);
        Assert.Contains("weigh-out for the stage", stage, StringComparison.Ordinal);

        // The starter is made as written: its 1,346 g into the frame are what they are.
        Assert.DoesNotContain("1,346\u202Fg ×", Text(CardPaper.Of(bundle)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_twin_that_stands_in_its_heat_is_set_out_by_nobody_and_one_that_is_carried_by_whoever_carries_it()
    {
        Plan plan = Demo.Plan!;
        PlannedTask bath = new() { Id = "bath", Text = "for the stage: Bath 45 min", Kind = TaskKind.Unattended, Start = plan.SlotStart.PlusMinutes(-92), End = plan.SlotStart.PlusMinutes(-47), Kit = ["SB"] };
        PlannedTask put = new() { Id = "in", Text = "for the stage: in: Bath 45 min", Kind = TaskKind.Moment, Within = "bath", Start = bath.Start, End = bath.Start.PlusMinutes(2), People = ["Ilse"], Kit = ["SB"] };
        PaperBundle bundle = Demo with { Plan = plan with { Tasks = [.. plan.Tasks, bath, put], Twins = plan.Twins.SetItem(0, plan.Twins[0] with { Holds = "82 °C in the bath", Place = "SB", SetOutBy = "bath", BroughtBy = "there" }) } };
        PaperRow[] rows = [.. TwinListPaper.Of(bundle)!.Blocks.OfType<TableBlock>().Single().Rows];

        Assert.Contains("stays where it cooked; put in by Ilse, Sat 10 Oct 12:28", string.Join('|', rows[0].Cells.Select(c => c.Text)), StringComparison.Ordinal);
        Assert.DoesNotContain("keeps", rows[0].Cells[7].Text, StringComparison.Ordinal);
        Assert.DoesNotContain("nobody", string.Join('|', rows[1].Cells.Select(c => c.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void Many_twins_that_are_carried_at_once_take_several_rows_with_a_tick_each_and_a_few_take_one()
    {
        PaperRow[] Carried(int count, Func<PaperBundle, IEnumerable<Paper>> sheets)
        {
            Plan plan = Demo.Plan!;
            PaperBundle bundle = Demo with { Plan = plan with { Twins = [.. Enumerable.Range(1, count).Select(n => plan.Twins[0] with { Number = n })] } };
            return [.. sheets(bundle).Where(p => p.Person == "Bram").SelectMany(p => p.Blocks.OfType<TableBlock>()).SelectMany(t => t.Rows).Where(r => r.Cells.Any(c => c.Text.Contains(" → F2", StringComparison.Ordinal)))];
        }

        foreach (Func<PaperBundle, IEnumerable<Paper>> sheets in (Func<PaperBundle, IEnumerable<Paper>>[])[HelperPaper.Of, PrepListPaper.Of])
        {
            PaperRow[] rows = Carried(17, sheets);
            Assert.Equal(3, rows.Length);
            Assert.All(rows, r => Assert.Equal(ByHand.Tick, r.Cells[0].Hand));
            Assert.Equal(Enumerable.Range(1, 17), rows.SelectMany(r => r.Cells).SelectMany(c => System.Text.RegularExpressions.Regex.Matches(c.Text, "№(\\d+) ")).Select(m => int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)));
            Assert.Single(Carried(6, sheets));
        }
    }

    [Fact]
    public void A_bath_that_stays_low_is_turned_up_and_each_degree_has_its_minutes_until_it_never_gets_there()
    {
        ControlPoint bath = Demo.Findings.SelectMany(f => f.ControlPoints).Single(p => p.Limit == "80 °C in the middle for 10 min");
        BriefPhrases say = BriefPhrases.For("en");
        string said = TaskLimits.Low(bath, say);

        Assert.Equal([81, 80], bath.WhenLow.Select(l => l.Celsius));
        Assert.Null(bath.WhenLow[1].Minutes);   // the middle of what lies in 80 °C stays under 80 °C
        Assert.True(bath.WhenLow[0].Minutes >= 45, "a low bath never shortens what the card says");
        Assert.Contains("turn it up", said, StringComparison.Ordinal);
        Assert.Contains("At 80 °C it never gets there", said, StringComparison.Ordinal);
        PlannedTask task = Demo.Plan!.Tasks.First(t => t.Line == bath.Line);
        Assert.Contains(said, TaskLimits.Lines(Demo, task, say));
        Assert.Contains("turn it up", Text([ControlLogPaper.Of(Demo)!]), StringComparison.Ordinal);

        // What is in an oven has no bath to be low.
        ControlPoint oven = Demo.Findings.SelectMany(f => f.ControlPoints).First(p => p.Limit == "74 °C in the middle");
        Assert.Empty(oven.WhenLow);
    }

    [Fact]
    public void Kit_and_loads_go_on_through_the_slot_and_after_it()
    {
        Plan plan = Demo.Plan! with { Tasks = [new PlannedTask { Id = "live-1", Text = "begun live, goes on", Kind = TaskKind.Unattended, Start = Demo.Plan.SlotStart.PlusMinutes(3), End = Demo.Plan.SlotStart.PlusMinutes(41), Kit = ["SO"] }] };
        PaperBundle bundle = Demo with { Plan = plan };
        Dictionary<string, string> used = KitPaper.Of(bundle)!.Blocks.OfType<TableBlock>().First().Rows.Where(r => r.Cells[0].Text.Length > 0).ToDictionary(r => r.Cells[0].Text, r => r.Cells[8].Text);

        // The blender is named by every segment of the slot, 14:00 to 14:25; the oven runs on to 14:41; nothing names the dehydrator.
        Assert.Equal("Sat 10 Oct 14:00 to Sat 10 Oct 14:25", used["BL"]);
        Assert.Equal("Sat 10 Oct 14:03 to Sat 10 Oct 14:41", used["SO"]);
        Assert.Equal("", used["DH"]);
        LoadProfile k3 = LoadProfile.Circuits(plan, bundle.Occasion!.Kit, bundle.Occasion.Circuits).Single(c => c.Title == "Circuit K3");
        Assert.Equal(1.2, k3.At(plan.SlotStart.PlusMinutes(10)), 6);
        Assert.Equal(0, k3.At(plan.SlotStart.PlusMinutes(26)), 6);
    }
}
