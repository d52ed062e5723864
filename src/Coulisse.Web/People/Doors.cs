using System.Net;
using System.Security.Claims;
using Coulisse.Store;

namespace Coulisse.Web.People;

/// <summary>Lets in or not. On this machine alone there are no doors; on a network nothing opens without a person or a link.</summary>
internal static class Doors
{
    /// <summary>How a page on this machine alone is told from one behind a login.</summary>
    public const string ThisMachine = "this machine";

    public const string OwnerClaim = "owner";

    public static void UseDoors(this WebApplication app, WebBenchOptions options)
    {
        if (options.Network)
        {
            app.UseAuthentication();
            app.Use(NetworkAsync);
        }
        else
        {
            app.Use((context, next) => ThisMachineAsync(context, options.Names, next));
        }
    }

    /// <summary>Who it is, for what is kept: the person, or the bench on a machine without login.</summary>
    public static string Name(this HttpContext context) => context.User.Identity is { IsAuthenticated: true, Name: { Length: > 0 } name } ? name : "bench";

    public static bool IsChef(this HttpContext context) => (WhoIs(context.User) & DoorPlan.Who.Kitchen) != DoorPlan.Who.Nobody;

    private static DoorPlan.Who WhoIs(ClaimsPrincipal person) => person.Identity is { IsAuthenticated: true }
        ? DoorPlan.Of(person.FindFirstValue(ClaimTypes.Role) ?? "", person.HasClaim(OwnerClaim, "yes"))
        : DoorPlan.Who.Nobody;

    /// <summary>Without a login only this machine may ask, and only under its own name: a page elsewhere whose name was turned to point here is refused, and so is a proxy that would let the network in.</summary>
    private static Task ThisMachineAsync(HttpContext context, IReadOnlyCollection<string> names, RequestDelegate next)
    {
        string host = context.Request.Host.Host;
        bool here = (host is "localhost" or "127.0.0.1" or "[::1]" || names.Contains(host, StringComparer.OrdinalIgnoreCase)) && context.Connection.RemoteIpAddress is { } from && IPAddress.IsLoopback(from);
        if (!here || context.Request.Headers.ContainsKey("X-Forwarded-For") || context.Request.Headers.ContainsKey("Forwarded"))
        {
            context.Response.StatusCode = StatusCodes.Status421MisdirectedRequest;
            return context.Response.WriteAsync("This bench was started for its own machine alone. To let others in, start it by “Start Coulisse for tablets” (at a command line: coulisse serve --network).", context.RequestAborted);
        }

        context.User = new ClaimsPrincipal(new ClaimsIdentity([new Claim(ClaimTypes.Role, PersonRole.Chef)], ThisMachine));
        return next(context);
    }

    private static async Task NetworkAsync(HttpContext context, RequestDelegate next)
    {
        HttpRequest request = context.Request;
        bool writes = !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);
        bool known = context.User.Identity is { IsAuthenticated: true };
        if (known && writes && request.Headers.Origin.Count == 0 && request.Headers["Sec-Fetch-Site"] != "same-origin")
        {
            // Every browser names the origin of a post; one that carries somebody's session and hides it is not ours.
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            await context.Response.WriteAsync("This did not say which page it came from and was not done.", context.RequestAborted);
            return;
        }

        if (!DoorPlan.IsOpen(request.Path))
        {
            context.Response.Headers.CacheControl = "no-store";
            bool link = DoorPlan.MayCarryLink(request.Path) && request.Query["t"].ToString().Length > 0;
            if (!known && !link)
            {
                await AskAsync(context, writes);
                return;
            }

            if (known && !link && !DoorPlan.May(WhoIs(context.User), writes, request.Path))
            {
                context.Response.StatusCode = StatusCodes.Status403Forbidden;
                await context.Response.WriteAsync($"{context.Name()} may not {(writes ? "do" : "see")} this. The owner of the kitchen gives roles.", context.RequestAborted);
                return;
            }
        }

        await next(context);
    }

    private static Task AskAsync(HttpContext context, bool writes)
    {
        HttpRequest request = context.Request;
        if (writes || request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase))
        {
            context.Response.StatusCode = StatusCodes.Status401Unauthorized;
            return context.Response.WriteAsync("Sign in first.", context.RequestAborted);
        }

        context.Response.Redirect("/sign-in?to=" + Uri.EscapeDataString(request.Path + request.QueryString));
        return Task.CompletedTask;
    }

    /// <summary>An address on this bench, or the front page for anything else: nobody is sent elsewhere by a link to our sign-in.</summary>
    internal static string Local(string? to)
        => to is { Length: > 0 and < 500 } && to[0] == '/' && !to.StartsWith("//", StringComparison.Ordinal) && !to.StartsWith("/\\", StringComparison.Ordinal) && !to.Any(char.IsControl) ? to : "/";
}
