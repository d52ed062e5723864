using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Coulisse.Store;
using Coulisse.Views.Web;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.People;

/// <summary>What the owner does: lets people in by a link, changes roles, takes people out, reads who did what.</summary>
internal static class OwnerEndpoints
{
    /// <summary>How long a link to join opens.</summary>
    public static readonly TimeSpan JoinLasts = TimeSpan.FromHours(24);

    /// <summary>How long the first owner's link opens.</summary>
    public static readonly TimeSpan OwnerLasts = TimeSpan.FromHours(1);

    public static void MapOwner(this WebApplication app)
    {
        app.MapGet("/people", (KitchenStore store, CancellationToken cancel) => PageAsync(store, "", "", cancel));
        app.MapPost("/people", AddAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere (decision 0251)
        app.MapPost("/people/{id}/link", LinkAsync).DisableAntiforgery();
        app.MapPost("/people/{id}/role", RoleAsync).DisableAntiforgery();
        app.MapPost("/people/{id}/out", OutAsync).DisableAntiforgery();
        app.MapGet("/audit", AuditAsync);
    }

    /// <summary>Link by which the first owner comes in; null when the kitchen has one.</summary>
    public static async Task<string?> FirstOwnerAsync(KitchenStore store, SignedLinks links, CancellationToken cancel)
        => (await store.PeopleAsync(cancel)).Any(p => p.Owner) ? null : "/owner?t=" + await links.MakeAsync(SignedLinks.Owner, store.Kitchen, "", OwnerLasts, cancel);

    private static async Task<IResult> PageAsync(KitchenStore store, string says, string link, CancellationToken cancel, int status = StatusCodes.Status200OK)
    {
        ImmutableArray<PersonRow>.Builder rows = ImmutableArray.CreateBuilder<PersonRow>();
        foreach (KeptPerson p in await store.PeopleAsync(cancel))
        {
            rows.Add(new PersonRow(p.Id, p.Name, p.Role, p.Owner, string.Create(CultureInfo.InvariantCulture, $"since {p.Made:yyyy-MM-dd}{(p.Password.Length == 0 ? ", has not come in yet" : "")}")));
        }

        return new RazorComponentResult<PeoplePage>(new { View = new PeopleView(rows.ToImmutable(), [.. PersonRole.All], says, link) }) { StatusCode = status };
    }

    private static async Task<IResult> AddAsync([FromForm] string? name, [FromForm] string? role, HttpContext context, KitchenStore store, SignedLinks links, CancellationToken cancel)
    {
        string who = (name ?? "").Trim();
        if (who.Length is 0 or > 100 || who.Any(char.IsControl) || !PersonRole.All.Contains(role))
        {
            return await PageAsync(store, "Give a name of at most a hundred letters and one of the four roles.", "", cancel, StatusCodes.Status422UnprocessableEntity);
        }

        KeptPerson person = new(Guid.NewGuid().ToString("N"), who, role!, false, "", Guid.NewGuid().ToString("N"), 0, null, default);
        if (!await store.AddPersonAsync(person, cancel))
        {
            return await PageAsync(store, $"Somebody called {who} is here already.", "", cancel, StatusCodes.Status409Conflict);
        }

        await store.AuditAsync(context.Name(), $"let in as {role}", who, cancel);
        return await PageAsync(store, $"{who} comes in by this link. It is shown once, opens once, for a day.", await JoinAsync(context, links, person, cancel), cancel);
    }

    private static async Task<IResult> LinkAsync(string id, HttpContext context, KitchenStore store, SignedLinks links, CancellationToken cancel)
    {
        if (await store.PersonAsync(id, cancel) is not { } person)
        {
            return Results.NotFound();
        }

        foreach (KeptLink old in await store.LinksAsync(SignedLinks.Join, id, cancel))
        {
            await store.EndLinkAsync(old.Id, cancel);
        }

        await store.AuditAsync(context.Name(), "made a link to set a password", person.Name, cancel);
        return await PageAsync(store, $"{person.Name} sets a new password by this link; earlier links have ended.", await JoinAsync(context, links, person, cancel), cancel);
    }

    private static async Task<IResult> RoleAsync(string id, [FromForm] string? role, HttpContext context, KitchenStore store, CancellationToken cancel)
    {
        if (await store.PersonAsync(id, cancel) is not { Owner: false } person || !PersonRole.All.Contains(role))
        {
            return Results.NotFound();
        }

        await store.ChangePersonAsync(person with { Role = role!, Stamp = Guid.NewGuid().ToString("N") }, cancel);
        // a session remembers the old role, so it ends
        await store.EndSessionsAsync(id, cancel);
        await store.AuditAsync(context.Name(), $"made {role}", person.Name, cancel);
        return Results.Redirect("/people");
    }

    private static async Task<IResult> OutAsync(string id, HttpContext context, KitchenStore store, UserManager<BenchPerson> people, CancellationToken cancel)
    {
        if (await people.FindByIdAsync(id) is not { Kept.Owner: false } person)
        {
            return Results.NotFound();
        }

        await people.DeleteAsync(person);
        await store.AuditAsync(context.Name(), "took out", person.Kept.Name, cancel);
        return Results.Redirect("/people");
    }

    private static async Task<IResult> AuditAsync(KitchenStore store, CancellationToken cancel)
    {
        List<ControlEntry> log = await store.AuditLogAsync(cancel);
        ChainCheck check = await store.CheckAuditLogAsync(cancel);
        string says = Records.ChainWords.Of(check);
        return new RazorComponentResult<ChainPage>(new { View = new ChainView("Who did what", says, [.. log.AsEnumerable().Reverse().Take(500).Select(e => new ChainRow(string.Create(CultureInfo.InvariantCulture, $"{e.At:yyyy-MM-dd HH:mm:ss}"), e.Who, Said(e.Json)))]) });
    }

    // the log keeps what was done and to whom as data; a person reads a sentence
    private static string Said(string json)
    {
        using JsonDocument entry = JsonDocument.Parse(json);
        string what = entry.RootElement.TryGetProperty("what", out JsonElement w) ? w.GetString() ?? "" : json;
        return entry.RootElement.TryGetProperty("subject", out JsonElement s) && s.GetString() is { Length: > 0 } subject ? $"{what}: {subject}" : what;
    }

    private static async Task<string> JoinAsync(HttpContext context, SignedLinks links, KeptPerson person, CancellationToken cancel)
        => $"{context.Request.Scheme}://{context.Request.Host.Value}/join?t={await links.MakeAsync(SignedLinks.Join, person.Id, person.Name, JoinLasts, cancel)}";
}
