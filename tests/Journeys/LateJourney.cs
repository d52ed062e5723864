using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;
using Coulisse.Web;
using Coulisse.Web.Live;
using Coulisse.Web.Tests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;

namespace Coulisse.Journeys.Tests;

/// <summary>A slot that runs late: three ways, one taken, every page goes on by it, and it is taken back.</summary>
public sealed class LateJourney
{
    private static RunSegment Segment(int number, int start, int seconds, string component, int weight) => new()
    {
        Number = number, StartSecond = start, Seconds = seconds, Show = component.Length > 0 ? "Show " + component : "Talk", Component = component, Weight = weight,
        Who = ImmutableSortedDictionary<string, string>.Empty.Add("Ada", component.Length > 0 ? "shows" : "speaks"),
    };

    private static Plan Show { get; } = HandPlan.Tart with
    {
        SlotLength = Duration.FromMinutes(10),
        Twins = [HandPlan.Tart.Twins[0] with { Component = "Gel", State = "set block", CueSecond = 140, BroughtBy = "Ben" }],
        RunSheet =
        [
            Segment(1, 0, 60, "", 5),
            Segment(2, 60, 120, "Gel", 3) with { Twins = [1], Gate = true },
            Segment(3, 180, 120, "Crisps", 2) with { DroppableSeconds = 30, DropRank = 1 },
            Segment(4, 300, 240, "Plate", 5),
            Segment(5, 540, 60, "", 5),
        ],
    };

    [Fact]
    public async Task Three_ways_stand_there_one_is_taken_the_others_go_on_by_it_and_it_is_taken_back()
    {
        FlowingClock clock = new(TimeSpan.Zero);
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Clock = clock });
        CancellationToken cancel = TestContext.Current.CancellationToken;
        string run = await bench.Store.StartRunAsync(await bench.KeepAsync(Show), clock.GetUtcNow().AddSeconds(-150), rehearsal: false, cancel);
        // segment 2 begins 90 s late, just now
        await bench.Store.AppendAsync(run, [new LiveEvent("gate-00002", Instant.FromDateTimeOffset(clock.GetUtcNow()), "gate", "2", "chef")], cancel);
        IPage chef = await bench.PageAsync(390, touch: true);
        await chef.GotoAsync($"{bench.Address}/live/{run}");
        await chef.Locator(".lr-ways button").First.WaitForAsync();
        IPage ben = await bench.PageAsync(820, touch: true);
        await ben.GotoAsync($"{bench.Named}/live/{run}?t={await bench.Services.GetRequiredService<RoleLinks>().MakeAsync(run, "Ben", cancel)}");
        await ben.Locator(".lr-next .lr-mine", new() { HasTextString = "Crisps" }).WaitForAsync();

        string[] ways = [.. await chef.Locator(".lr-ways > button").AllInnerTextsAsync()];
        Assert.Equal(3, ways.Length);
        Assert.Contains(ways, w => w.StartsWith("Bring twin 1 (Gel) in now", StringComparison.Ordinal));
        Assert.Contains("Leave out segment 3 (Crisps): the slot ends on time.", ways);
        Assert.Contains(ways, w => w.StartsWith("Shorten segment 3", StringComparison.Ordinal));
        await Bench.PictureAsync(chef, "live-late");
        Assert.Empty(await PageGeometry.WrongAsync(chef, "late"));

        await chef.GetByRole(AriaRole.Button, new() { Name = "Leave out segment 3" }).TapAsync();
        await ben.Locator(".lr-next .lr-mine", new() { HasTextString = "Plate" }).WaitForAsync();
        await ben.GetByText("Segment 3: left out").WaitForAsync();
        await Assertions.Expect(chef.Locator(".lr-ways > button")).ToHaveCountAsync(0, new() { Timeout = 10_000 }); // it ends on time now
        Assert.Equal(1, await ben.Locator(".lr-strip rect.out").CountAsync());
        await Bench.PictureAsync(ben, "live-left-out");
        Assert.Empty(await PageGeometry.WrongAsync(ben, "left out"));
        await chef.GetByRole(AriaRole.Button, new() { Name = "Not so after all: Segment 3: left out" }).TapAsync();
        await ben.Locator(".lr-next .lr-mine", new() { HasTextString = "Crisps" }).WaitForAsync();

        await chef.GetByRole(AriaRole.Button, new() { Name = "Bring twin 1 (Gel) in now" }).TapAsync();
        await ben.Locator(".lr-cue", new() { HasTextString = "Now: twin 1, Gel, set block, Ben" }).WaitForAsync();
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task Without_network_the_page_of_whoever_takes_a_way_goes_on_by_it_at_once()
    {
        FlowingClock clock = new(TimeSpan.Zero);
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Clock = clock });
        CancellationToken cancel = TestContext.Current.CancellationToken;
        string run = await bench.Store.StartRunAsync(await bench.KeepAsync(Show), clock.GetUtcNow().AddSeconds(-150), rehearsal: false, cancel);
        await bench.Store.AppendAsync(run, [new LiveEvent("gate-00002", Instant.FromDateTimeOffset(clock.GetUtcNow()), "gate", "2", "chef")], cancel);
        IPage chef = await bench.PageAsync(820, touch: true);
        await chef.GotoAsync($"{bench.Named}/live/{run}");
        await chef.Locator(".lr-ways button").First.WaitForAsync();
        await chef.Context.SetOfflineAsync(true);

        await chef.GetByRole(AriaRole.Button, new() { Name = "Leave out segment 3" }).TapAsync();
        await chef.Locator(".lr-next .lr-mine", new() { HasTextString = "Plate" }).WaitForAsync();
        await chef.GetByText("1 report waits here").WaitForAsync();
        await chef.Context.SetOfflineAsync(false);
        await chef.GetByText("Segment 3: left out").WaitForAsync();
        Assert.Equal("skip 3", Assert.Single((await bench.Store.LogAsync(run, cancel)).Events.Where(e => e.Kind != "gate").Select(e => $"{e.Kind} {e.Subject}")));
    }
}
