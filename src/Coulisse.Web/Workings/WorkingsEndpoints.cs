using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Trials;
using Coulisse.Matter.Foods;
using Coulisse.Store;
using Coulisse.Views.Charts;
using Coulisse.Views.Web;
using Coulisse.Web.Desk;
using Coulisse.Web.House;
using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.Workings;

/// <summary>Where figures come from, and the heat bench.</summary>
internal static class WorkingsEndpoints
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en-GB");

    public static void MapWorkings(this WebApplication app)
    {
        app.MapGet("/cards/{id}/workings", PageAsync);
        app.MapGet("/cards/{id}/workings/{chart}.svg", DrawingAsync);
        app.MapGet("/workings/heat", HeatAsync);
        app.MapGet("/workings/heat/{chart}.svg", HeatDrawingAsync);
    }

    private const double Highest = 5000;

    private static async Task<WorkingsView?> ViewAsync(string id, string scaledFor, string measures, KitchenStore store, KitchenBook book, CancellationToken cancel, double metres = 0)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Card } d || CardDesk.Batch(d.Text, scaledFor, measures, null, await book.FoodsAsync(cancel)) is not Parsed<Batch>.Ok(var batch))
        {
            return null;
        }

        // What a part loses in the oven is the card's own figure, else what trials weighed, else what its kind loses.
        UnstatedLoss loss = TrialLosses.Of(batch.Weighed.Dish, [.. (await new TrialShelf(store).OfAsync(id, cancel)).Select(t => t.Trial)]);
        double height = Math.Clamp(metres, 0, Highest);
        return WorkingsView.From(id, batch, await book.PricesAsync(cancel), Culture) with
        {
            Mixtures = MixtureView.Of(batch.Weighed, loss, height, Culture), Label = LabelView.Of(batch.Weighed, AllergenNames.RegimeOf(await book.CodeAsync(cancel)), loss), Metres = height,
        };
    }

    private static async Task<IResult> PageAsync(HttpContext context, string id, KitchenStore store, KitchenBook book, CancellationToken cancel, [FromQuery(Name = "for")] string scaledFor = "", string measures = "", string metres = "")
        => await ViewAsync(id, scaledFor, measures, store, book, cancel, Number(metres) ?? 0) is { } view ? new RazorComponentResult<WorkingsPage>(new { View = view, Tail = context.Request.QueryString.Value ?? "", Kept = new[] { (Name: "for", Value: scaledFor), (Name: "measures", Value: measures) }.Where(k => k.Value.Length > 0).ToImmutableArray() }) : Results.NotFound();

    private static async Task<IResult> DrawingAsync(string id, string chart, KitchenStore store, KitchenBook book, CancellationToken cancel, [FromQuery(Name = "for")] string scaledFor = "", string measures = "")
        => Drawing((await ViewAsync(id, scaledFor, measures, store, book, cancel))?.Charts ?? [], chart);

    private static IResult Drawing(IEnumerable<ChartView> charts, string key)
        => charts.FirstOrDefault(c => c.Key == key) is { } found ? Results.Text(found.Svg, "image/svg+xml; charset=utf-8") : Results.NotFound();

    private static async Task<RazorComponentResult<HeatPage>> HeatAsync(HttpContext context, KitchenBook book, CancellationToken cancel)
        => new(new { View = Answer(context, await book.FoodsAsync(cancel)), Tail = context.Request.QueryString.Value ?? "" });

    private static async Task<IResult> HeatDrawingAsync(HttpContext context, string chart, KitchenBook book, CancellationToken cancel) => Drawing(Answer(context, await book.FoodsAsync(cancel)).Charts, chart);

    private static HeatView Answer(HttpContext context, FoodTable foods)
    {
        IQueryCollection q = context.Request.Query;
        string Field(string name, string otherwise) => q.Count == 0 ? otherwise : q[name].ToString().Trim();
        HeatForm example = HeatForm.Example;
        HeatForm form = new(Field("shape", example.Shape), Field("size", example.Size), Field("start", example.Start), Field("medium", example.Medium), Field("until", example.Until), Field("minutes", example.Minutes),
            Field("face", example.Face), Field("food", example.Food), Field("organism", example.Organism), DeskView.Codes.Any(c => c.Key == Field("code", "")) ? Field("code", "") : example.Code) { Logs = Field("logs", example.Logs) };
        double[] sizes = [.. form.Size.Split(['×', 'x', 'X', '*', ' '], StringSplitOptions.RemoveEmptyEntries).Select(s => Number(s) ?? double.NaN)];
        List<string> faults = [];
        if (sizes.Length is 0 or > 3 || sizes.Any(s => double.IsNaN(s) || s <= 0))
        {
            faults.Add($"“{form.Size}” is no size. Write millimetres, for a brick 30 × 60 × 90.");
        }

        foreach ((string name, string value) in new[] { ("start", form.Start), ("medium", form.Medium) }.Where(f => Number(f.Item2) is null))
        {
            faults.Add($"“{value}” is no temperature for the {name}. Write degrees Celsius.");
        }

        if (form.Logs.Length > 0 && Number(form.Logs) is not (> 0 and <= 20))
        {
            faults.Add($"“{form.Logs}” is no log reduction. Write a number above 0, up to 20, or leave it empty.");
        }

        if (faults.Count > 0)
        {
            return new HeatView(form, [], [], [.. faults]);
        }

        double? until = Number(form.Until);
        double? minutes = Number(form.Minutes) ?? (until is null ? 60 : null);
        bool cools = Number(form.Medium) < Number(form.Start);
        return HeatFlow.Of(new HeatAsked(form.Shape, [.. sizes], Number(form.Start)!.Value, Number(form.Medium)!.Value, Number(form.Face), form.Food, until, cools ? Math.Max(minutes ?? 0, 24 * 60) : minutes), foods).Match(
            answer => HeatView.From(form, answer.Run, until, answer.Assumed, Culture),
            problems => new HeatView(form, [], [], [.. problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})")]));
    }

    private static double? Number(string text) => double.TryParse(text.Replace(',', '.').Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out double n) && double.IsFinite(n) ? n : null;
}
