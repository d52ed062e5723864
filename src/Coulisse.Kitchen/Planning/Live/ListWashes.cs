using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Washes of shared kit for a schedule made by lists: put in where one use leaves what the next must not have, and the schedule laid again.</summary>
internal static class ListWashes
{
    private const int Turns = 3;

    /// <summary>The schedule with the washes it needs; null when there are not enough of them, or no place.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="made">A schedule of it, which may want washes.</param>
    /// <param name="pass">How it is laid again.</param>
    public static EngineSchedule? Of(SchedulingProblem problem, EngineSchedule? made, RightShift.Pass pass)
    {
        for (int turn = 0; made is not null && !Clean(problem, made) && turn < Turns; turn++)
        {
            made = Washed(problem, made) is { } washed ? RightShift.Repair(problem, washed, pass with { FreeOrder = false }) : null;
        }

        return made is not null && Clean(problem, made) ? made : null;
    }

    // A wash before every use that must not have what was left since the last one; null when there are not enough washes.
    private static EngineSchedule? Washed(SchedulingProblem p, EngineSchedule s)
    {
        (int[] start, int[] mode) = ([.. s.Starts], [.. s.Modes]);
        int[] unit = LagUnits.Numbers(start.Length, p.Lags);
        foreach (CleanRule rule in p.Cleans)
        {
            Queue<int> washes = new(rule.Cleanings.Where(w => start[w] < 0));
            (long left, int last) = (0, 0);

            // What longest waits tie together is not torn apart by somebody else's use and the wash after it.
            Dictionary<int, int> together = rule.Uses.GroupBy(u => unit[u.Activity]).ToDictionary(g => g.Key, g => g.Min(u => s.Starts[u.Activity]));
            foreach (CleanUse use in rule.Uses.Where(u => rule.Concerns(p, s, u.Activity)).OrderBy(u => together[unit[u.Activity]]).ThenBy(u => s.Starts[u.Activity]))
            {
                start[use.Activity] = Math.Max(start[use.Activity], last);
                if ((left & ~use.Carries) != 0)
                {
                    if (!washes.TryDequeue(out int wash))
                    {
                        return null;
                    }

                    mode[wash] = Math.Max(0, p.Activities[wash].Modes.ToList().FindIndex(rule.Holds));
                    start[wash] = start[use.Activity];
                    left = 0;
                    start[use.Activity] += p.Activities[wash].Modes[mode[wash]].Duration;
                }

                left |= use.Carries;
                last = start[use.Activity] + p.Activities[use.Activity].Modes[mode[use.Activity]].Duration;
            }
        }

        return s with { Starts = [.. start], Modes = [.. mode], Served = [.. s.Served.Select((x, i) => s.Starts[i] < 0 && start[i] >= 0 ? [.. p.Activities[i].Modes[mode[i]].Choices.SelectMany(c => c.Resources).Distinct()] : x)] };
    }

    private static bool Clean(SchedulingProblem p, EngineSchedule s) => p.Cleans.All(rule => rule.Uses.Where(u => rule.Concerns(p, s, u.Activity)).All(u => rule.Uses.Where(v => v.Activity != u.Activity && rule.Concerns(p, s, v.Activity)).All(v =>
        (u.Carries & ~v.Carries) == 0 || s.Starts[u.Activity] >= s.End(p, v.Activity) || rule.Cleanings.Any(w => rule.Concerns(p, s, w) && s.Starts[w] >= s.End(p, u.Activity) && s.Starts[v.Activity] >= s.End(p, w)))));
}
