using Coulisse.Web.People;

namespace Coulisse.Web.Live;

/// <summary>Asking for ways to go on, and taking one: the chef's and the time-keeper's to do, for it changes everybody's day.</summary>
internal static class WaysOutEndpoints
{
    public static void MapWaysOut(this WebApplication app)
    {
        app.MapPost("/api/live/{run}/ways", FindAsync);
        app.MapPost("/api/live/{run}/ways/{way}", TakeAsync);
    }

    private static async Task<IResult> FindAsync(HttpContext context, string run, LiveDesk desk, WayFinder finder, RoleLinks links, CancellationToken cancel)
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        return await LiveEndpoints.RoleAsync(context, run, links, cancel) is "" or "Time-keeper" ? Results.Ok(await finder.FindAsync(open, cancel)) : LiveEndpoints.Shut();
    }

    private static async Task<IResult> TakeAsync(HttpContext context, string run, string way, LiveDesk desk, WayFinder finder, RoleLinks links, TimeProvider clock, CancellationToken cancel)
    {
        if (await desk.OpenAsync(run, cancel) is not { } open)
        {
            return Results.NotFound();
        }

        string? role = await LiveEndpoints.RoleAsync(context, run, links, cancel);
        if (role is not ("" or "Time-keeper"))
        {
            return LiveEndpoints.Shut();
        }

        return await finder.TakeAsync(open, way, role.Length > 0 ? role : context.Name() is "bench" ? "chef" : context.Name(), clock, cancel) is { } frame
            ? Results.Ok(frame)
            : Results.Problem("This way is no longer offered; ask for the ways again.", statusCode: StatusCodes.Status409Conflict);
    }
}
