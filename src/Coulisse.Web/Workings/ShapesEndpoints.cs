using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Flows.Fits;
using Coulisse.Matter.Shapes;
using Coulisse.Views.Web;
using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Workings;

/// <summary>What fits: one page a kind of fit, and its drawing to scale.</summary>
internal static class ShapesEndpoints
{
    public static void MapShapes(this WebApplication app)
    {
        app.MapGet("/shapes", (HttpContext context) => Page(context, FitFlow.Kinds[0].Name));
        app.MapGet("/shapes/{kind}", Page);
        app.MapGet("/shapes/{kind}/drawing.svg", (HttpContext context, string kind) => FitFlow.Find(kind) is { } fit
            && FitFlow.Of(fit, Given(context, fit)) is Parsed<FitAnswer>.Ok(var answer) ? Results.Text(SvgDrawing.Write(answer.Drawing), "image/svg+xml; charset=utf-8") : Results.NotFound());
    }

    private static IResult Page(HttpContext context, string kind)
    {
        if (FitFlow.Find(kind) is not { } fit)
        {
            return Results.NotFound();
        }

        ImmutableDictionary<string, string> given = Given(context, fit);
        FitView bare = new([.. FitFlow.Kinds.Select(k => (k.Name, k.Title))], fit.Name, fit.Title, fit.What,
            [.. fit.Fields.Select(f => Field(f, given.GetValueOrDefault(f.Name, f.Default)))], [], [], "", "", []);
        FitView view = FitFlow.Of(fit, given).Match(
            answer => bare with
            {
                Says = [.. answer.Says.Where(s => s.Length > 0)], Svg = SvgDrawing.Write(answer.Drawing), Drawn = answer.Drawing.Title,
                Even = [.. answer.Even.Select(e => new FitEvenView(e.Of, e.Smaller, e.Asked, e.Larger))],
            },
            problems => bare with { Faults = [.. problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})")] });
        return new RazorComponentResult<ShapesPage>(new { View = view, Tail = context.Request.QueryString.Value ?? "" });
    }

    private static FitFieldView Field(FitField field, string value) => new(field.Name, field.Label, field.Input == FitInput.Flag && value == "no" ? "" : value, field.Input == FitInput.Flag, field.Words);

    // Without a question the example stands there; a field that was emptied stays empty.
    private static ImmutableDictionary<string, string> Given(HttpContext context, FitKind fit) => context.Request.Query.Count == 0
        ? fit.ExampleValues
        : fit.Fields.Where(f => context.Request.Query.ContainsKey(f.Name)).ToImmutableDictionary(f => f.Name, f => context.Request.Query[f.Name].ToString());
}
