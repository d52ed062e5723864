using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>How long for a reduction: at a temperature of the middle, or in a medium from the start; and the thickest piece that meets it.</summary>
/// <remarks>
/// Minutes at the middle are logs·D(T), between the organism's floor and ceiling only, above the ceiling those of the ceiling.
/// In a medium the come-up counts above the floor where the reduction is reckoned from D and z; a line of a legal table is of dwell at the temperature, so its come-up does not count: then it is the time until the middle is half a kelvin below the medium, and the dwell for that temperature.
/// </remarks>
public static class KillTime
{
    private const double There = 0.5;      // K below the medium
    private const double Step = 0.25;      // min
    private const double Longest = 24 * 60;

    /// <summary>A row of an equivalence table.</summary>
    /// <param name="At">Middle.</param>
    /// <param name="Best">Minutes by the best D.</param>
    /// <param name="Cautious">Minutes by the hardest.</param>
    public readonly record struct Row(Temperature At, double Best, double Cautious);

    /// <summary>Minutes at each whole degree of the range in which the organism was measured.</summary>
    /// <param name="organism">Organism.</param>
    /// <param name="logs">Powers of ten, above 0 and up to 12.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number of logs outside its range.</exception>
    public static ImmutableArray<Row> Equivalents(Organism organism, double logs)
    {
        ArgumentNullException.ThrowIfNull(organism);
        Checked(logs);
        int first = (int)Math.Ceiling(organism.Floor.Celsius - 1e-9);
        return [.. Enumerable.Range(first, Math.Max(0, (int)Math.Floor(organism.Ceiling.Celsius + 1e-9) - first + 1)).Select(t => Temperature.FromCelsius(t)).Select(t => new Row(t, logs * organism.Best.At(t), logs * organism.Hardest.At(t)))];
    }

    /// <summary>Time in the medium until the middle has the reduction; null when it never has within a day.</summary>
    /// <param name="body">The piece.</param>
    /// <param name="start">Start.</param>
    /// <param name="medium">Medium.</param>
    /// <param name="organism">Organism, for its range.</param>
    /// <param name="resistance">Its best or hardest D.</param>
    /// <param name="logs">Powers of ten.</param>
    public static Duration? InMedium(SolidBody body, Temperature start, Temperature medium, Organism organism, HeatResistance resistance, double logs)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(organism);
        ArgumentNullException.ThrowIfNull(resistance);
        Checked(logs);
        if (!organism.ComeUpCounts)
        {
            Temperature there = medium - TemperatureDelta.FromKelvin(There);
            return there >= organism.Floor && body.TimeTo(start, medium, there) is { } up && up.TotalMinutes + (logs * resistance.At(Lower(there, organism.Ceiling))) is <= Longest and var all ? Duration.FromMinutes(all) : null;
        }

        if (medium < organism.Floor)
        {
            return null;
        }

        double sum = 0;
        Temperature before = start;
        for (double minute = Step; minute <= Longest; minute += Step)
        {
            Temperature now = body.CoreAfter(start, medium, Duration.FromMinutes(minute));
            double more = Lethality.Log10(resistance, [(0, before), (Step, now)], organism.Floor, organism.Ceiling);
            if (sum + more >= logs)
            {
                return Duration.FromMinutes(minute - Step + (Step * (logs - sum) / more));
            }

            (sum, before) = (sum + more, now);
        }

        return null;
    }

    /// <summary>Thickest flat piece that has the reduction in a time, to a tenth of a millimetre below; null when not even 1 mm has it.</summary>
    /// <param name="slab">Makes the piece of a thickness.</param>
    /// <param name="time">Time in the medium.</param>
    public static Length? Thickest(Func<Length, SolidBody> slab, Duration time, Temperature start, Temperature medium, Organism organism, HeatResistance resistance, double logs)
    {
        ArgumentNullException.ThrowIfNull(slab);
        bool Meets(double mm) => InMedium(slab(Length.FromMillimetres(mm)), start, medium, organism, resistance, logs) <= time;
        (double low, double high) = (1, 250);
        if (!Meets(low))
        {
            return null;
        }

        while (high - low > 0.05)
        {
            double middle = (low + high) / 2;
            (low, high) = Meets(middle) ? (middle, high) : (low, middle);
        }

        return Length.FromMillimetres(low);
    }

    private static Temperature Lower(Temperature a, Temperature b) => a < b ? a : b;

    private static void Checked(double logs)
    {
        if (logs is not (> 0 and <= 12))
        {
            throw new ArgumentOutOfRangeException(nameof(logs), logs, "Outside the model: a reduction of above 0 to 12 powers of ten.");
        }
    }
}
