namespace Coulisse.Kitchen.Planning.Work;

/// <summary>Minutes with their range; low and high hold about nine of ten runs.</summary>
/// <param name="Best">Expected.</param>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
public readonly record struct Minutes(double Best, double Low, double High)
{
    /// <summary>A figure without a range.</summary>
    /// <param name="minutes">The figure.</param>
    public static Minutes Exactly(double minutes) => new(minutes, minutes, minutes);

    /// <summary>All three ends together: they belong to the same hand, so they are never mixed.</summary>
    public static Minutes operator +(Minutes a, Minutes b) => new(a.Best + b.Best, a.Low + b.Low, a.High + b.High);

    /// <summary>Times over.</summary>
    public static Minutes operator *(double times, Minutes m) => new(times * m.Best, times * m.Low, times * m.High);

    /// <summary>The larger, end by end.</summary>
    /// <param name="other">The other.</param>
    public Minutes AtLeast(double other) => new(Math.Max(Best, other), Math.Max(Low, other), Math.Max(High, other));
}
