using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Model;

/// <summary>Where the windows of activities let them start, and how long they are at least and at most.</summary>
internal sealed class StepWindows
{
    private readonly ImmutableArray<(int Shortest, int Longest, Stretch[] Starts)> _of;

    /// <summary>The windows of a problem.</summary>
    /// <param name="p">The problem.</param>
    public StepWindows(SchedulingProblem p) => _of =
    [
        .. p.Activities.Select(a => (Min: a.Modes.Min(m => m.Duration), Activity: a)).Select(x => (x.Min, x.Activity.Modes.Max(m => m.Duration),
            (x.Activity.Windows.IsEmpty ? [new Stretch(0, p.Horizon)] : x.Activity.Windows).Select(w => new Stretch(Math.Max(0, w.Start), Math.Min(w.End, p.Horizon) - x.Min)).Where(s => s.End >= s.Start).OrderBy(s => s.Start).ToArray())),
    ];

    /// <summary>Steps of its shortest way.</summary>
    /// <param name="a">Activity.</param>
    public int Shortest(int a) => _of[a].Shortest;

    /// <summary>Steps of its longest way.</summary>
    /// <param name="a">Activity.</param>
    public int Longest(int a) => _of[a].Longest;

    /// <summary>The first start at or after a step; past all windows one that is never reached.</summary>
    /// <param name="a">Activity.</param>
    /// <param name="at">Step.</param>
    public int Later(int a, int at)
    {
        foreach (Stretch s in _of[a].Starts)
        {
            if (s.End >= at)
            {
                return Math.Max(at, s.Start);
            }
        }

        return Never;
    }

    /// <summary>The last start at or before a step; before all windows one that is never reached.</summary>
    /// <param name="a">Activity.</param>
    /// <param name="at">Step.</param>
    public int Sooner(int a, int at)
    {
        for (int i = _of[a].Starts.Length - 1; i >= 0; i--)
        {
            if (_of[a].Starts[i].Start <= at)
            {
                return Math.Min(at, _of[a].Starts[i].End);
            }
        }

        return -Never;
    }

    private const int Never = 1 << 28;
}
