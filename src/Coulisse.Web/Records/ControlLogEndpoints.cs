using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Formats.Out;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.House;
using Coulisse.Web.People;
using Coulisse.Web.Plans;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.Records;

/// <summary>The control log: readings are judged, signed with who is at the bench, and only ever added.</summary>
internal static class ControlLogEndpoints
{
    private const int Shown = 500;

    public static void MapControlLog(this WebApplication app)
    {
        app.MapGet("/control-log", async (string? occasion, KitchenStore store, OccasionShelf shelf, KitchenBook book, CancellationToken cancel) =>
            Page(await ViewAsync(occasion ?? "", new ControlDraft(0, "", "", ""), [], store, shelf, book, cancel)));
        app.MapGet("/control-log.csv", CsvAsync);
        app.MapPost("/control-log", WriteAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere (decision 0251)
        app.MapPost("/control-log/keep", KeepForAsync).DisableAntiforgery();
    }

    private static RazorComponentResult<ControlLogPage> Page(ControlLogView view, int status = StatusCodes.Status200OK) => new(new { View = view }) { StatusCode = status };

    private static async Task<ImmutableArray<ControlPoint>> PointsAsync(string occasion, OccasionShelf shelf, KitchenBook book, CancellationToken cancel)
    {
        string code = await book.CodeAsync(cancel);
        ImmutableArray<ControlPoint> places = ControlReading.Places(code);
        return occasion.Length > 0 && await shelf.OpenAsync(occasion, null, cancel) is Parsed<KeptOccasion>.Ok(var kept) && OccasionBatches.Make(kept.Occasion) is Parsed<ImmutableArray<Batch>>.Ok(var batches)
            ? [.. batches.SelectMany(b => SafetyReview.Review(b.Weighed, code).ControlPoints).DistinctBy(p => (p.Component, p.Limit)), .. places]
            : places;
    }

    private static async Task<ControlLogView> ViewAsync(string occasion, ControlDraft draft, ImmutableArray<string> problems, KitchenStore store, OccasionShelf shelf, KitchenBook book, CancellationToken cancel)
    {
        List<ControlEntry> log = await store.ControlLogAsync(cancel);
        ChainCheck check = await store.CheckControlLogAsync(cancel);
        string says = ChainWords.Of(check);
        ImmutableArray<ControlPoint> points = await PointsAsync(occasion, shelf, book, cancel);
        string title = occasion.Length > 0 && await store.OpenDocumentAsync(occasion, cancel) is { Kind: DocumentKind.Occasion } head ? head.Title : "";
        return new ControlLogView(says, check.Broken.IsEmpty, title.Length > 0 ? occasion : "", title,
            [.. points.Select((p, i) => new ControlOption(i, p.Component + (p.Limit.Length > 0 ? ": " + p.Limit : "")))], problems, draft, await Retention.OfAsync(store, cancel),
            [.. log.AsEnumerable().Reverse().Take(Shown).Select(Row)]);
    }

    private static ControlRow Row(ControlEntry entry)
    {
        string at = entry.At.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);
        return Read(entry) is { } r
            ? new ControlRow(at, entry.Who, r.Subject.Length > 0 ? $"{r.Point}, {r.Subject}" : r.Point, r.Limit, string.Create(CultureInfo.InvariantCulture, $"{r.Celsius:0.0} °C").Replace('-', '−'), r.Within switch { true => "kept", false => "missed", null => "by time" }, r.Done)
            : new ControlRow(at, entry.Who, entry.Json, "", "", "", "");
    }

    // an entry of another form (an import, an earlier version) is shown as it stands
    private static ControlReading? Read(ControlEntry entry)
    {
        try
        {
            return JsonSerializer.Deserialize<ControlReading>(entry.Json, JsonSerializerOptions.Web) is { Point.Length: > 0 } r ? r : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static async Task<IResult> WriteAsync([FromForm] string? occasion, [FromForm] int point, [FromForm] string? subject, [FromForm] string? celsius, [FromForm] string? done, HttpContext context, KitchenStore store, OccasionShelf shelf, KitchenBook book, CancellationToken cancel)
    {
        ImmutableArray<ControlPoint> points = await PointsAsync(occasion ?? "", shelf, book, cancel);
        ControlDraft draft = new(point, subject ?? "", celsius ?? "", done ?? "");
        Parsed<ControlReading> judged = point >= 0 && point < points.Length
            ? ControlReading.Judge(points[point], draft.Subject, draft.Celsius, draft.Done)
            : new Parsed<ControlReading>.Failed([new Problem("CTL004", 0, "The list of parts and places has changed since the page was opened.", "Choose the part or place again.")]);
        if (judged is not Parsed<ControlReading>.Ok(var reading))
        {
            ImmutableArray<string> problems = [.. ((Parsed<ControlReading>.Failed)judged).Problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})")];
            return Page(await ViewAsync(occasion ?? "", draft, problems, store, shelf, book, cancel), StatusCodes.Status422UnprocessableEntity);
        }

        await store.LogControlAsync(context.Name(), JsonSerializer.Serialize(reading, JsonSerializerOptions.Web), cancel);
        return Results.Redirect("/control-log" + (occasion is { Length: > 0 } ? "?occasion=" + Uri.EscapeDataString(occasion) : ""));
    }

    private static async Task<IResult> CsvAsync(KitchenStore store, CancellationToken cancel)
        => Results.File(CsvFile.Write(new Grid("Control log", ["seq", "at", "who", "point", "subject", "limit", "celsius", "within", "done", "previous", "hash"],
            [.. (await store.ControlLogAsync(cancel)).Select(e => (Entry: e, Reading: Read(e))).Select(e => Grid.Row(e.Entry.Seq, e.Entry.At.ToString("O", CultureInfo.InvariantCulture), e.Entry.Who, e.Reading?.Point ?? e.Entry.Json, e.Reading?.Subject, e.Reading?.Limit, e.Reading?.Celsius, e.Reading?.Within switch { true => "yes", false => "no", null => "" }, e.Reading?.Done, e.Entry.Previous, e.Entry.Hash))])), "text/csv; charset=utf-8", "control-log.csv");

    private static async Task<IResult> KeepForAsync([FromForm] int months, HttpContext context, KitchenStore store, CancellationToken cancel)
    {
        await Retention.SetAsync(store, months, cancel);
        await store.AuditAsync(context.Name(), string.Create(CultureInfo.InvariantCulture, $"records are kept for {months} months"), "", cancel);
        return Results.Redirect("/control-log");
    }
}
