using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>h of a tray, bag or pan in moving or still air, best and cautious: convection over a flat plate and radiation of the room.</summary>
/// <remarks>
/// Forced: Nu = 0.664·Re^½·Pr^⅓ laminar (cautious) and 0.037·Re^0.8·Pr^⅓ turbulent from the edge (best, above Re 1e4), Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, ch. 7 (from memory). Still: 1.32·(ΔT/L)^¼, the simplified form for air over a warm plate (McAdams, from memory).
/// Radiation 4·ε·σ·T³ with ε 0.9; the cautious side counts half of it, since trays hide each other. Air's properties are those at its temperature, straight lines through handbook values.
/// Range: 0 to 10 m/s, plates 30 to 1000 mm, air −40 to 250 °C (above 60 °C within a tenth). Not for jets (impingement) nor for wet open food.
/// </remarks>
public static class AirFlow
{
    private const double Prandtl = 0.715;

    /// <summary>Best and cautious coefficient.</summary>
    /// <param name="metresPerSecond">Speed of the air past the food; 0 for still.</param>
    /// <param name="along">Length of the tray or pan in the wind.</param>
    /// <param name="air">Air.</param>
    /// <param name="warmer">By how much the face is warmer on the whole, K; only still air asks.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the model.</exception>
    public static (HeatTransferCoefficient Best, HeatTransferCoefficient Cautious) Over(double metresPerSecond, Length along, Temperature air, TemperatureDelta warmer)
    {
        double l = along.Metres;
        if (metresPerSecond is not (>= 0 and <= 10) || l is not (>= 0.03 and <= 1) || air.Celsius is not (>= -40 and <= 250))
        {
            throw new ArgumentOutOfRangeException(nameof(metresPerSecond), metresPerSecond, "Outside the model: air of 0 to 10 m/s and -40 to 250 °C over 30 to 1000 mm.");
        }

        double kelvin = air.Celsius + 273.15;
        double k = 0.0241 + (7.5e-5 * air.Celsius);
        double viscosity = 1.33e-5 + (9.0e-8 * air.Celsius);
        double radiation = 4 * 0.9 * 5.67e-8 * kelvin * kelvin * kelvin;
        double still = 1.32 * Math.Pow(Math.Max(1, Math.Abs(warmer.Kelvin)) / l, 0.25);
        double reynolds = metresPerSecond * l / viscosity;
        double laminar = 0.664 * Math.Sqrt(reynolds) * Math.Cbrt(Prandtl) * k / l;
        double turbulent = reynolds > 1e4 ? 0.037 * Math.Pow(reynolds, 0.8) * Math.Cbrt(Prandtl) * k / l : laminar;
        return (HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Math.Max(still, Math.Max(laminar, turbulent)) + radiation), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Math.Max(still, laminar) + (radiation / 2)));
    }
}
