using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;
using Coulisse.Views.Web;

namespace Coulisse.Web.Tests;

public sealed class PlanPageTests
{
    private static readonly PlanView View = PlanView.From(HandPlan.Tart, [], CultureInfo.GetCultureInfo("en-GB"));

    [Fact]
    public void People_stand_above_kit_and_a_task_stands_in_every_row_it_holds()
    {
        Assert.Equal(["p:Ada", "p:Ben", "k:BO", "k:F1"], View.Rows.Select(r => r.Id));
        Assert.Equal(["p:Ada", "k:BO"], View.Bars.Single(b => b.Id == "t4").Rows);
    }

    [Fact]
    public void Moments_are_marked_in_the_task_they_lie_in_and_a_night_alone_does_not_keep_the_drawing_open()
    {
        Assert.Equal([15 * 60L], View.Bars.Single(b => b.Id == "t3").Moments);
        // work from 0 to 1.7 h, the end of the cooling at 16.5 h, and set-up at 23 h, 40 min before the slot
        Assert.Equal(3, View.Stretches.Length);
        Assert.All(View.Stretches.Zip(View.Stretches.Skip(1)), s => Assert.True(s.First.To < s.Second.From));
        Assert.True(View.Stretches[^1].To > View.SlotStart + View.SlotSeconds);
    }

    [Fact]
    public void The_run_sheet_of_the_page_sums_to_the_slot_and_twins_have_their_age()
    {
        Assert.Equal("5:00", View.Sum);
        TwinRow twin = Assert.Single(View.Twins);
        Assert.Equal("2:00", twin.Cue);
        Assert.Equal("20\u202Fh 2\u202Fmin", twin.Age);
    }

    [Fact]
    public async Task A_kept_plan_opens_as_a_page_whose_words_are_text_and_as_a_drawing()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        CancellationToken cancel = TestContext.Current.CancellationToken;
        string id = await bench.KeepAsync(HandPlan.Tart);

        string page = await bench.Client.GetStringAsync("/plan/" + id, cancel);
        JsonElement drawing = await bench.Client.GetFromJsonAsync<JsonElement>("/api/plan/" + id, cancel);

        Assert.Contains("Onion tart &lt;b&gt;at noon", page);
        Assert.DoesNotContain(" style=", page);
        Assert.Equal(6, drawing.GetProperty("bars").GetArrayLength());
        Assert.Equal(HttpStatusCode.NotFound, (await bench.Client.GetAsync("/plan/none", cancel)).StatusCode);
    }

    [Fact]
    public async Task On_a_narrow_screen_every_cell_bears_the_head_it_stands_under()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await bench.KeepAsync(HandPlan.Tart);

        string page = await bench.Client.GetStringAsync("/plan/" + id, TestContext.Current.CancellationToken);

        string[] tables = page.Split("<table class=\"stack\">")[1..];
        Assert.Equal(3, tables.Length);
        Assert.All(tables, table =>
        {
            string[] heads = [.. Regex.Matches(table.Split("</thead>")[0], "<th[^e>]*>([^<]*)</th>").Select(m => m.Groups[1].Value)];
            string[] row = [.. Regex.Matches(table.Split("<tbody>")[1].Split("</tr>")[0], "data-head=\"([^\"]*)\"").Select(m => m.Groups[1].Value)];
            Assert.NotEmpty(heads);
            Assert.Equal(heads, row);
        });
    }
}
