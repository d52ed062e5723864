using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Views.Web;

/// <summary>What the rehearsals of a plan took, segment by segment: from one gate to the next. The last segment has no gate after it and is not measured.</summary>
/// <param name="Plan">Plan.</param>
/// <param name="Title">Occasion.</param>
/// <param name="Says">In one sentence.</param>
/// <param name="Runs">Each rehearsal, oldest first.</param>
/// <param name="Rows">Each segment.</param>
public sealed record RehearsalsView(string Plan, string Title, string Says, ImmutableArray<RehearsalRun> Runs, ImmutableArray<RehearsalRow> Rows)
{
    /// <summary>Runs from which a spread is told; of fewer only the runs themselves are shown.</summary>
    public const int Enough = 3;

    /// <summary>Lays the runs side by side.</summary>
    /// <param name="id">Plan's id.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="runs">Each rehearsal with the second of the slot at which each segment began.</param>
    public static RehearsalsView From(string id, Plan plan, ImmutableArray<(string Run, DateTimeOffset Started, ImmutableSortedDictionary<int, int> Gates)> runs)
    {
        ImmutableArray<RehearsalRow> rows = [.. plan.RunSheet.OrderBy(s => s.Number).Select(s => Row(s, [.. runs.Select(r => r.Gates.TryGetValue(s.Number, out int from) && r.Gates.TryGetValue(s.Number + 1, out int to) ? (int?)(to - from) : null)]))];
        int whole = runs.Count(r => plan.RunSheet.All(s => r.Gates.ContainsKey(s.Number)));
        string says = whole switch
        {
            0 => "No rehearsal has gone through every gate yet.",
            < Enough => string.Create(CultureInfo.InvariantCulture, $"{whole} of {Enough} rehearsals have gone through every gate; with {Enough} the spread is told."),
            _ => string.Create(CultureInfo.InvariantCulture, $"{whole} rehearsals have gone through every gate."),
        };
        return new RehearsalsView(id, plan.Title, says, [.. runs.Select(r => new RehearsalRun("/live/" + r.Run, r.Started.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)))], rows);
    }

    private static RehearsalRow Row(RunSegment s, ImmutableArray<int?> took)
    {
        int[] known = [.. took.OfType<int>().Order()];
        string spread = known.Length < Enough ? "" : $"{Figures.Clock(known[0])} to {Figures.Clock(known[^1])}";
        int median = known.Length == 0 ? 0 : known.Length % 2 == 1 ? known[known.Length / 2] : (known[(known.Length / 2) - 1] + known[known.Length / 2]) / 2;
        // a plan that is shorter than every rehearsal was will not be kept on the day
        string says = known.Length < Enough ? "" : known[0] > s.Seconds ? "never done in the time planned" : known[^1] > s.Seconds + s.DroppableSeconds ? "may run over" : "";
        return new RehearsalRow(s.Number, s.Show, Figures.Clock(s.Seconds), [.. took.Select(t => t is { } v ? Figures.Clock(v) : "–")], known.Length < Enough ? "" : Figures.Clock(median), spread, says);
    }
}

/// <summary>A rehearsal.</summary>
/// <param name="At">Its page.</param>
/// <param name="Started">When, UTC.</param>
public sealed record RehearsalRun(string At, string Started);

/// <summary>A segment over all rehearsals.</summary>
/// <param name="Number">Segment.</param>
/// <param name="Show">What is shown.</param>
/// <param name="Planned">Planned length.</param>
/// <param name="Took">What it took in each run; a dash where a gate is missing.</param>
/// <param name="Median">Middle of them, once there are enough.</param>
/// <param name="Spread">Shortest to longest, once there are enough.</param>
/// <param name="Says">What follows for the day.</param>
public sealed record RehearsalRow(int Number, string Show, string Planned, ImmutableArray<string> Took, string Median, string Spread, string Says);
