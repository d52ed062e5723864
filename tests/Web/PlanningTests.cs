using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Web.Tests;

public sealed class PlanningTests
{
    private const string Card = "# Onion tart\n\nServes 4.\n\n- 600 g onions\n\n1. Slice. (hands 10 min)\n";
    private const string Sentence = "12 plates, Saturday 14:00, 5 minutes, Ada and one other";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static FormUrlEncodedContent Form(string sentence, string card = Card) => new([new("sentence", sentence), new("card", card)]);

    /// <summary>Follows a planning until it ends.</summary>
    private static async Task<JsonElement> EndAsync(BenchServer bench, string job)
    {
        while (true)
        {
            JsonElement state = await bench.Client.GetFromJsonAsync<JsonElement>("/api" + job, Cancel);
            if (state.GetProperty("failed").GetBoolean() || state.GetProperty("at").ValueKind == JsonValueKind.String)
            {
                return state;
            }

            await Task.Delay(20, Cancel);
        }
    }

    private static WebBenchOptions With(Func<IProgress<Plan>, CancellationToken, PlanOutcome> plan)
        => new() { Planner = (occasion, _, progress, cancel) => new Parsed<PlannedOccasion>.Ok(new PlannedOccasion(occasion, [], [], plan(progress, cancel), [])) };

    [Fact]
    public async Task One_sentence_under_a_card_is_kept_planned_in_the_background_and_opens_as_a_page()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: With((_, _) => HandPlan.Tart));

        HttpResponseMessage began = await bench.Client.PostAsync("/occasions", Form(Sentence), Cancel);
        Assert.Equal(HttpStatusCode.Redirect, began.StatusCode);
        JsonElement end = await EndAsync(bench, began.Headers.Location!.OriginalString);

        Assert.Contains("Run sheet", await bench.Client.GetStringAsync(end.GetProperty("at").GetString(), Cancel));
        string list = await bench.Client.GetStringAsync("/occasions", Cancel);
        Assert.Contains("Onion tart", list);
        Assert.Contains(end.GetProperty("at").GetString()!, list);
        Assert.Contains("Onion tart", await bench.Client.GetStringAsync("/cards", Cancel));
    }

    [Fact]
    public async Task Stopping_keeps_the_best_plan_so_far()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: With((progress, cancel) =>
        {
            progress.Report(HandPlan.Tart);
            cancel.WaitHandle.WaitOne(TimeSpan.FromSeconds(30));
            return HandPlan.Tart with { Title = cancel.IsCancellationRequested ? "Stopped tart" : "Unstopped tart" };
        }));

        HttpResponseMessage began = await bench.Client.PostAsync("/occasions", Form(Sentence), Cancel);
        string job = began.Headers.Location!.OriginalString;
        while (!(await bench.Client.GetStringAsync("/api" + job, Cancel)).Contains("A first plan", StringComparison.Ordinal))
        {
            await Task.Delay(20, Cancel);
        }

        await bench.Client.PostAsync(job + "/stop", null, Cancel);
        JsonElement end = await EndAsync(bench, job);

        Assert.Contains("Stopped tart", await bench.Client.GetStringAsync(end.GetProperty("at").GetString(), Cancel));
    }

    [Fact]
    public async Task An_impossible_day_is_explained_with_what_would_help_and_nothing_is_kept_as_a_plan()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: With((_, _) => new NoPlan(["one oven for two heats at once"], ["bake the tart on Friday"])));

        HttpResponseMessage began = await bench.Client.PostAsync("/occasions", Form(Sentence), Cancel);
        await EndAsync(bench, began.Headers.Location!.OriginalString);
        string page = await bench.Client.GetStringAsync(began.Headers.Location, Cancel);

        Assert.Contains("one oven for two heats at once", page);
        Assert.Contains("bake the tart on Friday", page);
        Assert.Contains("no plan yet", await bench.Client.GetStringAsync("/occasions", Cancel));
    }

    [Fact]
    public async Task A_planner_that_breaks_off_is_reported_and_the_next_planning_still_runs()
    {
        int turn = 0;
        await using BenchServer bench = await BenchServer.StartAsync(options: With((_, _) => Interlocked.Increment(ref turn) == 1 ? throw new InvalidOperationException("boom") : HandPlan.Tart));

        JsonElement first = await EndAsync(bench, (await bench.Client.PostAsync("/occasions", Form(Sentence), Cancel)).Headers.Location!.OriginalString);
        JsonElement second = await EndAsync(bench, (await bench.Client.PostAsync("/occasions", Form(Sentence), Cancel)).Headers.Location!.OriginalString);

        Assert.True(first.GetProperty("failed").GetBoolean());
        Assert.False(second.GetProperty("failed").GetBoolean());
    }

    [Theory]
    [InlineData("", Card)]
    [InlineData(Sentence, " ")]
    [InlineData("whenever it suits", Card)]
    public async Task What_is_no_occasion_is_refused_in_words(string sentence, string card)
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: With((_, _) => HandPlan.Tart));

        HttpResponseMessage answer = await bench.Client.PostAsync("/occasions", Form(sentence, card), Cancel);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("What stands against it", await answer.Content.ReadAsStringAsync(Cancel));
    }

    [Fact]
    public async Task The_example_occasion_opens_by_one_touch_and_a_second_touch_finds_the_same_one()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: With((_, _) => HandPlan.Tart));

        HttpResponseMessage began = await bench.Client.PostAsync("/occasions/example", null, Cancel);
        JsonElement end = await EndAsync(bench, began.Headers.Location!.OriginalString);
        HttpResponseMessage again = await bench.Client.PostAsync("/occasions/example", null, Cancel);

        Assert.Equal(end.GetProperty("at").GetString(), again.Headers.Location!.OriginalString);
    }
}
