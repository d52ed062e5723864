using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Solver;

/// <summary>Plans an occasion: the slot first, then the twins that follow from it, then the prep days by CP-SAT.</summary>
public sealed class CpSatPlanner : IPlanner
{
    private readonly CpSatEngine _engine = new();

    /// <inheritdoc/>
    public PlanOutcome Plan(Occasion occasion, ImmutableArray<Batch> batches, PlanOptions options, IProgress<Plan>? progress = null, CancellationToken cancel = default)
    {
        SlotPlan slot = LiveSlot.Decide(occasion);
        PrepWork work = ReadyEarlier.Of(TaskBuilder.Build(occasion, batches, slot) with { Edits = options.Edits }, options.Buffer);
        PrepProblem prep = PrepProblem.Write(occasion, work);
        Plan Written(EngineSchedule s) => PlanWriter.Write(occasion, slot, work, prep, s);

        // A plan that breaks what only a finished plan shows is made again with that written in; where that cannot be, it stands with its fault told.
        Plan Kept(EngineSchedule schedule)
        {
            Plan made = Written(schedule);
            for (int look = 0; look < Looks && !cancel.IsCancellationRequested && Tightened.Of(occasion, batches, work, prep, made, options.OutMinutes) is { } tight; look++)
            {
                if (_engine.Solve(Hinted(tight.Problem, schedule) with { Known = null }, new Effort(Math.Max(2, options.Seconds / 2), options.Seed, options.Workers) { Repeatable = options.Repeatable, FirstOnly = options.FirstOnly }, better: null, cancel) is not EngineSchedule better)
                {
                    break;
                }

                (prep, schedule, made) = (tight, better, PlanWriter.Write(occasion, slot, work, tight, better));
            }

            return made;
        }

        EngineSchedule Measured(EngineSchedule s) => s with { Levels = [.. prep.Problem.Goals.Select(g => new LevelResult(g.Name, GoalValue.Of(prep.Problem, g, s), long.MinValue))] };
        EngineSchedule? quick = QuickStart.Of(prep.Problem, first: s => progress?.Report(Written(Measured(s))));
        if (quick is not null)
        {
            quick = Measured(quick);
            progress?.Report(Written(quick));
        }

        EngineOutcome outcome = quick is not null && options.FirstOnly ? quick
            : _engine.Solve(Hinted(prep.Problem, quick), new Effort(options.Seconds, options.Seed, options.Workers) { Repeatable = options.Repeatable, FirstOnly = options.FirstOnly }, better: s => progress?.Report(Written(s)), cancel);
        if (outcome is EngineUnknown && quick is not null)
        {
            outcome = quick;
        }

        if (outcome is EngineUnknown && !cancel.IsCancellationRequested)
        {
            // A busy machine: any valid plan is worth waiting a minute more for.
            outcome = _engine.Solve(prep.Problem, new Effort(60, options.Seed, options.Workers) { FirstOnly = true }, better: null, cancel);
        }

        return outcome switch
        {
            EngineSchedule schedule => Kept(schedule),
            EngineInfeasible => Impossible(occasion, work, options, cancel),
            _ => new NotYet("No plan was found in the time given, and none was proven impossible. Give it more seconds."),
        };
    }

    private const int Looks = 3;

    private static SchedulingProblem Hinted(SchedulingProblem problem, EngineSchedule? quick) => quick is null ? problem : problem with
    {
        Known = quick,
        Activities = [.. problem.Activities.Select((a, i) => quick.Starts[i] < 0 ? a : a with { HintStart = quick.Starts[i], HintMode = quick.Modes[i], HintServed = quick.Served[i] })],
    };

    private NoPlan Impossible(Occasion occasion, PrepWork work, PlanOptions options, CancellationToken cancel)
    {
        Effort each = new(4, options.Seed, options.Workers);
        ImmutableArray<PrepDemand> conflict = Conflicts.Find(_engine, occasion, work, each, cancel);
        return new NoPlan([.. conflict.Select(d => d.Words)], [.. Remedies.Find(_engine, occasion, options.Edits, conflict, each, cancel: cancel).Select(r => r.Words)]);
    }
}
