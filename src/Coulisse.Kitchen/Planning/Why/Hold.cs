using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Why;

/// <summary>What kind of thing holds a task where it is.</summary>
public enum HoldKind
{
    /// <summary>It is fixed to its hour.</summary>
    Fixed,

    /// <summary>It would leave the windows in which it may lie: prep windows, keeping, the time by which it must be done.</summary>
    Window,

    /// <summary>A lag to another task.</summary>
    Lag,

    /// <summary>Everybody able has their hands full or is not there.</summary>
    Hands,

    /// <summary>Its kit or circuit is full.</summary>
    Kit,

    /// <summary>Its kit stands at another set point, or on its way from it.</summary>
    SetPoint,

    /// <summary>A wash would be missing between two uses.</summary>
    Wash,
}

/// <summary>One thing that holds a task: take exactly it away and the task can move a step, unless another thing holds it too.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Activity">Position of the activity held; one that moves together with the task asked about.</param>
/// <param name="Other">Position of the activity on the other side; -1 when there is none.</param>
/// <param name="Index">Position of the lag, the set-point kit or the wash rule; for hands and kit 0.</param>
/// <param name="Resources">For hands and kit: positions of the resources that are busy.</param>
public sealed record Hold(HoldKind Kind, int Activity, int Other, int Index, ImmutableArray<int> Resources)
{
    /// <summary>The problem without exactly this.</summary>
    /// <param name="problem">The problem.</param>
    public SchedulingProblem Without(SchedulingProblem problem)
    {
        switch (Kind)
        {
            case HoldKind.Lag:
                return problem with { Lags = problem.Lags.RemoveAt(Index).Insert(Index, problem.Lags[Index] with { Least = -problem.Horizon, Most = null }) };
            case HoldKind.Fixed:
                return Changed(problem, a => a with { FixedStart = null });
            case HoldKind.Window:
                return Changed(problem, a => a with { Windows = [] });
            case HoldKind.Hands:
                return Spared(problem);
            case HoldKind.Kit:
                Resource[] resources = [.. problem.Resources];
                foreach (int r in Resources)
                {
                    resources[r] = resources[r] with { Capacity = resources[r].Capacity * 2 + 1, Closed = [] };
                }

                return problem with { Resources = [.. resources] };
            case HoldKind.SetPoint:
                return Changed(problem, a => a with { Modes = [.. a.Modes.Select(m => m.State?.Kit == Index ? m with { State = null } : m)] });
            default:
                CleanRule rule = problem.Cleans[Index];
                return problem with { Cleans = problem.Cleans.SetItem(Index, rule with { Uses = [.. rule.Uses.Where(u => u.Activity != Activity)] }) };
        }
    }

    // For everybody who is busy, one more like them, free all day.
    private SchedulingProblem Spared(SchedulingProblem problem)
    {
        int first = problem.Resources.Length;
        int[] spare = [.. Enumerable.Range(first, Resources.Length)];
        Choice Wider(Choice c) => c.Resources.Any(Resources.Contains) ? c with { Resources = [.. c.Resources, .. spare] } : c;
        return problem with
        {
            Resources = [.. problem.Resources, .. Resources.Select(r => new Resource(problem.Resources[r].Name, 1))],
            Activities = [.. problem.Activities.Select(a => a with { Modes = [.. a.Modes.Select(m => m with { Choices = [.. m.Choices.Select(Wider)] })] })],
        };
    }

    private SchedulingProblem Changed(SchedulingProblem problem, Func<Activity, Activity> change)
        => problem with { Activities = problem.Activities.SetItem(Activity, change(problem.Activities[Activity])) };
}
