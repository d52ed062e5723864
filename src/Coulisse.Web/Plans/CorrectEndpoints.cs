using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Writing;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Web.People;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.Plans;

/// <summary>Minutes a person knows better than the plan: written into the step on the card as a new version of it, and planned with.</summary>
internal static class CorrectEndpoints
{
    private const double MostMinutes = 24 * 60;

    public static void MapCorrections(this WebApplication app) => app.MapPost("/plan/{id}/correct", CorrectAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere

    private static async Task<IResult> CorrectAsync(string id, [FromForm] string? task, [FromForm] string? minutes, HttpContext context, KitchenStore store, OccasionShelf shelf, PlanDesk desk, CancellationToken cancel)
    {
        if (await store.PlanAsync(id, cancel) is not { } kept || await shelf.OpenAsync(kept.OccasionId, null, cancel) is not { } opened)
        {
            return Results.NotFound();
        }

        if (opened is not Parsed<KeptOccasion>.Ok(var occasion))
        {
            return PlanEndpoints.Go(opened, desk);
        }

        Plan plan = TravelJson.Read<Plan>(kept.Json);
        if (!double.TryParse(minutes?.Replace(',', '.'), CultureInfo.InvariantCulture, out double took) || took is not (> 0 and <= MostMinutes))
        {
            return PlanEndpoints.Refused(plan.Title, [$"“{minutes}” is no number of minutes. Write how long the hands take, for example 12."]);
        }

        if (plan.Tasks.FirstOrDefault(t => t.Key == task) is not { Line: > 0 } corrected || occasion.Occasion.Dishes.FirstOrDefault(d => d.Name == corrected.Dish) is not { } dish
            || await shelf.CardOfAsync(kept.OccasionId, dish.CardPath, cancel) is not { } card)
        {
            return PlanEndpoints.Refused(plan.Title, ["That task stands on no kept card; nothing was changed."]);
        }

        // The plan is of this many; the card speaks of its own amount.
        double factor = Factor(occasion.Occasion, dish, corrected.Component);
        if (HandsOnCard.Write(card.Text, corrected.Line, took / factor) is not { } text)
        {
            return PlanEndpoints.Refused(plan.Title, [string.Create(CultureInfo.InvariantCulture, $"Line {corrected.Line} of {card.Title} is no longer that step; nothing was changed. Plan again, then correct it.")]);
        }

        SaveOutcome saved = await store.SaveAsync(DocumentKind.Card, card.Id, card.Version, card.Title, text, context.Name(), "minutes corrected in the plan", cancel);
        return saved is not SaveOutcome.Saved ? PlanEndpoints.Refused(plan.Title, [$"Somebody else has changed {card.Title} meanwhile; nothing was changed. Plan again, then correct it."])
            : await shelf.OpenAsync(kept.OccasionId, null, cancel) is Parsed<KeptOccasion>.Ok(var again) ? Results.Redirect("/planning/" + desk.Begin(again, plan.Edits, id).Id)
            : Results.NotFound();
    }

    private static double Factor(Occasion occasion, OccasionDish dish, string? component)
        => OccasionBatches.Make(occasion) is Parsed<ImmutableArray<Batch>>.Ok(var batches) && batches[occasion.Dishes.IndexOf(dish)].Components.FirstOrDefault(c => c.Weighed.Component.Name is "" || c.Weighed.Component.Name == component) is { Factor: > 0 } part ? Math.Max(part.Factor, 0.2) : 1;
}
