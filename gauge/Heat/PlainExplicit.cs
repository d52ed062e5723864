namespace Coulisse.Gauge.Heat;

/// <summary>The plain way: forward Euler with the longest stable step, on a slab from its middle outward; constant properties in each cell.</summary>
internal static class PlainExplicit
{
    /// <summary>Middle after a time.</summary>
    /// <param name="dx">Cells from the middle outward, m.</param>
    /// <param name="k">W/(m·K) of each.</param>
    /// <param name="alpha">m²/s of each.</param>
    public static double Core(double[] dx, double[] k, double[] alpha, double h, double start, double medium, double seconds)
    {
        int n = dx.Length;
        double[] g = new double[n + 1];   // conductance of the outer face of each cell, shifted by one
        for (int i = 0; i < n; i++)
        {
            g[i + 1] = 1 / ((dx[i] / (2 * k[i])) + (i == n - 1 ? 1 / h : dx[i + 1] / (2 * k[i + 1])));
        }

        double dt = seconds;
        for (int i = 0; i < n; i++)
        {
            dt = Math.Min(dt, dx[i] * k[i] / alpha[i] / (g[i] + g[i + 1]));
        }

        int steps = (int)Math.Ceiling(seconds / dt);
        dt = seconds / steps;
        double[] low = new double[n];
        double[] high = new double[n];
        for (int i = 0; i < n; i++)
        {
            low[i] = dt * g[i] * alpha[i] / (k[i] * dx[i]);
            high[i] = dt * g[i + 1] * alpha[i] / (k[i] * dx[i]);
        }

        double[] t = new double[n];
        double[] next = new double[n];
        Array.Fill(t, start);
        unchecked
        {
            for (int s = 0; s < steps; s++)
            {
                next[0] = t[0] + (high[0] * (t[1] - t[0]));
                for (int i = 1; i < n - 1; i++)
                {
                    next[i] = t[i] + (high[i] * (t[i + 1] - t[i])) + (low[i] * (t[i - 1] - t[i]));
                }

                next[n - 1] = t[n - 1] + (high[n - 1] * (medium - t[n - 1])) + (low[n - 1] * (t[n - 2] - t[n - 1]));
                (t, next) = (next, t);
            }
        }

        return ((9 * t[0]) - t[1]) / 8;
    }

    /// <summary>Seconds until the middle of a bare half slab of even cells is at a temperature, between the steps by a straight line.</summary>
    public static double SecondsTo(int cells, double half, double k, double alpha, double h, double start, double medium, double core)
    {
        double dx = half / cells;
        double inner = alpha / (dx * dx);
        double outer = alpha / (k * dx * ((dx / (2 * k)) + (1 / h)));
        double dt = Math.Min(1 / (2 * inner), 1 / (inner + outer));
        (inner, outer) = (inner * dt, outer * dt);
        double[] t = new double[cells];
        double[] next = new double[cells];
        Array.Fill(t, start);
        double before = start;
        unchecked
        {
            for (int s = 1; ; s++)
            {
                next[0] = t[0] + (inner * (t[1] - t[0]));
                for (int i = 1; i < cells - 1; i++)
                {
                    next[i] = t[i] + (inner * (t[i + 1] - (2 * t[i]) + t[i - 1]));
                }

                next[cells - 1] = t[cells - 1] + (outer * (medium - t[cells - 1])) + (inner * (t[cells - 2] - t[cells - 1]));
                (t, next) = (next, t);
                double now = ((9 * t[0]) - t[1]) / 8;
                if (now >= core)
                {
                    return dt * (s - 1 + ((core - before) / (now - before)));
                }

                before = now;
            }
        }
    }
}
