using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Moves everything of a schedule as late as the rest allows (right justification), what comes last first.</summary>
internal static class LateShift
{
    /// <summary>The schedule moved; no goal is the worse for it, by the order of the goals.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="made">A schedule of it that keeps every hard rule.</param>
    /// <param name="lags">Lags between those present.</param>
    public static EngineSchedule Of(SchedulingProblem problem, EngineSchedule made, ImmutableArray<Lag> lags)
    {
        ListBoard board = new(problem, made);
        UnitPlacer placer = new(problem, board, lags) { Firm = true, Late = true };
        ImmutableArray<ImmutableArray<int>> units = LagUnits.Present(made, lags);
        foreach (int a in units.SelectMany(u => u))
        {
            board.Take(a, made.Modes[a], made.Starts[a], made.Served[a]);
        }

        EngineSchedule best = made;
        foreach (ImmutableArray<int> unit in units.OrderByDescending(u => u.Max(a => made.Starts[a])))
        {
            int[] open = [.. unit.Where(a => problem.Activities[a].FixedStart is null)];
            Array.ForEach(open, board.Give);
            if (placer.Place(unit, _ => 0) && board.Schedule is var moved && !GoalValue.Better(problem, best, moved))
            {
                best = moved;
                continue;
            }

            Array.ForEach([.. open.Where(board.Placed)], board.Give);
            Array.ForEach(open, a => board.Take(a, best.Modes[a], best.Starts[a], best.Served[a]));
        }

        return best with { Levels = [] };
    }
}
