using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Shares the slot's seconds out over its segments so that they sum to it exactly.</summary>
internal static class SegmentLengths
{
    private const int Grain = 15;

    /// <summary>Seconds of each segment.</summary>
    /// <param name="segments">Segments in order.</param>
    /// <param name="slot">Seconds of the slot; not less than the sum of the shortest.</param>
    public static ImmutableArray<int> Share(ImmutableArray<SegmentDraft> segments, int slot)
    {
        double least = segments.Sum(s => s.Least);
        double best = segments.Sum(s => s.Best);

        // Between shortest and best, or beyond best in proportion when there is time over.
        double[] wanted = [.. segments.Select(s => slot <= best
            ? s.Least + (s.Best - s.Least) * (best > least ? (slot - least) / (best - least) : 0)
            : s.Best * slot / best)];
        int[] seconds = [.. wanted.Zip(segments, (w, s) => Math.Max((int)Math.Ceiling((double)s.Least / 5) * 5, (int)Math.Round(w / Grain, MidpointRounding.AwayFromZero) * Grain))];
        for (int rest = slot - seconds.Sum(); rest != 0; rest = slot - seconds.Sum())
        {
            int move = Math.Abs(rest) >= Grain ? Grain * Math.Sign(rest) : rest;

            // Given to the segment furthest under what it wanted, taken from the one furthest over, never under its shortest.
            int at = Enumerable.Range(0, seconds.Length)
                .Where(i => seconds[i] + move >= segments[i].Least)
                .OrderBy(i => (seconds[i] - wanted[i]) * Math.Sign(move)).ThenBy(i => i)
                .DefaultIfEmpty(-1).First();
            if (at < 0)
            {
                at = Array.IndexOf(seconds, seconds.Max());
            }

            seconds[at] += move;
        }

        return [.. seconds];
    }
}
