using System.Collections.Immutable;
using Coulisse.Matter.Shapes;

namespace Coulisse.Kitchen.Plating;

/// <summary>Room between two convex outlines; below 0 the least shift that would part them.</summary>
internal static class ConvexGap
{
    public static double Between(ImmutableArray<DrawnPoint> a, ImmutableArray<DrawnPoint> b)
    {
        double parted = Math.Max(Parted(a, b), Parted(b, a));
        return parted <= 0 ? parted : Math.Min(Nearest(a, b), Nearest(b, a));
    }

    // Over every edge of a: how far b stays outside. The largest is the least shift when all are below 0.
    private static double Parted(ImmutableArray<DrawnPoint> a, ImmutableArray<DrawnPoint> b)
    {
        double turn = 0;
        for (int i = 0; i < a.Length; i++)
        {
            (DrawnPoint p, DrawnPoint q) = (a[i], a[(i + 1) % a.Length]);
            turn += (p.X * q.Y) - (q.X * p.Y);
        }

        double most = double.NegativeInfinity;
        for (int i = 0; i < a.Length; i++)
        {
            (DrawnPoint p, DrawnPoint q) = (a[i], a[(i + 1) % a.Length]);
            double length = Math.Sqrt(((q.X - p.X) * (q.X - p.X)) + ((q.Y - p.Y) * (q.Y - p.Y)));
            if (length > 1e-9)
            {
                double nx = Math.Sign(turn) * (q.Y - p.Y) / length;
                double ny = -Math.Sign(turn) * (q.X - p.X) / length;
                most = Math.Max(most, b.Min(x => ((x.X - p.X) * nx) + ((x.Y - p.Y) * ny)));
            }
        }

        return most;
    }

    private static double Nearest(ImmutableArray<DrawnPoint> corners, ImmutableArray<DrawnPoint> edges)
    {
        double least = double.PositiveInfinity;
        foreach (DrawnPoint c in corners)
        {
            for (int i = 0; i < edges.Length; i++)
            {
                (DrawnPoint p, DrawnPoint q) = (edges[i], edges[(i + 1) % edges.Length]);
                (double dx, double dy) = (q.X - p.X, q.Y - p.Y);
                double t = Math.Clamp((((c.X - p.X) * dx) + ((c.Y - p.Y) * dy)) / Math.Max(1e-12, (dx * dx) + (dy * dy)), 0, 1);
                (double ex, double ey) = (c.X - p.X - (t * dx), c.Y - p.Y - (t * dy));
                least = Math.Min(least, Math.Sqrt((ex * ex) + (ey * ey)));
            }
        }

        return least;
    }
}
