using System.Collections.Immutable;

namespace Coulisse.Matter.Heat;

/// <summary>Roots of the conduction series: slab ζ·tan ζ = Bi, cylinder ζ·J₁(ζ) = Bi·J₀(ζ), sphere 1 − ζ·cot ζ = Bi.</summary>
/// <remarks>
/// Slab and sphere by the angle x past the last multiple of π: x = atan(Bi/ζ) and x = atan2(ζ, 1 − Bi). The differences are monotone and bend one way only between the start and the root, so Newton's steps run in from one side and cannot leave the root's own interval.
/// Cylinder by Newton's steps kept between the zeros of J₁ and J₀ that bracket it.
/// </remarks>
internal static class ConductionRoots
{
    private const int Kept = 41;
    private static readonly Lazy<(ImmutableArray<double> J0, ImmutableArray<double> J1)> Zeros = new(() => (
        [.. Enumerable.Range(1, Kept).Select(n => Bisected(z => Bessel.J(0, z), ((n - 0.25) * Math.PI) - 0.4, ((n - 0.25) * Math.PI) + 0.4))],
        [.. Enumerable.Range(1, Kept).Select(n => n == 1 ? 0 : Bisected(z => Bessel.J(1, z), ((n - 0.75) * Math.PI) - 0.4, ((n - 0.75) * Math.PI) + 0.4))]));

    /// <summary>The n-th root, n from 1 to 40.</summary>
    public static double Of(BodyShape shape, double biot, int n) => shape switch
    {
        BodyShape.Slab => Slab(biot, (n - 1) * Math.PI),
        BodyShape.Sphere => Sphere(biot, (n - 1) * Math.PI),
        _ => Cylinder(biot, n),
    };

    private static double Slab(double biot, double turns)
    {
        if (double.IsPositiveInfinity(biot))
        {
            return turns + (Math.PI / 2);
        }

        double x = turns == 0 ? Math.PI / 2 / Math.Sqrt(1 + (Math.PI * Math.PI / 4 / biot)) : Math.Atan(biot / (turns + 0.7));
        for (int i = 0; i < 60; i++)
        {
            double z = turns + x;
            double step = (x - Math.Atan(biot / z)) / (1 + (biot / ((z * z) + (biot * biot))));
            x -= step;
            if (Math.Abs(step) < 1e-15 * (1 + z))
            {
                break;
            }
        }

        return turns + x;
    }

    private static double Sphere(double biot, double turns)
    {
        if (double.IsPositiveInfinity(biot))
        {
            return turns + Math.PI;
        }

        double a = 1 - biot;

        // The first root of a small Biot number lies just below √(3·Bi), and 0 solves the equation too: the start must not be left of it.
        double x = a > 0 && turns == 0 ? Math.Min(Math.PI / 2, Math.Sqrt(3 * biot)) : Math.Atan2(turns + 1.5, a);
        for (int i = 0; i < 60; i++)
        {
            double z = turns + x;
            double step = (x - Math.Atan2(z, a)) / (1 - (a / ((a * a) + (z * z))));
            x -= step;
            if (Math.Abs(step) < 1e-15 * (1 + z))
            {
                break;
            }
        }

        return turns + x;
    }

    private static double Cylinder(double biot, int n)
    {
        (double low, double high) = (Zeros.Value.J1[n - 1], Zeros.Value.J0[n - 1]);
        if (double.IsPositiveInfinity(biot))
        {
            return high;
        }

        double z = n == 1 ? high / Math.Sqrt(1 + (high * high / 2 / biot)) : low + ((high - low) * biot / (biot + low));
        for (int i = 0; i < 80; i++)
        {
            (double j0, double j1) = (Bessel.J(0, z), Bessel.J(1, z));

            // The sign of f changes once in the interval and is that of its slope at the root: J₁ rises where J₀ has its sign.
            double f = (z * j1) - (biot * j0);
            bool past = n % 2 == 1 ? f > 0 : f < 0;
            (low, high) = past ? (low, z) : (z, high);
            double next = z - (f / ((z * j0) + (biot * j1)));
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.Abs(next - z) < 1e-14 * z)
            {
                return next;
            }

            z = next;
        }

        return z;
    }

    private static double Bisected(Func<double, double> f, double low, double high)
    {
        bool rising = f(low) < 0;
        for (int i = 0; i < 52; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = f(middle) < 0 == rising ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
