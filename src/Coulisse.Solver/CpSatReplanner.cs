using System.Collections.Immutable;
using System.Diagnostics;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Solver;

/// <summary>Makes a plan again from where things stand: a quick repair first, then the fewest changes that can be found in the time.</summary>
public sealed class CpSatReplanner
{
    private readonly CpSatEngine _engine = new();

    /// <summary>Re-plans.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">One batch for each dish.</param>
    /// <param name="plan">The plan followed so far.</param>
    /// <param name="state">What happened.</param>
    /// <param name="options">Effort; two seconds are enough for a day's kitchen.</param>
    /// <param name="progress">Hears the quick repair and every better plan.</param>
    /// <param name="cancel">Stop and keep the best so far.</param>
    public Replanned Replan(Occasion occasion, ImmutableArray<Batch> batches, Plan plan, LiveState state, PlanOptions options, IProgress<Plan>? progress = null, CancellationToken cancel = default)
    {
        SlotPlan slot = LiveSlot.Decide(occasion);
        return Replan(occasion, slot, TaskBuilder.Build(occasion, batches, slot) with { Edits = options.Edits.IsEmpty ? plan.Edits : options.Edits }, plan, state, options, progress, cancel);
    }

    /// <summary>Re-plans work and a slot that were already decided, as when something of them is given up.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="slot">The slot.</param>
    /// <param name="work">The work, with its edits.</param>
    /// <param name="plan">The plan followed so far.</param>
    /// <param name="state">What happened.</param>
    /// <param name="options">Effort.</param>
    /// <param name="progress">Hears the quick repair and every better plan.</param>
    /// <param name="cancel">Stop and keep the best so far.</param>
    public Replanned Replan(Occasion occasion, SlotPlan slot, PrepWork work, Plan plan, LiveState state, PlanOptions options, IProgress<Plan>? progress = null, CancellationToken cancel = default)
    {
        Stopwatch clock = Stopwatch.StartNew();
        Standing standing = Standing.Of(occasion, work, plan, state);
        Plan Written(EngineSchedule s) => StandingPlan.Write(occasion, slot, standing, s, plan);
        // What can stay stays; else all shifts right; a plan that stands as late as it may has no room for that, and all that is left is laid anew.
        EngineSchedule? quick = RightShift.Insert(standing.Prep.Problem, standing.Old) ?? RightShift.Repair(standing.Prep.Problem, standing.Old) ?? QuickStart.Of(standing.Prep.Problem, hurry: true);
        double? quickSeconds = null;
        SchedulingProblem problem = standing.Prep.Problem;
        if (quick is not null)
        {
            progress?.Report(Written(quick));
            quickSeconds = clock.Elapsed.TotalSeconds;
            problem = problem with { Activities = [.. problem.Activities.Select((a, i) => a with { HintStart = quick.Starts[i] >= 0 ? quick.Starts[i] : null, HintMode = quick.Modes[i] })] };
        }

        // Reading the answer back and telling what changed is part of the time that was promised.
        double left = Math.Max(0.2, (options.Seconds * 0.92) - clock.Elapsed.TotalSeconds);
        EngineOutcome found = _engine.Solve(problem, new Effort(left, options.Seed, options.Workers), s => progress?.Report(Written(s)), cancel);
        PlanOutcome outcome = (found, quick) switch
        {
            (EngineSchedule s, _) => Written(s),
            (_, { } q) => Written(q),
            (EngineInfeasible, _) => new NoPlan([$"What is left does not fit before {plan.SlotStart.ToString("ddd HH:mm", System.Globalization.CultureInfo.InvariantCulture)} with the hands and kit that are left."], []),
            _ => new NotYet("No plan was found in the time given, and none was proven impossible. Give it more seconds."),
        };
        return new Replanned(outcome, outcome is Plan after ? PlanChanges.Between(plan, after) : [], standing.Warnings, quickSeconds, clock.Elapsed.TotalSeconds);
    }
}
