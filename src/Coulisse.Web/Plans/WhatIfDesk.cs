using System.Collections.Concurrent;
using System.Collections.Immutable;
using Coulisse.Flows;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Why;
using Coulisse.Views.Web;

namespace Coulisse.Web.Plans;

/// <summary>What if something fails, and what one more of something would save: solved in the background, one plan at a time; a page shows what is solved so far.</summary>
internal sealed class WhatIfDesk(WebBenchOptions options, IHostApplicationLifetime life) : IDisposable
{
    private readonly ConcurrentDictionary<string, Study> _studies = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>What is known of a plan's questions so far; null when nobody asked.</summary>
    public WhatIfView? Of(string plan, string title) => _studies.TryGetValue(plan, out Study? study) ? study.View(plan, title) : null;

    /// <summary>Begins to ask; a second call leaves the first one at work.</summary>
    public void Ask(string plan, PlannedOccasion planned)
    {
        Study study = new(life.ApplicationStopping);
        if (planned.Outcome is Plan made && _studies.TryAdd(plan, study))
        {
            _ = Task.Run(() => RunAsync(study, planned, made));
        }
    }

    /// <summary>Stops and keeps what was solved.</summary>
    public void Stop(string plan)
    {
        if (_studies.TryGetValue(plan, out Study? study))
        {
            study.Stop();
        }
    }

    public void Dispose() => _one.Dispose();

    private async Task RunAsync(Study study, PlannedOccasion planned, Plan plan)
    {
        try
        {
            await _one.WaitAsync(life.ApplicationStopping);
            try
            {
                PlanOptions each = new(Math.Min(options.PlanSeconds, 2));
                PlanStudy.IfThen(planned, plan, each, study.Add, study.Token);
                if (!study.Token.IsCancellationRequested)
                {
                    study.Add(PlanStudy.Worth(planned, plan, each, study.Token));
                }
            }
            finally
            {
                _one.Release();
            }
        }
        catch (OperationCanceledException)
        {
            // stopped: what was solved stands
        }
#pragma warning disable CA1031 // it runs on its own: what went wrong must reach the page, whatever it is
        catch (Exception e)
        {
            study.Broke(e.Message);
        }
#pragma warning restore CA1031
        finally
        {
            study.End();
        }
    }

    private sealed class Study(CancellationToken stopping)
    {
        private readonly CancellationTokenSource _stop = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        private readonly Lock _gate = new();
        private readonly List<IfThen> _fails = [];
        private ImmutableArray<Worth> _worth = [];
        private string _says = "";
        private bool _ended;

        public CancellationToken Token => _stop.Token;

        public void Stop() => _stop.Cancel();

        public void Add(IfThen solved)
        {
            lock (_gate)
            {
                _fails.Add(solved);
            }
        }

        public void Add(ImmutableArray<Worth> worth)
        {
            lock (_gate)
            {
                _worth = worth;
            }
        }

        public void Broke(string why)
        {
            lock (_gate)
            {
                _says = "It broke off. That is our fault: " + why;
            }
        }

        public void End()
        {
            lock (_gate)
            {
                _ended = true;
            }
        }

        public WhatIfView View(string plan, string title)
        {
            lock (_gate)
            {
                string says = _says.Length > 0 ? _says : _ended ? _stop.IsCancellationRequested ? "Stopped; what was solved stands here." : "Each is solved from the night before." : _fails.Count == 0 ? "The first is being solved …" : "More are being solved …";
                return new WhatIfView(plan, title, says, !_ended, [.. _fails.Select(f => new WhatIfRow(f.Case, f.WhatFails, f.Answer, f.Holds, f.Changes))], [.. _worth.Select(w => new WorthRow(w.What, w.Words, w.Saves))]);
            }
        }
    }
}
