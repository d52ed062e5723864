using System.Globalization;
using Coulisse.Cards;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Pages;
using Coulisse.Web.People;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.House;

/// <summary>The kitchen's own page and the foods it can look up.</summary>
internal static class KitchenEndpoints
{
    public static void MapKitchen(this WebApplication app)
    {
        app.MapGet("/kitchen", PageAsync);
        app.MapPost("/kitchen", KeepAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapPost("/kitchen/own-foods", OwnFoodsAsync).DisableAntiforgery();
        app.MapPost("/kitchen/settings", SettingsAsync).DisableAntiforgery();
        app.MapGet("/kitchen/foods", FoodsAsync);
    }

    private static async Task<IResult> PageAsync(KitchenBook book, CancellationToken cancel, int both = 0)
    {
        KitchenView view = await book.ViewAsync(cancel);
        return new RazorComponentResult<KitchenPage>(new { View = both > 0 ? view with { Faults = [.. view.Faults, $"Somebody else kept the kitchen since you opened it. Yours is kept as the newest version, theirs as version {both.ToString(CultureInfo.InvariantCulture)}."], Says = view.Says } : view, Theirs = both, Book = book.Key });
    }

    private static async Task<IResult> KeepAsync(HttpContext context, KitchenBook book, CancellationToken cancel)
    {
        IFormCollection form = await context.Request.ReadFormAsync(cancel);
        Dictionary<string, List<string[]>> rows = new(StringComparer.Ordinal);
        foreach (BookTable table in BookText.Tables)
        {
            List<string[]> kept = rows[table.Key] = [];
            for (int row = 0; form.ContainsKey(string.Create(CultureInfo.InvariantCulture, $"{table.Key}.{row}.0")); row++)
            {
                string[] cells = [.. table.Columns.Select((_, c) => form[string.Create(CultureInfo.InvariantCulture, $"{table.Key}.{row}.{c}")].ToString().Trim())];
                if (cells.Any(c => c.Length > 0))
                {
                    kept.Add(cells);
                }
            }
        }

        int basedOn = int.TryParse(form["basedOn"], NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 0;
        return await book.KeepAsync(rows, basedOn, context.Name(), cancel) is SaveOutcome.Conflict(_, _, var theirs) ? Results.Redirect(string.Create(CultureInfo.InvariantCulture, $"/kitchen?both={theirs.Version}")) : Results.Redirect("/kitchen");
    }

    private static async Task<IResult> OwnFoodsAsync(HttpContext context, [FromForm] string? text, [FromForm] int? basedOn, KitchenBook book, CancellationToken cancel)
    {
        if ((text ?? "").Length > CardText.MostCharacters)
        {
            return Results.Problem("A table of own foods is 5 MB at most; nothing was kept.", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        await book.KeepFoodsAsync(text ?? "", basedOn ?? 0, context.Name(), cancel);
        return Results.Redirect("/kitchen#own-foods");
    }

    private static async Task<IResult> SettingsAsync([FromForm] string? code, [FromForm] string? measures, KitchenBook book, CancellationToken cancel)
    {
        await book.SetAsync(code ?? "", measures ?? "", cancel);
        return Results.Redirect("/kitchen");
    }

    private static async Task<RazorComponentResult<FoodsPage>> FoodsAsync(KitchenBook book, CancellationToken cancel, string q = "")
        => new(new { View = FoodsView.Find(await book.FoodsAsync(cancel), q.Length > 200 ? q[..200] : q, CultureInfo.GetCultureInfo("en-GB")) });
}
