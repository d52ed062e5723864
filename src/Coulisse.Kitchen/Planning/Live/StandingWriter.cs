using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Writes the rest of the work: the planned problem with the past taken out of it.</summary>
internal sealed class StandingWriter(Occasion occasion, PrepWork work, PrepProblem prep, EngineSchedule old, PlanTrace trace, LiveState state, Fate[] fate, List<string> warnings)
{
    private readonly int _now = PlanTrace.Step(prep, state.Now);
    private readonly Dictionary<int, List<Stretch>> _busy = [];

    public Standing Write()
    {
        int n = work.Tasks.Length;
        PrepTask[] tasks = [.. work.Tasks];
        Activity[] activities = [.. prep.Problem.Activities];
        ImmutableArray<ImmutableArray<string>>[] codes = [.. prep.Codes];
        int[] modes = [.. old.Modes];
        HashSet<int> keepsState = KeepsState();
        for (int i = 0; i < n; i++)
        {
            Activity a = activities[i];
            if (fate[i] is Fate.Done or Fate.Runs)
            {
                (int start, int minutes) = Real(i);
                Mode mode = a.Modes[modes[i]] with { Duration = minutes, Uses = [] };
                mode = fate[i] == Fate.Done ? mode with { Demands = [], Choices = [] } : mode with { Choices = [.. mode.Choices.Select(c => new Choice(old.Served[i], old.Served[i].Length)).Where(c => c.Count > 0)] };
                mode = keepsState.Contains(i) ? mode : mode with { State = null };
                tasks[i] = tasks[i] with { Minutes = minutes };
                activities[i] = a with { Modes = [fate[i] == Fate.Runs ? Free(mode, start, minutes) : mode], Windows = [], FixedStart = start, Optional = false };
                codes[i] = [codes[i].IsEmpty ? [] : codes[i][modes[i]]];
                modes[i] = 0;
            }
            else if (fate[i] == Fate.LeftOut)
            {
                tasks[i] = tasks[i] with { Minutes = 0 };
                activities[i] = a with { Modes = [new Mode(0, [])], Windows = [], FixedStart = null, Optional = false };
                codes[i] = [[]];
                modes[i] = 0;
            }
            else
            {
                ImmutableArray<Stretch> open = a.Windows.IsEmpty && a.FixedStart is null ? [new Stretch(0, prep.Problem.Horizon)] : a.Windows;
                bool missed = a.FixedStart < _now;
                (a, tasks[i]) = Fewer(a, tasks[i]);
                activities[i] = a with
                {
                    FixedStart = missed ? null : a.FixedStart,
                    Windows = a.FixedStart is not null && !missed ? [] : missed ? [new Stretch(_now, prep.Problem.Horizon)]
                        : [.. open.Select(w => new Stretch(Math.Max(w.Start, _now), w.End)).Where(w => w.End > w.Start).DefaultIfEmpty(new Stretch(_now, _now))],
                    HintStart = old.Starts[i] >= 0 ? Math.Max(_now, old.Starts[i]) : null,
                };
            }
        }

        PrepWork rest = work with { Tasks = [.. tasks] };
        ImmutableArray<Lag> lags = [.. prep.Problem.Lags.Select(Kept).OfType<Lag>()];
        EngineSchedule then = new([.. old.Starts.Select((s, i) => activities[i].FixedStart ?? (s < 0 ? s : Math.Max(s, _now)))], [.. modes], old.Served, []);
        SchedulingProblem problem = prep.Problem with
        {
            Activities = [.. activities],
            Lags = lags,
            Resources = [.. prep.Problem.Resources.Select(Closed)],
            StateKits = [.. prep.Problem.StateKits.Select((k, j) => keepsState.Any(i => activities[i].Modes[0].State?.Kit == j) ? k with { Initial = null } : k)],
            // What is past holds no kit any more, so it is remembered here on which it was.
            Cleans = [.. prep.Problem.Cleans.Select(c => c with { Uses = [.. c.Uses.Where(u => Stays(c, u.Activity))], Cleanings = [.. c.Cleanings.Where(w => Stays(c, w))] })],
        };
        return new Standing(rest, prep with { Problem = problem with { Goals = Goals(lags, then) }, Codes = [.. codes] }, then, trace, [.. fate], [.. warnings.Distinct()]);
    }

    private bool Stays(CleanRule rule, int i) => fate[i] == Fate.ToDo || (fate[i] != Fate.LeftOut && rule.Concerns(prep.Problem, old, i));

    private (int Start, int Minutes) Real(int i)
    {
        PlannedTask p = trace.Tasks[i]!;
        int start = PlanTrace.Step(prep, state.Started.GetValueOrDefault(p.Id, p.Start));
        if (fate[i] == Fate.Done)
        {
            return (start, Math.Max(0, PlanTrace.Step(prep, state.Done[p.Id]) - start));
        }

        // A task that overruns is taken to need one minute more than it has had; the next report moves it again.
        int minutes = Math.Max(work.Tasks[i].Minutes, _now + 1 - start);
        if (minutes > work.Tasks[i].Minutes)
        {
            warnings.Add($"{p.Id} runs longer than planned: taken to end in a minute.");
        }

        return (start, minutes);
    }

    // Reports may have one pair of hands on two tasks at once: what has no room beside what already runs does not hold it.
    private Mode Free(Mode mode, int start, int minutes)
    {
        Stretch span = new(start, start + minutes);
        bool Room(int r, int amount) => _busy.GetValueOrDefault(r, []).Count(s => s.Start < span.End && span.Start < s.End) + amount <= prep.Problem.Resources[r].Capacity;
        Mode kept = mode with
        {
            Demands = [.. mode.Demands.Where(d => Room(d.Resource, 1))],
            Choices = [.. mode.Choices.Select(c => c.Resources.Where(r => Room(r, 1) && !_busy.ContainsKey(r)).ToImmutableArray()).Where(r => r.Length > 0).Select(r => new Choice(r, r.Length))],
        };
        foreach (int r in kept.Demands.Select(d => d.Resource).Concat(kept.Choices.SelectMany(c => c.Resources)))
        {
            (_busy.TryGetValue(r, out List<Stretch>? spans) ? spans : _busy[r] = []).Add(span);
        }

        return kept;
    }

    // Where fewer are left than a task asks for, those who are left do it, and it takes them longer in the same measure.
    private (Activity Activity, PrepTask Task) Fewer(Activity activity, PrepTask task)
    {
        bool Gone(int r) => r < occasion.People.Length && state.Gone.ContainsKey(occasion.People[r].Name);
        int asked = activity.Modes.SelectMany(m => m.Choices).Select(c => c.Count).DefaultIfEmpty().Max();
        int left = activity.Modes.SelectMany(m => m.Choices).Select(c => c.Resources.Count(r => !Gone(r))).DefaultIfEmpty().Min();
        if (left == 0 && asked > 0 && !task.Named.IsEmpty)
        {
            // named hands that are all gone: the work is given to whoever else is able, or it would never be done
            PrepTask anyone = task with { Named = [] };
            ImmutableArray<int> others = [.. Skills.Able(occasion.People, anyone).Where(r => !Gone(r))];
            if (!others.IsEmpty)
            {
                warnings.Add($"“{task.Text}” was to be done by {string.Join(" or ", task.Named)}: it goes to whoever is free.");
                return (activity with { Modes = [.. activity.Modes.Select(m => m with { Choices = [.. m.Choices.Select(c => new Choice(others, Math.Min(others.Length, c.Count)))] })] }, anyone);
            }
        }

        if (left == 0 || left >= asked)
        {
            return (activity, task);
        }

        int minutes = (int)Math.Ceiling(task.Minutes * (double)asked / left);
        warnings.Add(string.Create(CultureInfo.InvariantCulture, $"“{task.Text}” has {left} people instead of {asked}: taken to need {minutes} min instead of {task.Minutes}."));
        Mode[] modes = [.. activity.Modes.Select(m => m with { Duration = minutes, Choices = [.. m.Choices.Select(c => new Choice([.. c.Resources.Where(r => !Gone(r))], Math.Min(left, c.Count)))] })];
        return (activity with { Modes = [.. modes] }, task with { Minutes = minutes });
    }

    // Only the last use of a kit says at which set point it stands now.
    private HashSet<int> KeepsState()
    {
        HashSet<int> keeps = [];
        foreach (IGrouping<int, int> kit in Enumerable.Range(0, fate.Length)
            .Where(i => fate[i] is Fate.Done or Fate.Runs && prep.Problem.Activities[i].Modes[old.Modes[i]].State is not null)
            .GroupBy(i => prep.Problem.Activities[i].Modes[old.Modes[i]].State!.Value.Kit))
        {
            keeps.Add(kit.MaxBy(i => fate[i] == Fate.Runs ? int.MaxValue : Real(i).Start));
        }

        return keeps;
    }

    private Lag? Kept(Lag lag)
    {
        bool past = fate[lag.From] is Fate.Done or Fate.Runs;
        if (fate[lag.To] is Fate.Done or Fate.Runs || fate[lag.From] == Fate.LeftOut && lag.Most is not null)
        {
            return null;
        }

        if (past && lag is { Most: { } most, Soft: false } && fate[lag.To] == Fate.ToDo)
        {
            (int start, int minutes) = Real(lag.From);
            int last = start + (lag.FromEdge == Edge.End ? minutes : 0) + most - (lag.ToEdge == Edge.End ? work.Tasks[lag.To].Minutes : 0);
            if (last < _now && work.Tasks[lag.To].Kind == TaskKind.Moment)
            {
                warnings.Add(string.Create(CultureInfo.InvariantCulture, $"“{work.Tasks[lag.To].Text}” was due {_now - last} min ago: it comes as soon as hands are free."));
                return lag with { Most = null };
            }

            if (last < _now)
            {
                warnings.Add(string.Create(CultureInfo.InvariantCulture, $"{lag.Because}: that time passed {_now - last} min ago, before “{work.Tasks[lag.To].Text}” was begun. Do not serve it unless you know it is safe; report it lost to have it made again."));
                return lag with { Most = null };
            }
        }

        if (lag is { Most: { } wished, Soft: true } && old.Starts[lag.From] >= 0 && old.Starts[lag.To] >= 0)
        {
            // What the plan already let stand longer is no reason to move people now.
            int PlannedAt(int a, Edge e) => old.Starts[a] + (e == Edge.End ? prep.Problem.Activities[a].Modes[old.Modes[a]].Duration : 0);
            return lag with { Most = Math.Max(wished, PlannedAt(lag.To, lag.ToEdge) - PlannedAt(lag.From, lag.FromEdge)) };
        }

        return lag;
    }

    private Resource Closed(Resource resource, int r)
    {
        IEnumerable<Stretch> closed = resource.Closed;
        foreach (Stretch busy in _busy.GetValueOrDefault(r, []))
        {
            // Somebody who works into a meal or past their hours is working: the closing gives way, not the fact.
            closed = [.. closed.SelectMany(c => c.Without(busy))];
        }

        bool gone = r < occasion.People.Length && state.Gone.ContainsKey(occasion.People[r].Name);
        ImmutableArray<string> group = r < occasion.People.Length ? [] : [.. prep.Groups.GetValueOrDefault(resource.Name, []).Select(k => k.Code)];
        int broken = group.Count(state.Broken.ContainsKey);
        if (broken > 0 && broken < group.Length)
        {
            return resource with { Capacity = Math.Max(1, resource.Capacity * (group.Length - broken) / group.Length), Closed = [.. closed] };
        }

        return gone || broken > 0
            ? resource with { Closed = [.. closed.Where(c => c.Start < _now).Select(c => new Stretch(c.Start, Math.Min(c.End, _now))), new Stretch(_now, prep.Problem.Horizon)] }
            : resource with { Closed = [.. closed] };
    }

    private ImmutableArray<Goal> Goals(ImmutableArray<Lag> lags, EngineSchedule then)
    {
        List<Term> changes = [];
        int offset = 0;
        for (int i = 0; i < fate.Length; i++)
        {
            if (fate[i] != Fate.ToDo)
            {
                continue;
            }

            if (old.Starts[i] < 0)
            {
                changes.Add(new Term(TermKind.Present, i, NewTask));
                continue;
            }

            changes.Add(new Term(TermKind.Moved, i, 1, then.Starts[i]));
            if (prep.Problem.Activities[i].Modes.Length > 1 && !trace.Tasks[i]!.Kit.Any(state.Broken.ContainsKey))
            {
                changes.Add(new Term(TermKind.Mode, i, -NewKit, old.Modes[i]));
                offset += NewKit;
            }

            if (work.Tasks[i].Optional)
            {
                changes.Add(new Term(TermKind.Present, i, -LostTask));
                offset += LostTask;
            }

            foreach (int person in old.Served[i].Where(p => !state.Gone.ContainsKey(occasion.People[p].Name)))
            {
                changes.Add(new Term(TermKind.Served, i, -NewHands, person));
                offset += NewHands;
            }
        }

        int[] soft = [.. Enumerable.Range(0, lags.Length).Where(i => lags[i].Soft && lags[i].Most is not null)];
        return
        [
            new Goal("quality kept", "minutes over", [.. soft.Select(i => new Term(TermKind.LagExcess, i, 1))]),
            new Goal("few changes", "minutes moved, 15 a change of hands, 10 of kit", [.. changes]) { Offset = offset },
        ];
    }

    // What a change costs the people who must hear of it, in minutes moved: our own weights, common sense and no source.
    private const int NewHands = 15;
    private const int NewKit = 10;
    private const int NewTask = 10;
    private const int LostTask = 60;
}
