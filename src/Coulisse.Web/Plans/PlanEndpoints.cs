using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Web.Plans;

/// <summary>From the one sentence to the kept plan, as pages and as what the drawing fetches.</summary>
internal static class PlanEndpoints
{
    public static void MapPlans(this WebApplication app)
    {
        app.MapGet("/occasions", OccasionsAsync);
        app.MapPost("/plan/{id}/edit", EditAsync).DisableAntiforgery();
        app.MapPost("/occasions", SentenceAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapPost("/occasions/example", ExampleAsync).DisableAntiforgery();
        app.MapPost("/occasions/{id}/plan", AgainAsync).DisableAntiforgery();
        app.MapGet("/planning/{id}", Planning);
        app.MapGet("/api/planning/{id}", (string id, PlanDesk desk) => desk.Find(id) is { } job ? Results.Ok(job.View) : Results.NotFound());
        app.MapPost("/planning/{id}/stop", Stop).DisableAntiforgery();
        app.MapGet("/plan/{id}", PageAsync);
        app.MapGet("/api/plan/{id}", ViewAsync);
    }

    /// <summary>The kept plan with what the checking room says to it; null when there is none.</summary>
    public static async Task<PlanView?> ReadAsync(KitchenStore store, OccasionShelf shelf, string id, string since, CancellationToken cancel)
    {
        if (await store.PlanAsync(id, cancel) is not { } kept)
        {
            return null;
        }

        Plan plan = TravelJson.Read<Plan>(kept.Json);
        CultureInfo culture = CultureInfo.GetCultureInfo("en-GB");
        Plan? before = since.Length > 0 && await store.PlanAsync(since, cancel) is { } old && old.OccasionId == kept.OccasionId ? TravelJson.Read<Plan>(old.Json) : null;
        ImmutableArray<string> moved = before is null ? [] : PlanChanges.Since(before, plan);
        // a plan whose occasion no longer reads is shown unchecked, and says so
        if (await shelf.OpenAsync(kept, cancel) is not Parsed<KeptOccasion>.Ok(var occasion))
        {
            return PlanView.From(plan, ["The occasion of this plan can no longer be read, so the plan is not checked."], culture) with { Moved = moved };
        }

        PlanView view = PlanView.From(plan, PlanValidator.Check(occasion.Occasion, plan).Select(f => f.Words + (f.Where.Length > 0 ? $" ({f.Where})" : "")), culture);
        LocalDateTime origin = LocalDateTimePattern.GeneralIso.Parse(view.Origin).Value;
        return (view with
        {
            Moved = before is not null && moved.IsEmpty ? ["Nothing else moved."] : moved,
            Loads = PlanView.LoadsOf([.. LoadProfile.Circuits(plan, occasion.Occasion.Kit, occasion.Occasion.Circuits), .. ShelfLoads.Of(plan, occasion.Occasion)], origin, culture),
            Occasion = kept.OccasionId,
        }).Explained(occasion.Occasion.Kit);
    }

    private static async Task<IResult> PageAsync(string id, KitchenStore store, OccasionShelf shelf, CancellationToken cancel, string since = "")
        => await ReadAsync(store, shelf, id, since, cancel) is { } view ? new RazorComponentResult<PlanPage>(new { Id = id, View = view }) : Results.NotFound();

    private static async Task<IResult> ViewAsync(string id, KitchenStore store, OccasionShelf shelf, CancellationToken cancel)
        => await ReadAsync(store, shelf, id, "", cancel) is { } view ? Results.Ok(view) : Results.NotFound();

    /// <summary>Pins a task to a start or a person, or lets it go, and plans again around it.</summary>
    private static async Task<IResult> EditAsync(string id, [FromForm] string? task, [FromForm] string? start, [FromForm] string? person, KitchenStore store, OccasionShelf shelf, PlanDesk desk, CancellationToken cancel)
    {
        if (await store.PlanAsync(id, cancel) is not { } kept || await shelf.OpenAsync(kept.OccasionId, null, cancel) is not { } opened)
        {
            return Results.NotFound();
        }

        if (opened is not Parsed<KeptOccasion>.Ok(var occasion))
        {
            return Go(opened, desk);
        }

        Plan plan = TravelJson.Read<Plan>(kept.Json);
        LocalDateTime? at = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm").Parse(start ?? "") is { Success: true } read ? read.Value : null;
        if (string.IsNullOrEmpty(task) || (at is null && !string.IsNullOrEmpty(start)))
        {
            return Refused(plan.Title, [$"“{start}” is no moment. Write the day and the time the task must start."]);
        }

        PlanEdits edits = plan.Edits with { Pins = [.. plan.Edits.Pins.Where(p => p.Task != task)] };
        if (at is not null || !string.IsNullOrEmpty(person))
        {
            edits = edits with { Pins = edits.Pins.Add(new Pin(task, at, string.IsNullOrEmpty(person) ? null : person)) };
        }

        return Results.Redirect("/planning/" + desk.Begin(occasion, edits, id).Id);
    }

    private static async Task<IResult> OccasionsAsync(KitchenStore store, CancellationToken cancel)
    {
        ImmutableArray<OccasionRow>.Builder rows = ImmutableArray.CreateBuilder<OccasionRow>();
        foreach (DocumentHead head in await store.DocumentsAsync(DocumentKind.Occasion, 100, cancel))
        {
            KeptPlan? plan = await store.NewestPlanAsync(head.Id, cancel);
            rows.Add(new OccasionRow(head.Id, head.Title, plan is null ? null : "/plan/" + plan.Id, string.Create(CultureInfo.InvariantCulture, $"version {head.Version}, {head.Changed:yyyy-MM-dd}{(plan is null ? ", no plan yet" : "")}")));
        }

        return new RazorComponentResult<OccasionsPage>(new { View = new OccasionsView(rows.ToImmutable()) });
    }

    private static async Task<IResult> SentenceAsync([FromForm] string? sentence, [FromForm] string? card, [FromForm] string? cardId, [FromForm] string? site, OccasionShelf shelf, PlanDesk desk, CancellationToken cancel)
    {
        if (string.IsNullOrWhiteSpace(card))
        {
            return Refused("The occasion", ["There is no card yet; write or paste one first."]);
        }

        if (string.IsNullOrWhiteSpace(sentence) || card.Length > CardText.MostCharacters)
        {
            return Refused("The occasion", ["Say in one sentence how many, when, how long and who: “53 plates, Saturday 14:00, 25 minutes, Ada and two others”."]);
        }

        return Go(await shelf.KeepSentenceAsync(sentence.Trim(), card.ReplaceLineEndings("\n"), cancel, cardId, site ?? ""), desk);
    }

    private static async Task<IResult> ExampleAsync(OccasionShelf shelf, PlanDesk desk, KitchenStore store, CancellationToken cancel)
    {
        Parsed<KeptOccasion> kept = await shelf.KeepExampleAsync(cancel);
        return kept is Parsed<KeptOccasion>.Ok(var occasion) && await store.NewestPlanAsync(occasion.Id, cancel) is { } plan ? Results.Redirect("/plan/" + plan.Id) : Go(kept, desk);
    }

    private static async Task<IResult> AgainAsync(string id, OccasionShelf shelf, PlanDesk desk, CancellationToken cancel)
        => await shelf.OpenAsync(id, null, cancel) is { } kept ? Go(kept, desk) : Results.NotFound();

    public static IResult Go(Parsed<KeptOccasion> kept, PlanDesk desk) => kept.Match(
        occasion => Results.Redirect("/planning/" + desk.Begin(occasion).Id),
        problems => Refused("The occasion", [.. problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})")]));

    public static RazorComponentResult<PlanningPage> Refused(string title, ImmutableArray<string> why)
        => new(new { Id = "", View = new PlanningView(title, "", 100, null, true, why, []) }) { StatusCode = StatusCodes.Status422UnprocessableEntity };

    private static IResult Planning(string id, PlanDesk desk) => desk.Find(id) switch
    {
        null => Results.NotFound(),
        { View.At: { } at } => Results.Redirect(at),
        var job => new RazorComponentResult<PlanningPage>(new { Id = id, job.View }),
    };

    private static IResult Stop(string id, PlanDesk desk)
    {
        if (desk.Find(id) is not { } job)
        {
            return Results.NotFound();
        }

        job.Stop();
        return Results.Redirect("/planning/" + id);
    }
}
