using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>What the middle of a flat piece does that goes frozen between two faces held in a stirred bath; cautious.</summary>
/// <param name="Thawed">The piece once thawed.</param>
/// <param name="Latent">Heat of all its water's ice, J/m³.</param>
/// <param name="Start">Uniform start, −40 to 0 °C.</param>
/// <remarks>
/// Two stages, one after the other. First until no ice is left in the middle, by the finite volumes on the heat content, with the thawed conductivity and diffusivity for all of it (<see cref="HeatMaterial.Thawing"/>).
/// Then the exact series of the thawed piece from 0 °C throughout. By then all of the piece is at 0 °C or above, and a body that begins colder everywhere is never warmer later: so the sum is never too short, and never less than the thaw and the thawed piece's own time.
/// </remarks>
public sealed record FrozenBag(FlatBag Thawed, double Latent, Temperature Start)
{
    private const int Cells = 16;
    private static readonly Temperature Melted = Temperature.FromCelsius(0);

    /// <summary>Until no ice is left in the middle; null when the bath does not thaw it within 30 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Thickness outside 1 to 500 mm, start outside −40 to 0 °C, a bath above 100 °C.</exception>
    public Duration? Thaws(Length thickness, Temperature bath) => Thawing(thickness, bath)?.TimeTo(Melted);

    /// <summary>Time until the middle reaches a temperature above 0 °C; null when the bath never brings it there.</summary>
    public Duration? TimeTo(Length thickness, Temperature bath, Temperature core)
        => Thawed.TimeTo(thickness, Melted, bath, core) is { } after && Thaws(thickness, bath) is { } thaw ? thaw + after : null;

    /// <summary>Middle at moments, minutes from when it goes in.</summary>
    public ImmutableArray<(double Minute, Temperature At)> Curve(Length thickness, Temperature bath, IEnumerable<double> minutes)
    {
        BodyRun? run = Thawing(thickness, bath);
        double thaw = run?.TimeTo(Melted)?.TotalMinutes ?? double.PositiveInfinity;
        return [.. minutes.Select(m => (m, m > thaw ? Thawed.CoreAfter(thickness, Melted, bath, Duration.FromMinutes(m - thaw)) : run is null ? Start : Iced(run, m)))];
    }

    /// <summary>Greatest thickness whose middle reaches a temperature in a time, to a tenth of a millimetre below; null when there is none.</summary>
    public Length? ThickestIn(Duration time, Temperature bath, Temperature core)
    {
        if (Thawed.ThickestIn(time, Melted, bath, core) is not { } thawed || TimeTo(Length.FromMillimetres(1), bath, core) is not { } thin || thin > time)
        {
            return null;
        }

        (double low, double high) = (1, thawed.Millimetres);
        while (high - low > 0.05)
        {
            double middle = (low + high) / 2;
            (low, high) = TimeTo(Length.FromMillimetres(middle), bath, core) <= time ? (middle, high) : (low, middle);
        }

        return Length.FromMillimetres(low);
    }

    private BodyRun? Thawing(Length thickness, Temperature bath)
    {
        if (thickness.Millimetres is not (>= 1 and <= 500) || Start.Celsius is not (>= -40 and <= 0) || bath.Celsius is not (>= -40 and <= 100))
        {
            throw new ArgumentOutOfRangeException(nameof(thickness), thickness, "Outside the model: a flat piece of 1 to 500 mm that starts at -40 to 0 °C in a bath of up to 100 °C.");
        }

        if (bath.Celsius < 0.5)
        {
            return null;
        }

        Conductivity k = Conductivity.FromWattsPerMetreKelvin(Thawed.Conductivity);
        Diffusivity alpha = Diffusivity.FromSquareMetresPerSecond(Thawed.Diffusivity);
        double half = thickness.Metres / 2;
        double heat = Latent + (Thawed.Conductivity / Thawed.Diffusivity * -Start.Celsius);

        // Plank's time with all of the cold in it is of the right size; half as much again is enough unless the bath is nearly at 0 °C.
        double seconds = heat / bath.Celsius * ((half / (Thawed.Surface?.WattsPerSquareMetreKelvin ?? 1e6)) + (half * half / (2 * Thawed.Conductivity)));
        HeatBody body = HeatBody.Piece(SolidShape.Slab, [thickness], HeatMaterial.Thawing(k, alpha, Latent), new BodyFace(Thawed.Surface, Medium.Constant(bath)), Cells);
        for (double length = Math.Min(1.5 * seconds, 2_592_000); ; length = Math.Min(2 * length, 2_592_000))
        {
            BodyRun run = body.Follow(Start, Duration.FromSeconds(length), 0.1, 600);
            if (run.TimeTo(Melted) is not null || length >= 2_592_000)
            {
                return run;
            }
        }
    }

    private static Temperature Iced(BodyRun run, double minute)
    {
        int i = 0;
        while (i < run.Moments.Length - 1 && run.Moments[i + 1].Time.TotalMinutes < minute)
        {
            i++;
        }

        return run.Moments[i].Core;
    }
}
