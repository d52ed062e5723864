using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Why;

/// <summary>Whether one task, with what is tied to it step for step, could stand a little earlier or later while all else stays as planned; and what holds it.</summary>
/// <remarks>It stays on its kit; any of the able may lend hands. Soft wishes do not hold.</remarks>
/// <param name="problem">The problem.</param>
/// <param name="schedule">Its schedule.</param>
public sealed class OneMove(SchedulingProblem problem, EngineSchedule schedule)
{
    private readonly int[] _group = Groups(problem, schedule);

    /// <summary>The activities that move together with one: those tied to it by a lag that leaves no step of play.</summary>
    /// <param name="activity">The activity.</param>
    public ImmutableArray<int> Together(int activity) => [.. Enumerable.Range(0, _group.Length).Where(a => _group[a] == _group[activity] && schedule.Starts[a] >= 0)];

    /// <summary>What holds an activity against a move; empty when it can move.</summary>
    /// <param name="activity">The activity.</param>
    /// <param name="shift">Steps, negative for earlier.</param>
    public ImmutableArray<Hold> Holds(int activity, int shift)
    {
        ImmutableArray<int> moved = Together(activity);
        List<Hold> holds = [];
        foreach (int a in moved)
        {
            holds.AddRange(Own(a, shift));
            holds.AddRange(Kit(a, shift, moved));
            holds.AddRange(SetPoints(a, shift, moved));
        }

        holds.AddRange(Lags(moved, shift));
        holds.AddRange(Washes(moved, shift));
        holds.AddRange(Hands(moved, shift));
        return [.. holds];
    }

    private static int[] Groups(SchedulingProblem problem, EngineSchedule schedule)
    {
        int[] group = [.. Enumerable.Range(0, problem.Activities.Length)];
        foreach (Lag lag in problem.Lags.Where(l => !l.Soft && l.Most == l.Least && schedule.Starts[l.From] >= 0 && schedule.Starts[l.To] >= 0))
        {
            (int from, int to) = (group[lag.From], group[lag.To]);
            group = [.. group.Select(g => g == to ? from : g)];
        }

        return group;
    }

    private Mode ModeOf(int a) => problem.Activities[a].Modes[schedule.Modes[a]];

    private int Start(int a, int shift) => schedule.Starts[a] + shift;

    private int End(int a, int shift) => Start(a, shift) + ModeOf(a).Duration;

    private IEnumerable<Hold> Own(int a, int shift)
    {
        Activity activity = problem.Activities[a];
        if (activity.FixedStart is not null)
        {
            yield return new Hold(HoldKind.Fixed, a, -1, 0, []);
        }

        bool inside = Start(a, shift) >= 0 && End(a, shift) <= problem.Horizon && (activity.Windows.IsEmpty || activity.Windows.Any(w => w.Start <= Start(a, shift) && End(a, shift) <= w.End));
        if (!inside)
        {
            yield return new Hold(HoldKind.Window, a, -1, 0, []);
        }
    }

    private IEnumerable<Hold> Lags(ImmutableArray<int> moved, int shift)
    {
        int At(int a, Edge edge) => edge == Edge.Start ? Start(a, moved.Contains(a) ? shift : 0) : End(a, moved.Contains(a) ? shift : 0);
        for (int i = 0; i < problem.Lags.Length; i++)
        {
            Lag lag = problem.Lags[i];
            bool from = moved.Contains(lag.From);
            if (from == moved.Contains(lag.To) || schedule.Starts[lag.From] < 0 || schedule.Starts[lag.To] < 0)
            {
                continue;
            }

            int apart = At(lag.To, lag.ToEdge) - At(lag.From, lag.FromEdge);
            if (apart < lag.Least || (!lag.Soft && apart > lag.Most))
            {
                yield return new Hold(HoldKind.Lag, from ? lag.From : lag.To, from ? lag.To : lag.From, i, []);
            }
        }
    }

    private IEnumerable<Hold> Kit(int a, int shift, ImmutableArray<int> moved)
    {
        foreach (Demand d in ModeOf(a).Demands.Where(d => d.Amount > 0))
        {
            (int most, int busiest) = Busiest(d.Resource, Start(a, shift), End(a, shift), moved);
            int mine = moved.Where(m => m == a || (Start(m, 0) < End(a, 0) && Start(a, 0) < End(m, 0))).Sum(m => ModeOf(m).Demands.Where(x => x.Resource == d.Resource).Sum(x => x.Amount));
            if (most + mine > problem.Resources[d.Resource].Capacity)
            {
                yield return new Hold(HoldKind.Kit, a, busiest, 0, [d.Resource]);
            }
        }
    }

    // The most of a resource that others hold at once in a stretch, and one of them that ends last.
    private (int Most, int Other) Busiest(int resource, int from, int to, ImmutableArray<int> moved)
    {
        List<(int Start, int End, int Amount, int Activity)> held = [.. problem.Resources[resource].Closed.Select(c => (c.Start, c.End, Math.Max(1, problem.Resources[resource].Capacity), -1))];
        for (int o = 0; o < schedule.Starts.Length; o++)
        {
            if (schedule.Starts[o] >= 0 && !moved.Contains(o) && schedule.Starts[o] < to && from < End(o, 0))
            {
                int amount = ModeOf(o).Demands.Where(d => d.Resource == resource).Sum(d => d.Amount)
                    + (schedule.Served[o].Contains(resource) ? problem.Resources[resource].Capacity : 0);
                if (amount > 0)
                {
                    held.Add((schedule.Starts[o], End(o, 0), amount, o));
                }
            }
        }

        held.AddRange(problem.Stores.Where(s => s.Resource == resource && schedule.Starts[s.From] >= 0 && (s.To is null || schedule.Starts[s.To.Value] >= 0)).Select(s => (End(s.From, 0), s.To is { } to ? schedule.Starts[to] : problem.Horizon, s.Amount, s.From)));
        held.RemoveAll(h => h.End <= from || to <= h.Start);
        int most = held.Select(h => Math.Max(h.Start, from)).Distinct().Select(t => held.Where(h => h.Start <= t && t < h.End).Sum(h => h.Amount)).DefaultIfEmpty().Max();
        return (most, held.OrderByDescending(h => h.End).Select(h => h.Activity).FirstOrDefault(-1));
    }

    private IEnumerable<Hold> SetPoints(int a, int shift, ImmutableArray<int> moved)
    {
        if (ModeOf(a).State is not { } mine)
        {
            yield break;
        }

        StateKit kit = problem.StateKits[mine.Kit];
        if (kit.Initial is { } initial && Start(a, shift) < kit.ChangeTime(initial, mine.State))
        {
            yield return new Hold(HoldKind.SetPoint, a, -1, mine.Kit, []);
            yield break;
        }

        for (int o = 0; o < schedule.Starts.Length; o++)
        {
            if (schedule.Starts[o] >= 0 && !moved.Contains(o) && ModeOf(o).State is { } other && other.Kit == mine.Kit && other.State != mine.State
                && Start(a, shift) < End(o, 0) + kit.ChangeTime(other.State, mine.State) && schedule.Starts[o] < End(a, shift) + kit.ChangeTime(mine.State, other.State))
            {
                yield return new Hold(HoldKind.SetPoint, a, o, mine.Kit, []);
                yield break;
            }
        }
    }

    private IEnumerable<Hold> Washes(ImmutableArray<int> moved, int shift)
    {
        int S(int a) => Start(a, moved.Contains(a) ? shift : 0);
        int E(int a) => End(a, moved.Contains(a) ? shift : 0);
        for (int i = 0; i < problem.Cleans.Length; i++)
        {
            CleanRule rule = problem.Cleans[i];
            foreach (CleanUse u in rule.Uses.Where(u => rule.Concerns(problem, schedule, u.Activity)))
            {
                foreach (CleanUse v in rule.Uses.Where(v => v.Activity != u.Activity && rule.Concerns(problem, schedule, v.Activity) && (u.Carries & ~v.Carries) != 0))
                {
                    bool touches = moved.Contains(u.Activity) || moved.Contains(v.Activity) || rule.Cleanings.Any(moved.Contains);
                    if (touches && S(u.Activity) < E(v.Activity) && !rule.Cleanings.Any(w => rule.Concerns(problem, schedule, w) && S(w) >= E(u.Activity) && S(v.Activity) >= E(w)))
                    {
                        yield return new Hold(HoldKind.Wash, u.Activity, v.Activity, i, []);
                    }
                }
            }
        }
    }

    private IEnumerable<Hold> Hands(ImmutableArray<int> moved, int shift)
    {
        (int Activity, Choice Choice)[] asked = [.. moved.SelectMany(a => ModeOf(a).Choices.Select(c => (a, c))).OrderBy(x => x.c.Resources.Length)];
        Dictionary<(int, int), (bool Free, int Other)> known = [];
        (bool Free, int Other) Free(int a, int r)
        {
            if (!known.TryGetValue((a, r), out (bool, int) free))
            {
                (int most, int other) = Busiest(r, Start(a, shift), End(a, shift), moved);
                known[(a, r)] = free = (most == 0, other);
            }

            return free;
        }

        bool alone = false;
        foreach ((int a, Choice choice) in asked)
        {
            int[] busy = [.. choice.Resources.Where(r => !Free(a, r).Free)];
            if (choice.Resources.Length - busy.Length < choice.Count)
            {
                alone = true;
                // Whoever is at work names the task that holds them; one who is not there has none.
                int other = busy.Select(r => Free(a, r).Other).Where(o => o >= 0).OrderBy(o => schedule.Served[a].Any(r => schedule.Served[o].Contains(r)) ? 0 : 1).FirstOrDefault(-1);
                yield return new Hold(HoldKind.Hands, a, other, 0, [.. busy]);
            }
        }

        if (!alone && asked.Length > 1 && !Served(asked, 0, shift, [], Free))
        {
            int[] all = [.. asked.SelectMany(x => x.Choice.Resources).Distinct()];
            yield return new Hold(HoldKind.Hands, asked[0].Activity, all.SelectMany(r => asked.Select(x => Free(x.Activity, r).Other)).FirstOrDefault(o => o >= 0, -1), 0, [.. all]);
        }
    }

    // Whether the moments of one group can share out the hands that are free.
    private bool Served((int Activity, Choice Choice)[] asked, int at, int shift, List<(int Resource, int Start, int End)> taken, Func<int, int, (bool Free, int Other)> free)
    {
        if (at == asked.Length)
        {
            return true;
        }

        (int a, Choice choice) = asked[at];
        int[] may = [.. choice.Resources.Where(r => free(a, r).Free && !taken.Exists(t => t.Resource == r && t.Start < End(a, shift) && Start(a, shift) < t.End))];
        return Sets(may, choice.Count).Any(set =>
        {
            taken.AddRange(set.Select(r => (r, Start(a, shift), End(a, shift))));
            bool rest = Served(asked, at + 1, shift, taken, free);
            taken.RemoveRange(taken.Count - set.Length, set.Length);
            return rest;
        });
    }

    private static IEnumerable<int[]> Sets(int[] from, int count)
        => count == 0 ? [[]] : Enumerable.Range(0, Math.Max(0, from.Length - count + 1)).SelectMany(i => Sets(from[(i + 1)..], count - 1).Select(s => (int[])[from[i], .. s]));
}
