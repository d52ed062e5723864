using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Foods;
using Coulisse.Store;
using Coulisse.Views.Web;

namespace Coulisse.Web.Desk;

/// <summary>What of the kitchen besides its cards holds the words: occasions, notes of trials, records, foods.</summary>
internal static class Elsewhere
{
    private const int Most = 20;

    public static async Task<ImmutableArray<FoundElsewhere>> FindAsync(KitchenStore store, FoodTable foods, string q, CancellationToken cancel)
    {
        if (string.IsNullOrWhiteSpace(q))
        {
            return [];
        }

        List<CardFileRow> trials = [], records = [];
        foreach (DocumentHead h in await store.SearchAsync(DocumentKind.Trial, q, Most, cancel))
        {
            if (await store.TrialAsync(h.Id, cancel) is { } trial)
            {
                trials.Add(Row($"/trials/{trial.CardId}/{h.Id}", h));
            }
        }

        foreach (DocumentHead h in await store.SearchAsync(DocumentKind.Record, q, Most, cancel))
        {
            if (await store.RecordAsync(h.Id, cancel) is { } record)
            {
                records.Add(Row($"/records/{record.OccasionId}/{h.Id}", h));
            }
        }

        FoundElsewhere[] all =
        [
            new("Occasions", [.. (await store.SearchAsync(DocumentKind.Occasion, q, Most, cancel)).Select(h => Row("/occasions/" + h.Id, h))]),
            new("Trials", [.. trials]),
            new("Records", [.. records]),
            // a name a letter off is a guess; here only what holds the words
            new("Foods", [.. FoodSearch.In(foods, q, 8).Where(f => f.Rank < 4).Select(f => new CardFileRow("/kitchen/foods?q=" + Uri.EscapeDataString(f.Name), f.Name, f.Alias == f.Name ? "" : f.Alias))]),
        ];
        return [.. all.Where(f => !f.Rows.IsEmpty)];
    }

    private static CardFileRow Row(string at, DocumentHead h) => new(at, h.Title, string.Create(CultureInfo.InvariantCulture, $"version {h.Version}, {h.Changed:yyyy-MM-dd}"));
}
