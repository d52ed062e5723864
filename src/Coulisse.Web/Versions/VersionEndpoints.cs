using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Desk;
using Coulisse.Web.House;
using Coulisse.Web.Pages;
using Coulisse.Web.People;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.Versions;

/// <summary>Versions of cards, occasions and the kitchen: listed, compared, taken up again. Nothing is ever overwritten.</summary>
internal static class VersionEndpoints
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en-GB");

    public static void MapVersions(this WebApplication app)
    {
        app.MapGet("/cards/{id}/versions", (string id, KitchenStore store, CancellationToken cancel) => ListAsync(id, store, cancel));
        app.MapGet("/versions/{id}", ListAsync);
        app.MapGet("/compare/{id}", CompareAsync);
        app.MapPost("/versions/{id}", TakeUpAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
    }

    /// <summary>Where a document is edited.</summary>
    public static string BackTo(string kind, string id) => kind switch { DocumentKind.Card => "/cards/" + id, DocumentKind.Occasion => "/occasions/" + id, _ => "/kitchen" };

    private static string Says(DocumentVersion v) => string.Create(CultureInfo.InvariantCulture, $"version {v.Version}, {v.Saved:yyyy-MM-dd HH:mm} UTC{(v.Who.Length > 0 ? ", " + v.Who : "")}");

    private static async Task<IResult> ListAsync(string id, KitchenStore store, CancellationToken cancel)
        => await store.OpenDocumentAsync(id, cancel) is { } d
            ? new RazorComponentResult<VersionsPage>(new { View = new VersionsView(id, BackTo(d.Kind, id), d.Title, [.. (await store.VersionsAsync(id, cancel)).Select(v => new VersionRow(v.Version, Says(v)))]) })
            : Results.NotFound();

    private static async Task<IResult> CompareAsync(string id, KitchenStore store, KitchenBook book, CancellationToken cancel, int from = 0, int to = 0, bool both = false)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { } d)
        {
            return Results.NotFound();
        }

        int newer = to > 0 ? to : d.Version;
        int older = from > 0 ? from : Math.Max(1, newer - 1);
        if (await store.VersionAsync(id, older, cancel) is not { } a || await store.VersionAsync(id, newer, cancel) is not { } b)
        {
            return Results.NotFound();
        }

        FoodTable foods = await book.FoodsAsync(cancel);
        string measures = await book.MeasuresAsync(cancel);
        (ImmutableArray<ComparedWeight> weights, int equal) = d.Kind == DocumentKind.Card && CardDesk.Batch(a.Text, "", measures, null, foods) is Parsed<Batch>.Ok(var x) && CardDesk.Batch(b.Text, "", measures, null, foods) is Parsed<Batch>.Ok(var y)
            ? CompareView.WeightsOf(x.Weighed, y.Weighed, Culture)
            : ([], 0);
        return new RazorComponentResult<ComparePage>(new { View = new CompareView(id, BackTo(d.Kind, id), d.Title, Says(a), Says(b), older, newer, d.Version, both, weights, equal, TextDifference.Of(a.Text, b.Text)) });
    }

    /// <summary>An older text becomes the newest version; the one before stays in the list.</summary>
    private static async Task<IResult> TakeUpAsync(HttpContext context, string id, [FromForm] int version, [FromForm] int basedOn, KitchenStore store, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { } d || await store.VersionAsync(id, version, cancel) is not { } old)
        {
            return Results.NotFound();
        }

        string title = d.Kind == DocumentKind.Card ? DeskEndpoints.Title(old.Text) : d.Title;
        return await store.SaveAsync(d.Kind, id, basedOn, title, old.Text, context.Name(), old.Why, cancel) is SaveOutcome.Conflict(_, var keptAs, var theirs)
            ? Results.Redirect(string.Create(CultureInfo.InvariantCulture, $"/compare/{id}?from={theirs.Version}&to={keptAs}&both=true"))
            : Results.Redirect(BackTo(d.Kind, id));
    }
}
