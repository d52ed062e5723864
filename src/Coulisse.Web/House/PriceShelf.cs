using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Needs;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Desk;
using NodaTime;

namespace Coulisse.Web.House;

/// <summary>Prices over time, and what they do to every card of the kitchen.</summary>
internal sealed class PriceShelf(KitchenStore store, KitchenBook book, TimeProvider clock)
{
    private const int MostVersions = 24;
    private const int MostCards = 10_000;
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en-GB");

    // a card of one version always takes the same: it is read and weighed once
    private readonly ConcurrentDictionary<(string Id, int Version), ShelvedDish?> _read = new();

    /// <summary>The page: prices now against an earlier list, or against now with one price tried.</summary>
    /// <param name="since">Version to compare with; 0 for the one before.</param>
    /// <param name="item">Item whose price is tried; empty for none.</param>
    /// <param name="to">Price, or percentage with its sign.</param>
    /// <param name="cancel">Stops it.</param>
    public async Task<PriceChangeView> ViewAsync(int since, string item, string to, CancellationToken cancel)
    {
        PriceHeads heads = await book.HeadsAsync(cancel);
        List<(int Version, LocalDate Day, PriceList List)> kept = [];
        foreach (DocumentVersion head in (await store.VersionsAsync(book.PricesKey, cancel)).Take(MostVersions))
        {
            if (await store.VersionAsync(book.PricesKey, head.Version, cancel) is { } version && PriceList.Read(version.Text, "", heads, Today) is Parsed<PriceList>.Ok(var list))
            {
                kept.Add((head.Version, LocalDate.FromDateTime(head.Saved.UtcDateTime.Date), list));
            }
        }

        PriceChangeView empty = new("", [], [], item, to, [], [], [], "", []);
        if (kept.Count == 0)
        {
            return empty with { Says = "No price list is kept that can be read. Keep one in the kitchen; every keeping is a version, and prices may carry the day since when they hold." };
        }

        PriceList now = kept[0].List;
        empty = empty with
        {
            Items = [.. now.Rows.Select(r => r.Item).Distinct().Order(StringComparer.OrdinalIgnoreCase)],
            Versions = [.. kept.Skip(1).Select((k, i) => (k.Version.ToString(CultureInfo.InvariantCulture), string.Create(Culture, $"version {k.Version}, {k.Day:d MMMM yyyy}"), since > 0 ? k.Version == since : i == 0))],
            History = History(kept),
        };
        List<string> faults = [];
        (PriceList before, PriceList after, string says) = item.Length > 0 ? Tried(now, item, to, faults) : Kept(kept, since);
        if (before.Currency != after.Currency)
        {
            faults.Add($"The earlier list is in {before.Currency}, the newest in {after.Currency}; two currencies are not compared.");
            before = after;
        }

        return (empty with { Says = says, Faults = [.. faults] }).With(PriceChange.Of(await DishesAsync(cancel), before, after), now.Currency, Culture);
    }

    private LocalDate Today => LocalDate.FromDateTime(clock.GetLocalNow().Date);

    private static (PriceList Before, PriceList After, string Says) Kept(List<(int Version, LocalDate Day, PriceList List)> kept, int since)
    {
        PriceList now = kept[0].List;
        if (kept.Skip(1).Any() && (kept.Skip(1).FirstOrDefault(k => k.Version == since) is { List: not null } chosen ? chosen : kept[1]) is var old && (since > 0 || now.Rows.All(r => r.Since is null)))
        {
            return (old.List, now, string.Create(Culture, $"The newest list against version {old.Version} of {old.Day:d MMMM yyyy}."));
        }

        // the list's own dates say more than the day it was kept on
        return now.Rows.Max(r => r.Since) is { } newest
            ? (now.On(newest.PlusDays(-1)), now, string.Create(Culture, $"Prices of today against those before {newest:d MMMM yyyy}, the newest day in the list."))
            : (now, now, "One list is kept, without days: nothing to compare it with yet. Try a price, or keep a newer list.");
    }

    private static (PriceList Before, PriceList After, string Says) Tried(PriceList now, string item, string to, List<string> faults)
    {
        string bare = to.Trim().Replace('\u2212', '-').Replace(',', '.');
        bool share = bare.EndsWith('%');
        PriceRow[] packs = [.. now.Rows.Where(r => r.Item == item)];
        if (!decimal.TryParse(bare.TrimEnd('%', ' ').TrimStart('+'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out decimal n) || (share ? n <= -100 : n < 0) || packs.Length == 0)
        {
            faults.Add(packs.Length == 0 ? $"The list has no “{item}”." : $"“{to}” is no price: write 2.60, or +10 %.");
            return (now, now, "Nothing is tried.");
        }

        if (!share && packs.Length > 1)
        {
            faults.Add($"“{item}” is sold in {packs.Length.ToString(Culture)} packs: give a change in percent.");
            return (now, now, "Nothing is tried.");
        }

        PriceList after = now.With(r => r.Item != item ? null : share ? Math.Round(r.Price.Amount * (1 + (n / 100)), 4) : n);
        return (now, after, $"As it would be with {item} at {(share ? to.Trim() : n.ToString("0.00##", Culture) + " " + now.Currency)}. Nothing of this is kept.");
    }

    // Days written in the list where there are any, else the days on which lists were kept.
    private static ImmutableArray<PriceStepsView> History(List<(int Version, LocalDate Day, PriceList List)> kept)
    {
        PriceList now = kept[0].List;
        HashSet<(string, string, decimal, string)> dated = [.. now.History.Select(h => Pack(h[0]))];
        Dictionary<(string, string, decimal, string), List<(LocalDate? Since, decimal Price)>> steps = [];
        foreach ((int _, LocalDate day, PriceList list) in kept.AsEnumerable().Reverse())
        {
            foreach (PriceRow row in list.Rows.Where(r => !dated.Contains(Pack(r))))
            {
                if (!steps.TryGetValue(Pack(row), out List<(LocalDate?, decimal)>? own))
                {
                    steps[Pack(row)] = own = [];
                }

                if (own.Count == 0 || own[^1].Item2 != row.Price.Amount)
                {
                    own.Add((row.Since ?? (own.Count == 0 ? null : day), row.Price.Amount));
                }
            }
        }

        return [.. now.History.Select(h => PriceChangeView.Steps(h, Culture)),
            .. now.Rows.Where(r => steps.TryGetValue(Pack(r), out List<(LocalDate?, decimal)>? s) && s.Count > 1).Select(r => PriceChangeView.Steps(r, [.. steps[Pack(r)]], Culture))];
    }

    private static (string, string, decimal, string) Pack(PriceRow r) => (r.Item, r.Supplier, r.PackSize, r.Unit);

    private async Task<ImmutableArray<ShelvedDish>> DishesAsync(CancellationToken cancel)
    {
        List<DocumentHead> heads = await store.DocumentsAsync(DocumentKind.Card, MostCards, cancel);
        foreach (DocumentHead head in heads.Where(h => !_read.ContainsKey((h.Id, h.Version))))
        {
            string text = (await store.OpenDocumentAsync(head.Id, cancel))?.Text ?? "";
            _read[(head.Id, head.Version)] = CardDesk.Batch(text, "", "").Match<ShelvedDish?>(b => ShelvedDish.Of(b), _ => null);
        }

        return [.. heads.Select(h => _read[(h.Id, h.Version)]).OfType<ShelvedDish>()];
    }
}
