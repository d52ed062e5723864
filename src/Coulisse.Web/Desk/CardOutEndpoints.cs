using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Flows;
using Coulisse.Formats.Out;
using Coulisse.Kitchen.Formulas;
using Coulisse.Papers;
using Coulisse.Papers.Html;
using Coulisse.Papers.Pages;
using Coulisse.Matter.Foods;
using Coulisse.Store;
using Coulisse.Views.Papers;
using Coulisse.Web.House;
using Coulisse.Web.Sheets;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace Coulisse.Web.Desk;

/// <summary>A card on paper and as a file: as it was written, as weights, as data other programs read.</summary>
internal static class CardOutEndpoints
{
    public static void MapCardsOut(this WebApplication app)
    {
        app.MapGet("/cards/{id}/print", PrintAsync);
        app.MapGet("/cards/{id}/save/{form}", SaveAsync);
    }

    private static async Task<IResult> PrintAsync(HttpContext context, string id, KitchenStore store, KitchenBook book, TimeProvider clock, CancellationToken cancel, [FromQuery(Name = "for")] string scaledFor = "", string measures = "", string code = "", string size = "a4")
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Card } card)
        {
            return Results.NotFound();
        }

        string rules = code.Length > 0 ? code : await book.CodeAsync(cancel);
        ScaleTo? to = scaledFor.Trim().Length > 0 ? ScaleSentence.Read(scaledFor) : null;
        if (scaledFor.Trim().Length > 0 && to is null)
        {
            return Results.Problem($"“{scaledFor}” is no amount to scale to. {ScaleSentence.Hint}", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        FoodTable foods = await book.FoodsAsync(cancel);
        return CardReader.Read(new CardText(card.Text)).Match(dish => AssessFlow.Assess(dish with { Foods = foods }, to, measures.Length > 0 ? measures : null, rules), p => new Parsed<AssessedDish>.Failed(p)).Match(
            assessed =>
            {
                PaperBundle bundle = PrintFlow.Bundle(assessed, LocalDateTime.FromDateTime(clock.GetLocalNow().DateTime));
                return PrintPages.Serve(context, HtmlPaper.Write(PaperPrinter.Papers(bundle, new PaperChoice { Kinds = [CardPaper.Kind] }), size == "letter" ? PageFormat.Letter : PageFormat.A4), "/cards/" + id, "Back to the card");
            },
            Refused);
    }

    private static async Task<IResult> SaveAsync(string id, string form, KitchenStore store, KitchenBook book, CancellationToken cancel, [FromQuery(Name = "for")] string scaledFor = "", string measures = "")
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Card } card)
        {
            return Results.NotFound();
        }

        string plain = string.Join('-', card.Title.ToLowerInvariant().Split([.. card.Title.Where(c => !char.IsLetterOrDigit(c)).Distinct()], StringSplitOptions.RemoveEmptyEntries));
        string name = plain.Length == 0 ? "card" : plain.Length > 60 ? plain[..60] : plain;
        return form switch
        {
            "text" => Results.File(Encoding.UTF8.GetBytes(card.Text), "text/markdown; charset=utf-8", name + ".md"),
            "data" => CardReader.Read(new CardText(card.Text)).Match(dish => Results.File(Encoding.UTF8.GetBytes(RecipeData.Write(dish)), "application/ld+json", name + ".json"), Refused),
            "weights" => CardDesk.Batch(card.Text, scaledFor, measures, null, await book.FoodsAsync(cancel)).Match(batch => Results.File(CsvFile.Write(Weights(batch)), "text/csv; charset=utf-8", name + ".csv"), Refused),
            _ => Results.NotFound(),
        };
    }

    // a weight nobody knows is an empty cell, never a 0
    private static Grid Weights(Batch batch) => new("Weights", ["part", "ingredient", "grams", "scaled_grams", "least", "most", "how"],
        [.. batch.Components.SelectMany(c => c.Lines.Select(l => Grid.Row(c.Weighed.Component.Name, l.Weighed.Food.Food, Known(l, l.Weighed.Grams), Known(l, l.Rounded), Known(l, l.Weighed.Low), Known(l, l.Weighed.High), l.Weighed.Grade.ToString().ToLowerInvariant())))]);

    private static double? Known(BatchLine line, double grams) => line.Weighed.Grade == WeightGrade.Unknown ? null : Math.Round(grams, 3);

    private static IResult Refused(ImmutableArray<Problem> problems)
        => Results.Problem(string.Join(" ", problems.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Message} {p.Hint} ({p.Code})"))), statusCode: StatusCodes.Status422UnprocessableEntity);
}
