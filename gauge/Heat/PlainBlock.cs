namespace Coulisse.Gauge.Heat;

/// <summary>The plain way in three axes: forward Euler on an octant of a block with even cells, the longest stable step.</summary>
internal static class PlainBlock
{
    /// <summary>Middle after a time; <paramref name="half"/> are the half edges, m.</summary>
    public static double Core(double[] half, int cells, double alpha, double k, double h, double start, double medium, double seconds)
    {
        int n = cells;
        double[] dx = [.. half.Select(l => l / n)];
        double[] r = [.. dx.Select(d => alpha / (d * d))];
        double[] face = [.. dx.Select(d => alpha / (k * d) / ((d / (2 * k)) + (1 / h)))];
        double dt = seconds / Math.Ceiling(seconds * Enumerable.Range(0, 3).Sum(a => r[a] + Math.Max(r[a], face[a])));
        int steps = (int)Math.Round(seconds / dt);
        double[] t = new double[n * n * n];
        double[] next = new double[t.Length];
        Array.Fill(t, start);
        int[] stride = [1, n, n * n];
        unchecked
        {
            for (int s = 0; s < steps; s++)
            {
                for (int z = 0, c = 0; z < n; z++)
                {
                    for (int y = 0; y < n; y++)
                    {
                        for (int x = 0; x < n; x++, c++)
                        {
                            double v = t[c];
                            double d = (x > 0 ? r[0] * (t[c - 1] - v) : 0) + (x < n - 1 ? r[0] * (t[c + 1] - v) : face[0] * (medium - v))
                                + (y > 0 ? r[1] * (t[c - n] - v) : 0) + (y < n - 1 ? r[1] * (t[c + n] - v) : face[1] * (medium - v))
                                + (z > 0 ? r[2] * (t[c - stride[2]] - v) : 0) + (z < n - 1 ? r[2] * (t[c + stride[2]] - v) : face[2] * (medium - v));
                            next[c] = v + (dt * d);
                        }
                    }
                }

                (t, next) = (next, t);
            }
        }

        // each axis by a parabola through its first two cells
        double core = 0;
        for (int c = 0; c < 8; c++)
        {
            core += ((c & 1) == 0 ? 9 / 8.0 : -1 / 8.0) * ((c & 2) == 0 ? 9 / 8.0 : -1 / 8.0) * ((c & 4) == 0 ? 9 / 8.0 : -1 / 8.0) * t[(c & 1) + (((c >> 1) & 1) * n) + (((c >> 2) & 1) * stride[2])];
        }

        return core;
    }
}
