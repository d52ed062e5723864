using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Flows;
using Coulisse.Formats.In;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Trials;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Heat;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.House;
using Coulisse.Web.People;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Records;

/// <summary>Trials of a card: the list with what repeats say, a sheet to fill in, photographs and probe files.</summary>
internal static class TrialEndpoints
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");

    public static void MapTrials(this WebApplication app)
    {
        app.MapGet("/trials/{card}", PageAsync);
        app.MapPost("/trials/{card}", KeepAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere (decision 0251)
        app.MapGet("/trials/{card}/{id}", SheetAsync);
        app.MapGet("/trials/{card}/{id}/{file}", FileAsync);
    }

    private static async Task<IResult> PageAsync(string card, KitchenStore store, KitchenBook book, CancellationToken cancel)
        => await ViewAsync(store, book, card, null, [], cancel) is { } view ? Page(view) : Results.NotFound();

    private static RazorComponentResult<TrialsPage> Page(TrialsView view, int status = StatusCodes.Status200OK) => new(new { View = view }) { StatusCode = status };

    private static async Task<TrialsView?> ViewAsync(KitchenStore store, KitchenBook book, string card, string? sheet, ImmutableArray<string> problems, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(card, cancel) is not { Kind: DocumentKind.Card } kept)
        {
            return null;
        }

        TrialShelf shelf = new(store);
        TrialSummary? summary = await shelf.SummaryAsync(card, null, cancel);
        ImmutableArray<(KeptTrial Kept, Trial Trial)> all = await shelf.OfAsync(card, cancel);
        FoodTable foods = await book.FoodsAsync(cancel);
        string? measures = await book.MeasuresAsync(cancel) is { Length: > 0 } own ? own : null;
        string blank = CardReader.Read(new CardText(kept.Text, kept.Title)).Match(dish => BlankTrial.Of(Weighing.Weigh(dish, measures, foods), 1, kept.Version), _ => $"# Trial of {kept.Title}\n");
        string says = summary is null ? "Not tried yet." : string.Create(English, $"{summary.Trials} trials of version {all.Max(t => t.Kept.CardVersion)}. {(summary.Standardised ? "Standardised: " : "Not standardised: ")}{summary.Why}");
        return new TrialsView(kept.Title, "Trials", "/trials/" + card, "/cards/" + card, says, TrialsView.Of(summary, English),
            Rows(card, all),
            sheet ?? blank, problems, true)
        {
            Blank = blank,
            Taught = CardReader.Read(new CardText(kept.Text, kept.Title)) is Parsed<Dish>.Ok(var made) && (await shelf.LearntAsync(made, card, kept.Version, cancel)).Card is { } learnt ? learnt.Sentences(made) : [],
        };
    }

    /// <summary>The trials of a card as rows, the newest first; what was noted stands with each.</summary>
    public static async Task<ImmutableArray<TrialRow>> RowsAsync(KitchenStore store, string card, CancellationToken cancel) => Rows(card, await new TrialShelf(store).OfAsync(card, cancel));

    private static ImmutableArray<TrialRow> Rows(string card, ImmutableArray<(KeptTrial Kept, Trial Trial)> all)
        => [.. all.Select(t => new TrialRow($"/trials/{card}/{t.Kept.Id}", string.Create(CultureInfo.InvariantCulture, $"{t.Trial.Made?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? t.Kept.Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}"), string.Create(English, $"version {t.Kept.CardVersion}{(t.Trial.By.Length > 0 ? ", " + t.Trial.By : "")}, {t.Trial.Good switch { true => "good run", false => "not a good run", null => "not judged" }}")))];

    private static async Task<IResult> KeepAsync(string card, HttpContext context, KitchenStore store, KitchenBook book, CancellationToken cancel)
    {
        if (!context.Request.HasFormContentType)
        {
            return Results.StatusCode(StatusCodes.Status415UnsupportedMediaType);
        }

        IFormCollection form = await context.Request.ReadFormAsync(cancel);
        string sheet = FilledSheet.Of(form);
        TrialShelf shelf = new(store);
        // Files are looked at before anything is kept, so that a refused one leaves no half of a trial behind.
        List<(string Name, byte[] Bytes, bool Picture)> files = [];
        List<string> wrong = [];
        foreach (IFormFile file in form.Files.Where(f => f.Length > 0).Take(TrialShelf.MostFiles))
        {
            using MemoryStream all = new();
            await file.CopyToAsync(all, cancel);
            bool picture = file.Name == "photo";
            files.Add((file.FileName, all.ToArray(), picture));
            ImmutableArray<Problem> problems = picture ? Photograph.Read(all.ToArray()).Match(_ => [], p => p) : TextBytes.Read(all.ToArray()).Match(ProbeFile.Read, p => new Parsed<ProbeRun>.Failed(p)).Match(_ => [], p => p);
            wrong.AddRange(problems.Select(p => $"{file.FileName}: {Words(p)}"));
        }

        if (wrong.Count == 0 && await shelf.KeepAsync(null, card, sheet, context.Name(), cancel) is var kept)
        {
            if (kept is Parsed<string>.Ok(var id))
            {
                foreach ((string name, byte[] bytes, bool picture) in files)
                {
                    _ = picture ? await shelf.PhotographAsync(id, name, bytes, cancel) : await shelf.ProbeAsync(id, name, bytes, cancel);
                }

                return Results.Redirect($"/trials/{Uri.EscapeDataString(card)}/{id}");
            }

            wrong.AddRange(((Parsed<string>.Failed)kept).Problems.Select(Words));
        }

        return await ViewAsync(store, book, card, sheet, [.. wrong], cancel) is { } view ? Page(view, StatusCodes.Status422UnprocessableEntity) : Results.NotFound();
    }

    private static async Task<IResult> SheetAsync(string card, string id, KitchenStore store, CancellationToken cancel)
    {
        if (await store.TrialAsync(id, cancel) is not { } trial || trial.CardId != card || await store.OpenDocumentAsync(id, cancel) is not { } sheet)
        {
            return Results.NotFound();
        }

        TrialShelf shelf = new(store);
        ImmutableArray<SheetFile>.Builder files = ImmutableArray.CreateBuilder<SheetFile>();
        foreach (KeptFile f in await store.FilesAsync(id, cancel))
        {
            string detail = await shelf.ReadingsAsync(f.Id, cancel) is { } probe
                ? string.Create(English, $"{string.Join("; ", probe.Channels.Select(c => string.Create(English, $"{c.Name}: {c.Readings.Length} readings over {c.Readings[^1].Minute:0} min, warmest {c.Readings.Max(r => r.At.Celsius):0.#} °C")))}")
                : string.Create(English, $"{f.Bytes / 1024.0:0} kB");
            files.Add(new SheetFile($"/trials/{card}/{id}/{f.Id}", f.Name, f.Type.StartsWith("image/", StringComparison.Ordinal), detail));
        }

        string curves = string.Concat(TravelJson.Read<Trial>(trial.Json).Cores.Select(c => c.Watts is { } h ? string.Create(English, $" h {h:0} W/(m²·K){(c.WattsLeast is { } low ? string.Create(English, $", {low:0} or more") : "")}: {c.Step}") : $" No h: {c.Why}"));
        string said = string.Create(CultureInfo.InvariantCulture, $"Of version {trial.CardVersion} of the card; kept {sheet.Saved:yyyy-MM-dd HH:mm} UTC by {sheet.Who}.{curves}");
        return new RazorComponentResult<KeptSheetPage>(new { View = new KeptSheetView(sheet.Title, "/trials/" + card, sheet.Text, said, files.ToImmutable()) });
    }

    private static async Task<IResult> FileAsync(string card, string id, string file, HttpContext context, KitchenStore store, CancellationToken cancel)
    {
        if (await store.TrialAsync(id, cancel) is not { } trial || trial.CardId != card || (await store.FilesAsync(id, cancel)).All(f => f.Id != file) || await store.FileAsync(file, cancel) is not var (bytes, type))
        {
            return Results.NotFound();
        }

        // shown as a picture or saved as a file, never run as a page of ours
        context.Response.Headers.ContentSecurityPolicy = "default-src 'none'; sandbox";
        context.Response.Headers.ContentDisposition = type.StartsWith("image/", StringComparison.Ordinal) ? "inline" : "attachment";
        return Results.Bytes(bytes, type);
    }

    private static string Words(Problem p) => string.Create(CultureInfo.InvariantCulture, $"{(p.Line > 0 ? $"Line {p.Line}: " : "")}{p.Message} {p.Hint} ({p.Code})");
}
