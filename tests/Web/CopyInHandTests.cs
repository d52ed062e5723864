using System.Net.Http.Json;
using System.Text.Json;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Views.Papers;
using Coulisse.Views.Web;
using Coulisse.Web.Live;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace Coulisse.Web.Tests;

/// <summary>A change note holds only what changed since the copy somebody has in hand, page or paper.</summary>
public sealed class CopyInHandTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static Plan With(Plan plan, string task, Func<PlannedTask, PlannedTask> change) => plan with { Tasks = [.. plan.Tasks.Select(t => t.Id == task ? change(t) : t)] };

    private static Plan Second { get; } = With(HandPlan.Tart, "t1", t => t with { People = ["Ben"] });

    private static Plan Third { get; } = With(Second, "t6", t => t with { Start = t.Start.PlusMinutes(10), End = t.End.PlusMinutes(10) });

    private static async Task<(string Copy, string[] Changes)> NoteAsync(BenchServer bench, string run, string tail)
    {
        CopyChanges note = (await bench.Client.GetFromJsonAsync<CopyChanges>($"/api/live/{run}/changes{tail}", Cancel))!;
        return (note.Copy, [.. note.Changes.Select(c => $"{c.Who}: {c.What}")]);
    }

    [Fact]
    public async Task A_page_that_has_read_the_second_plan_is_told_what_the_third_changes_and_one_that_has_not_is_told_both()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string first = await bench.KeepAsync(HandPlan.Tart);
        KeptPlan kept = (await bench.Store.PlanAsync(first, Cancel))!;
        string second = await bench.Store.KeepPlanAsync(kept.OccasionId, kept.OccasionVersion, TravelJson.Write(Second), "", Cancel);
        string third = await bench.Store.KeepPlanAsync(kept.OccasionId, kept.OccasionVersion, TravelJson.Write(Third), "", Cancel);
        string run = await bench.Store.StartRunAsync(first, TimeProvider.System.GetUtcNow(), rehearsal: false, Cancel);
        Assert.Empty((await NoteAsync(bench, run, "?since=")).Changes);

        Instant now = Instant.FromDateTimeOffset(TimeProvider.System.GetUtcNow());
        await bench.Store.AppendAsync(run, [new LiveEvent("taken-0001", now - Duration.FromSeconds(20), LiveDesk.TakenUp, second, "chef"), new LiveEvent("taken-0002", now - Duration.FromSeconds(10), LiveDesk.TakenUp, third, "chef")], Cancel);

        (string copy, string[] all) = await NoteAsync(bench, run, "?since=");
        Assert.Equal("page", copy);
        Assert.Contains(all, c => c.StartsWith("Ada: no longer on t1", StringComparison.Ordinal));
        Assert.Contains(all, c => c.Contains("takes over t1 Slice onions", StringComparison.Ordinal) && c.Contains("t6 Set up", StringComparison.Ordinal));
        Assert.Equal(all, (await NoteAsync(bench, run, "?since=" + first)).Changes);
        string only = Assert.Single((await NoteAsync(bench, run, "?since=" + second)).Changes);
        Assert.StartsWith("Ben: t6 Set up at", only, StringComparison.Ordinal);
        Assert.Empty((await NoteAsync(bench, run, "?since=" + third)).Changes);
        Assert.Empty((await NoteAsync(bench, run, "?since=" + await bench.KeepAsync(Second))).Changes); // a plan of another occasion is no copy of this one
    }

    [Fact]
    public async Task A_helper_whose_printed_brief_is_older_than_the_run_is_told_what_changed_since_it_and_nobody_else_is()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string printed = await bench.KeepAsync(HandPlan.Tart);
        KeptPlan kept = (await bench.Store.PlanAsync(printed, Cancel))!;
        string begun = await bench.Store.KeepPlanAsync(kept.OccasionId, kept.OccasionVersion, TravelJson.Write(Second), "", Cancel);
        string run = await bench.Store.StartRunAsync(begun, TimeProvider.System.GetUtcNow(), rehearsal: false, Cancel);
        await bench.Store.SetAsync("papers." + kept.OccasionId, JsonSerializer.Serialize(new Dictionary<string, WallSheet> { [PaperShelf.BriefOf("Ada")] = new("Brief for Ada", "x", "1", DateTimeOffset.UnixEpoch, 1) { Plan = printed } }), Cancel);
        RoleLinks links = bench.Services.GetRequiredService<RoleLinks>();
        async Task<(string, string[])> OfAsync(string who) => await NoteAsync(bench, run, $"?t={await links.MakeAsync(run, who, Cancel)}&since=");

        (string copy, string[] ada) = await OfAsync("Ada");
        Assert.Equal("paper", copy);
        Assert.Contains(ada, c => c.StartsWith("Ada: no longer on t1", StringComparison.Ordinal));
        Assert.Empty((await OfAsync("Ben")).Item2);
    }

    [Fact]
    public void Plans_that_were_numbered_afresh_are_laid_beside_each_other_by_the_name_that_lasts()
    {
        Plan before = HandPlan.Tart with { Tasks = [.. HandPlan.Tart.Tasks.Select(t => t with { Key = "key-" + t.Id })] };
        Plan after = before with { Tasks = [.. before.Tasks.Reverse().Select((t, i) => t with { Id = "t" + (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) })] };

        Assert.Empty(Kitchen.Planning.Live.PlanChanges.Since(before, after));
        Assert.NotEmpty(Kitchen.Planning.Live.PlanChanges.Between(before, after));
        Plan moved = after with { Tasks = [.. after.Tasks.Select(t => t.Key == "key-t1" ? t with { Start = t.Start.PlusMinutes(5), End = t.End.PlusMinutes(5) } : t)] };
        Assert.Equal("Ada: Slice onions at Fri 14:05 instead of Fri 14:00.", Assert.Single(Kitchen.Planning.Live.PlanChanges.Since(before, moved)));
    }
}
