using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>A water bath as one stirred body of water with a heater.</summary>
/// <param name="Water">Mass of water.</param>
/// <param name="Heater">Heater power that reaches the water.</param>
/// <param name="Losses">Power lost to the room; none is the best case.</param>
/// <remarks>Water 4.186 kJ/(kg·K) (from memory). Losses are taken as constant.</remarks>
public sealed record WaterBath(Mass Water, Power Heater, Power Losses)
{
    private const double WaterHeat = 4.186;   // kJ/(kg·K)

    /// <summary>Time to heat the water; null when the losses eat the heater.</summary>
    public Duration? TimeToHeat(Temperature from, Temperature to)
        => to <= from ? Duration.Zero : Over(Energy.FromKilojoules(Water.Grams / 1000 * WaterHeat * (to - from).Kelvin));

    /// <summary>Heat that cold food takes up, at most, until it is at the bath's temperature.</summary>
    public static Energy HeatTakenUp(Mass food, SpecificHeat heat, Temperature start, Temperature bath)
        => Energy.FromKilojoules(Math.Max(0, food.Grams / 1000 * heat.KilojoulesPerKilogramKelvin * (bath - start).Kelvin));

    /// <summary>How far the water can fall if the heater lags altogether.</summary>
    public TemperatureDelta Fall(Energy takenUp) => TemperatureDelta.FromKelvin(takenUp.Kilojoules / (Water.Grams / 1000 * WaterHeat));

    /// <summary>Time in which the heater gives it back; null when the losses eat the heater.</summary>
    public Duration? Regain(Energy takenUp) => Over(takenUp);

    private Duration? Over(Energy energy) => Heater > Losses ? energy / (Heater - Losses) : null;
}
