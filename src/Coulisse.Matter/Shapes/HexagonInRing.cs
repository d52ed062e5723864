using System.Collections.Immutable;

namespace Coulisse.Matter.Shapes;

/// <summary>Rounds in offset rows inside a ring: a lower bound where no better packing is held.</summary>
internal static class HexagonInRing
{
    /// <summary>How many, for a ring of <paramref name="ratio"/> round radii; the best of the lattice's few symmetrical positions.</summary>
    public static int Count(double ratio) => Starts.Max(s => Points(ratio, s).Count());

    /// <summary>The places of at most <paramref name="n"/> rounds of radius 1.</summary>
    public static ImmutableArray<DrawnPoint> Places(double ratio, int n)
    {
        DrawnPoint start = Starts.MaxBy(s => Points(ratio, s).Count());
        return [.. Points(ratio, start).OrderBy(p => (p.X * p.X) + (p.Y * p.Y)).Take(n)];
    }

    /// <summary>Smallest ring, in round radii, that offset rows fill with <paramref name="n"/>.</summary>
    public static double RatioFor(int n)
    {
        double low = 1;
        double high = 2 + Math.Sqrt(2.0 * n) * 1.5;
        for (int i = 0; i < 40; i++)
        {
            double middle = (low + high) / 2;
            if (Count(middle) >= n)
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return high;
    }

    // On a round, between two, between three, and a quarter of the way.
    private static readonly DrawnPoint[] Starts = [new(0, 0), new(1, 0), new(1, Math.Sqrt(3) / 3), new(0.5, 0), new(0.5, Math.Sqrt(3) / 2)];

    private static IEnumerable<DrawnPoint> Points(double ratio, DrawnPoint start)
    {
        double rise = Math.Sqrt(3);
        double reach = ratio - 1 + 1e-9;
        int rows = (int)Math.Ceiling(reach / rise) + 2;
        int columns = (int)Math.Ceiling(reach / 2) + 2;
        for (int r = -rows; r <= rows; r++)
        {
            for (int c = -columns; c <= columns; c++)
            {
                double x = (2 * c) + ((r & 1) == 0 ? 0 : 1) - start.X;
                double y = (r * rise) - start.Y;
                if ((x * x) + (y * y) <= reach * reach)
                {
                    yield return new(x, y);
                }
            }
        }
    }
}
