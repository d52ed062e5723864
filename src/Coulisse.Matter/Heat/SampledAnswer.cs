using System.Collections.Immutable;

namespace Coulisse.Matter.Heat;

/// <summary>A figure that is only known between two bounds.</summary>
/// <param name="What">Its name, for people ("thickness").</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Best">Best estimate, within the bounds.</param>
/// <param name="Low">Lower bound.</param>
/// <param name="High">Upper bound.</param>
/// <param name="Why">Where the bounds are from.</param>
public sealed record StatedRange(string What, string Unit, double Best, double Low, double High, string Why);

/// <summary>How far one range moves an answer by itself.</summary>
/// <param name="Range">The range.</param>
/// <param name="AtLow">The answer with this figure at its lower bound, all others best; null for never.</param>
/// <param name="AtHigh">The same at its upper bound.</param>
public sealed record RangeEffect(StatedRange Range, double? AtLow, double? AtHigh)
{
    /// <summary>Distance between the two; infinite when one of them is never.</summary>
    public double Width => AtLow is { } a && AtHigh is { } b ? Math.Abs(a - b) : AtLow is null && AtHigh is null ? 0 : double.PositiveInfinity;
}

/// <summary>An answer worked out over stated ranges: best, the middle nine tenths of the samples, the worst of them, and what moves it most.</summary>
/// <param name="Best">With every figure at its best; null for never.</param>
/// <param name="Low">Twentieth part from below; null for never.</param>
/// <param name="High">Twentieth part from above; null for never.</param>
/// <param name="Least">Smallest of all samples and of the single effects.</param>
/// <param name="Most">Greatest, null for never.</param>
/// <param name="Effects">One a range, widest first.</param>
/// <remarks>
/// Latin hypercube: each range is cut into as many equal slices as there are samples and each slice is drawn from once; slices of a range that spans more than a factor of three above zero are equal in ratio. Seeded, so equal questions give equal answers.
/// The ranges are bounds people state, not measured spreads: the tenths say how the bounds work together, not how often.
/// </remarks>
public sealed record SampledAnswer(double? Best, double? Low, double? High, double? Least, double? Most, ImmutableArray<RangeEffect> Effects)
{
    /// <summary>Works it out.</summary>
    /// <param name="ranges">What is uncertain.</param>
    /// <param name="answer">The answer for values in the order of the ranges; null for never.</param>
    /// <param name="samples">20 to 10000.</param>
    /// <param name="seed">Of the draw.</param>
    /// <exception cref="ArgumentOutOfRangeException">Samples outside their range, or bounds out of order.</exception>
    public static SampledAnswer Of(ImmutableArray<StatedRange> ranges, Func<double[], double?> answer, int samples = 100, int seed = 20)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (samples is not (>= 20 and <= 10_000) || ranges.Any(r => !(r.Low <= r.Best && r.Best <= r.High)))
        {
            throw new ArgumentOutOfRangeException(nameof(samples), samples, "20 to 10000 samples, and each best lies between its bounds.");
        }

        // A fixed generator of our own: the draw must not depend on the platform's.
        ulong state = (ulong)seed;
        double Next()
        {
            state = unchecked((state * 6364136223846793005UL) + 1442695040888963407UL);
            return (state >> 11) * (1.0 / (1UL << 53));
        }

        double[][] values = [.. Enumerable.Range(0, samples).Select(_ => new double[ranges.Length])];
        for (int r = 0; r < ranges.Length; r++)
        {
            int[] slices = [.. Enumerable.Range(0, samples)];
            for (int i = samples - 1; i > 0; i--)
            {
                int j = (int)(Next() * (i + 1));
                (slices[i], slices[j]) = (slices[j], slices[i]);
            }

            bool ratio = ranges[r].Low > 0 && ranges[r].High > 3 * ranges[r].Low;
            for (int i = 0; i < samples; i++)
            {
                double x = (slices[i] + Next()) / samples;
                values[i][r] = ratio ? ranges[r].Low * Math.Pow(ranges[r].High / ranges[r].Low, x) : ranges[r].Low + (x * (ranges[r].High - ranges[r].Low));
            }
        }

        double[] best = [.. ranges.Select(r => r.Best)];
        double?[] answers = [.. values.Select(answer).OrderBy(a => a ?? double.PositiveInfinity)];
        RangeEffect[] effects = [.. ranges.Select((r, i) =>
        {
            double? With(double v)
            {
                double[] one = [.. best];
                one[i] = v;
                return answer(one);
            }

            return new RangeEffect(r, With(r.Low), With(r.High));
        }).OrderByDescending(e => e.Width)];
        double?[] all = [.. answers.Concat(effects.SelectMany(e => new[] { e.AtLow, e.AtHigh })).OrderBy(a => a ?? double.PositiveInfinity)];
        return new SampledAnswer(answer(best), answers[samples / 20], answers[samples - 1 - (samples / 20)], all[0], all[^1], [.. effects]);
    }
}
