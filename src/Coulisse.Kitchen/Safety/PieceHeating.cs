using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety;

/// <summary>A flat piece in a bath, from the fridge or from frozen, in the cautious case.</summary>
/// <param name="Bag">Once thawed.</param>
/// <param name="Ice">Set when it goes in frozen.</param>
/// <param name="Start">Start.</param>
/// <param name="Why">Model, properties and source.</param>
internal sealed record PieceHeating(FlatBag Bag, FrozenBag? Ice, Temperature Start, string Why)
{
    private const double Thaw = 0;   // °C: how far a piece thawed in the fridge has come is not on the card

    /// <summary>For a core limit.</summary>
    public static PieceHeating Of(CoreAsked asked, Temperature bath)
    {
        PieceInBath piece = PieceInBath.Of(asked.Weighed, asked.Step, Temperature.FromCelsius(Math.Max(0, asked.Start)), bath);
        Temperature start = Temperature.FromCelsius(asked.Start);
        return asked.Frozen
            ? new PieceHeating(piece.Frozen(asked.Start).Thawed, piece.Frozen(asked.Start), start, piece.Why + string.Create(CultureInfo.InvariantCulture, $"; from frozen: until no ice is left in the middle by finite volumes on the heat content, {piece.Latent / 1e6:0} MJ/m³ of ice, no part faster than 0.995e-7 m²/s, then the thawed piece from 0 °C"))
            : new PieceHeating(piece.Cautious, null, start, piece.Why);
    }

    /// <summary>It goes in frozen.</summary>
    public bool IsFrozen => Ice is not null;

    /// <summary>" from frozen (-18 °C)", or nothing.</summary>
    public string From => Ice is null ? "" : string.Create(CultureInfo.InvariantCulture, $" from frozen ({Start.Celsius:0.#} °C)");

    /// <summary>Time until the middle is there; null when it never is.</summary>
    public Duration? TimeTo(Length thickness, Temperature bath, Temperature core) => Ice is null ? Bag.TimeTo(thickness, Start, bath, core) : Ice.TimeTo(thickness, bath, core);

    /// <summary>The same had it been thawed first.</summary>
    public Duration? AfterThaw(Length thickness, Temperature bath, Temperature core) => Bag.TimeTo(thickness, Temperature.FromCelsius(Thaw), bath, core);

    /// <summary>Middle after minutes.</summary>
    public Temperature CoreAfter(Length thickness, Temperature bath, double minutes) => Curve(thickness, bath, [minutes])[0].At;

    /// <summary>Middle at moments.</summary>
    public ImmutableArray<(double Minute, Temperature At)> Curve(Length thickness, Temperature bath, IEnumerable<double> minutes)
        => Ice is null ? [.. minutes.Select(m => (m, Bag.CoreAfter(thickness, Start, bath, Duration.FromMinutes(m))))] : Ice.Curve(thickness, bath, minutes);

    /// <summary>Greatest thickness that is there in a time; null when none is.</summary>
    public Length? ThickestIn(Duration time, Temperature bath, Temperature core) => Ice is null ? Bag.ThickestIn(time, Start, bath, core) : Ice.ThickestIn(time, bath, core);

    /// <summary>The same piece a few kelvin colder.</summary>
    public PieceHeating Colder(double kelvin)
    {
        Temperature start = Start - TemperatureDelta.FromKelvin(kelvin);
        return this with { Start = start, Ice = Ice is null ? null : Ice with { Start = Temperature.FromCelsius(Math.Max(-40, start.Celsius)) } };
    }
}
