using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Kitchen.Planning;
using Coulisse.Matter.Foods;
using Coulisse.Store;
using Coulisse.Web.Desk;
using Coulisse.Web.Hosting;
using Coulisse.Web.House;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Web.Plans;

/// <summary>Occasions as kept texts: the sheet or sentence is the document; which cards it was read with, and on which day, stands in the reason of its version.</summary>
internal sealed class OccasionShelf(KitchenStore store, KitchenBook book, ShowMarks marks, TimeProvider clock)
{
    private LocalDate Today => LocalDate.FromDateTime(clock.GetLocalNow().Date);

    /// <summary>Keeps one card with one sentence, when the two make an occasion. A card that lies in the card file already stays that card: what changed in its text is its next version.</summary>
    public async Task<Parsed<KeptOccasion>> KeepSentenceAsync(string sentence, string card, CancellationToken cancel, string? cardId = null, string site = "")
    {
        LocalDate today = Today;
        if (OccasionFiles.Sentence(sentence, today, [("card", card)], (await book.HouseAsync(site, null, cancel)).House) is Parsed<Occasion>.Failed(var problems))
        {
            return new Parsed<KeptOccasion>.Failed(problems);
        }

        Document? there = string.IsNullOrEmpty(cardId) ? null : (await store.OpenDocumentAsync(cardId, cancel)) is { Kind: DocumentKind.Card } held ? held : null;
        string title = DeskEndpoints.Title(card);
        string kept = there is null ? await KeepAsync(DocumentKind.Card, null, title, card, "", cancel)
            : there.Text == card ? there.Id
            : await KeepAsync(DocumentKind.Card, there.Id, title, card, "", cancel, there.Version);
        string id = await KeepAsync(DocumentKind.Occasion, null, title, sentence, Why(today, [("card", kept)], sentence: true), cancel);
        await SiteAsync(id, site, cancel);
        return (await OpenAsync(id, null, cancel))!;
    }

    /// <summary>Keeps the example that lies in the assembly, once; a second call finds it again.</summary>
    public async Task<Parsed<KeptOccasion>> KeepExampleAsync(CancellationToken cancel)
    {
        string id = store.Own("example-occasion");
        if (await OpenAsync(id, null, cancel) is { } there)
        {
            return there;
        }

        List<(string Path, string Id)> cards = [];
        foreach (string file in EmbeddedFiles.DemoFiles().Where(f => f.StartsWith("cards/", StringComparison.Ordinal)))
        {
            string text = EmbeddedFiles.Demo(file)!.ReplaceLineEndings("\n");
            cards.Add((file, await KeepAsync(DocumentKind.Card, store.Own("example-" + Path.GetFileNameWithoutExtension(file)), DeskEndpoints.Title(text), text, "example", cancel)));
        }

        string sheet = EmbeddedFiles.Demo("occasion.md")!.ReplaceLineEndings("\n");
        await KeepAsync(DocumentKind.Occasion, id, DeskEndpoints.Title(sheet), sheet, Why(Today, cards, sentence: false), cancel);
        return (await OpenAsync(id, null, cancel))!;
    }

    /// <summary>An occasion as it was kept, read again; null when there is none.</summary>
    public Task<Parsed<KeptOccasion>?> OpenAsync(string id, int? version, CancellationToken cancel) => OpenAsync(id, version, null, cancel);

    /// <summary>The occasion of a kept plan with the very versions of its cards that the plan was made of, whatever was kept since.</summary>
    public Task<Parsed<KeptOccasion>?> OpenAsync(KeptPlan plan, CancellationToken cancel) => OpenAsync(plan.OccasionId, plan.OccasionVersion, plan.Versions, cancel);

    private async Task<Parsed<KeptOccasion>?> OpenAsync(string id, int? version, string? madeWith, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Occasion } head)
        {
            return null;
        }

        (string text, string why, int at) = version is { } v && v != head.Version && await store.VersionAsync(id, v, cancel) is { } old ? (old.Text, old.Why, v) : (head.Text, head.Why, head.Version);
        string[] parts = why.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        LocalDate day = parts.Where(p => p.StartsWith("read on ", StringComparison.Ordinal)).Select(p => LocalDatePattern.Iso.Parse(p["read on ".Length..])).FirstOrDefault(p => p.Success)?.Value ?? Today;
        Dictionary<string, string> texts = new(StringComparer.Ordinal);
        Dictionary<string, int> versions = new(StringComparer.Ordinal);
        PlanBasis? then = madeWith is null ? null : await PlanBasis.OfAsync(madeWith, store, cancel);
        List<LearntTime> learnt = [];
        List<LearntCard> cards = [];
        List<SheetShow> shown = [];
        foreach (string[] pair in parts.Where(p => p.Contains(" is ", StringComparison.Ordinal)).Select(p => p.Split(" is ", 2)))
        {
            if (await store.OpenDocumentAsync(pair[1], cancel) is { } card)
            {
                int made = KeptOccasion.VersionOf(madeWith ?? "", card.Id) ?? card.Version;
                texts[pair[0]] = made == card.Version ? card.Text : (await store.VersionAsync(card.Id, made, cancel))?.Text ?? card.Text;
                versions[card.Id] = made;
                if (CardReader.Read(new CardText(texts[pair[0]], pair[0])) is Parsed<Dish>.Ok(var dish))
                {
                    shown.AddRange(await marks.RowsAsync(card.Id, dish, cancel));
                    if (madeWith is null)
                    {
                        (ImmutableArray<LearntTime> times, LearntCard? figures) = await new TrialShelf(store).LearntAsync(dish, card.Id, made, cancel);
                        learnt.AddRange(times);
                        cards.AddRange(figures is null ? [] : [figures]);
                    }
                }
            }
        }

        bool sentence = parts.Contains("sentence");
        // a kept plan is read with what lay beside it then, whatever was kept since
        (OccasionSheet? house, int bookAt, string site) = await book.HouseAsync(then?.Site ?? await SiteAsync(id, cancel), then?.Book, cancel);
        (FoodTable table, int foodsAt) = await book.FoodsAtAsync(then?.Foods, cancel);
        PlanBasis basis = then ?? new PlanBasis([.. learnt], [.. cards], site, bookAt, foodsAt, [.. await ChangesAsync(id, cancel)], [.. shown]);
        Parsed<FoodTable> foods = new Parsed<FoodTable>.Ok(table);
        return (sentence ? OccasionFiles.Sentence(text, day, [.. texts.Select(t => (t.Key, t.Value))], house, _ => foods) : OccasionFiles.Build(text, day, texts.GetValueOrDefault, house, _ => foods)).Match<Parsed<KeptOccasion>>(
            o => new Parsed<KeptOccasion>.Ok(new KeptOccasion(id, at, Changed(Marked(sentence ? o with { Title = head.Title } : o, basis.Shown), basis.Changes) with { Learnt = basis.Learnt, LearntCards = basis.LearntCards, Site = site, Assumed = site.Length == 0 ? o.Assumed : o.Assumed.Add($"Kit and larder of the kitchen are those of {site}.") }, versions.ToImmutableDictionary(StringComparer.Ordinal), basis)),
            p => new Parsed<KeptOccasion>.Failed(p));
    }

    /// <summary>The kept card that a dish of an occasion is made from; null when it is not kept.</summary>
    /// <param name="id">Kept occasion.</param>
    /// <param name="path">Card as the sheet names it.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<Document?> CardOfAsync(string id, string path, CancellationToken cancel)
        => await store.OpenDocumentAsync(id, cancel) is { } head
            && head.Why.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Where(p => p.Contains(" is ", StringComparison.Ordinal)).Select(p => p.Split(" is ", 2)).FirstOrDefault(p => p[0] == path) is { } pair
            ? await store.OpenDocumentAsync(pair[1], cancel) : null;

    // what a sheet lists as shown is the whole of it; a sheet that lists nothing shows what is marked on its cards
    private static Occasion Marked(Occasion occasion, ImmutableArray<SheetShow> shown)
        => occasion.Shows.IsEmpty && shown.Length > 0 ? occasion with { Shows = [.. shown.Select((s, i) => s with { Line = i + 1 })] } : occasion;

    /// <summary>Keys of the kept cards an occasion is read with, in the order of the sheet, as the reason of its version says.</summary>
    public static ImmutableArray<string> CardsOf(string why) => [.. why.Split(';', StringSplitOptions.TrimEntries).Where(p => p.Contains(" is ", StringComparison.Ordinal)).Select(p => p.Split(" is ", 2)[1]).Distinct(StringComparer.Ordinal)];

    /// <summary>Remedies that were tried by a touch, in order.</summary>
    public async Task<List<string>> ChangesAsync(string id, CancellationToken cancel)
        => await store.SettingAsync(ChangesKey(id), cancel) is { } kept ? JsonSerializer.Deserialize<List<string>>(kept)! : [];

    /// <summary>Notes a remedy, or takes it back.</summary>
    public async Task ChangeAsync(string id, string words, bool on, CancellationToken cancel)
    {
        List<string> all = await ChangesAsync(id, cancel);
        all.Remove(words);
        if (on && words.Length is > 0 and < 400)
        {
            all.Add(words);
        }

        await store.SetAsync(ChangesKey(id), JsonSerializer.Serialize(all), cancel);
    }

    /// <summary>Site of the kitchen that was chosen for an occasion; empty for none.</summary>
    public async Task<string> SiteAsync(string id, CancellationToken cancel) => await store.SettingAsync("site." + id, cancel) ?? "";

    /// <summary>Chooses the site; one that the kitchen does not have chooses none.</summary>
    public async Task SiteAsync(string id, string site, CancellationToken cancel)
    {
        string known = (await book.SitesAsync(cancel)).FirstOrDefault(s => s.Equals(site.Trim(), StringComparison.OrdinalIgnoreCase)) ?? "";
        if (known.Length > 0 || (await SiteAsync(id, cancel)).Length > 0)
        {
            await store.SetAsync("site." + id, known, cancel);
        }
    }

    private static string ChangesKey(string id) => "changes." + id;

    // a change is known by its words; one that no longer fits the sheet changes nothing
    private static Occasion Changed(Occasion occasion, IEnumerable<string> changes)
        => changes.Aggregate(occasion, (o, words) => RemedyCandidates.Of(o, PlanEdits.None, []).FirstOrDefault(r => r.Words == words)?.Changed ?? o);

    private static string Why(LocalDate day, IEnumerable<(string Path, string Id)> cards, bool sentence)
        => string.Join("; ", [$"read on {LocalDatePattern.Iso.Format(day)}", .. cards.Select(c => $"{c.Path} is {c.Id}"), .. sentence ? new[] { "sentence" } : []]);

    private async Task<string> KeepAsync(string kind, string? id, string title, string text, string why, CancellationToken cancel, int basedOn = 0)
        => await store.SaveAsync(kind, id, basedOn, title, text, "bench", why, cancel) switch
        {
            SaveOutcome.Saved(var key, _) => key,
            SaveOutcome.Conflict(var key, _, _) => key,
            _ => throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"A save of {title} ended neither kept nor in conflict.")),
        };
}

/// <summary>An occasion with the document it came from.</summary>
/// <param name="Id">Document.</param>
/// <param name="Version">Its version.</param>
/// <param name="Occasion">As it was read.</param>
/// <param name="Cards">Version of each kept card it was read with.</param>
/// <param name="Basis">What else it was read with.</param>
internal sealed record KeptOccasion(string Id, int Version, Occasion Occasion, ImmutableDictionary<string, int> Cards, PlanBasis Basis)
{
    /// <summary>What a kept plan says it was made with: the program, its tables, each card as read, each kept card by version.</summary>
    public string MadeWith(Plan plan) => string.Join("; ", plan.Versions.Select(v => v.Key + " " + v.Value).Concat(Cards.Select(c => string.Create(CultureInfo.InvariantCulture, $"kept {c.Key} {c.Value}"))).Append(Basis.Said).Order(StringComparer.Ordinal));

    /// <summary>Version of a kept card in what a plan was made with; null when it does not say.</summary>
    public static int? VersionOf(string madeWith, string cardId)
        => madeWith.Split("; ").FirstOrDefault(p => p.StartsWith($"kept {cardId} ", StringComparison.Ordinal)) is { } said && int.TryParse(said.AsSpan(said.LastIndexOf(' ') + 1), CultureInfo.InvariantCulture, out int v) ? v : null;
}
