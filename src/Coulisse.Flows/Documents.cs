using System.Collections.Immutable;
using System.Text;
using System.Text.Json.Nodes;
using Coulisse.Formats.Out;
using Coulisse.Formats.Travel;
using Coulisse.Papers;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Flows;

/// <summary>Order, cost, records, calendar and the whole bundle as files for other programs.</summary>
internal static class Documents
{
    public static ImmutableArray<PrintedFile> Write(PaperBundle bundle, PaperChoice choice, string folder, string form) => form switch
    {
        "xlsx" => [File(folder, "tables", "Order, cost, records", "kitchen.xlsx", XlsxFile.WriteAsync(Grids(bundle, choice)).GetAwaiter().GetResult())],
        "csv" => [.. Grids(bundle, choice).Select(g => File(folder, "table", g.Name, Name(g.Name) + ".csv", CsvFile.Write(g)))],
        "ics" => Calendars(bundle, choice, folder),
        "json" => [File(folder, "bundle", bundle.Title, "bundle.json", Encoding.UTF8.GetBytes(Json(bundle, choice)))],
        "jsonld" => [.. Cards(bundle).Select(d => File(folder, "card", d.Title, Name("card-" + Shortened(d.Title)) + ".jsonld", Encoding.UTF8.GetBytes(RecipeData.Write(d))))],
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "pdf, html, xlsx, csv, ics, json or jsonld."),
    };

    // A card that two dishes of an occasion share is one card.
    private static IEnumerable<Cards.Dish> Cards(PaperBundle bundle) => (bundle.Occasion is { } o ? o.Dishes.Select(d => d.Dish) : bundle.Batches.Select(b => b.Weighed.Dish)).DistinctBy(d => d.Title);

    private static string Shortened(string title) => title.Length > 80 ? title[..80] : title;

    private static bool Wanted(PaperChoice choice, string kind) => choice.Kinds.IsEmpty || choice.Kinds.Contains(kind);

    private static Grid[] Grids(PaperBundle bundle, PaperChoice choice) =>
    [
        .. bundle.Order is { } order && Wanted(choice, OrderPaper.Kind) ? KitchenGrids.Of(order) : [],
        .. bundle.Costing is { } costing && Wanted(choice, CostPaper.Kind) ? KitchenGrids.Of(costing) : [],
        KitchenGrids.Record(bundle.Batches.Select(b => (bundle.TitleOf(b), b))),
    ];

    private static ImmutableArray<PrintedFile> Calendars(PaperBundle bundle, PaperChoice choice, string folder)
    {
        if (bundle.Plan is not { } plan)
        {
            return [];
        }

        Instant now = SystemClock.Instance.GetCurrentInstant();
        string[] people = [.. plan.Tasks.SelectMany(t => t.People).Concat(plan.RunSheet.SelectMany(s => s.Who.Keys)).Distinct().Where(p => choice.People.IsEmpty || choice.People.Contains(p)).Order(StringComparer.Ordinal)];
        PrintedFile[] own = [.. people.Select(p => File(folder, "calendar", p, Name("plan-" + p) + ".ics", Encoding.UTF8.GetBytes(CalendarFile.Write(plan, p, now))))];
        return choice.People.IsEmpty ? [File(folder, "calendar", plan.Title, "plan.ics", Encoding.UTF8.GetBytes(CalendarFile.Write(plan, null, now))), .. own] : [.. own];
    }

    private static string Json(PaperBundle bundle, PaperChoice choice)
    {
        JsonObject all = new()
        {
            ["schema"] = "coulisse/bundle/1",
            ["title"] = bundle.Title,
            ["version"] = bundle.Mark.Version,
            ["printed"] = bundle.Mark.Printed,
            ["code"] = bundle.Code,
            ["cards"] = new JsonArray([.. Cards(bundle).Select(d => JsonNode.Parse(RecipeData.Write(d)))]),
            ["batches"] = JsonNode.Parse(TravelJson.Write(bundle.Batches)),
            ["findings"] = JsonNode.Parse(TravelJson.Write(bundle.Findings)),
            ["plan"] = bundle.Plan is { } plan ? JsonNode.Parse(TravelJson.Write(plan)) : null,
            ["order"] = bundle.Order is { } order ? Tables(KitchenGrids.Of(order)) : null,
            ["costing"] = bundle.Costing is { } costing ? Tables(KitchenGrids.Of(costing)) : null,
            ["ifThens"] = JsonNode.Parse(TravelJson.Write(bundle.IfThens)),
            ["papers"] = new JsonArray([.. PaperPrinter.Papers(bundle, choice).Select(p => (JsonNode)new JsonObject
            {
                ["id"] = p.Id, ["kind"] = p.Kind, ["title"] = p.Title, ["person"] = p.Person, ["content"] = p.Content, ["lines"] = new JsonArray([.. PaperLines.Of(p).Select(l => (JsonNode?)l)]),
            })]),
        };
        return all.ToJsonString(new System.Text.Json.JsonSerializerOptions { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
    }

    private static JsonObject Tables(ImmutableArray<Grid> grids) => new(grids.Select(g => KeyValuePair.Create(Name(g.Name), (JsonNode?)new JsonArray([.. g.Rows.Select(r => (JsonNode)new JsonObject(g.Columns.Select((c, i) => KeyValuePair.Create(c, (JsonNode?)Value(r[i])))))]))));

    private static JsonValue? Value(object? cell) => cell switch { null => null, decimal d => JsonValue.Create(d), double d => JsonValue.Create(d), int n => JsonValue.Create(n), LocalDate d => JsonValue.Create(d.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture)), _ => JsonValue.Create(cell.ToString()) };

    private static PrintedFile File(string folder, string kind, string title, string name, byte[] bytes) => new(Path.GetFileNameWithoutExtension(name), kind, title, PrintFiles.Save(folder, name, bytes), 0, "", []);

    private static string Name(string text) => string.Concat(text.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) || c is '-' ? c : '-'));
}
