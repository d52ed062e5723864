namespace Coulisse.Matter.Heat;

/// <summary>Finds where a falling function passes a value: Newton's steps on its logarithm, kept inside a bracket.</summary>
internal static class Falling
{
    /// <summary>A function and its slope.</summary>
    public delegate double Value(double at, out double slope);

    /// <summary>The place, to the last digits.</summary>
    /// <param name="wanted">Above 0 and below the function's value at 0.</param>
    /// <param name="near">First guess, above 0.</param>
    /// <param name="of">Falls toward 0; flat at its beginning is allowed.</param>
    public static double To(double wanted, double near, Value of)
    {
        (double low, double high) = (0, double.PositiveInfinity);
        double x = near > 0 ? near : 1;
        for (int i = 0; i < 200; i++)
        {
            double value = of(x, out double slope);
            (low, high) = value > wanted ? (x, high) : (low, x);

            // d ln f / dx; where the function is flat or has run out of digits the bracket decides
            double next = value > 0 && slope < 0 ? x + (Math.Log(wanted / value) * value / slope) : double.NaN;
            if (!(next > low && next < high))
            {
                next = double.IsPositiveInfinity(high) ? 2 * x : (low + high) / 2;
            }

            if (Math.Abs(next - x) <= 1e-14 * x || (double.IsFinite(high) && high - low <= 1e-14 * high))
            {
                return next;
            }

            x = next;
        }

        return x;
    }
}
