using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>What surrounds a body, through time.</summary>
/// <param name="At">Temperature, °C, at seconds since the start.</param>
/// <param name="Breaks">Moments at which it jumps or bends; the solver stops there.</param>
public sealed record Medium(Func<double, double> At, ImmutableArray<Duration> Breaks)
{
    /// <summary>Its temperature when that never changes; null when it does.</summary>
    public Temperature? Steady { get; private init; }

    /// <summary>Always the same.</summary>
    public static Medium Constant(Temperature at) => new(_ => at.Celsius, []) { Steady = at };

    /// <summary>Straight lines between points; before the first and after the last, that point's temperature.</summary>
    /// <exception cref="ArgumentException">No point, or times that do not rise.</exception>
    public static Medium Through(ImmutableArray<(Duration Time, Temperature At)> points)
    {
        if (points.IsEmpty || points.Skip(1).Zip(points).Any(p => p.First.Time <= p.Second.Time))
        {
            throw new ArgumentException("A medium through points has at least one, and their times rise.", nameof(points));
        }

        double[] seconds = [.. points.Select(p => p.Time.TotalSeconds)];
        double[] celsius = [.. points.Select(p => p.At.Celsius)];
        return new Medium(
            s =>
            {
                int i = Array.BinarySearch(seconds, s);
                i = i < 0 ? ~i : i;
                return i == 0 ? celsius[0] : i >= seconds.Length ? celsius[^1] : celsius[i - 1] + ((celsius[i] - celsius[i - 1]) * (s - seconds[i - 1]) / (seconds[i] - seconds[i - 1]));
            },
            [.. points.Select(p => p.Time)]);
    }

    /// <summary>A bath set to a temperature that takes cold food: it falls by all the food's heat at once and comes back in a straight line. Cautious: the heater lags altogether and the food takes its heat at once.</summary>
    /// <exception cref="ArgumentException">The losses eat the heater: it never comes back.</exception>
    public static Medium Sagging(Temperature set, WaterBath bath, Energy taken)
    {
        ArgumentNullException.ThrowIfNull(bath);
        Duration back = bath.Regain(taken) ?? throw new ArgumentException("The losses eat the heater: the bath never comes back.", nameof(bath));
        return back == Duration.Zero ? Constant(set) : Through([(Duration.Zero, set - bath.Fall(taken)), (back, set)]);
    }

    /// <summary>A thermostat that swings about its setting as a triangle.</summary>
    /// <param name="set">Setting.</param>
    /// <param name="swing">Half the whole swing, 0 to 50 K.</param>
    /// <param name="period">Of one swing.</param>
    public static Medium Cycling(Temperature set, TemperatureDelta swing, Duration period)
    {
        double p = period.TotalSeconds;
        return p > 0 && swing.Kelvin is >= 0 and <= 50
            ? new Medium(s => set.Celsius + (swing.Kelvin * ((4 * Math.Abs((s / p) - Math.Floor((s / p) + 0.5))) - 1)), [.. Enumerable.Range(1, 200).Select(i => period * i / 2)])
            : throw new ArgumentOutOfRangeException(nameof(swing), swing.Kelvin, "A thermostat swings by 0 to 50 K in a period above 0.");
    }

    /// <summary>A cold room that warms when it is loaded and comes back: set + rise·exp(−t/τ).</summary>
    /// <param name="set">Setting.</param>
    /// <param name="rise">By how much it is warmer just after loading, 0 to 40 K.</param>
    /// <param name="recovery">τ, after which 37 % of the rise is left.</param>
    public static Medium Loaded(Temperature set, TemperatureDelta rise, Duration recovery)
        => recovery > Duration.Zero && rise.Kelvin is >= 0 and <= 40
            ? new Medium(s => set.Celsius + (rise.Kelvin * Math.Exp(-s / recovery.TotalSeconds)), [])
            : throw new ArgumentOutOfRangeException(nameof(rise), rise.Kelvin, "A loaded cold room is 0 to 40 K too warm and comes back in a time above 0.");

    /// <summary>An oven whose door is opened: each time its air falls by so much and comes back, set − fall·exp(−t/τ).</summary>
    /// <param name="set">Setting.</param>
    /// <param name="fall">By how much it falls, 0 to 150 K; openings before it is back add up, never below the fall from the setting.</param>
    /// <param name="recovery">τ, after which 37 % of the fall is left.</param>
    /// <param name="openings">When.</param>
    public static Medium DoorOpened(Temperature set, TemperatureDelta fall, Duration recovery, ImmutableArray<Duration> openings)
        => recovery > Duration.Zero && fall.Kelvin is >= 0 and <= 150
            ? new Medium(s => set.Celsius - (fall.Kelvin * Math.Min(1, openings.Select(o => s - o.TotalSeconds).Where(t => t >= 0).Sum(t => Math.Exp(-t / recovery.TotalSeconds)))), [.. openings.Where(o => o > Duration.Zero).Distinct().Order()])
            : throw new ArgumentOutOfRangeException(nameof(fall), fall.Kelvin, "A door lets out 0 to 150 K, and the oven comes back in a time above 0.");

    /// <summary>The same so many kelvin warmer throughout.</summary>
    internal Medium Warmer(double kelvin) => kelvin == 0 ? this : new Medium(s => At(s) + kelvin, Breaks) { Steady = Steady is { } steady ? Temperature.FromCelsius(steady.Celsius + kelvin) : null };

    /// <summary>One medium until a moment, then another that begins there (out of the bath, into ice water).</summary>
    public Medium Then(Duration moment, Medium next)
    {
        ArgumentNullException.ThrowIfNull(next);
        double from = moment.TotalSeconds;
        return new Medium(s => s < from ? At(s) : next.At(s - from), [.. Breaks.Where(b => b < moment), moment, .. next.Breaks.Select(b => b + moment)]);
    }
}
