using System.Diagnostics;
using System.Globalization;
using Coulisse.Kitchen.Planning.Model;
using Google.OrTools.Sat;

namespace Coulisse.Gauge.Planning;

/// <summary>The baseline the engine is held against: one start an activity, fixed intervals, cumulatives, lags, and nothing clever. It stays as it is.</summary>
internal sealed class PlainModel(string parameters) : ISchedulingEngine
{
    public EngineOutcome Solve(SchedulingProblem problem, Effort effort, Action<EngineSchedule>? better = null, CancellationToken cancel = default)
    {
        Stopwatch clock = Stopwatch.StartNew();
        CpModel model = new();
        int n = problem.Activities.Length;
        IntVar[] start = [.. problem.Activities.Select(a => a.FixedStart is { } at ? model.NewConstant(at) : model.NewIntVar(0, problem.Horizon, a.Name))];
        BoolVar[][] mode = [.. problem.Activities.Select(a => a.Modes.Select(_ => model.NewBoolVar("")).ToArray())];
        LinearExpr[] end = new LinearExpr[n];
        CumulativeConstraint[] sums = [.. problem.Resources.Select(r => model.AddCumulative(r.Capacity))];
        LinearExpr[] used = [.. problem.Stocks.Select(_ => LinearExpr.Constant(0))];
        for (int a = 0; a < n; a++)
        {
            model.AddExactlyOne(mode[a]);
            end[a] = start[a] + LinearExpr.Sum(problem.Activities[a].Modes.Select((m, i) => mode[a][i] * m.Duration));
            for (int m = 0; m < mode[a].Length; m++)
            {
                Mode way = problem.Activities[a].Modes[m];
                IntervalVar interval = mode[a].Length == 1 ? model.NewFixedSizeIntervalVar(start[a], way.Duration, "") : model.NewOptionalFixedSizeIntervalVar(start[a], way.Duration, mode[a][m], "");
                foreach (Demand d in way.Demands)
                {
                    sums[d.Resource].AddDemand(interval, d.Amount);
                }

                foreach (Demand u in way.Uses)
                {
                    used[u.Resource] += mode[a][m] * u.Amount;
                }
            }
        }

        foreach (Lag lag in problem.Lags)
        {
            LinearExpr apart = (lag.ToEdge == Edge.Start ? start[lag.To] : end[lag.To]) - (lag.FromEdge == Edge.Start ? start[lag.From] : end[lag.From]);
            model.Add(apart >= lag.Least);
        }

        for (int s = 0; s < used.Length; s++)
        {
            model.Add(used[s] <= problem.Stocks[s].Amount);
        }

        Goal goal = problem.Goals.IsEmpty ? Goal.Makespan : problem.Goals[0];
        IntVar last = model.NewIntVar(0, problem.Horizon, "last");
        if (goal.Terms[0].Kind == TermKind.Start)
        {
            model.Add(last == start[goal.Terms[0].Index]);
        }
        else
        {
            foreach (LinearExpr e in end)
            {
                model.Add(last >= e);
            }
        }

        model.Minimize(last);
        string text = string.Create(CultureInfo.InvariantCulture, $"max_time_in_seconds:{effort.Seconds},num_workers:{effort.Workers},random_seed:{effort.Seed}");
        CpSolver solver = new() { StringParameters = parameters.Length > 0 ? text + "," + parameters : text };
        CpSolverStatus status = solver.Solve(model);
        double seconds = clock.Elapsed.TotalSeconds;
        return status switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => new EngineSchedule(
                [.. start.Select(v => (int)solver.Value(v))],
                [.. mode.Select(m => Array.FindIndex(m, solver.BooleanValue))],
                [.. mode.Select(_ => System.Collections.Immutable.ImmutableArray<int>.Empty)],
                [new LevelResult(goal.Name, solver.Value(last), (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6))]) { Seconds = seconds },
            CpSolverStatus.Infeasible => new EngineInfeasible("Proven by search.") { Seconds = seconds },
            CpSolverStatus.Unknown => new EngineUnknown(solver.BestObjectiveBound) { Seconds = seconds },
            _ => throw new InvalidOperationException(model.Validate()),
        };
    }
}
