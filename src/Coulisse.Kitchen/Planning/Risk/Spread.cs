using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>How long something may take, as a distribution told by its quantiles.</summary>
public abstract record Spread
{
    private protected Spread()
    {
    }

    /// <summary>Minutes that are not exceeded with a probability.</summary>
    /// <param name="probability">0 to 1.</param>
    public abstract double Quantile(double probability);

    /// <summary>Takes exactly this long.</summary>
    /// <param name="minutes">Minutes.</param>
    public static Spread Exactly(double minutes) => new Triangular(minutes, minutes, minutes);
}

/// <summary>Least, likely and most: what a work standard's range tells.</summary>
/// <param name="Low">Least minutes.</param>
/// <param name="Likely">Likeliest minutes.</param>
/// <param name="High">Most minutes.</param>
public sealed record Triangular(double Low, double Likely, double High) : Spread
{
    /// <summary>The triangle of which nine of ten runs fall between two figures, one of twenty on either side.</summary>
    /// <param name="low">Low end.</param>
    /// <param name="likely">Likeliest, between the two.</param>
    /// <param name="high">High end.</param>
    public static Triangular Holding(double low, double likely, double high)
    {
        // (a - (likely - low))² = 0.05 · (a + b) · a for the left arm a, and likewise for the right: a fixed point, each turn nearer by half or more.
        double left = likely - low;
        double right = high - likely;
        for (int turn = 0; turn < 60; turn++)
        {
            (left, right) = (likely - low + Math.Sqrt(0.05 * (left + right) * left), high - likely + Math.Sqrt(0.05 * (left + right) * right));
        }

        return new Triangular(Math.Max(0, likely - left), likely, likely + right);
    }

    /// <inheritdoc/>
    public override double Quantile(double probability)
    {
        if (High <= Low)
        {
            return Likely;
        }

        double turn = (Likely - Low) / (High - Low);
        return probability < turn
            ? Low + Math.Sqrt(probability * (High - Low) * (Likely - Low))
            : High - Math.Sqrt((1 - probability) * (High - Low) * (High - Likely));
    }
}

/// <summary>Times that were really taken; between two neighbours every time is as likely.</summary>
/// <param name="Minutes">At least two records, in any order.</param>
public sealed record Recorded(ImmutableArray<double> Minutes) : Spread
{
    private readonly ImmutableArray<double> _sorted = Minutes.Length >= 2 ? Minutes.Sort() : throw new ArgumentException("Two records are the least that tell a spread.", nameof(Minutes));

    /// <inheritdoc/>
    public override double Quantile(double probability)
    {
        double at = Math.Clamp(probability, 0, 1) * (_sorted.Length - 1);
        int below = Math.Min((int)at, _sorted.Length - 2);
        return _sorted[below] + ((at - below) * (_sorted[below + 1] - _sorted[below]));
    }
}
