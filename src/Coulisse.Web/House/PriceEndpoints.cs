using System.Globalization;
using Coulisse.Cards;
using Coulisse.Formats.In;
using Coulisse.Kitchen.Needs;
using Coulisse.Web.Hosting;
using Coulisse.Web.Pages;
using Coulisse.Web.People;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.House;

/// <summary>The price list: kept as text or file, its heads explained once, its changes followed to every dish.</summary>
internal static class PriceEndpoints
{
    private const long MostBytes = 8 * 1024 * 1024;

    public static void MapPrices(this WebApplication app)
    {
        app.MapGet("/prices", PageAsync);
        app.MapPost("/kitchen/prices", PricesAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapPost("/kitchen/prices/file", FileAsync).DisableAntiforgery();
        app.MapPost("/kitchen/prices/heads", HeadsAsync).DisableAntiforgery();
        app.MapPost("/kitchen/prices/example", ExampleAsync).DisableAntiforgery();
    }

    private static async Task<IResult> PageAsync(PriceShelf shelf, CancellationToken cancel, int since = 0, string item = "", string to = "")
        => new RazorComponentResult<PricesPage>(new { View = await shelf.ViewAsync(since, item.Trim(), to, cancel) });

    private static async Task<IResult> PricesAsync(HttpContext context, [FromForm] string? text, [FromForm] int? basedOn, KitchenBook book, CancellationToken cancel)
    {
        if ((text ?? "").Length > CardText.MostCharacters)
        {
            return Results.Problem("A price list is 5 MB at most; nothing was kept.", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        await book.KeepPricesAsync(text ?? "", basedOn ?? 0, context.Name(), cancel);
        return Results.Redirect("/kitchen#prices");
    }

    /// <summary>A workbook or CSV file takes the place of the list; the one before stays as a version.</summary>
    private static async Task<IResult> FileAsync(HttpContext context, KitchenBook book, CancellationToken cancel)
    {
        IFormCollection form = await context.Request.ReadFormAsync(cancel);
        if (form.Files.GetFile("file") is not { Length: > 0 and <= MostBytes } file)
        {
            return Results.Problem("Choose a file of 8 MB at most; nothing was kept.", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        using MemoryStream all = new();
        await file.CopyToAsync(all, cancel);
        if (TableFile.Text(all.ToArray()) is not Parsed<string>.Ok(var text) || text.Length > CardText.MostCharacters)
        {
            return Results.Problem("This is no table that can be read, or it is longer than 5 MB of text. Save it as XLSX or CSV; nothing was kept.", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        int basedOn = int.TryParse(form["basedOn"], NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 0;
        await book.KeepPricesAsync(text, basedOn, context.Name(), cancel);
        return Results.Redirect("/kitchen#prices");
    }

    private static async Task<IResult> HeadsAsync(HttpContext context, KitchenBook book, CancellationToken cancel)
    {
        IFormCollection form = await context.Request.ReadFormAsync(cancel);
        PriceHeads heads = await book.HeadsAsync(cancel);
        for (int i = 0; form.TryGetValue(string.Create(CultureInfo.InvariantCulture, $"head.{i}"), out var head); i++)
        {
            string meaning = form[string.Create(CultureInfo.InvariantCulture, $"is.{i}")].ToString();
            heads = PriceHeads.Meanings.Any(m => m.Key == meaning) && PriceHeads.Fold(head.ToString()).Length > 0 ? heads.With(head.ToString(), meaning) : heads;
        }

        await book.ExplainAsync(heads, cancel);
        return Results.Redirect("/kitchen#prices");
    }

    private static async Task<IResult> ExampleAsync(HttpContext context, [FromForm] int? basedOn, KitchenBook book, CancellationToken cancel)
    {
        await book.KeepPricesAsync(EmbeddedFiles.Demo("prices.csv") ?? "", basedOn ?? 0, context.Name(), cancel);
        return Results.Redirect("/kitchen#prices");
    }
}
