using System.Text.Json;
using Coulisse.Store;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;

namespace Coulisse.Web.People;

/// <summary>Passkeys by the browser's own dialogue; offered where there is HTTPS, since browsers give none elsewhere.</summary>
internal static class PasskeyEndpoints
{
    public static void MapPasskeys(this WebApplication app)
    {
        app.MapPost("/me/passkeys/ask", AskAsync);
        app.MapPost("/me/passkeys", KeepAsync);
        app.MapPost("/me/passkeys/{key}/remove", RemoveAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere (decision 0251)
        app.MapPost("/sign-in/passkey/ask", SignInAskAsync).RequireRateLimiting(PeopleServices.DoorThrottle);
        app.MapPost("/sign-in/passkey", SignInAsync).RequireRateLimiting(PeopleServices.DoorThrottle);
    }

    private static async Task<IResult> AskAsync(HttpContext context, SignInManager<BenchPerson> door)
        => await door.UserManager.GetUserAsync(context.User) is { } me
            ? Results.Text(await door.MakePasskeyCreationOptionsAsync(new PasskeyUserEntity { Id = me.Kept.Id, Name = me.Kept.Name, DisplayName = me.Kept.Name }), "application/json")
            : Results.Unauthorized();

    private static async Task<IResult> KeepAsync([FromBody] JsonElement credential, HttpContext context, SignInManager<BenchPerson> door, KitchenStore store, CancellationToken cancel)
    {
        if (await door.UserManager.GetUserAsync(context.User) is not { } me)
        {
            return Results.Unauthorized();
        }

        PasskeyAttestationResult made = await door.PerformPasskeyAttestationAsync(credential.GetRawText());
        if (!made.Succeeded || made.UserEntity.Id != me.Kept.Id)
        {
            return Results.Problem("The passkey did not prove itself; nothing was kept.", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        await door.UserManager.AddOrUpdatePasskeyAsync(me, made.Passkey);
        await store.AuditAsync(me.Kept.Name, "added a passkey", me.Kept.Name, cancel);
        return Results.NoContent();
    }

    private static async Task<IResult> RemoveAsync(string key, HttpContext context, SignInManager<BenchPerson> door, KitchenStore store, CancellationToken cancel)
    {
        if (await door.UserManager.GetUserAsync(context.User) is not { } me || !await store.RemovePasskeyAsync(me.Kept.Id, key, cancel))
        {
            return Results.NotFound();
        }

        await store.AuditAsync(me.Kept.Name, "removed a passkey", me.Kept.Name, cancel);
        return Results.Redirect("/me");
    }

    private static async Task<IResult> SignInAskAsync(SignInManager<BenchPerson> door)
        => Results.Text(await door.MakePasskeyRequestOptionsAsync(null), "application/json");

    private static async Task<IResult> SignInAsync([FromBody] JsonElement credential, SignInManager<BenchPerson> door, KitchenStore store, CancellationToken cancel)
    {
        Microsoft.AspNetCore.Identity.SignInResult result = await door.PasskeySignInAsync(credential.GetRawText());
        await store.AuditAsync("nobody", result.Succeeded ? "signed in by passkey" : "passkey refused", "", cancel);
        return result.Succeeded ? Results.NoContent() : Results.Problem("That passkey does not open this kitchen.", statusCode: StatusCodes.Status401Unauthorized);
    }
}
