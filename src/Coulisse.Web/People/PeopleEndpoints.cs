using System.Globalization;
using System.Text.Json;
using Coulisse.Store;
using Coulisse.Views.Web;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.People;

/// <summary>The doors of a bench on a network: the first owner, joining by a link, signing in and out, one's own page.</summary>
internal static class PeopleEndpoints
{
    private const string Wrong = "That name and password do not open this kitchen. After five wrong ones a person waits five minutes.";

    public static void MapPeople(this WebApplication app)
    {
        app.MapGet("/sign-in", (string? to, HttpContext context) => SignInPage(new SignInView(Doors.Local(to), "", context.Request.IsHttps)));
        app.MapPost("/sign-in", SignInAsync).DisableAntiforgery().RequireRateLimiting(PeopleServices.DoorThrottle); // the guard refuses posts from elsewhere (decision 0251)
        app.MapPost("/sign-out", SignOutAsync).DisableAntiforgery();
        app.MapGet("/owner", (string? t, CancellationToken cancel, SignedLinks links) => JoinPageAsync(SignedLinks.Owner, t, links, cancel));
        app.MapPost("/owner", OwnAsync).DisableAntiforgery().RequireRateLimiting(PeopleServices.DoorThrottle);
        app.MapGet("/join", (string? t, CancellationToken cancel, SignedLinks links) => JoinPageAsync(SignedLinks.Join, t, links, cancel));
        app.MapPost("/join", JoinAsync).DisableAntiforgery().RequireRateLimiting(PeopleServices.DoorThrottle);
        app.MapGet("/me", (HttpContext context, UserManager<BenchPerson> people) => MeAsync(context, people, ""));
        app.MapPost("/me/password", PasswordAsync).DisableAntiforgery().RequireRateLimiting(PeopleServices.DoorThrottle);
    }

    internal static Task AuditAsync(this KitchenStore store, string who, string what, string subject, CancellationToken cancel)
        => store.AuditAsync(who, JsonSerializer.Serialize(new { what, subject }, JsonSerializerOptions.Web), cancel);

    internal static string Why(IdentityResult result) => string.Join(" ", result.Errors.Select(e => e.Code == "PasswordTooShort" ? string.Create(CultureInfo.InvariantCulture, $"A password has at least {PeopleServices.LeastPassword} characters; four words are easy to keep.") : e.Description));

    internal static async Task<IResult> MeAsync(HttpContext context, UserManager<BenchPerson> people, string says)
    {
        if (await people.GetUserAsync(context.User) is not { } me)
        {
            return Results.Redirect("/sign-in");
        }

        IEnumerable<PasskeyRow> keys = (await people.GetPasskeysAsync(me)).Select(k => new PasskeyRow(PersonShelf.Key(k.CredentialId), string.Create(CultureInfo.InvariantCulture, $"made {k.CreatedAt:yyyy-MM-dd}")));
        return new RazorComponentResult<MePage>(new { View = new MeView(me.Kept.Name, me.Kept.Owner ? "owner, " + me.Kept.Role : me.Kept.Role, says, PeopleServices.LeastPassword, context.Request.IsHttps, [.. keys]) });
    }

    private static RazorComponentResult<SignInPage> SignInPage(SignInView view, int status = StatusCodes.Status200OK) => new(new { View = view }) { StatusCode = status };

    private static RazorComponentResult<JoinPage> JoinPage(JoinView view, int status = StatusCodes.Status200OK) => new(new { View = view }) { StatusCode = status };

    private static IResult Shut() => Results.Problem("This link has run out, was used, or is for something else. Ask the owner for a new one; the first owner starts the bench again.", statusCode: StatusCodes.Status403Forbidden);

    private static async Task<IResult> SignInAsync([FromForm] string? name, [FromForm] string? password, [FromForm] string? to, HttpContext context, SignInManager<BenchPerson> door, KitchenStore store, CancellationToken cancel)
    {
        string who = (name ?? "").Trim();
        if (who.Length is 0 or > 100 || (password ?? "").Length is 0 or > 1000)
        {
            return SignInPage(new SignInView(Doors.Local(to), Wrong, context.Request.IsHttps), StatusCodes.Status401Unauthorized);
        }

        BenchPerson? person = await door.UserManager.FindByNameAsync(who);
        if (person is null)
        {
            // as long as a wrong password takes, so that names cannot be told apart by the clock
            door.UserManager.PasswordHasher.HashPassword(new BenchPerson(new KeptPerson("", "", "", false, "", "", 0, null, default)), password!);
            await store.AuditAsync("nobody", "sign-in refused", "", cancel);
            return SignInPage(new SignInView(Doors.Local(to), Wrong, context.Request.IsHttps), StatusCodes.Status401Unauthorized);
        }

        Microsoft.AspNetCore.Identity.SignInResult result = await door.PasswordSignInAsync(person, password!, isPersistent: false, lockoutOnFailure: true);
        await store.AuditAsync(result.Succeeded ? person.Kept.Name : "nobody", result.Succeeded ? "signed in" : result.IsLockedOut ? "sign-in refused, must wait" : "sign-in refused", person.Kept.Name, cancel);
        return result.Succeeded ? Results.LocalRedirect(Doors.Local(to)) : SignInPage(new SignInView(Doors.Local(to), Wrong, context.Request.IsHttps), StatusCodes.Status401Unauthorized);
    }

    private static async Task<IResult> SignOutAsync(HttpContext context, SignInManager<BenchPerson> door, KitchenStore store, CancellationToken cancel)
    {
        await store.AuditAsync(context.Name(), "signed out", "", cancel);
        await door.SignOutAsync();
        return Results.Redirect("/sign-in");
    }

    private static async Task<IResult> JoinPageAsync(string purpose, string? token, SignedLinks links, CancellationToken cancel)
        => await links.OpenAsync(purpose, token ?? "", cancel) is { } link ? JoinPage(new JoinView("/" + purpose, token!, link.Who, "", PeopleServices.LeastPassword)) : Shut();

    private static async Task<IResult> OwnAsync([FromForm] string? t, [FromForm] string? name, [FromForm] string? password, SignedLinks links, SignInManager<BenchPerson> door, KitchenStore store, CancellationToken cancel)
    {
        if (await links.OpenAsync(SignedLinks.Owner, t ?? "", cancel) is not { } link)
        {
            return Shut();
        }

        string who = (name ?? "").Trim();
        if (who.Length is 0 or > 100 || who.Any(char.IsControl))
        {
            return JoinPage(new JoinView("/owner", t!, "", "Give the name you are called by, at most a hundred letters.", PeopleServices.LeastPassword), StatusCodes.Status422UnprocessableEntity);
        }

        BenchPerson owner = new(new KeptPerson(Guid.NewGuid().ToString("N"), who, PersonRole.Chef, true, "", "", 0, null, default));
        IdentityResult made = await door.UserManager.CreateAsync(owner, password ?? "");
        if (!made.Succeeded)
        {
            return JoinPage(new JoinView("/owner", t!, "", Why(made), PeopleServices.LeastPassword), StatusCodes.Status422UnprocessableEntity);
        }

        await store.EndLinkAsync(link.Id, cancel);
        await store.AuditAsync(who, "became the owner", who, cancel);
        await door.SignInAsync(owner, isPersistent: false);
        return Results.Redirect("/");
    }

    private static async Task<IResult> JoinAsync([FromForm] string? t, [FromForm] string? password, SignedLinks links, SignInManager<BenchPerson> door, KitchenStore store, CancellationToken cancel)
    {
        if (await links.OpenAsync(SignedLinks.Join, t ?? "", cancel) is not { } link || await door.UserManager.FindByIdAsync(link.Subject) is not { } person)
        {
            return Shut();
        }

        IdentityResult fit = await FitAsync(door.UserManager, person, password ?? "");
        if (!fit.Succeeded)
        {
            return JoinPage(new JoinView("/join", t!, link.Who, Why(fit), PeopleServices.LeastPassword), StatusCodes.Status422UnprocessableEntity);
        }

        // used up before it takes effect: of two who hold the same link, one comes in
        if (!await store.EndLinkAsync(link.Id, cancel))
        {
            return Shut();
        }

        await door.UserManager.RemovePasswordAsync(person);
        IdentityResult set = await door.UserManager.AddPasswordAsync(person, password!);
        if (!set.Succeeded)
        {
            return Results.Problem(Why(set), statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        await door.UserManager.SetLockoutEndDateAsync(person, null);
        await store.EndSessionsAsync(person.Kept.Id, cancel);
        await store.AuditAsync(person.Kept.Name, "set a password by link", person.Kept.Name, cancel);
        await door.SignInAsync(person, isPersistent: false);
        return Results.Redirect("/");
    }

    private static async Task<IResult> PasswordAsync([FromForm] string? old, [FromForm] string? password, HttpContext context, SignInManager<BenchPerson> door, KitchenStore store, CancellationToken cancel)
    {
        if (await door.UserManager.GetUserAsync(context.User) is not { } me)
        {
            return Results.Redirect("/sign-in");
        }

        // the old one is a secret that is tried: it counts towards the wait as at the door
        Microsoft.AspNetCore.Identity.SignInResult check = await door.CheckPasswordSignInAsync(me, old ?? "", lockoutOnFailure: true);
        if (!check.Succeeded)
        {
            return await MeAsync(context, door.UserManager, "The old password is not that. Nothing was changed.");
        }

        IdentityResult changed = await door.UserManager.ChangePasswordAsync(me, old!, password ?? "");
        if (!changed.Succeeded)
        {
            return await MeAsync(context, door.UserManager, Why(changed));
        }

        // every other session ends; this one begins anew
        await store.EndSessionsAsync(me.Kept.Id, cancel);
        await store.AuditAsync(me.Kept.Name, "changed the password", me.Kept.Name, cancel);
        await door.SignInAsync(me, isPersistent: false);
        return Results.Redirect("/me");
    }

    private static async Task<IdentityResult> FitAsync(UserManager<BenchPerson> people, BenchPerson person, string password)
    {
        List<IdentityError> errors = [];
        foreach (IPasswordValidator<BenchPerson> validator in people.PasswordValidators)
        {
            errors.AddRange((await validator.ValidateAsync(people, person, password)).Errors);
        }

        return errors.Count == 0 ? IdentityResult.Success : IdentityResult.Failed([.. errors]);
    }
}
