using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Coulisse.Kitchen.Planning.Model;
using Google.OrTools.Sat;

namespace Coulisse.Solver;

/// <summary>The scheduling engine over CP-SAT: levels are solved in order, each fixed before the next.</summary>
public sealed class CpSatEngine : ISchedulingEngine
{
    private const int ManyBakes = 30;

    /// <inheritdoc/>
    public EngineOutcome Solve(SchedulingProblem problem, Effort effort, Action<EngineSchedule>? better = null, CancellationToken cancel = default)
        => Engine.ImproveMakespan.Solve(problem, effort, better, (p, e, tell, stop) => Search(p, e, tell ? better : null, stop), cancel)
            ?? Engine.ImproveByParts.Solve(problem, effort, (p, e, _, stop) => Search(p, e, null, stop), better, cancel)
            ?? Search(problem, Suited(problem, effort), better, cancel);

    // A shortest schedule of tasks in several modes, or of many bakes: the linear relaxation costs more than it gives (measured: decisions 0183, 0185).
    private static Effort Suited(SchedulingProblem problem, Effort effort)
        => effort.Parameters.Length == 0 && (problem.StateKits.IsEmpty || problem.Activities.Count(a => a.Modes.Any(m => m.State is not null)) >= ManyBakes)
            && (problem.Goals.IsEmpty || problem.Goals is [{ Terms: [{ Kind: TermKind.Makespan }] }]) ? effort with { Parameters = "subsolvers:\"no_lp\"" } : effort;

    private static EngineOutcome Search(SchedulingProblem problem, Effort effort, Action<EngineSchedule>? better, CancellationToken cancel)
    {
        Stopwatch clock = Stopwatch.StartNew();
        CpSatModel built = CpSatModel.Build(problem, effort.States);
        if (built.Refused is { } why)
        {
            return new EngineInfeasible(why) { Seconds = clock.Elapsed.TotalSeconds };
        }

        ImmutableArray<Goal> goals = problem.Goals.IsEmpty ? [Goal.Makespan] : problem.Goals;
        List<LevelResult> levels = [];
        EngineSchedule? best = null;
        for (int level = 0; level < goals.Length; level++)
        {
            LinearExpr value = built.Value(goals[level]);
            built.Model.Minimize(value);
            // Each level gets an equal share of what is left, so that an early hard level cannot starve the later ones;
            // but while there is no schedule at all, finding one may take all the time there is.
            // A search that must give the same answer again looks at no clock: its shares are of the effort, not of what a busy machine left of it.
            double left = Math.Max(0.05, effort.Repeatable ? effort.Seconds * (goals.Length - level) / goals.Length : effort.Seconds - clock.Elapsed.TotalSeconds);
            double share = Math.Max(0.05, left / (goals.Length - level));
            CpSolver solver = new() { StringParameters = Parameters(effort, best is null && !effort.Repeatable ? left : share) };
            using Stopper stop = new(solver, cancel);
            // A first solution is news only where none is known.
            using FirstFound first = new(solver, best is null && !effort.Repeatable ? share : double.PositiveInfinity, read => (problem.Known is null ? better : null)?.Invoke(built.ReadFirst(read, goals)));
            CpSolverStatus status = cancel.IsCancellationRequested && best is not null ? CpSolverStatus.Unknown
                : best is null ? solver.Solve(built.Model, first) : solver.Solve(built.Model);
            if (status == CpSolverStatus.ModelInvalid)
            {
                throw new InvalidOperationException("The scheduling model or its parameters are invalid: " + built.Model.Validate());
            }

            if (status == CpSolverStatus.Infeasible && best is null)
            {
                return new EngineInfeasible("Proven by search.") { Seconds = clock.Elapsed.TotalSeconds };
            }

            if (status is CpSolverStatus.Unknown or CpSolverStatus.Infeasible)
            {
                if (best is null)
                {
                    return new EngineUnknown(null) { Seconds = clock.Elapsed.TotalSeconds };
                }

                // No better than the schedule of the level before: its value stands and nothing is proven about it.
                levels.Add(new LevelResult(goals[level].Name, GoalValue.Of(problem, goals[level], best), long.MinValue));
                continue;
            }

            long reached = (long)Math.Round(solver.ObjectiveValue);
            long bound = status == CpSolverStatus.Optimal ? reached : (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);
            levels.Add(new LevelResult(goals[level].Name, reached, bound));
            best = built.Read(new SolutionReader(solver.Value, solver.BooleanValue), [.. levels]);
            better?.Invoke(best);
            built.Model.Add(value <= reached);
            built.Hint(solver);
        }

        return best! with { Levels = [.. levels], Seconds = clock.Elapsed.TotalSeconds };
    }

    private static string Parameters(Effort effort, double seconds)
    {
        string limit = seconds.ToString("0.###", CultureInfo.InvariantCulture);
        string time = effort.Repeatable ? $"max_deterministic_time:{limit},interleave_search:true" : $"max_time_in_seconds:{limit}";
        string text = string.Create(CultureInfo.InvariantCulture, $"{time},num_workers:{effort.Workers},random_seed:{effort.Seed}");
        text += effort.FirstOnly ? ",stop_after_first_solution:true" : "";
        return effort.Parameters.Length > 0 ? text + "," + effort.Parameters : text;
    }
}
