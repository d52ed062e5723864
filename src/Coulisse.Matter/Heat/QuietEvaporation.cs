using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>Water that leaves an open pan below the boil, into quiet air.</summary>
/// <remarks>
/// E = 35·ρ_w·(ρ_r − ρ_w)^⅓·(W_w − W_r) kg/(m²·h) (Shah's form of 1992 and its constant, from memory; its author's test of 2002 found it 18 % off in the mean, water 7 to 94 °C). Densities are of the dry air at the water's face and in the room, W the humidity ratio.
/// The lower figure takes the moist air's densities in the bracket, the upper the dry air's: the paper could be read either way. A fat film or a lid keeps it far lower, stirring and draught raise it. Range: water 30 to 95 °C.
/// Check: 60 °C into 25 °C at 50 %: 2.46 to 2.87 kg/(m²·h).
/// </remarks>
public static class QuietEvaporation
{
    private const double Air = 101.325;    // kPa
    private const double Gas = 0.287055;   // kJ/(kg·K), dry air

    /// <summary>Kilograms a square metre and hour, low and high.</summary>
    /// <param name="water">Water's face.</param>
    /// <param name="room">Room, 5 to 45 °C and colder than the water.</param>
    /// <param name="humidity">Relative humidity of the room.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the model.</exception>
    public static (double Low, double High) PerHour(Temperature water, Temperature room, Fraction humidity)
    {
        if (water.Celsius is not (>= 30 and <= 95) || room.Celsius is not (>= 5 and <= 45) || water <= room || humidity.Value is not (>= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(water), water.Celsius, "Outside the model: water of 30 to 95 °C in a colder room of 5 to 45 °C.");
        }

        (double wet, double dense, double share) = At(water.Celsius, WetSurface.Saturation(water.Celsius));
        (double roomWet, double roomDense, double roomShare) = At(room.Celsius, humidity.Value * WetSurface.Saturation(room.Celsius));
        double E(double lighter) => 35 * dense * Math.Cbrt(Math.Max(0, lighter)) * (share - roomShare);
        return (E(roomWet - wet), E(roomDense - dense));
    }

    /// <summary>Density moist and of its dry air, kg/m³, and humidity ratio.</summary>
    private static (double Moist, double Dry, double Ratio) At(double celsius, double vapour)
    {
        double ratio = 0.622 * vapour / (Air - vapour);
        double dry = (Air - vapour) / (Gas * (celsius + 273.15));
        return (dry * (1 + ratio), dry, ratio);
    }
}
