using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Web;
using Coulisse.Web.Live;
using Coulisse.Web.Plans;
using Coulisse.Web.Tests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;

namespace Coulisse.Journeys.Tests;

/// <summary>Something goes wrong on a prep day: ways to go on are solved, one is taken, and everybody reads only what changed for them.</summary>
public sealed class TroubleJourney
{
    private const string Card = "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n- 250 g flour\n\n1. Slice the onions, 30 min.\n2. Bake 45 min at 180 °C.\n";

    /// <summary>A planner that gives the work of whoever went to Ben, half an hour later; what is lost it can only leave out.</summary>
    private static Parsed<ReplannedOccasion> Simple(Kitchen.Occasions.Occasion occasion, Plan plan, StateFile.State state)
    {
        LiveState stands = LiveFold.Fold(occasion, plan, state.Log, DateTimeZone.Utc, state.Now.InUtc().ToInstant());
        PlanOutcome made = stands.Lost.Count > 0
            ? new NoPlan(["There is no time to make it again."], [])
            : plan with { Tasks = [.. plan.Tasks.Where(t => !stands.Skipped.Contains(t.Id)).Select(t => t.People.Any(stands.Gone.ContainsKey) ? t with { People = ["Ben"], Start = t.Start.PlusMinutes(30), End = t.End.PlusMinutes(30) } : t)] };
        return new Parsed<ReplannedOccasion>.Ok(new ReplannedOccasion(occasion, stands, new Replanned(made, made is Plan after ? PlanChanges.Between(plan, after) : [], [], 0.1, 0.2), [], []));
    }

    private static async Task<(string Run, FlowingClock Clock, Bench Bench)> StartAsync()
    {
        FlowingClock clock = new(TimeSpan.Zero);
        Bench bench = await Bench.OpenAsync(new WebBenchOptions { Clock = clock, Replanner = (o, p, s, _, _) => Simple(o, p, s) });
        CancellationToken cancel = TestContext.Current.CancellationToken;
        KeptOccasion kept = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", Card, cancel)).Value;
        string plan = await bench.Store.KeepPlanAsync(kept.Id, kept.Version, TravelJson.Write(HandPlan.Tart), "", cancel);
        return (await bench.Store.StartRunAsync(plan, clock.GetUtcNow().AddDays(1).AddMinutes(-1), rehearsal: false, cancel), clock, bench);
    }

    private static async Task<IPage> OpenAsync(Bench bench, string run, string? role, int width = 820)
    {
        IPage page = await bench.PageAsync(width, touch: true);
        await page.GotoAsync($"{bench.Named}/live/{run}{(role is null ? "" : "?t=" + await bench.Services.GetRequiredService<RoleLinks>().MakeAsync(run, role, TestContext.Current.CancellationToken))}");
        await page.Locator(".lr-net").WaitForAsync();
        return page;
    }

    [Fact]
    public async Task A_person_goes_a_solved_way_is_taken_and_the_others_read_only_what_changed_for_them()
    {
        (string run, FlowingClock _, Bench bench) = await StartAsync();
        await using Bench open = bench;
        IPage chef = await bench.PageAsync(820, touch: true);
        await chef.GotoAsync($"{bench.Address}/live/{run}");
        IPage ben = await OpenAsync(bench, run, "Ben");
        IPage ada = await OpenAsync(bench, run, "Ada", 390);

        await ben.GetByText("Something is wrong").ClickAsync();
        await ben.Locator("#lr-gone").SelectOptionAsync("Ada");
        await ben.GetByRole(AriaRole.Button, new() { Name = "has gone" }).ClickAsync();
        await ben.GetByText("Ada: has gone").WaitForAsync();
        Assert.Equal(0, await ben.Locator(".lr-ask").CountAsync()); // a helper tells; the chef decides
        await chef.GetByText("Ada: has gone").WaitForAsync(); // the panel has opened by itself
        await chef.GetByRole(AriaRole.Button, new() { Name = "Find ways to go on" }).ClickAsync();
        await chef.Locator(".lr-way").First.WaitForAsync();
        Assert.InRange(await chef.Locator(".lr-way").CountAsync(), 1, 3);
        Assert.Contains("Go on with all of it: 2 tasks move", await chef.Locator(".lr-way").First.InnerTextAsync());
        await Bench.PictureAsync(chef, "live-ways");
        Assert.Empty(await PageGeometry.WrongAsync(chef, "ways"));
        await chef.GetByRole(AriaRole.Button, new() { Name = "Go this way: Go on with all of it" }).ClickAsync();

        await ben.GetByText("takes over t1 Slice onions").WaitForAsync();
        await ada.GetByText("no longer on t1 Slice onions").WaitForAsync();
        Assert.Equal(0, await ada.GetByText("takes over").CountAsync());
        await ben.GetByRole(AriaRole.Button, new() { Name = "Done: Slice onions" }).WaitForAsync(); // the work stands on his page now
        await Bench.PictureAsync(ben, "live-changed");
        await ben.GetByRole(AriaRole.Button, new() { Name = "I have read it" }).ClickAsync();
        await ben.ReloadAsync();
        await ben.GetByRole(AriaRole.Button, new() { Name = "Done: Slice onions" }).WaitForAsync();
        Assert.Equal(0, await ben.GetByText("takes over").CountAsync());
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task What_was_lost_and_cannot_be_made_again_is_left_out_and_a_helper_may_not_ask_for_it()
    {
        (string run, FlowingClock _, Bench bench) = await StartAsync();
        await using Bench open = bench;
        IPage keeper = await OpenAsync(bench, run, "Time-keeper");
        IPage ada = await OpenAsync(bench, run, "Ada");

        await ada.GetByRole(AriaRole.Button, new() { Name = "Lost: Slice onions" }).ClickAsync();
        await keeper.GetByRole(AriaRole.Button, new() { Name = "Find ways to go on" }).ClickAsync();
        await keeper.Locator(".lr-way").First.WaitForAsync();
        Assert.StartsWith("Leave out Onions:", await keeper.Locator(".lr-way p").First.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(403, await ada.EvaluateAsync<int>("run => fetch(`/api/live/${run}/ways${location.search}`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: '{}' }).then((r) => r.status)", run));
        // a plan is taken up by a way that was solved, never by a report
        Assert.Equal(422, await ada.EvaluateAsync<int>("run => fetch(`/api/live/${run}${location.search}`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify([{ id: 'a-plan-of-mine', kind: 'plan', subject: 'x', text: '', agoMs: 0 }]) }).then((r) => r.status)", run));
        await keeper.GetByRole(AriaRole.Button, new() { Name = "Go this way: Leave out Onions" }).ClickAsync();
        await ada.GetByText("Changed at").WaitForAsync();
    }

    [Fact]
    public async Task The_time_keeper_sees_every_gate_with_when_it_was_due_and_when_it_came_and_the_stage_sees_only_what_it_needs()
    {
        FlowingClock clock = new(TimeSpan.Zero);
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Clock = clock });
        string run = await bench.Store.StartRunAsync(await bench.KeepAsync(HandPlan.Tart), clock.GetUtcNow().AddSeconds(-40), rehearsal: false, TestContext.Current.CancellationToken);
        IPage keeper = await OpenAsync(bench, run, "Time-keeper");
        IPage stage = await OpenAsync(bench, run, "Stage", 1440);

        await keeper.Locator(".lr-tick").ClickAsync();
        await keeper.GetByText("begun at 0:4").WaitForAsync();
        Assert.Contains("behind", await keeper.Locator(".lr-gates li").First.InnerTextAsync());
        Assert.Matches("now at 2:4\\d", await keeper.Locator(".lr-gates li").Nth(1).InnerTextAsync());
        await stage.Locator(".lr-now .lr-mine", new() { HasTextString = "Slice one onion" }).WaitForAsync();
        Assert.Equal(0, await stage.Locator(".lr-tick:visible, .lr-trouble:visible, form:visible").CountAsync());
        await Bench.PictureAsync(keeper, "live-keeper");
        await Bench.PictureAsync(stage, "live-stage");
        Assert.Empty(bench.Foul);
    }
}
