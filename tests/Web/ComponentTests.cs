using System.Collections.Immutable;
using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Coulisse.Views.Charts;
using Coulisse.Views.Web;
using Coulisse.Web.Pages;

namespace Coulisse.Web.Tests;

/// <summary>The parts of the pages, each by itself: what it shows of its view, and what it leaves away.</summary>
public sealed class ComponentTests : BunitContext
{
    private const string Hostile = "<script>window.ran=1</script>";

    [Fact]
    public void The_working_of_a_figure_opens_into_its_inputs_and_names_range_and_source()
    {
        WorkingView input = new("looked up", "Density of milk.", null, null, "table A", []);
        WorkingView whole = new("computed", "Volume by density.", "m = V ρ", "4 to 20 °C", "handbook B", [new WorkingInput("ρ", "1.03 g/mL", input), new WorkingInput("V", "250 mL", null)]);

        IRenderedComponent<WorkingOf> shown = Render<WorkingOf>(p => p.Add(w => w.Working, whole));

        Assert.Equal("Computed.", shown.Find("p b").TextContent);
        Assert.Equal("m = V ρ", shown.Find(".eq").TextContent);
        Assert.Equal(["ρ", "V"], shown.FindAll("dl > dt").Select(d => d.TextContent));
        Assert.Single(shown.FindAll("details")); // only the input that has a working of its own opens
        Assert.Contains("table A", shown.Find("details").TextContent);
        Assert.Contains("Holds for 4 to 20 °C", shown.Markup);
    }

    [Fact]
    public void A_working_without_equation_range_or_source_shows_no_empty_lines_for_them()
    {
        IRenderedComponent<WorkingOf> shown = Render<WorkingOf>(p => p.Add(w => w.Working, new WorkingView("typed", "As written.", null, null, "", [])));

        Assert.Empty(shown.FindAll(".eq, dl, .src"));
    }

    [Fact]
    public void What_stands_in_the_way_leads_to_the_place_where_it_is_settled_or_plans()
    {
        IRenderedComponent<Stand> link = Render<Stand>(p => p.Add(s => s.Of, new StandView(3, "A sheet is stale.", "/plan/1/papers", "Print")).Add(s => s.Id, "o1"));
        IRenderedComponent<Stand> plan = Render<Stand>(p => p.Add(s => s.Of, new StandView(0, "There is no plan yet.", "", "Plan it")).Add(s => s.Id, "o1"));

        Assert.Equal("/plan/1/papers", link.Find("a").GetAttribute("href"));
        Assert.Empty(link.FindAll("form"));
        Assert.Equal("/occasions/o1/plan", plan.Find("form").GetAttribute("action"));
        Assert.Empty(plan.FindAll("a"));
    }

    [Fact]
    public void A_list_without_rows_has_no_heading_either()
    {
        Assert.Equal("", Render<List>(p => p.Add(l => l.Heading, "Dishes").Add(l => l.Rows, ImmutableArray<string>.Empty)).Markup.Trim());
        Assert.Equal(2, Render<List>(p => p.Add(l => l.Heading, "Dishes").Add(l => l.Rows, ["a", "b"])).FindAll("li").Count);
    }

    [Fact]
    public void A_chart_has_its_table_a_name_and_its_drawing_to_save()
    {
        ChartView chart = new("core-3", "Middle of the bar", "62 °C after 40 min.", "<svg viewBox=\"0 0 1 1\"></svg>", ["min", "°C"], [["0", "4"], ["40", "62"]]);

        IRenderedComponent<ChartFigure> shown = Render<ChartFigure>(p => p.Add(c => c.Chart, chart).Add(c => c.SaveAt, "/x.svg"));

        Assert.Equal("Middle of the bar", shown.Find(".chart-draw").GetAttribute("aria-label"));
        Assert.Equal("core-3.svg", shown.Find("a[download]").GetAttribute("download"));
        Assert.Equal(2, shown.FindAll("tbody tr").Count);
        Assert.Equal("t-core-3", shown.Find("[role=region]").GetAttribute("aria-labelledby"));
    }

    [Fact]
    public void The_card_file_writes_names_as_text_whatever_they_are()
    {
        IRenderedComponent<CardFilePage> page = Render<CardFilePage>(p => p.Add(c => c.View, new CardFileView(Hostile, "One card.", [new CardFileRow("/cards/1", Hostile, "version 1")])));

        Assert.DoesNotContain(page.FindAll("script"), s => s.TextContent.Contains("ran", StringComparison.Ordinal));
        Assert.Equal(Hostile, page.Find(".list-link span").TextContent);
        Assert.Equal(Hostile, page.Find("input[type=search]").GetAttribute("value"));
    }

    [Fact]
    public void A_plan_without_a_slot_has_no_run_sheet_and_offers_no_live_page()
    {
        PlanView with = PlanView.From(HandPlan.Tart, [], CultureInfo.GetCultureInfo("en-GB"));
        IRenderedComponent<PlanPage> shown = Render<PlanPage>(p => p.Add(x => x.Id, "p1").Add(x => x.View, with));
        IRenderedComponent<PlanPage> bare = Render<PlanPage>(p => p.Add(x => x.Id, "p1").Add(x => x.View, with with { Segments = [], Twins = [] }));

        Assert.Equal(2, shown.FindAll("#s1, #s2").Count);
        Assert.Equal(3, shown.FindAll("form[action='/plan/p1/live'] button").Count);
        Assert.Empty(bare.FindAll("form[action='/plan/p1/live']"));
        Assert.Contains("Nothing is shown live", bare.Markup);
        Assert.Empty(shown.FindAll(".moved"));
    }

    [Fact]
    public void A_plan_that_was_changed_by_hand_says_what_moved_and_lets_each_pin_go()
    {
        PlanView view = PlanView.From(HandPlan.Tart, ["The oven is taken twice."], CultureInfo.GetCultureInfo("en-GB")) with { Moved = ["Ada: t1 later."], Fixed = [new FixedView("onions-1", "Slice onions: Fri 13:25")], Occasion = "o1" };

        IRenderedComponent<PlanPage> shown = Render<PlanPage>(p => p.Add(x => x.Id, "p1").Add(x => x.View, view));

        Assert.Equal("Ada: t1 later.", shown.Find(".moved li").TextContent);
        Assert.Equal("onions-1", shown.Find("form[action='/plan/p1/edit'] input[name=task]").GetAttribute("value"));
        Assert.Contains("Does not hold", shown.Markup);
        Assert.Equal("/plan/p1/edit", shown.Find("time-plan").GetAttribute("data-edit"));
    }

    [Fact]
    public void A_planning_that_failed_offers_by_a_touch_only_what_can_be_done_by_one()
    {
        PlanningView view = new("Tart", "No plan.", 100, null, true, ["The oven is taken."], ["Begin earlier.", "Call a friend."]) { Occasion = "o1", Touch = ["Begin earlier."] };

        IRenderedComponent<PlanningPage> shown = Render<PlanningPage>(p => p.Add(x => x.Id, "j1").Add(x => x.View, view));

        IElement only = Assert.Single(shown.FindAll("form[action='/occasions/o1/change']"));
        Assert.Equal("Begin earlier.", only.QuerySelector("input")!.GetAttribute("value"));
        Assert.Empty(shown.FindAll("plan-progress"));
    }

    [Fact]
    public void The_newest_version_is_not_compared_with_itself_nor_the_oldest_with_nothing()
    {
        IRenderedComponent<VersionsPage> shown = Render<VersionsPage>(p => p.Add(x => x.View, new VersionsView("c1", "/cards/c1", "Soup", [new VersionRow(3, "third"), new VersionRow(2, "second"), new VersionRow(1, "first")])));

        Assert.Equal([1, 2, 1], shown.FindAll("li.version").Select(l => l.QuerySelectorAll("a").Length));
    }

    [Fact]
    public void Rehearsals_tell_a_spread_from_the_third_on_and_say_what_it_means_for_the_day()
    {
        static ImmutableSortedDictionary<int, int> Gates(int first, int second) => ImmutableSortedDictionary<int, int>.Empty.Add(1, first).Add(2, second);
        (string, DateTimeOffset, ImmutableSortedDictionary<int, int>)[] runs = [("r1", default, Gates(0, 131)), ("r2", default, Gates(5, 130)), ("r3", default, Gates(0, 141)), ("r4", default, ImmutableSortedDictionary<int, int>.Empty.Add(1, 4))];

        IRenderedComponent<RehearsalsPage> two = Render<RehearsalsPage>(p => p.Add(x => x.View, RehearsalsView.From("p1", HandPlan.Tart, [.. runs[..2]])));
        IRenderedComponent<RehearsalsPage> all = Render<RehearsalsPage>(p => p.Add(x => x.View, RehearsalsView.From("p1", HandPlan.Tart, [.. runs])));

        Assert.DoesNotContain("2:05 to", two.Markup);
        Assert.Contains("2 of 3 rehearsals", two.Markup);
        IElement first = all.FindAll("tbody tr")[0];
        // 131, 125 and 141 s of 120 planned: middle 131, never inside the plan; the broken-off run counts for nothing
        Assert.Equal(["1", "Slice one onion", "2:00", "2:11", "2:05", "2:21", "–", "2:11", "2:05 to 2:21", "never done in the time planned"], first.QuerySelectorAll("td").Select(d => d.TextContent.Trim()));
        Assert.Contains("3 rehearsals have gone through every gate", all.Markup);
    }

    [Fact]
    public void The_desk_shows_trial_notes_only_when_there_are_some_and_carries_the_card_into_the_occasion()
    {
        DeskView kept = new("c1", 2, "Soup", "# Soup\n", "", "Kept.");
        IRenderedComponent<DeskPage> none = Render<DeskPage>(p => p.Add(x => x.View, kept));
        IRenderedComponent<DeskPage> some = Render<DeskPage>(p => p.Add(x => x.View, kept with { Trials = [.. Enumerable.Range(1, 7).Select(i => new TrialRow($"/trials/c1/{i}", $"2026-01-0{i}", "good run"))] }));

        Assert.Empty(none.FindAll("#trial-notes"));
        Assert.Equal(5, some.FindAll("section[aria-labelledby=trial-notes] li").Count);
        Assert.Contains("All 7 trials", some.Markup);
        Assert.Equal("c1", none.Find("form[action='/occasions'] input[name=cardId]").GetAttribute("value"));
    }
}
