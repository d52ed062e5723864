using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.House;
using Coulisse.Web.Pages;
using Coulisse.Web.People;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.Desk;

/// <summary>The card desk and the card file.</summary>
internal static class DeskEndpoints
{
    /// <summary>The card one may start from: a draft with what a first draft has (spoons, a doubtful line, a bath too short).</summary>
    private static string? Example { get; } = Hosting.EmbeddedFiles.DemoFiles().FirstOrDefault(f => f.StartsWith("cards/", StringComparison.Ordinal) && f.Contains("draft", StringComparison.Ordinal)) is { } file ? Hosting.EmbeddedFiles.Demo(file)!.ReplaceLineEndings("\n") : null;

    public static void MapDesk(this WebApplication app)
    {
        app.MapGet("/", async (KitchenBook book, CancellationToken cancel, string example = "") => await PageAsync(example == "yes" ? DeskView.Empty with { Text = Example ?? "" } : DeskView.Empty, book, cancel));
        app.MapGet("/cards", FileAsync);
        app.MapGet("/cards/{id}", OpenAsync);
        app.MapGet("/cards/{id}/weigh", WeighAsync);
        app.MapPost("/cards", KeepAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapPost("/api/answer", Answer);
        app.MapPost("/api/margins", MarginsAsync);
        app.MapPost("/api/cards/{id}/show", ShowAsync);
    }

    private static async Task<RazorComponentResult<DeskPage>> PageAsync(DeskView view, KitchenBook book, CancellationToken cancel)
        => new(new { View = view with { Code = await book.CodeAsync(cancel), Measured = await book.MeasuresAsync(cancel), Sites = await book.SitesAsync(cancel) } });

    private static async Task<IResult> OpenAsync(string id, KitchenStore store, KitchenBook book, CancellationToken cancel)
        => await store.OpenDocumentAsync(id, cancel) is { Kind: DocumentKind.Card } d
            ? await PageAsync(new DeskView(d.Id, d.Version, d.Title, d.Text, "", string.Create(CultureInfo.InvariantCulture, $"Kept {d.Saved:yyyy-MM-dd HH:mm} UTC.")) { Trials = await Records.TrialEndpoints.RowsAsync(store, d.Id, cancel) }, book, cancel)
            : Results.NotFound();

    private static async Task<IResult> WeighAsync(string id, KitchenStore store, KitchenBook book, CancellationToken cancel, [FromQuery(Name = "for")] string scaledFor = "", string measures = "")
        => await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Card } d
            ? Results.NotFound()
            : CardDesk.WeighOut(d.Id, d.Version, d.Text, scaledFor, measures, (await book.HouseAsync("", null, cancel)).House?.Kit, await book.FoodsAsync(cancel)).Match<IResult>(
                view => new RazorComponentResult<WeighPage>(new { View = view }),
                problems => Results.Problem(string.Join(" ", problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})")), statusCode: StatusCodes.Status422UnprocessableEntity));

    private static async Task<IResult> FileAsync(KitchenStore store, KitchenBook book, CancellationToken cancel, string q = "")
    {
        List<DocumentHead> found = await store.SearchAsync(DocumentKind.Card, q, 100, cancel);
        string says = found.Count switch
        {
            0 when q.Length > 0 => $"No card holds “{q}”.",
            0 => "The card file is empty. Write a card and keep it.",
            1 => "One card.",
            _ => string.Create(CultureInfo.InvariantCulture, $"{found.Count} cards, last changed first."),
        };
        return new RazorComponentResult<CardFilePage>(new
        {
            View = new CardFileView(q, says, [.. found.Select(h => new CardFileRow("/cards/" + h.Id, h.Title, string.Create(CultureInfo.InvariantCulture, $"version {h.Version}, {h.Changed:yyyy-MM-dd}")))]) { Elsewhere = await Elsewhere.FindAsync(store, await book.FoodsAsync(cancel), q, cancel) },
        });
    }

    private static async Task<IResult> KeepAsync([FromForm] string? id, [FromForm] int? basedOn, [FromForm] string? text, HttpContext context, KitchenStore store, CancellationToken cancel)
    {
        string card = (text ?? "").ReplaceLineEndings("\n");
        if (card.Length > CardText.MostCharacters || card.Trim().Length == 0)
        {
            return Results.Problem(card.Trim().Length == 0 ? "The card is empty; nothing was kept." : "A card is 5 MB at most; nothing was kept.", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        SaveOutcome saved = await store.SaveAsync(DocumentKind.Card, string.IsNullOrEmpty(id) ? null : id, basedOn ?? 0, Title(card), card, context.Name(), "", cancel);
        return saved switch
        {
            SaveOutcome.Saved(var key, _) => Results.Redirect("/cards/" + key),
            SaveOutcome.Conflict(var key, var keptAs, var theirs) => Results.Redirect(string.Create(CultureInfo.InvariantCulture, $"/compare/{key}?from={theirs.Version}&to={keptAs}&both=true")),
            _ => Results.StatusCode(StatusCodes.Status500InternalServerError),
        };
    }

    /// <summary>First line with words, without heading marks.</summary>
    internal static string Title(string card)
    {
        string line = card.Split('\n').Select(l => l.TrimStart('#', ' ', '\t').Trim()).FirstOrDefault(l => l.Length > 0) ?? "Untitled";
        return line.Length > 120 ? line[..119] + "…" : line;
    }

    private static IResult Answer(AnswerAsked asked)
        => Answering.Write(asked.Text, asked.Line, asked.Plain, asked.Asked) is { } text
            ? Results.Ok(new { text })
            : Results.Problem(string.Create(CultureInfo.InvariantCulture, $"What was asked about is no longer in line {asked.Line}; nothing was changed."), statusCode: StatusCodes.Status422UnprocessableEntity);

    // The text on the page may be ahead of what is kept: what was tried counts as long as it is still the same to make.
    private static async Task<ImmutableArray<LearntCard>> LearntAsync(MarginsAsked asked, KitchenStore store, CancellationToken cancel)
        => asked.Card is { Length: > 0 } card && (await store.TrialsAsync(card, cancel)).Count >= Measured.LeastRuns && CardReader.Read(new CardText((asked.Text ?? "").ReplaceLineEndings("\n"))) is Parsed<Dish>.Ok(var dish)
            && (await new TrialShelf(store).LearntAsync(dish, card, 0, cancel)).Card is { } learnt ? [learnt] : [];

    private static async Task<IResult> MarginsAsync(MarginsAsked asked, ShowMarks marks, KitchenBook book, KitchenStore store, CancellationToken cancel)
    {
        Parsed<(Dish Dish, MarginsView View)> read = CardDesk.Margins(asked.Text ?? "", asked.For ?? "", asked.Measures ?? "", asked.Code ?? "", await book.FoodsAsync(cancel), asked.Left, await LearntAsync(asked, store, cancel));
        if (read is not Parsed<(Dish Dish, MarginsView View)>.Ok(var (dish, view)))
        {
            return Results.Problem(string.Join(" ", ((Parsed<(Dish Dish, MarginsView View)>.Failed)read).Problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})")), statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        if (asked.Card is not { Length: > 0 })
        {
            return Results.Ok(view with { Steps = [] }); // a card that is not kept has nothing a mark could hang on
        }

        (ImmutableArray<ShownStep> shown, ImmutableArray<string> loose) = await marks.OfAsync(asked.Card, dish, cancel);
        return Results.Ok(view with { Shown = shown, Loose = loose });
    }

    private static async Task<IResult> ShowAsync(string id, ShowAsked asked, KitchenStore store, ShowMarks marks, CancellationToken cancel)
        => await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Card } ? Results.NotFound()
            : await marks.SetAsync(id, asked.Text ?? "", asked.Line, asked.How ?? "", cancel) ? Results.NoContent()
            : Results.Problem(string.Create(CultureInfo.InvariantCulture, $"No step begins on line {asked.Line} any more; nothing was marked."), statusCode: StatusCodes.Status422UnprocessableEntity);

    internal sealed record ShowAsked(string? Text, int Line, string? How);

    internal sealed record MarginsAsked(string? Text, string? For, string? Measures, string? Code, string? Card, string[]? Left = null);

    internal sealed record AnswerAsked(string Text, int Line, string Plain, string? Asked = null);
}
