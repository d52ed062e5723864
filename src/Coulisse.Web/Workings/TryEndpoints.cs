using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Formulas.Targets;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Desk;
using Coulisse.Web.House;
using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Workings;

/// <summary>A change tried on a kept card: nothing is written, so an address may be sent to somebody else.</summary>
internal static class TryEndpoints
{
    private const int Most = 20;
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en-GB");

    public static void MapTry(this WebApplication app) => app.MapGet("/cards/{id}/try", PageAsync);

    private static async Task<IResult> PageAsync(string id, KitchenStore store, KitchenBook book, CancellationToken cancel, string line = "", string with = "", string keep = "", string balance = "", string part = "", string targets = "", string move = "", bool anyWeight = false)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Card } d || CardDesk.Batch(d.Text, "", await book.MeasuresAsync(cancel), null, await book.FoodsAsync(cancel)) is not Parsed<Batch>.Ok(var batch))
        {
            return Results.NotFound();
        }

        TryForm form = new(line.Trim(), with.Trim(), keep, balance.Trim(), part, targets.Trim(), move.Trim(), anyWeight);
        TryView view = TryView.Unasked(id, batch.Weighed, form);
        string? component = part.Length > 0 ? part : null;
        string code = await book.CodeAsync(cancel);
        if (form.Line.Length > 0 && form.With.Length > 0)
        {
            view = ChangeFlow.Substitute(batch.Weighed, form.Line, form.With, component, keep.Length > 0 ? keep : null, form.Balance.Length > 0 ? form.Balance : null, code, await book.PricesAsync(cancel))
                .Match(done => view.With(done.Change, done.Moves, Culture), problems => view with { Faults = Words(problems) });
        }
        else if (form.Targets.Length > 0)
        {
            MayMove?[] moves = [.. Split(form.Move).Select(MayMove.Read)];
            view = moves.Any(m => m is null)
                ? view with { Faults = ["A line that may move is a food, or a food and its bounds in grams: water=0..400."] }
                : ChangeFlow.Reach(batch.Weighed, component, Split(form.Targets), [.. moves.OfType<MayMove>()], !anyWeight, code, await book.PricesAsync(cancel))
                    .Match(done => view.With(done.Answer, done.Moves, Culture), problems => view with { Faults = Words(problems) });
        }

        return new RazorComponentResult<TryPage>(new { View = view });
    }

    private static string[] Split(string text) => [.. text.Split([';', '\n'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Take(Most)];

    private static ImmutableArray<string> Words(ImmutableArray<Problem> problems) => [.. problems.Select(p => string.Create(CultureInfo.InvariantCulture, $"{(p.Line > 0 ? $"Line {p.Line}: " : "")}{p.Message} {p.Hint} ({p.Code})"))];
}
