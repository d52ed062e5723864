using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Model;

/// <summary>A renewable resource.</summary>
/// <param name="Name">Name, for messages.</param>
/// <param name="Capacity">How much of it there is at any step.</param>
public sealed record Resource(string Name, int Capacity)
{
    /// <summary>When none of it is to be had.</summary>
    public ImmutableArray<Stretch> Closed { get; init; } = [];
}

/// <summary>A resource that is used up.</summary>
/// <param name="Name">Name, for messages.</param>
/// <param name="Amount">How much there is for the whole schedule.</param>
public sealed record Stock(string Name, int Amount);

/// <summary>A kit that holds one state at a time; uses at the same state may overlap (capacity is a <see cref="Resource"/> of its own).</summary>
/// <param name="Name">Name, for messages.</param>
/// <param name="RisePerStep">States gained a step when heating; 0 means a change takes no time.</param>
/// <param name="FallPerStep">States lost a step when cooling; 0 means a change takes no time.</param>
public sealed record StateKit(string Name, double RisePerStep, double FallPerStep)
{
    /// <summary>State at step 0; null when any state is reached before the first use.</summary>
    public int? Initial { get; init; }

    /// <summary>Steps a change from one state to another takes, rounded up.</summary>
    public int ChangeTime(int from, int to) => to > from
        ? RisePerStep > 0 ? (int)Math.Ceiling((to - from) / RisePerStep) : 0
        : FallPerStep > 0 ? (int)Math.Ceiling((from - to) / FallPerStep) : 0;
}

/// <summary>A place held between two activities.</summary>
/// <param name="From">It is held from the end of this activity.</param>
/// <param name="To">To the start of this one; null for the end of the schedule.</param>
/// <param name="Resource">Resource held.</param>
/// <param name="Amount">How much.</param>
public sealed record Storing(int From, int? To, int Resource, int Amount);

/// <summary>Uses of one shared kit (a resource of capacity 1) between which a cleaning must stand where one leaves what the next must not have.</summary>
/// <param name="Resource">The shared kit.</param>
/// <param name="Uses">Its uses and what each leaves, as a set of bits.</param>
/// <param name="Cleanings">Optional activities that clean it, each of which holds the kit itself.</param>
/// <remarks>A use or a cleaning in a mode that does not hold the kit has nothing to do with it.</remarks>
public sealed record CleanRule(int Resource, ImmutableArray<CleanUse> Uses, ImmutableArray<int> Cleanings)
{
    /// <summary>True when an activity is there and on this kit.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="schedule">Its schedule.</param>
    /// <param name="activity">The activity.</param>
    public bool Concerns(SchedulingProblem problem, EngineSchedule schedule, int activity)
        => schedule.Starts[activity] >= 0 && Holds(problem.Activities[activity].Modes[schedule.Modes[activity]]);

    /// <summary>True when a mode holds this kit; where no mode of any use says so, all of them do.</summary>
    /// <param name="mode">The mode.</param>
    public bool Holds(Mode mode) => mode.Demands.IsEmpty || mode.Demands.Any(d => d.Resource == Resource && d.Amount > 0);
}

/// <summary>A use of shared kit.</summary>
/// <param name="Activity">Position of the activity.</param>
/// <param name="Carries">Bits of what it holds and leaves behind.</param>
public readonly record struct CleanUse(int Activity, long Carries);
