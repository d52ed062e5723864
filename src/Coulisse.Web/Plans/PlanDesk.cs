using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Tasks;
using Coulisse.Store;
using Coulisse.Views.Web;

namespace Coulisse.Web.Plans;

/// <summary>Plans in the background; a page asks how far it is, may stop it and keep the best so far.</summary>
internal sealed class PlanDesk(KitchenStore store, WebBenchOptions options, IHostApplicationLifetime life) : IDisposable
{
    private readonly ConcurrentDictionary<string, PlanJob> _jobs = new(StringComparer.Ordinal);

    // planning takes every core it is given: one at a time, the others wait
    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>Begins to plan.</summary>
    /// <param name="occasion">What is planned.</param>
    /// <param name="edits">What a person fixed; null for nothing.</param>
    /// <param name="since">Plan it is made from, so that what moved can be said; null for none.</param>
    public PlanJob Begin(KeptOccasion occasion, PlanEdits? edits = null, string? since = null)
    {
        PlanJob job = new(Guid.NewGuid().ToString("N"), occasion, options.PlanSeconds, since, options.Clock, life.ApplicationStopping);
        _jobs[job.Id] = job;
        _ = Task.Run(() => RunAsync(job, occasion, edits ?? PlanEdits.None));
        return job;
    }

    /// <summary>A job by id; null when there is none.</summary>
    public PlanJob? Find(string id) => _jobs.GetValueOrDefault(id);

    public void Dispose() => _one.Dispose();

    private async Task RunAsync(PlanJob job, KeptOccasion kept, PlanEdits edits)
    {
        try
        {
            await _one.WaitAsync(life.ApplicationStopping);
            try
            {
                job.Start();
                Parsed<PlannedOccasion> planned = options.Planner(kept.Occasion, new PlanOptions(options.PlanSeconds) { Edits = edits }, job, job.Token);
                await KeepAsync(job, kept, planned);
            }
            finally
            {
                _one.Release();
            }
        }
        catch (OperationCanceledException)
        {
            job.Fail(["Planning was stopped before there was a plan."], []);
        }
#pragma warning disable CA1031 // a job runs on its own: what went wrong must reach the page, whatever it is
        catch (Exception e)
        {
            job.Fail(["Planning broke off. That is our fault: " + e.Message], []);
        }
#pragma warning restore CA1031
    }

    private async Task KeepAsync(PlanJob job, KeptOccasion kept, Parsed<PlannedOccasion> planned)
    {
        if (planned is Parsed<PlannedOccasion>.Failed(var problems))
        {
            job.Fail([.. problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})")], []);
            return;
        }

        PlannedOccasion done = ((Parsed<PlannedOccasion>.Ok)planned).Value;
        switch (done.Outcome)
        {
            case Plan plan:
                await kept.Basis.KeepAsync(store, CancellationToken.None);
                job.Done(await store.KeepPlanAsync(kept.Id, kept.Version, TravelJson.Write(plan), kept.MadeWith(plan)));
                break;
            case NoPlan(var conflicts, var remedies):
                job.Fail(conflicts, remedies);
                break;
            case NotYet(var why):
                job.Fail([why], ["Give it more time, or take something away from what is asked."]);
                break;
        }
    }
}

/// <summary>A planning in progress; hears of every better plan.</summary>
internal sealed class PlanJob(string id, KeptOccasion occasion, double seconds, string? since, TimeProvider clock, CancellationToken stopping) : IProgress<Plan>
{
    private readonly CancellationTokenSource _stop = CancellationTokenSource.CreateLinkedTokenSource(stopping);
    private readonly Lock _gate = new();
    private long? _begun;
    private int _found;
    private Plan? _best;
    private PlanningView _view = new(occasion.Occasion.Title, "Waiting for another planning to end.", 0, null, false, [], []) { Occasion = occasion.Id, Since = since ?? "" };

    public string Id => id;

    public CancellationToken Token => _stop.Token;

    /// <summary>What the page shows.</summary>
    public PlanningView View
    {
        get
        {
            lock (_gate)
            {
                if (_view.At is not null || _view.Failed || _begun is not { } begun)
                {
                    return _view;
                }

                double spent = clock.GetElapsedTime(begun).TotalSeconds;
                return _view with { Percent = (int)Math.Min(99, 100 * spent / Math.Max(seconds, 0.1)), Says = _best is { } best ? Says(best) : string.Create(CultureInfo.InvariantCulture, $"Looking for a first plan; {seconds:0} seconds at most.") };
            }
        }
    }

    public void Start()
    {
        lock (_gate)
        {
            _begun = clock.GetTimestamp();
        }
    }

    /// <summary>Stop and keep the best so far.</summary>
    public void Stop() => _stop.Cancel();

    public void Report(Plan value)
    {
        lock (_gate)
        {
            _best = value;
            _found++;
        }
    }

    public void Done(string planId)
    {
        lock (_gate)
        {
            _view = _view with { At = "/plan/" + planId + (since is null ? "" : "?since=" + since), Percent = 100, Says = "The plan is kept." };
        }
    }

    public void Fail(ImmutableArray<string> why, ImmutableArray<string> remedies)
    {
        lock (_gate)
        {
            // a remedy that changes the occasion can be tried by a touch; one that gives up a pin is done on the plan
            HashSet<string> known = remedies.IsEmpty ? [] : [.. RemedyCandidates.Of(occasion.Occasion, PlanEdits.None, []).Select(r => r.Words)];
            _view = _view with { Failed = true, Why = why, Remedies = remedies, Touch = [.. remedies.Where(known.Contains)], Percent = 100, Says = "No plan." };
        }
    }

    private string Says(Plan best) => string.Create(CultureInfo.InvariantCulture, $"{(_found == 1 ? "A first plan" : $"Plan {_found}, the best so far")}: {best.Tasks.Length} tasks, {best.Twins.Length} twins{string.Concat(best.Objective.Take(3).Select(o => $"; {o.Level} {o.Value:0.#} {o.Unit}"))}. Looking for a better one.");
}
