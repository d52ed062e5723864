using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>What the middle of a flat piece does between two faces held in a stirred bath.</summary>
/// <param name="Diffusivity">Thermal diffusivity of the food, m²/s.</param>
/// <param name="Conductivity">Conductivity, W/(m·K).</param>
/// <param name="Surface">h, W/(m²·K); null when the surface is taken to be at the bath's temperature at once.</param>
/// <remarks>Exact series of <see cref="ConductionSeries"/>; constant properties, no edges, no air pocket.</remarks>
public sealed record FlatBag(double Diffusivity, double Conductivity, HeatTransferCoefficient? Surface)
{
    /// <summary>Best case: 1.4e-7 m²/s and the surface at once at the bath's temperature.</summary>
    public static FlatBag Best { get; } = new(1.4e-7, 0.46, null);

    /// <summary>Cautious case: 1.15e-7 m²/s (between parallel and series mixing of a fatty emulsion), h 95 W/(m²·K) (Baldwin 2012), k 0.46.</summary>
    public static FlatBag Cautious { get; } = new(1.15e-7, 0.46, HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));

    /// <summary>Temperature of the middle after a time.</summary>
    public Temperature CoreAfter(Length thickness, Temperature start, Temperature bath, Duration time)
    {
        double half = Half(thickness);
        double theta = Series(half).CentreAt(Diffusivity * time.TotalSeconds / (half * half));
        return bath + ((start - bath) * theta);
    }

    /// <summary>Time until the middle reaches a temperature; null when the bath never brings it there.</summary>
    public Duration? TimeTo(Length thickness, Temperature start, Temperature bath, Temperature core)
    {
        double theta = (core.Celsius - bath.Celsius) / (start.Celsius - bath.Celsius);
        if (theta >= 1)
        {
            return Duration.Zero;
        }

        if (theta is not > 0)
        {
            return null;
        }

        double half = Half(thickness);
        return Duration.FromSeconds(Series(half).FourierTo(theta) * half * half / Diffusivity);
    }

    /// <summary>Greatest thickness whose middle reaches a temperature in a time; null when the bath never brings it there.</summary>
    public Length? ThickestIn(Duration time, Temperature start, Temperature bath, Temperature core)
    {
        if (TimeTo(Length.FromMillimetres(1), start, bath, core) is not { } thin || thin > time)
        {
            return null;
        }

        double low = 1;
        double high = 500;
        for (int i = 0; i < 40; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = TimeTo(Length.FromMillimetres(middle), start, bath, core) <= time ? (middle, high) : (low, middle);
        }

        return Length.FromMillimetres(low);
    }

    private static double Half(Length thickness) => thickness.Millimetres is >= 1 and <= 500
        ? thickness.Metres / 2
        : throw new ArgumentOutOfRangeException(nameof(thickness), thickness, "Outside the model: a flat piece is 1 mm to 500 mm thick.");

    private ConductionSeries Series(double half)
        => ConductionSeries.For(BodyShape.Slab, Surface is { } h ? h.WattsPerSquareMetreKelvin * half / Conductivity : double.PositiveInfinity);
}
