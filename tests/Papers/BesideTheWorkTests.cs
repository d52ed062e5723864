using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Papers.Tests;

/// <summary>What must not be looked for elsewhere stands beside the work: limits with their rescue, the places of twins, gates.</summary>
public sealed class BesideTheWorkTests
{
    private static readonly PaperBundle Bundle = Demo.Planned();

    // What the safety review writes itself, word for word; a change there must be followed here, or it comes out marked.
    private static readonly string[] Limits = ["60 to 21 °C in 2 h", "60 to 21 °C in 2 h, 21 to 5 °C in 4 h", "80 °C in the middle for 10 min", "92 °C in the middle", "60 °C or more", "75 °C in the middle, once", "−20 °C for 24 h in all parts"];

    private static readonly string[] Rescues =
    [
        "Spread it thinner or stir it in ice water at once; past the stage, discard", "Leave it in until it is there; if that cannot be, discard", "Under two hours below the limit reheat or serve; past four discard",
        "Go on until it is there; never a second time", "Count the hours again from when the middle is there",
    ];

    private static Paper[] Briefs => [.. PaperShelf.Papers(Bundle).Where(p => p.Kind == HelperPaper.Kind)];

    private static string Text(Paper paper) => string.Join('\n', PaperLines.Of(paper));

    [Fact]
    public void A_limit_stands_with_its_rescue_at_the_work_it_is_of_on_brief_and_list()
    {
        (ControlPoint Point, PlannedTask Task)[] held = [.. Bundle.Findings.SelectMany((f, i) => f.ControlPoints.Select(p => (Point: p, Task: Bundle.Plan!.Tasks.FirstOrDefault(t => t.Line == p.Line && t.Dish == Bundle.NameOf(Bundle.Batches[i]))))).Where(x => x.Task is not null).Select(x => (x.Point, x.Task!))];
        Assert.Contains(held, h => h.Point.Limit.Contains("°C in ", StringComparison.Ordinal));
        foreach ((ControlPoint point, PlannedTask task) in held)
        {
            foreach (Paper sheet in PaperShelf.Papers(Bundle).Where(p => p.Kind is HelperPaper.Kind or PrepListPaper.Kind && task.People.Contains(p.Person) && (p.Day is null || p.Day == task.Start.Date)))
            {
                BriefPhrases say = BriefPhrases.For(sheet.Kind == HelperPaper.Kind ? sheet.Language : "en");
                Assert.Contains(TaskLimits.Say(point, say), Text(sheet), StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Every_limit_and_rescue_of_the_safety_review_is_in_the_helpers_language()
    {
        ControlPoint point = Bundle.Findings.SelectMany(f => f.ControlPoints).First();
        foreach (BriefPhrases say in BriefPhrases.Languages.Select(BriefPhrases.For))
        {
            foreach (string limit in Limits)
            {
                string said = TaskLimits.Say(point with { Limit = limit, Action = Rescues[0] }, say);
                Assert.DoesNotContain(say["untranslatedMark"], said, StringComparison.Ordinal);
                Assert.Empty(StepTranslations.Lost(limit, said));
            }

            Assert.Equal(Rescues.Length, Rescues.Select(r => TaskLimits.Say(point with { Limit = Limits[0], Action = r }, say)).Distinct().Count());
            Assert.All(Rescues, r => Assert.DoesNotContain(say["untranslatedMark"], TaskLimits.Say(point with { Limit = Limits[0], Action = r }, say), StringComparison.Ordinal));
        }

        // What the review says of the example's own steps is among them; a sentence nobody knows is printed as it is, with its mark.
        BriefPhrases polish = BriefPhrases.For("pl");
        Assert.All(Bundle.Findings.SelectMany((f, i) => f.ControlPoints.Where(p => Bundle.Plan!.Tasks.Any(t => t.Line == p.Line && t.Dish == Bundle.NameOf(Bundle.Batches[i])))), p => Assert.DoesNotContain(polish["untranslatedMark"], TaskLimits.Say(p, polish), StringComparison.Ordinal));
        Assert.Contains(polish["untranslatedMark"] + " Call the chef", TaskLimits.Say(point with { Action = "Call the chef" }, polish), StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_sets_the_twins_out_reads_each_with_its_place_and_whoever_shows_reads_what_stands_ready()
    {
        PlannedTask carry = Bundle.Plan!.Tasks.Single(t => t.Id == "carry");
        foreach (Paper brief in Briefs)
        {
            string text = Text(brief);
            BriefPhrases say = BriefPhrases.For(brief.Language);
            Assert.All(Bundle.Plan.Twins, t => Assert.Equal(carry.People.Contains(brief.Person), text.Contains($"№{t.Number} {t.Component} → {t.Place}", StringComparison.Ordinal)));
            Assert.Equal(brief.Person == Bundle.Occasion!.People[0].Name, text.Contains($"{say["standsReady"]} №3 ", StringComparison.Ordinal));
        }

        TableBlock list = PaperShelf.Papers(Bundle).Single(p => p.Kind == TwinListPaper.Kind).Blocks.OfType<TableBlock>().Single();
        int by = list.Columns.ToList().FindIndex(c => c.Head == "Set out by");
        Assert.All(list.Rows, r => Assert.Equal(string.Join(", ", carry.People) + ", Sat 10 Oct 13:32", r.Cells[by].Text));
        Assert.Equal("stands there", list.Rows[2].Cells[by + 1].Text);
    }

    [Fact]
    public void Gates_stand_on_the_brief_of_whoever_keeps_the_time_and_on_no_other()
    {
        foreach (Paper brief in Briefs)
        {
            TableBlock[] gates = [.. brief.Blocks.OfType<TableBlock>().Where(t => t.Columns.Any(c => c.Head == BriefPhrases.For(brief.Language)["came"]))];
            Assert.Equal(Bundle.Occasion!.People.Single(p => p.Name == brief.Person).Role.Contains("keeps the time", StringComparison.Ordinal), gates.Length == 1);
            // What lies before the gate is over: segment 1, first to be cut, is not offered there.
            Assert.All(gates, g => Assert.Equal(["5:00", "14:05", "2", "2\u00A0(0:20); 3\u00A0(0:30); 4\u00A0(0:40)", ""], g.Rows.Single().Cells.Select(c => c.Text)));
        }

        // Nobody's role says so: it is still somebody's.
        PaperBundle silent = Bundle with { Occasion = Bundle.Occasion! with { People = [.. Bundle.Occasion.People.Select(p => p with { Role = "" })] } };
        Assert.Single(PaperShelf.Papers(silent), p => p.Kind == HelperPaper.Kind && p.Blocks.OfType<HeadingBlock>().Any(h => h.Text == BriefPhrases.For(p.Language)["gates"]));
        Assert.Contains("5:00 segment 2. Late: cut 2\u00A0(0:20); 3\u00A0(0:30); 4\u00A0(0:40).", Text(PaperShelf.Papers(Bundle).Single(p => p.Kind == RunSheetPaper.Kind)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Lay them on cloths. (hands 19 min)", "Lay them on cloths.")]
    [InlineData("Pipe. (two people, 44 min for 264; the last one is made on stage) Hold cold.", "Pipe. Hold cold.")]
    [InlineData("Pour 1,346 g (49 g over is for tasting).", "Pour 1,346 g (49 g over is for tasting).")]
    [InlineData("Wash (hands too).", "Wash (hands too).")]
    public void The_aside_of_the_cards_hands_goes_from_a_row_for_the_stage_and_nothing_else_does(string step, string bare) => Assert.Equal(bare, HandsAside.Without(step));

    [Fact]
    public void A_row_for_the_stage_loses_the_aside_in_every_language_and_the_batchs_own_row_keeps_it()
    {
        const string Step = "Peel 3 mm all round. (hands 50 min)";
        Assert.Equal("Obrać 3 mm dookoła.", HandsAside.Without(Step, "Obrać 3 mm dookoła. (ręce 50 min)"));
        Assert.Equal("Obrać 3 mm (dookoła).", HandsAside.Without(Step, "Obrać 3 mm (dookoła). (50 min)"));

        LocalDateTime at = Bundle.Plan!.SlotStart.PlusHours(-3);
        PlannedTask Task(string id, string text) => new() { Id = id, Text = text, Kind = TaskKind.Work, Start = at, End = at.PlusMinutes(5), People = ["Bram"] };
        PaperBundle two = Bundle with { Plan = Bundle.Plan with { Tasks = [Task("a", Step), Task("b", "for the stage: " + Step)], RunSheet = [], Twins = [] } };
        foreach (Paper sheet in PaperShelf.Papers(two).Where(p => p.Kind is HelperPaper.Kind or PrepListPaper.Kind && p.Person == "Bram"))
        {
            Assert.Equal(1, Text(sheet).Split("(hands 50 min)").Length - 1);
        }
    }
}
