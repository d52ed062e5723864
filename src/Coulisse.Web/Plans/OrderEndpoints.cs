using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Out;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Papers;
using Coulisse.Store;
using Coulisse.Views.Papers;
using Coulisse.Views.Web;
using Coulisse.Web.House;
using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Web.Plans;

/// <summary>What to buy for an occasion, by supplier and day: as a page, as PDF, workbook and CSV, with the list to receive it by.</summary>
internal static class OrderEndpoints
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en-GB");

    /// <summary>An order with what it was made from.</summary>
    private sealed record Made(Occasion Occasion, NeedsList Needs, PriceList Prices, Order Order, OrderTerms Terms, string Code);

    public static void MapOrders(this WebApplication app)
    {
        app.MapGet("/orders/{id}", PageAsync);
        app.MapGet("/orders/{id}/{file}", FileAsync);
    }

    private static async Task<IResult> PageAsync(string id, KitchenStore store, OccasionShelf shelf, KitchenBook book, CancellationToken cancel, string ordered = "", string needed = "", string over = "1", string besides = "")
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Occasion } head)
        {
            return Results.NotFound();
        }

        (Made? made, ImmutableArray<string> asks) = await MakeAsync(id, shelf, book, ordered, needed, over, besides, cancel);
        OrderView bare = new(id, made?.Occasion.Title ?? head.Title, "", asks, [], [], [], made?.Needs.NotCounted ?? [], ordered, needed, over, besides);
        return new RazorComponentResult<OrderPage>(new { View = made is null ? bare with { Says = "There is no order yet." } : bare.With(made.Order, made.Occasion.Sheet.OrderArrives?.Date, made.Code, Culture) });
    }

    private static async Task<IResult> FileAsync(string id, string file, OccasionShelf shelf, KitchenBook book, TimeProvider clock, CancellationToken cancel, string ordered = "", string needed = "", string over = "1", string besides = "")
    {
        if ((await MakeAsync(id, shelf, book, ordered, needed, over, besides, cancel)).Made is not { } made)
        {
            return Results.NotFound();
        }

        switch (file)
        {
            case "order.csv":
                return Results.File(CsvFile.Write(KitchenGrids.Of(made.Order)[0]), "text/csv", "order.csv");
            case "order.xlsx":
                return Results.File(await XlsxFile.WriteAsync(KitchenGrids.Of(made.Order), cancel), "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "order.xlsx");
            case "order.pdf" or "receiving.pdf":
                PaperBundle bundle = PrintFlow.OrderBundle(made.Occasion, made.Needs, made.Prices, made.Order, made.Code, LocalDateTime.FromDateTime(clock.GetLocalNow().DateTime));
                return PaperPrinter.Print(bundle, new PaperChoice { Kinds = [file == "order.pdf" ? OrderPaper.Kind : ReceivingPaper.Kind] }) is [var printed, ..] ? Results.Bytes(printed.Pdf.Bytes, "application/pdf") : Results.NotFound();
            default:
                return Results.NotFound();
        }
    }

    private static async Task<(Made? Made, ImmutableArray<string> Asks)> MakeAsync(string id, OccasionShelf shelf, KitchenBook book, string ordered, string needed, string over, string besides, CancellationToken cancel)
    {
        if (await shelf.OpenAsync(id, null, cancel) is not Parsed<KeptOccasion>.Ok(var kept))
        {
            return (null, ["The sheet cannot be read yet; its page says why."]);
        }

        if (await book.PricesAsync(cancel, kept.Occasion.Sheet.Currency) is not { } prices)
        {
            return (null, ["No price list is kept that can be read: keep one in the kitchen, under Prices and specifications."]);
        }

        List<string> asks = [];
        (LocalDate? from, LocalDate? by) = (Day(ordered), Day(needed));
        if (((ordered.Length > 0 && from is null) || (needed.Length > 0 && by is null) || from is null != by is null || by < from) && ordered.Length + needed.Length > 0)
        {
            asks.Add("Both days are needed, the second not before the first; without them lead times and delivery days are not looked at.");
            (from, by) = (null, null);
        }

        bool read = decimal.TryParse(over.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal share) && share <= 100;
        if (!read)
        {
            asks.Add("At least over is a percentage from 0 to 100; 1 is taken.");
        }

        ImmutableArray<Need>? spares = AddedNeeds.Read(besides.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        if (spares is null)
        {
            asks.Add($"“{besides}”: write what is needed besides as food=amount, such as swede=1 piece; beetroot=500 g. Nothing of it was added.");
        }

        OrderTerms terms = (await book.TermsAsync(kept.Basis.Site, cancel)) with { OrderedOn = from, NeededBy = by, LeastMargin = read ? share / 100 : 0.01m };
        string code = await book.CodeAsync(cancel);
        return OccasionNeeds.Of(kept.Occasion, spares, twins: true).Match<(Made?, ImmutableArray<string>)>(
            needs =>
            {
                Order order = Order.For(needs.Needs, prices, terms);
                asks.AddRange(needs.Problems.Concat(order.Problems).Select(p => $"{p.Message} {p.Hint} ({p.Code})").Distinct());
                return (new Made(kept.Occasion, needs, prices, order, terms, code), [.. asks]);
            },
            problems => (null, [.. problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})")]));
    }

    private static LocalDate? Day(string text) => LocalDatePattern.Iso.Parse(text) is { Success: true } d ? d.Value : null;
}
