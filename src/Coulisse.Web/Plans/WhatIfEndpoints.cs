using Coulisse.Views.Web;
using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Plans;

/// <summary>The page of a plan's what-ifs.</summary>
internal static class WhatIfEndpoints
{
    public static void MapWhatIf(this WebApplication app)
    {
        app.MapGet("/plan/{id}/what-if", PageAsync);
        app.MapPost("/plan/{id}/what-if", AskAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapPost("/plan/{id}/what-if/stop", Stop).DisableAntiforgery();
    }

    private static async Task<IResult> PageAsync(string id, KeptPlans plans, WhatIfDesk desk, CancellationToken cancel)
        => await plans.OpenAsync(id, cancel) is var (_, planned)
            ? new RazorComponentResult<WhatIfPage>(new { View = desk.Of(id, planned.Occasion.Title) ?? WhatIfView.Unasked(id, planned.Occasion.Title) })
            : Results.NotFound();

    private static async Task<IResult> AskAsync(string id, KeptPlans plans, WhatIfDesk desk, CancellationToken cancel)
    {
        if (await plans.OpenAsync(id, cancel) is not var (_, planned))
        {
            return Results.NotFound();
        }

        desk.Ask(id, planned);
        return Results.Redirect($"/plan/{id}/what-if");
    }

    private static IResult Stop(string id, WhatIfDesk desk)
    {
        desk.Stop(id);
        return Results.Redirect($"/plan/{Uri.EscapeDataString(id)}/what-if");
    }
}
