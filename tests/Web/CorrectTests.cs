using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Coulisse.Web.Tests;

/// <summary>Minutes corrected beside a plan: on the card for its own amount, in the next plan for the batch.</summary>
public sealed class CorrectTests
{
    private const string Card = "# Onion tart\n\nServes 4.\n\n- 600 g onions\n\n1. Slice the onions. (hands 10 min)\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Minutes_are_written_on_the_card_and_planned_with()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: new WebBenchOptions { PlanSeconds = 2 });
        string plan = await EndAsync(bench, await bench.Client.PostAsync("/occasions", Form(("sentence", "12 plates, Saturday 14:00, 5 minutes, Ada and one other"), ("card", Card)), Cancel));
        string before = WebUtility.HtmlDecode(await bench.Client.GetStringAsync(plan, Cancel));
        Match task = Regex.Match(before, "<option value=\"([^\"]+)\">30 min · [^<]*Slice the onions");
        Assert.True(task.Success, "4 covers take 10 min, 12 take 30");

        string again = await EndAsync(bench, await bench.Client.PostAsync(plan + "/correct", Form(("task", task.Groups[1].Value), ("minutes", "45")), Cancel));

        Assert.Matches("<option value=\"[^\"]+\">45 min · [^<]*Slice the onions", WebUtility.HtmlDecode(await bench.Client.GetStringAsync(again, Cancel)));
        string card = Regex.Match(await bench.Client.GetStringAsync("/cards", Cancel), "/cards/[0-9a-zA-Z]{8,}").Value;
        Assert.Contains("Slice the onions. (hands 15 min)", WebUtility.HtmlDecode(await bench.Client.GetStringAsync(card, Cancel)));
    }

    [Theory]
    [InlineData("", "no number of minutes")]
    [InlineData("-3", "no number of minutes")]
    [InlineData("long", "no number of minutes")]
    public async Task What_is_no_number_of_minutes_changes_nothing(string minutes, string says)
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: new WebBenchOptions { PlanSeconds = 2 });
        string plan = await EndAsync(bench, await bench.Client.PostAsync("/occasions", Form(("sentence", "12 plates, Saturday 14:00, 5 minutes, Ada and one other"), ("card", Card)), Cancel));

        HttpResponseMessage answer = await bench.Client.PostAsync(plan + "/correct", Form(("task", "onion-tart-7"), ("minutes", minutes)), Cancel);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(says, WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Cancel)));
    }

    private static FormUrlEncodedContent Form(params (string Name, string Value)[] fields) => new(fields.Select(f => KeyValuePair.Create(f.Name, f.Value)));

    private static async Task<string> EndAsync(BenchServer bench, HttpResponseMessage began)
    {
        Assert.Equal(HttpStatusCode.Redirect, began.StatusCode);
        while (true)
        {
            JsonElement state = await bench.Client.GetFromJsonAsync<JsonElement>("/api" + began.Headers.Location!.OriginalString, Cancel);
            Assert.False(state.GetProperty("failed").GetBoolean(), state.ToString());
            if (state.GetProperty("at").ValueKind == JsonValueKind.String)
            {
                return state.GetProperty("at").GetString()!.Split('?')[0];
            }

            await Task.Delay(50, Cancel);
        }
    }
}
