using System.IO.Compression;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Trials;
using Coulisse.Store;
using NodaTime;

namespace Coulisse.Papers.Tests.Travel;

/// <summary>An export holds the newest of every text as JSON too, with the schema it follows.</summary>
public sealed class ExportFormsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-export").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Cards_sheets_trials_and_records_stand_in_it_as_values_that_read_back_and_every_schema_that_is_named_lies_beside()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(_folder, TimeProvider.System, cancel: Cancel);
        string card = await SaveAsync(store, DocumentKind.Card, "Leek soup", "# Leek soup\n\n- 600 g leek\n\n1. Simmer 20 min.\n");
        await SaveAsync(store, DocumentKind.Card, "Notes", "");
        string occasion = await SaveAsync(store, DocumentKind.Occasion, "Lunch", "# Lunch\n\nLive on stage 2026-03-07 14:00 to 14:25. 12 guests.\n");
        const string sheet = "# Trial of Leek soup\n\nMade on 2026-03-01 by Ada. Good run.\n\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n| Leek soup | 600 | 540 | 10 |\n";
        Assert.IsType<Parsed<string>.Ok>(await new TrialShelf(store).KeepAsync(null, card, sheet, "Ada", Cancel));
        await store.KeepRecordAsync(null, "Record of Lunch", "# Record of Lunch\n\n2026-03-07. 12 covers planned. 11 covers served.\n\n## Food\n| Dish | Part | Planned, g | Prepared, g | Served, g | Left, g | Waste, g |\n|---|---|---|---|---|---|---|\n| Soup | Leek soup | 4000 | 4100 | 3800 | 200 | 60 |\n", "Ada", occasion, "", Cancel);
        using MemoryStream zip = new();
        await Archive.ExportAsync(store, zip, ExportForms.Of(new LocalDate(2026, 3, 1)), Cancel);
        using ZipArchive archive = new(zip, ZipArchiveMode.Read);

        Assert.Equal("Leek soup", TravelJson.Read<Dish>(Value(archive, "card", "Leek soup").GetRawText()).Title);
        Assert.Equal(JsonValueKind.Null, Value(archive, "card", "Notes").ValueKind);
        Assert.Equal(12, TravelJson.Read<OccasionSheet>(Value(archive, "occasion", "Lunch").GetRawText()).Guests);
        Trial trial = TravelJson.Read<Trial>(Value(archive, "trial", "Trial of Leek soup, 2026-03-01").GetRawText());
        Assert.Equal((1, 540.0), (trial.CardVersion, Assert.Single(trial.Yields).OutGrams));
        ProductionRecord record = TravelJson.Read<ProductionRecord>(Value(archive, "record", "Record of Lunch").GetRawText());
        Assert.Equal((11, 40.0), (record.CoversServed, Assert.Single(record.Parts).Unaccounted));
        foreach (string kind in new[] { "card", "occasion", "trial", "record" })
        {
            Assert.Equal("https://json-schema.org/draft/2020-12/schema", Json(archive, Json(archive, $"data/{kind}s.json").GetProperty("schema").GetString()!).GetProperty("$schema").GetString());
        }

        // what is there besides does not keep an import from reading it
        await using KitchenStore other = await KitchenStore.OpenAsync(Path.Combine(_folder, "other"), TimeProvider.System, cancel: Cancel);
        zip.Position = 0;
        Assert.Equal(5, (await Archive.ImportAsync(other, zip, "w", Cancel)).Added);
    }

    private static async Task<string> SaveAsync(KitchenStore store, string kind, string title, string text)
        => Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(kind, null, 0, title, text, "Ada", "", Cancel)).Id;

    private static JsonElement Json(ZipArchive archive, string file)
    {
        using Stream stream = Assert.IsType<ZipArchiveEntry>(archive.GetEntry(file)).Open();
        using JsonDocument document = JsonDocument.Parse(stream);
        return document.RootElement.Clone();
    }

    private static JsonElement Value(ZipArchive archive, string kind, string title)
        => Json(archive, $"data/{kind}s.json").GetProperty("documents").EnumerateArray().Single(d => d.GetProperty("title").GetString() == title).GetProperty("value");
}
