using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Flows;
using Coulisse.Kitchen.Needs;
using Coulisse.Matter.Foods;
using Coulisse.Store;
using Coulisse.Views.Web;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Web.House;

/// <summary>What this kitchen has kept about itself, and what the rest of the bench takes from it.</summary>
internal sealed class KitchenBook(KitchenStore store, TimeProvider clock)
{
    private readonly string _book = store.Own("kitchen-book");
    private readonly string _prices = store.Own("kitchen-prices");
    private readonly string _foods = store.Own("kitchen-foods");
    private const string CodeKey = "kitchen.code";
    private const string MeasuresKey = "kitchen.measures";
    private const string HeadsKey = "kitchen.price-heads";

    /// <summary>Key of the book.</summary>
    public string Key => _book;

    /// <summary>Key of the price list.</summary>
    public string PricesKey => _prices;

    /// <summary>Sites of this kitchen, in the order of its book; none when it has one place only.</summary>
    public async Task<ImmutableArray<string>> SitesAsync(CancellationToken cancel)
        => await store.OpenDocumentAsync(_book, cancel) is { } kept ? BookText.Sites(kept.Text) : [];

    /// <summary>Hands, kit and circuits of a site, to lie under every sheet; null while none is kept.</summary>
    /// <param name="site">The site; where the kitchen has several and none is named, the first.</param>
    /// <param name="version">Version of the book; null for the newest.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<(OccasionSheet? House, int Version, string Site)> HouseAsync(string site, int? version, CancellationToken cancel)
    {
        (string? text, int at) = await TextAsync(_book, version, cancel);
        if (text is null)
        {
            return (null, at, "");
        }

        string taken = BookText.Taken(text, site);
        return OccasionReader.Read(BookText.SheetOf(text, taken).Text, Today) is Parsed<OccasionSheet>.Ok(var sheet) ? (sheet, at, taken) : (null, at, taken);
    }

    // version 0: there was none then
    private async Task<(string? Text, int Version)> TextAsync(string key, int? version, CancellationToken cancel)
    {
        if (version is { } v)
        {
            return v == 0 ? (null, 0) : ((await store.VersionAsync(key, v, cancel))?.Text, v);
        }

        Document? kept = await store.OpenDocumentAsync(key, cancel);
        return (kept?.Text, kept?.Version ?? 0);
    }

    /// <summary>Code of practice.</summary>
    public async Task<string> CodeAsync(CancellationToken cancel) => await store.SettingAsync(CodeKey, cancel) ?? DeskView.Codes[0].Key;

    /// <summary>Spoons and cups; empty when each card decides.</summary>
    public async Task<string> MeasuresAsync(CancellationToken cancel) => await store.SettingAsync(MeasuresKey, cancel) ?? "";

    /// <summary>The price list; null when none is kept or it cannot be read.</summary>
    public async Task<PriceList?> PricesAsync(CancellationToken cancel, string? currency = null)
        => await store.OpenDocumentAsync(_prices, cancel) is { } kept && PriceList.Read(kept.Text, currency, await HeadsAsync(cancel), Today) is Parsed<PriceList>.Ok(var list) ? list : null;

    /// <summary>What this kitchen has said of the heads of its suppliers' lists.</summary>
    public async Task<PriceHeads> HeadsAsync(CancellationToken cancel) => PriceHeads.Read(await store.SettingAsync(HeadsKey, cancel) ?? "");

    /// <summary>Remembers what heads stand for, for every later list.</summary>
    public Task ExplainAsync(PriceHeads heads, CancellationToken cancel) => store.SetAsync(HeadsKey, heads.Write(), cancel);

    /// <summary>Foods to weigh and judge with: those that ship, with the house's own laid over when a table is kept that can be read.</summary>
    public async Task<FoodTable> FoodsAsync(CancellationToken cancel) => (await FoodsAtAsync(null, cancel)).Table;

    /// <summary>The same as it was at a version, with that version; null for the newest, 0 when none was kept.</summary>
    public async Task<(FoodTable Table, int Version)> FoodsAtAsync(int? version, CancellationToken cancel)
    {
        (string? text, int at) = await TextAsync(_foods, version, cancel);
        return (text is { Length: > 0 } && OwnFoodsBeside.Read(text) is Parsed<FoodTable>.Ok(var table) ? table : FoodTable.Default, at);
    }

    /// <summary>Keeps the table of own foods.</summary>
    public Task<SaveOutcome> KeepFoodsAsync(string text, int basedOn, string who, CancellationToken cancel)
        => store.SaveAsync(DocumentKind.Foods, _foods, basedOn, "Own foods", text.ReplaceLineEndings("\n"), who, "", cancel);

    /// <summary>Larder and suppliers' terms.</summary>
    /// <param name="site">Whose larder; what stands in the book without a site is everywhere.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<OrderTerms> TermsAsync(string site, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(_book, cancel) is not { } kept)
        {
            return new OrderTerms();
        }

        Dictionary<string, List<(int Line, string[] Cells)>> rows = BookText.Read(kept.Text);
        string taken = BookText.Taken(kept.Text, site);
        return new OrderTerms
        {
            Stock = [.. rows["Larder"].Where(r => BookText.IsAt("Larder", r.Cells, taken)).Select(r => Lot(r.Cells)).OfType<StockLot>()],
            Suppliers = rows["Suppliers"].Where(r => r.Cells[0].Length > 0).GroupBy(r => r.Cells[0], StringComparer.Ordinal)
                .ToImmutableDictionary(g => g.Key, g => new SupplierTerms(Number(g.First().Cells[1]) ?? 0, Days(g.First().Cells[2])), StringComparer.Ordinal),
        };
    }

    /// <summary>The page.</summary>
    public async Task<KitchenView> ViewAsync(CancellationToken cancel)
    {
        Document? kept = await store.OpenDocumentAsync(_book, cancel);
        Document? prices = await store.OpenDocumentAsync(_prices, cancel);
        return View(kept?.Version ?? 0, kept?.Text ?? BookText.Usual, Prices(prices?.Version ?? 0, prices?.Text ?? "", await HeadsAsync(cancel)), await CodeAsync(cancel), await MeasuresAsync(cancel)) with { OwnFoods = Own(await store.OpenDocumentAsync(_foods, cancel)) };
    }

    private static OwnFoodsView Own(Document? kept)
        => kept is not { Text: { } text } || text.Trim().Length == 0
            ? new OwnFoodsView(kept?.Version ?? 0, "", "No own foods are kept. The first line names the columns: name, source, water, protein, fat, carbohydrate, contains, may …; every food says where its figures are from.", [])
            : OwnFoodsBeside.Read(text).Match(
                table => new OwnFoodsView(kept.Version, text, string.Create(CultureInfo.InvariantCulture, $"{table.Ids.Count(table.IsOwn)} own foods go before those that ship, in every card, plan, paper and order of this kitchen."), []),
                problems => new OwnFoodsView(kept.Version, text, "It is kept as written, but not used until it can be read.", [.. problems.Take(30).Select(p => string.Create(CultureInfo.InvariantCulture, $"Line {p.Line}: {p.Message} {p.Hint} ({p.Code})"))]));

    /// <summary>Keeps the book as it was filled in.</summary>
    /// <returns>What could not be read, in words; what was written is kept all the same.</returns>
    public async Task<SaveOutcome> KeepAsync(IReadOnlyDictionary<string, List<string[]>> rows, int basedOn, string who, CancellationToken cancel)
        => await store.SaveAsync(DocumentKind.Kitchen, _book, basedOn, "Kitchen", BookText.Write(rows), who, "", cancel);

    /// <summary>Keeps the price list.</summary>
    public Task<SaveOutcome> KeepPricesAsync(string text, int basedOn, string who, CancellationToken cancel)
        => store.SaveAsync(DocumentKind.Prices, _prices, basedOn, "Prices", text.ReplaceLineEndings("\n"), who, "", cancel);

    /// <summary>Sets code of practice and spoons; what is not known is left as it was.</summary>
    public async Task SetAsync(string code, string measures, CancellationToken cancel)
    {
        if (DeskView.Codes.Any(c => c.Key == code))
        {
            await store.SetAsync(CodeKey, code, cancel);
        }

        if (DeskView.Measures.Any(m => m.Key == measures))
        {
            await store.SetAsync(MeasuresKey, measures, cancel);
        }
    }

    private const int BlankRows = 2;

    private LocalDate Today => LocalDate.FromDateTime(clock.GetLocalNow().Date);

    private KitchenView View(int version, string text, PricesView prices, string code, string measures)
    {
        CultureInfo culture = CultureInfo.GetCultureInfo("en-GB");
        Dictionary<string, List<(int Line, string[] Cells)>> rows = BookText.Read(text);
        ImmutableArray<string> faults = [];
        // each site is read for itself: two of them may give their ovens the same code
        ImmutableArray<string> sites = BookText.Sites(text);
        List<(string Site, OccasionSheet Sheet, ImmutableArray<int> Lines)> read = [];
        foreach (string site in sites.IsEmpty ? [""] : sites)
        {
            (string part, ImmutableArray<int> lines) = BookText.SheetOf(text, site);
            OccasionReader.Read(part, Today).Match(s => { read.Add((site, s, lines)); return 0; }, problems =>
            {
                faults = [.. faults.Concat(problems.Select(p => $"{Where(rows, p.Line > 0 && p.Line <= lines.Length ? lines[p.Line - 1] : 0)}{p.Message} {p.Hint} ({p.Code})")).Distinct()];
                return 0;
            });
        }

        (SheetKit? Kit, ImmutableArray<SheetCircuit> Circuits) KitOn(int line) => read.SelectMany(r => r.Sheet.Kit.Where(k => k.Line > 0 && r.Lines[k.Line - 1] == line).Select(k => ((SheetKit?)k, r.Sheet.Circuits))).FirstOrDefault();
        ImmutableArray<string> Useless(string key, int line) => [.. key == "Kit" && KitOn(line).Kit is { } kit ? KitFields.Useless(kit.Type) : [], .. sites.IsEmpty ? new[] { BookText.SiteColumn } : []];
        string ReadAs(string key, int line, string[] cells) => key switch
        {
            "Kit" when KitOn(line) is { Kit: { } kit } on => KitchenView.ReadAs(kit, on.Circuits, culture),
            "Hands" when read.SelectMany(r => r.Sheet.People.Where(p => p.Line > 0 && r.Lines[p.Line - 1] == line)).FirstOrDefault() is { } person => KitchenView.ReadAs(person),
            "Circuits" when read.Where(r => BookText.IsAt("Circuits", cells, r.Site)).SelectMany(r => r.Sheet.Circuits).FirstOrDefault(c => c.Code == cells[0]) is { } circuit => string.Create(culture, $"{circuit.LimitKilowatts:0.00} kW; on it {string.Join(", ", circuit.Kit)}"),
            "Larder" => Lot(cells) is { } lot ? string.Create(culture, $"{lot.Amount:#,0.#}{(lot.Since is { } d ? $", since {LocalDatePattern.Iso.Format(d)}" : ", used last: no day is written")}") : "not read: write an amount such as 2.5 kg, 400 g or 12",
            "Suppliers" => Days(cells[2]) is { IsEmpty: false } days ? "delivers on " + string.Join(", ", days) : "delivers on any day",
            _ => "",
        };
        return new KitchenView(
            version, version == 0 ? "A usual small kitchen, to begin with; nothing of it is kept yet. Change it to your own." : string.Create(culture, $"Version {version}."), faults,
            [.. BookText.Tables.Select(t => new KitchenSection(t.Key, t.Says, t.Columns, [.. rows[t.Key].Select(r => new KitchenRow([.. r.Cells], ReadAs(t.Key, r.Line, r.Cells)) { Name = t.NameOf(r.Cells), Useless = Useless(t.Key, r.Line) }), .. Enumerable.Repeat(new KitchenRow([.. t.Columns.Select(_ => "")], "") { Name = "" }, BlankRows)]) { One = t.One })],
            prices, code, measures);
    }

    private PricesView Prices(int version, string text, PriceHeads heads)
    {
        CultureInfo culture = CultureInfo.GetCultureInfo("en-GB");
        return text.Trim().Length == 0
            ? new PricesView(version, "", "No price list is kept. Paste one, drop a file, or choose a workbook: its first line names the columns item, supplier, pack size, unit, price, currency, lead days, note, since, until, another article.", [], [], [])
            : PriceList.Read(text, "", heads, Today).Match(
                list => PricesView.From(version, text, list, culture),
                problems => new PricesView(version, text, "It is kept as written, but not used until it can be read.", [.. problems.Take(30).Select(p => string.Create(culture, $"Line {p.Line}: {p.Message} {p.Hint} ({p.Code})"))], [],
                    problems.Any(p => p.Code == "PRI001") && CellText.Split(text) is [_, ..] lines ? [.. PriceTable.Find(lines, heads).Heads.Where(c => PriceHeads.Fold(c).Length > 0).Select(c => (c.Trim(), heads.Of(c) ?? ""))] : []));
    }

    private static string Where(Dictionary<string, List<(int Line, string[] Cells)>> rows, int line)
        => rows.SelectMany(t => t.Value.Select((r, i) => (t.Key, r.Line, Row: i + 1))).FirstOrDefault(r => r.Line == line) is { Row: > 0 } at ? string.Create(CultureInfo.InvariantCulture, $"{at.Key}, row {at.Row}: ") : "";

    private static StockLot? Lot(string[] cells)
    {
        string amount = cells[1].Trim().ToLowerInvariant();
        decimal factor = amount.EndsWith("kg", StringComparison.Ordinal) ? 1000 : 1;
        string digits = amount.Replace("kg", "", StringComparison.Ordinal).Replace("pieces", "", StringComparison.Ordinal).TrimEnd('g', ' ').Replace(",", "", StringComparison.Ordinal);
        return cells[0].Length > 0 && Number(digits) is { } n and > 0 ? new StockLot(cells[0], n * factor, LocalDatePattern.Iso.Parse(cells[2].Trim()) is { Success: true } d ? d.Value : null) : null;
    }

    private static decimal? Number(string text) => decimal.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal n) ? n : null;

    private static ImmutableArray<IsoDayOfWeek> Days(string text) => [.. Enum.GetValues<IsoDayOfWeek>()
        .Where(d => d != IsoDayOfWeek.None && text.Split([',', ' ', ';', '/'], StringSplitOptions.RemoveEmptyEntries).Any(w => w.Length > 1 && d.ToString().StartsWith(w.TrimEnd('.'), StringComparison.OrdinalIgnoreCase)))];
}
