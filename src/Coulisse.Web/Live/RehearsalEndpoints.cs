using System.Collections.Immutable;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Views.Web;
using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Live;

/// <summary>The rehearsals of a plan side by side.</summary>
internal static class RehearsalEndpoints
{
    public static void MapRehearsals(this WebApplication app) => app.MapGet("/plan/{id}/rehearsals", PageAsync);

    private static async Task<IResult> PageAsync(string id, KitchenStore store, LiveDesk desk, CancellationToken cancel)
    {
        if (await store.PlanAsync(id, cancel) is not { } kept)
        {
            return Results.NotFound();
        }

        ImmutableArray<(string, DateTimeOffset, ImmutableSortedDictionary<int, int>)>.Builder runs = ImmutableArray.CreateBuilder<(string, DateTimeOffset, ImmutableSortedDictionary<int, int>)>();
        foreach (KeptRun run in (await store.RunsAsync(id, cancel)).Where(r => r.Rehearsal))
        {
            if (await desk.OpenAsync(run.Id, cancel) is { } open)
            {
                LiveFrame frame = await desk.FrameAsync(open, cancel);
                runs.Add((run.Id, run.Started, frame.Gates.ToImmutableSortedDictionary(g => g.Number, g => g.Second)));
            }
        }

        return new RazorComponentResult<RehearsalsPage>(new { View = RehearsalsView.From(id, TravelJson.Read<Plan>(kept.Json), runs.ToImmutable()) });
    }
}
