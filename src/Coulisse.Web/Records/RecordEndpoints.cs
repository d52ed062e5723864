using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Trials;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.People;
using Coulisse.Web.Plans;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Records;

/// <summary>Production records of an occasion.</summary>
internal static class RecordEndpoints
{
    public static void MapRecords(this WebApplication app)
    {
        app.MapGet("/records/{occasion}", PageAsync);
        app.MapPost("/records/{occasion}", KeepAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere (decision 0251)
        app.MapGet("/records/{occasion}/{id}", SheetAsync);
    }

    private static async Task<IResult> PageAsync(string occasion, KitchenStore store, OccasionShelf shelf, CancellationToken cancel)
        => await ViewAsync(store, shelf, occasion, null, [], cancel) is { } view ? new RazorComponentResult<TrialsPage>(new { View = view }) : Results.NotFound();

    private static async Task<TrialsView?> ViewAsync(KitchenStore store, OccasionShelf shelf, string id, string? sheet, ImmutableArray<string> problems, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Occasion } head)
        {
            return null;
        }

        List<KeptRecord> records = await store.RecordsAsync(id, cancel);
        string blank = await shelf.OpenAsync(id, null, cancel) is Parsed<KeptOccasion>.Ok(var kept)
            ? OccasionBatches.Make(kept.Occasion).Match(b => ProductionRecord.Blank(kept.Occasion, b), _ => $"# Record of {head.Title}\n")
            : $"# Record of {head.Title}\n";
        return new TrialsView(head.Title, "Records", "/records/" + id, "/occasions", records.Count == 0 ? "Nothing is recorded yet." : string.Create(CultureInfo.InvariantCulture, $"{records.Count} kept."), [],
            [.. records.Select(r => new TrialRow($"/records/{id}/{r.Id}", string.Create(CultureInfo.InvariantCulture, $"{r.Made:yyyy-MM-dd HH:mm} UTC"), ""))], sheet ?? blank, problems, false) { Blank = blank };
    }

    private static async Task<IResult> KeepAsync(string occasion, HttpContext context, KitchenStore store, OccasionShelf shelf, CancellationToken cancel)
    {
        if (!context.Request.HasFormContentType)
        {
            return Results.StatusCode(StatusCodes.Status415UnsupportedMediaType);
        }

        string text = FilledSheet.Of(await context.Request.ReadFormAsync(cancel));
        if (ProductionRecord.Read(text) is Parsed<ProductionRecord>.Failed(var problems))
        {
            return await ViewAsync(store, shelf, occasion, text, [.. problems.Select(p => string.Create(CultureInfo.InvariantCulture, $"Line {p.Line}: {p.Message} {p.Hint} ({p.Code})"))], cancel) is { } view
                ? new RazorComponentResult<TrialsPage>(new { View = view }) { StatusCode = StatusCodes.Status422UnprocessableEntity }
                : Results.NotFound();
        }

        if (await store.OpenDocumentAsync(occasion, cancel) is not { Kind: DocumentKind.Occasion } head)
        {
            return Results.NotFound();
        }

        string plan = (await store.NewestPlanAsync(occasion, cancel))?.Id ?? "";
        return Results.Redirect($"/records/{Uri.EscapeDataString(occasion)}/{await store.KeepRecordAsync(null, "Record of " + head.Title, text, context.Name(), occasion, plan, cancel)}");
    }

    private static async Task<IResult> SheetAsync(string occasion, string id, KitchenStore store, CancellationToken cancel)
    {
        if (await store.RecordAsync(id, cancel) is not { } record || record.OccasionId != occasion || await store.OpenDocumentAsync(id, cancel) is not { } sheet)
        {
            return Results.NotFound();
        }

        string plan = record.PlanId.Length > 0 && await store.PlanAsync(record.PlanId, cancel) is { } kept ? $" Plan made with {kept.Versions}." : "";
        RetentionView keep = await Retention.OfAsync(store, cancel);
        return new RazorComponentResult<KeptSheetPage>(new { View = new KeptSheetView(sheet.Title, "/records/" + occasion, sheet.Text, string.Create(CultureInfo.InvariantCulture, $"Kept {sheet.Saved:yyyy-MM-dd HH:mm} UTC by {sheet.Who}.{plan} {keep.For(sheet.Saved)}"), []) });
    }
}
