using Coulisse.Store;
using Coulisse.Web.Hosting;

namespace Coulisse.Web.Tests;

public sealed class WarmingTests
{
    [Fact]
    public async Task Warming_walks_the_way_of_a_card_and_leaves_the_store_as_it_was()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Leeks", "# Leeks\n\n- 500 g leeks\n", "test", "", cancel)).Id;
        async Task<string[]> KeptAsync()
        {
            List<string> all = [];
            foreach (string kind in new[] { DocumentKind.Card, DocumentKind.Occasion, DocumentKind.Kitchen, DocumentKind.Prices, DocumentKind.Foods })
            {
                all.AddRange((await bench.Store.DocumentsAsync(kind, cancel: cancel)).Select(d => $"{kind} {d.Id} {d.Version}"));
            }

            return [.. all, (await bench.Store.AuditLogAsync(cancel)).Count.ToString(System.Globalization.CultureInfo.InvariantCulture)];
        }

        string[] before = await KeptAsync();
        List<(string Step, int Status)> walked = await Warming.WalkAsync(bench.Services, cancel);

        // a card named “none” is not kept: the way to it is walked, and ends there
        Assert.Equal([("GET /", 200), ("POST /api/margins", 200), ("GET /cards/{id}", 404)], walked);
        Assert.Equal(before, await KeptAsync());
        Assert.Contains(before, k => k.Contains(id, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_bench_that_warms_answers_its_first_page_and_stops_in_the_middle_of_it_without_harm()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: new WebBenchOptions { Warm = true });

        Assert.Contains("<card-manuscript", await bench.Client.GetStringAsync("/", TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }
}
