using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;
using Term = Coulisse.Kitchen.Planning.Model.Term;

namespace Coulisse.Solver.Engine;

/// <summary>A part of a problem that may move while all the rest of a schedule stands: small enough to be searched well, and what it finds fits the rest.</summary>
internal sealed class Part
{
    private readonly SchedulingProblem _whole;
    private readonly EngineSchedule _best;
    private readonly int[] _free;
    private readonly int[] _of;
    private readonly Dictionary<int, int> _at = [];

    private Part(SchedulingProblem whole, EngineSchedule best, HashSet<int> free)
    {
        (_whole, _best, _free) = (whole, best, [.. free]);
        HashSet<int> held = [.. _free.SelectMany(a => whole.Activities[a].Modes).SelectMany(m => m.Demands.Select(d => d.Resource).Concat(m.Choices.SelectMany(c => c.Resources)))];
        HashSet<int> kits = [.. _free.SelectMany(a => whole.Activities[a].Modes).Select(m => m.State?.Kit).OfType<int>()];
        HashSet<int> told = [.. whole.Lags.Where(l => free.Contains(l.From) || free.Contains(l.To)).SelectMany(l => new[] { l.From, l.To })];
        bool Matters(int a) => free.Contains(a) || (best.Starts[a] >= 0 && (told.Contains(a) || best.Served[a].Any(held.Contains)
            || whole.Activities[a].Modes[best.Modes[a]] is var m && (m.Demands.Any(d => held.Contains(d.Resource)) || (m.State is { } s && kits.Contains(s.Kit)))));
        _of = [.. Enumerable.Range(0, whole.Activities.Length).Where(Matters)];
        for (int i = 0; i < _of.Length; i++)
        {
            _at[_of[i]] = i;
        }
    }

    /// <summary>The part as a problem of its own: the level sought, those before it no worse than they are.</summary>
    public SchedulingProblem Problem { get; private init; } = null!;

    /// <summary>A part; null when nothing of the level sought can move in it.</summary>
    /// <param name="whole">The whole problem.</param>
    /// <param name="best">The schedule that stands.</param>
    /// <param name="free">What may move.</param>
    /// <param name="level">Position of the goal sought.</param>
    public static Part? Of(SchedulingProblem whole, EngineSchedule best, HashSet<int> free, int level)
    {
        Part part = new(whole, best, free);
        List<Lag> lags = [];
        Dictionary<int, int> lagAt = [];
        for (int l = 0; l < whole.Lags.Length; l++)
        {
            Lag lag = whole.Lags[l];
            if ((free.Contains(lag.From) || free.Contains(lag.To)) && part._at.TryGetValue(lag.From, out int from) && part._at.TryGetValue(lag.To, out int to))
            {
                lagAt[l] = lags.Count;
                lags.Add(lag with { From = from, To = to });
            }
        }

        bool Moves(Term t) => t.Kind == TermKind.LagExcess ? lagAt.ContainsKey(t.Index) : free.Contains(t.Index);
        Goal Told(Goal goal) => goal with { Terms = [.. goal.Terms.Where(Moves).Select(t => t with { Index = t.Kind == TermKind.LagExcess ? lagAt[t.Index] : part._at[t.Index] })] };
        GoalLimit Limited(Goal goal) => new(Told(goal), GoalValue.Of(whole, goal with { Terms = [.. goal.Terms.Where(Moves)] }, best));
        Goal sought = Told(whole.Goals[level]);
        return sought.Terms.IsEmpty ? null : new Part(whole, best, free)
        {
            Problem = whole with
            {
                Activities = [.. part._of.Select(a => free.Contains(a) ? Hinted(whole.Activities[a], best, a) : part.Standing(a))],
                Lags = [.. lags],
                Cleans = [.. whole.Cleans.Select(c => c with
                {
                    Uses = [.. c.Uses.Where(u => part._at.ContainsKey(u.Activity)).Select(u => u with { Activity = part._at[u.Activity] })],
                    Cleanings = [.. c.Cleanings.Where(part._at.ContainsKey).Select(w => part._at[w])],
                })],
                Goals = [sought],
                Limits = [.. whole.Goals.Take(level + 1).Select(Limited)],
                Known = null,
            },
        };
    }

    /// <summary>The whole schedule with what the part found.</summary>
    public EngineSchedule Merged(EngineSchedule found)
    {
        (int[] starts, int[] modes, ImmutableArray<int>[] served) = ([.. _best.Starts], [.. _best.Modes], [.. _best.Served]);
        foreach (int a in _free)
        {
            (starts[a], modes[a], served[a]) = (found.Starts[_at[a]], found.Modes[_at[a]], found.Served[_at[a]]);
        }

        return new EngineSchedule([.. starts], [.. modes], [.. served], []);
    }

    private static Activity Hinted(Activity a, EngineSchedule best, int i)
        => best.Starts[i] < 0 ? a : a with { HintStart = best.Starts[i], HintMode = best.Modes[i], HintServed = best.Served[i] };

    // Where it stands and by whom: whoever serves it is held outright.
    private Activity Standing(int a)
    {
        Activity activity = _whole.Activities[a];
        Mode mode = activity.Modes[_best.Modes[a]];
        return activity with
        {
            Optional = false, FixedStart = _best.Starts[a], Windows = [],
            HintStart = null, HintMode = null, HintServed = default,
            Modes = [mode with { Choices = [], Demands = [.. mode.Demands.Concat(_best.Served[a].Select(r => new Demand(r, _whole.Resources[r].Capacity))).GroupBy(d => d.Resource).Select(g => new Demand(g.Key, g.Sum(d => d.Amount)))] }],
        };
    }
}
