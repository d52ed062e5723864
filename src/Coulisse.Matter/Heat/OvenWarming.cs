using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>An oven as one warm mass: how long it takes to its setting, and how it comes back after the door.</summary>
/// <param name="Drawn">Power it draws.</param>
/// <param name="Capacity">Heat that warms it by one kelvin.</param>
/// <param name="Loss">Watts it loses for each kelvin above the room.</param>
/// <remarks>T = T_room + P/U·(1 − exp(−U·t/C)). Without a timed preheat 20 kJ/K a kilowatt and 1.6 W/K a kilowatt are taken (common practice, no source: a 3 kW oven is at 180 °C in about 18 min); one timed preheat replaces the first. Range: setting 30 to 300 °C.</remarks>
public sealed record OvenWarming(Power Drawn, Energy Capacity, double Loss)
{
    /// <summary>The usual oven of a power.</summary>
    public static OvenWarming Usual(Power drawn) => new(drawn, Energy.FromKilojoules(20 * drawn.Watts / 1000), 1.6 * drawn.Watts / 1000);

    /// <summary>Calibrated by one preheat that was timed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No time, or a setting it cannot hold.</exception>
    public static OvenWarming Timed(Power drawn, Temperature room, Temperature set, Duration took)
    {
        double loss = 1.6 * drawn.Watts / 1000;
        double reach = (set - room).Kelvin * loss / drawn.Watts;
        return took > Duration.Zero && reach is > 0 and < 1
            ? new OvenWarming(drawn, Energy.FromKilojoules(-loss * took.TotalSeconds / Math.Log(1 - reach) / 1000), loss)
            : throw new ArgumentOutOfRangeException(nameof(took), took, "A timed preheat lasts longer than nothing and ends at a setting above the room that the power can hold.");
    }

    /// <summary>Time from the room to a setting; null when it never gets there.</summary>
    public Duration? Preheat(Temperature room, Temperature set)
    {
        double reach = (set - room).Kelvin * Loss / Drawn.Watts;
        return set.Celsius is not (>= 30 and <= 300)
            ? throw new ArgumentOutOfRangeException(nameof(set), set.Celsius, "Outside the model: an oven set to 30 to 300 °C.")
            : reach >= 1 ? null : reach <= 0 ? Duration.Zero : Duration.FromSeconds(-Capacity.Kilojoules * 1000 / Loss * Math.Log(1 - reach));
    }
}
