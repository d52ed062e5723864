using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning.Watch;
using Coulisse.Store;
using Coulisse.Views.Papers;
using Coulisse.Views.Web;
using Coulisse.Web.House;
using Coulisse.Web.Pages;
using Coulisse.Web.People;
using Coulisse.Web.Sheets;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.Plans;

/// <summary>The page of one occasion: its sheet, and what stands between now and the day.</summary>
internal static class OccasionEndpoints
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en-GB");

    public static void MapOccasions(this WebApplication app)
    {
        app.MapGet("/occasions/{id}", PageAsync);
        app.MapPost("/occasions/{id}", KeepAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapPost("/occasions/{id}/diets", DietsAsync).DisableAntiforgery();
        app.MapPost("/occasions/{id}/site", SiteAsync).DisableAntiforgery();
        app.MapPost("/occasions/{id}/change", ChangeAsync).DisableAntiforgery();
        app.MapPost("/occasions/{id}/unchange", UnchangeAsync).DisableAntiforgery();
    }

    private static async Task<IResult> PageAsync(string id, KitchenStore store, OccasionShelf shelf, KeptPlans plans, KitchenBook book, SheetWall hung, PaperBundles bundles, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Occasion } head || await shelf.OpenAsync(id, null, cancel) is not { } opened)
        {
            return Results.NotFound();
        }

        ImmutableArray<string> changes = [.. await shelf.ChangesAsync(id, cancel)];
        if (opened is not Parsed<KeptOccasion>.Ok(var kept))
        {
            ImmutableArray<StandView> faults = [.. ((Parsed<KeptOccasion>.Failed)opened).Problems.Select(p => new StandView(0, string.Create(Culture, $"{(p.Line > 0 ? $"Line {p.Line}: " : "")}{p.Message} {p.Hint} ({p.Code})"), "#sheet", "Mend the sheet"))];
            return new RazorComponentResult<OccasionPage>(new { View = new OccasionView(id, head.Version, head.Title, "The sheet cannot be read yet.", head.Text, OccasionView.HeadingOf(faults.Length, "the day"), faults, null, [], [], [], changes) });
        }

        KeptPlan? newest = await store.NewestPlanAsync(id, cancel);
        List<StandView> stands = [];
        if (newest is null)
        {
            stands.Add(new StandView(0, "There is no plan yet.", "", "Plan it"));
        }
        else if (await plans.OpenAsync(newest.Id, cancel) is var (_, planned))
        {
            string at = "/plan/" + newest.Id;
            if (!planned.Faults.IsEmpty)
            {
                stands.Add(new StandView(0, string.Create(Culture, $"The plan does not hold: {planned.Faults[0].Words}{(planned.Faults.Length > 1 ? $" And {planned.Faults.Length - 1} more." : "")}"), at, "See the plan"));
            }

            if (await PlanBasis.OfAsync(newest.Versions, store, cancel) is { } then && then.Site != kept.Basis.Site)
            {
                stands.Add(new StandView(2, $"The plan is for {(then.Site.Length > 0 ? then.Site : "a kitchen without sites")}, the occasion is now at {(kept.Basis.Site.Length > 0 ? kept.Basis.Site : "a kitchen without sites")}.", "", "Plan it again"));
            }

            if (newest.OccasionVersion != head.Version)
            {
                stands.Add(new StandView(2, "The sheet was changed after the plan was made.", "", "Plan it again"));
            }

            stands.Add(await PapersAsync(planned, id, at, hung, bundles, cancel) ?? new StandView(9, "", "", ""));
        }

        Parsed<ImmutableArray<Batch>> made = OccasionBatches.Make(kept.Occasion);
        if (made is Parsed<ImmutableArray<Batch>>.Ok(var batches))
        {
            string code = await book.CodeAsync(cancel);
            List<DocumentHead> cards = await store.DocumentsAsync(DocumentKind.Card, 1000, cancel);
            stands.AddRange(OccasionView.OfCards(batches, PlanSafety.Review(kept.Occasion, batches, null, code), title => cards.FirstOrDefault(c => c.Title == title) is { } c ? "/cards/" + c.Id : "/cards"));
        }
        else
        {
            stands.AddRange(((Parsed<ImmutableArray<Batch>>.Failed)made).Problems.Select(p => new StandView(0, $"{p.Message} {p.Hint} ({p.Code})", "#sheet", "Mend the sheet")));
        }

        ImmutableArray<StandView> all = [.. stands.Where(s => s.Words.Length > 0).DistinctBy(s => s.Words).OrderBy(s => s.Rank)];
        (ImmutableArray<string> dishes, ImmutableArray<string> shown) = OccasionView.Sentences(kept.Occasion);
        string says = string.Create(Culture, $"{kept.Occasion.SlotStart:dddd d MMMM yyyy, HH:mm}{(kept.Occasion.SlotLength > NodaTime.Duration.Zero ? $", {Figures.Lasting(kept.Occasion.SlotLength.TotalSeconds, Culture)} on {kept.Occasion.SlotPlace}" : "")}; {kept.Occasion.Guests} guests, {kept.Occasion.Covers} covers, {kept.Occasion.People.Length} people.");
        return new RazorComponentResult<OccasionPage>(new
        {
            View = new OccasionView(id, head.Version, kept.Occasion.Title, says, head.Text, OccasionView.HeadingOf(all.Length, kept.Occasion.SlotStart.ToString("dddd", Culture)), all, newest is null ? null : "/plan/" + newest.Id, dishes, shown, kept.Occasion.Assumed, changes) { Sites = await book.SitesAsync(cancel), Site = kept.Basis.Site, DietTable = DietsOf(head.Text, kept.Occasion.Dishes.Select(d => d.Name)) },
        });
    }

    private static async Task<StandView?> PapersAsync(PlannedOccasion planned, string id, string at, SheetWall hung, PaperBundles bundles, CancellationToken cancel)
    {
        Dictionary<string, WallSheet> there = await hung.OfAsync(id, cancel);
        if (there.Count == 0)
        {
            return new StandView(5, "No paper is printed yet.", at + "/papers", "Print");
        }

        ImmutableArray<string> stale = PaperShelf.Stale(there.ToDictionary(h => h.Key, h => h.Value.Content, StringComparer.Ordinal), PaperShelf.Papers(await bundles.OfAsync(id, planned, cancel)));
        return stale.IsEmpty ? null : new StandView(3, $"{(stale.Length == 1 ? "One sheet on the wall says" : stale.Length.ToString(Culture) + " sheets on the wall say")} something else by now: {string.Join(", ", stale.Take(4).Select(s => there[s].Title))}{(stale.Length > 4 ? " …" : "")}.", at + "/papers?stale=true", "Print them again");
    }

    private static async Task<IResult> KeepAsync(HttpContext context, string id, [FromForm] string? text, [FromForm] int? basedOn, KitchenStore store, CancellationToken cancel)
    {
        string sheet = (text ?? "").ReplaceLineEndings("\n");
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Occasion } head)
        {
            return Results.NotFound();
        }

        if (sheet.Trim().Length == 0 || sheet.Length > CardText.MostCharacters)
        {
            return PlanEndpoints.Refused(head.Title, ["The sheet is empty or longer than 5 MB; nothing was kept."]);
        }

        // which cards it was read with, and on which day, stands in the reason and stays
        string title = sheet.TrimStart().StartsWith('#') ? Desk.DeskEndpoints.Title(sheet) : head.Title;
        return await store.SaveAsync(DocumentKind.Occasion, id, basedOn ?? head.Version, title, sheet, context.Name(), head.Why, cancel) is SaveOutcome.Conflict(_, var keptAs, var theirs)
            ? Results.Redirect(string.Create(CultureInfo.InvariantCulture, $"/compare/{id}?from={theirs.Version}&to={keptAs}&both=true"))
            : Results.Redirect("/occasions/" + id);
    }

    private static DietTable DietsOf(string sheet, IEnumerable<string> dishes)
    {
        (ImmutableArray<string> columns, ImmutableArray<ImmutableArray<string>> rows) = SheetTables.Read(sheet, DietTable.Headings.AsSpan());
        return DietTable.Of(columns, rows, dishes);
    }

    /// <summary>Diets by seat as they were filled in: the table of the sheet is written anew, the rest of it stays as it is.</summary>
    private static async Task<IResult> DietsAsync(HttpContext context, string id, KitchenStore store, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Occasion } head)
        {
            return Results.NotFound();
        }

        IFormCollection form = await context.Request.ReadFormAsync(cancel);
        string[] columns = [.. form["column"].OfType<string>().Where(c => c.Trim().Length > 0)];
        List<string[]> rows = [];
        for (int row = 0; form.ContainsKey(string.Create(CultureInfo.InvariantCulture, $"diet.{row}.0")); row++)
        {
            string[] cells = [.. columns.Select((_, c) => form[string.Create(CultureInfo.InvariantCulture, $"diet.{row}.{c}")].ToString().Trim())];
            if (cells.Any(c => c.Length > 0))
            {
                rows.Add(cells);
            }
        }

        int basedOn = int.TryParse(form["basedOn"], NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : head.Version;
        // what was filled in belongs to the sheet as it was then: a sheet changed meanwhile is kept beside it
        string before = basedOn == head.Version ? head.Text : (await store.VersionAsync(id, basedOn, cancel))?.Text ?? head.Text;
        string sheet = columns.Length < 2 ? before : SheetTables.Put(before, DietTable.Headings.AsSpan(), columns, rows);
        return sheet == before && basedOn == head.Version ? Results.Redirect($"/occasions/{id}#diets")
            : await store.SaveAsync(DocumentKind.Occasion, id, basedOn, head.Title, sheet, context.Name(), head.Why, cancel) is SaveOutcome.Conflict(_, var keptAs, var theirs)
                ? Results.Redirect(string.Create(CultureInfo.InvariantCulture, $"/compare/{id}?from={theirs.Version}&to={keptAs}&both=true"))
                : Results.Redirect($"/occasions/{id}#diets");
    }

    /// <summary>Where it is made: whose kit and larder are taken. A plan that was kept stays with the site it was made for.</summary>
    private static async Task<IResult> SiteAsync(string id, [FromForm] string? site, KitchenStore store, OccasionShelf shelf, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(id, cancel) is not { Kind: DocumentKind.Occasion })
        {
            return Results.NotFound();
        }

        await shelf.SiteAsync(id, site ?? "", cancel);
        return Results.Redirect("/occasions/" + id);
    }

    /// <summary>A remedy tried by a touch: noted with the occasion, planned, and to be taken back on its page.</summary>
    private static async Task<IResult> ChangeAsync(string id, [FromForm] string? words, OccasionShelf shelf, PlanDesk desk, CancellationToken cancel)
    {
        await shelf.ChangeAsync(id, words ?? "", on: true, cancel);
        return await shelf.OpenAsync(id, null, cancel) is { } kept ? PlanEndpoints.Go(kept, desk) : Results.NotFound();
    }

    private static async Task<IResult> UnchangeAsync(string id, [FromForm] string? words, OccasionShelf shelf, CancellationToken cancel)
    {
        await shelf.ChangeAsync(id, words ?? "", on: false, cancel);
        return Results.Redirect("/occasions/" + id);
    }
}
