using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>The shortest and the longest that the middle of a piece can take in an oven, when only its thickness is known.</summary>
/// <param name="Slow">Slow properties of the food.</param>
/// <param name="Oven">Setting, 40 to 300 °C.</param>
/// <param name="Covered">Under a lid or foil, in a bag or a crust: nothing evaporates.</param>
/// <remarks>
/// Shortest: a ball of that thickness, its face dry from the start, h 60 W/(m²·K) (forced air to 40 and black walls near 17: the top of the usual ranges), 1.7e-7 m²/s (water at the boil). No piece of that thickness is faster.
/// Longest: an endless slab with h 10 W/(m²·K) (a still oven, the foot of the ranges). Open, its face never dries, so that it settles at the wet bulb of air with 1 kPa of vapour (<see cref="WetSurface"/>); covered, the air inside is at the boil at most.
/// What lies between the two only a probe tells. The ranges of h are from memory.
/// </remarks>
public sealed record OvenPiece(FlatBag Slow, Temperature Oven, bool Covered)
{
    private const double Most = 60;
    private const double Least = 10;
    private const double Boil = 100;
    private const double Room = 1;     // kPa of vapour, a dry room's
    private static readonly Duration Longest = Duration.FromHours(24);

    /// <summary>Time below which the middle cannot be there; null when it never is.</summary>
    public Duration? AtLeast(Length thickness, Temperature start, Temperature core) => Ball(thickness).TimeTo(start, Checked().Oven, core);

    /// <summary>Time after which it is there for certain, within a day; null when that cannot be shown.</summary>
    public Duration? AtMost(Length thickness, Temperature start, Temperature core)
    {
        if (Checked().Covered)
        {
            HeatTransferCoefficient h = HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Least);
            return SolidBody.Of(SolidShape.Slab, [thickness], Diffusivity.FromSquareMetresPerSecond(Slow.Diffusivity), Conductivity.FromWattsPerMetreKelvin(Slow.Conductivity), h)
                .TimeTo(start, Temperature.FromCelsius(Math.Min(Boil, Oven.Celsius)), core) is { } t && t <= Longest ? t : null;
        }

        if (core.Celsius >= Settles.Celsius)
        {
            return null;
        }

        HeatMaterial food = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(Slow.Conductivity), Diffusivity.FromSquareMetresPerSecond(Slow.Diffusivity));
        BodyFace face = new(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Least), Medium.Constant(Oven)) { Wet = new WetSurface(Room) };
        return HeatBody.Piece(SolidShape.Slab, [thickness], food, face, 12).Follow(start, Longest, 0.05, 1440).TimeTo(core);
    }

    /// <summary>Where an open face settles as long as it is wet.</summary>
    public Temperature Settles => Temperature.FromCelsius(new WetSurface(Room).WetBulb(Oven.Celsius));

    /// <summary>Greatest thickness that can be there in a time at all, 1 to 500 mm; null when none is.</summary>
    public Length? ThickestAtAll(Duration time, Temperature start, Temperature core)
    {
        if (AtLeast(Length.FromMillimetres(1), start, core) is not { } thin || thin > time)
        {
            return null;
        }

        (double low, double high) = (1, 500);
        while (high - low > 0.05)
        {
            double middle = (low + high) / 2;
            (low, high) = AtLeast(Length.FromMillimetres(middle), start, core) <= time ? (middle, high) : (low, middle);
        }

        return Length.FromMillimetres(low);
    }

    private static SolidBody Ball(Length thickness) => SolidBody.Of(SolidShape.Sphere, [thickness], Diffusivity.FromSquareMetresPerSecond(1.7e-7), Conductivity.FromWattsPerMetreKelvin(0.68), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Most));

    private OvenPiece Checked() => Oven.Celsius is >= 40 and <= 300 ? this : throw new ArgumentOutOfRangeException(nameof(Oven), Oven.Celsius, "Outside the model: an oven set to 40 to 300 °C.");
}
