using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Store;
using Coulisse.Web.Hosting;
using Coulisse.Web.Live;
using Coulisse.Web.Plans;
using Coulisse.Web.Tests;
using Microsoft.Extensions.DependencyInjection;

namespace Coulisse.Journeys.Tests;

/// <summary>One bench with a card of two versions, two price lists, an occasion, its plan and a run, for journeys that only look.</summary>
public sealed class FilledBench : IAsyncDisposable
{
    private readonly Dictionary<string, string> _names = [];
    private Bench? _bench;

    /// <summary>Opens the bench the first time it is asked for.</summary>
    internal async Task<Bench> BenchAsync() => _bench ??= await FillAsync();

    /// <summary>A path with the names of what is kept in place of those in braces.</summary>
    public string Fill(string path) => _names.Aggregate(path, (at, n) => at.Replace("{" + n.Key + "}", n.Value, StringComparison.Ordinal));

    public async ValueTask DisposeAsync()
    {
        if (_bench is not null)
        {
            await _bench.DisposeAsync();
        }
    }

    private async Task<Bench> FillAsync()
    {
        Bench bench = await Bench.OpenAsync();
        CancellationToken cancel = TestContext.Current.CancellationToken;
        string royale = EmbeddedFiles.Demo("cards/royale-draft.md")!;
        string card = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Card", royale, "test", "", cancel)).Id;
        await bench.Store.SaveAsync(DocumentKind.Card, card, 1, "Card", royale.Replace("530 g", "540 g", StringComparison.Ordinal), "test", "", cancel);
        string prices = bench.Store.Own("kitchen-prices");
        string list = EmbeddedFiles.Demo("prices.csv")!;
        await bench.Store.SaveAsync(DocumentKind.Prices, prices, 0, "Prices", list, "test", "", cancel);
        await bench.Store.SaveAsync(DocumentKind.Prices, prices, 1, "Prices", list.Replace("2.45", "2.95", StringComparison.Ordinal), "test", "", cancel);
        KeptOccasion kept = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n- 250 g flour\n\n1. Slice the onions, 30 min.\n2. Bake 45 min at 180 °C.\n", cancel)).Value;
        string plan = await bench.Store.KeepPlanAsync(kept.Id, kept.Version, TravelJson.Write(HandPlan.Tart), "", cancel);
        string run = await bench.Store.StartRunAsync(plan, TimeProvider.System.GetUtcNow(), rehearsal: true, cancel);
        RoleLinks links = bench.Services.GetRequiredService<RoleLinks>();
        _names.Add("card", card);
        _names.Add("occasion", kept.Id);
        _names.Add("plan", plan);
        _names.Add("run", run);
        _names.Add("stage", await links.MakeAsync(run, "Stage", cancel));
        _names.Add("keeper", await links.MakeAsync(run, "Time-keeper", cancel));
        return bench;
    }
}
