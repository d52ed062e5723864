using System.Net;
using Coulisse.Flows.Fits;

namespace Coulisse.Web.Tests;

/// <summary>The page of shapes asks what the command asks and answers the same.</summary>
public sealed class ShapesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static async Task<string> PageAsync(BenchServer bench, string at) => WebUtility.HtmlDecode(await bench.Client.GetStringAsync(at, Cancel));

    [Fact]
    public async Task Every_kind_opens_with_its_example_its_even_neighbours_and_its_drawing()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        foreach (FitKind kind in FitFlow.Kinds)
        {
            string page = await PageAsync(bench, "/shapes/" + kind.Name);
            Assert.Contains("What comes out even", page);
            Assert.Contains("<svg xmlns", page);
            Assert.DoesNotContain("To mend", page);
            Assert.StartsWith("<svg", await bench.Client.GetStringAsync($"/shapes/{kind.Name}/drawing.svg", Cancel));
        }

        Assert.Equal(HttpStatusCode.NotFound, (await bench.Client.GetAsync("/shapes/pyramid", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_question_is_answered_by_what_was_typed_and_a_wrong_one_says_what_would_be_right()
    {
        await using BenchServer bench = await BenchServer.StartAsync();

        string page = await PageAsync(bench, "/shapes/tray?tray=530x325&piece=160&count=52&slots=12");
        Assert.Contains("<td>plates</td><td>48 (8 trays)</td><td>52 plates take 9 trays, 2 over</td><td>54 (9 trays)</td>", page); // expected.json P3: nine trays
        string wrong = await PageAsync(bench, "/shapes/tray?tray=530&piece=160");
        Assert.Contains("Write 2 in millimetres, such as 530x325. (FIT001)", wrong);
        Assert.DoesNotContain("<svg", wrong);
        string none = await PageAsync(bench, "/shapes/grid?block=%3Cscript%3Ealert(1)%3C/script%3E&piece=40x30");
        Assert.Contains("FIT001", none);
        Assert.DoesNotContain("<script>alert", await bench.Client.GetStringAsync("/shapes/grid?block=%3Cscript%3Ealert(1)%3C/script%3E&piece=40x30", Cancel));
    }
}
