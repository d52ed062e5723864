using System.Globalization;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Plans;

/// <summary>A kept plan as a page and as what the drawing fetches.</summary>
internal static class PlanEndpoints
{
    public static void MapPlans(this WebApplication app)
    {
        app.MapGet("/plan/{id}", PageAsync);
        app.MapGet("/api/plan/{id}", ViewAsync);
    }

    private static async Task<IResult> PageAsync(string id, KitchenStore store, CancellationToken cancel)
        => await ReadAsync(store, id, cancel) is { } view ? new RazorComponentResult<PlanPage>(new { Id = id, View = view }) : Results.NotFound();

    private static async Task<IResult> ViewAsync(string id, KitchenStore store, CancellationToken cancel)
        => await ReadAsync(store, id, cancel) is { } view ? Results.Ok(view) : Results.NotFound();

    private static async Task<PlanView?> ReadAsync(KitchenStore store, string id, CancellationToken cancel)
        => await store.PlanAsync(id, cancel) is { } kept ? PlanView.From(TravelJson.Read<Plan>(kept.Json), [], CultureInfo.GetCultureInfo("en-GB")) : null;
}
