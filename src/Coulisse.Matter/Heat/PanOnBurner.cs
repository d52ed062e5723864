using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>An open pan on a burner: what of its power reaches the contents, as a range.</summary>
/// <param name="Most">Net power, good end.</param>
/// <param name="Least">Net power, poor end; zero when the losses eat it.</param>
/// <param name="Source">Where the range is from.</param>
/// <remarks>Share into the pan: gas 0.35 to 0.45, electric plate 0.65 to 0.75, induction 0.80 to 0.85; loss from wall and open surface 0.1 to 0.4 kW (a 24 cm pan). All from memory: one weighing on the hob in question replaces them.</remarks>
public sealed record PanOnBurner(Power Most, Power Least, string Source)
{
    private const double WaterHeat = 4.19;   // kJ/(kg·K), from memory

    /// <summary>Net power for a kind of burner.</summary>
    /// <param name="kind">gas, plate or induction.</param>
    /// <param name="drawn">What it draws, 100 W to 30 kW.</param>
    /// <exception cref="ArgumentException">Another kind, or a power outside the range.</exception>
    public static PanOnBurner Of(string kind, Power drawn)
    {
        if (drawn.Watts is not (>= 100 and <= 30_000))
        {
            throw new ArgumentException("A burner draws 0.1 to 30 kW.", nameof(drawn));
        }

        (double low, double high) = kind switch { "gas" => (0.35, 0.45), "plate" => (0.65, 0.75), "induction" => (0.80, 0.85), _ => throw new ArgumentException($"\"{kind}\" is no burner known here; use gas, plate or induction.", nameof(kind)) };
        return new PanOnBurner(
            Power.FromWatts(Math.Max(0, (drawn.Watts * high) - 100)),
            Power.FromWatts(Math.Max(0, (drawn.Watts * low) - 400)),
            FormattableString.Invariant($"{kind}: {low:0.00} to {high:0.00} of the power reaches the pan, 0.1 to 0.4 kW is lost from it (from memory)."));
    }

    /// <summary>Net power from one weighing of a pan that boiled on this burner: what went off, over its time; a tenth either way for the scale, the clock and the hood.</summary>
    /// <param name="before">Weight when the clock was started, boiling.</param>
    /// <param name="after">Weight at the end.</param>
    /// <param name="boiled">Time between, 1 min to 12 h.</param>
    /// <exception cref="ArgumentException">Nothing boiled off, or a time outside its range.</exception>
    public static PanOnBurner Weighed(Mass before, Mass after, Duration boiled)
    {
        if (boiled.TotalMinutes is not (>= 1 and <= 720) || after.Grams is not > 0 || before.Grams - after.Grams is not > 0)
        {
            throw new ArgumentException("A weighing is of a pan that boiled 1 min to 12 h and weighs less at the end.", nameof(after));
        }

        double watts = new Reduction(before, after).Heat.Kilojoules * 1000 / boiled.TotalSeconds;
        return new PanOnBurner(Power.FromWatts(watts * 1.1), Power.FromWatts(watts * 0.9), FormattableString.Invariant($"{watts / 1000:0.00} kW net by your own weighing ({before.Grams - after.Grams:0} g in {boiled.TotalMinutes:0.#} min), a tenth either way."));
    }

    /// <summary>Time to 100 °C; null where the losses eat the power.</summary>
    public (Duration? Quick, Duration? Slow) ToBoil(Mass contents, Temperature start)
    {
        Energy heat = Energy.FromKilojoules(Math.Max(0, contents.Grams / 1000 * WaterHeat * (100 - start.Celsius)));
        return (Time(heat, Most), Time(heat, Least));
    }

    /// <summary>Time to boil down; null where the losses eat the power.</summary>
    public (Duration? Quick, Duration? Slow) ToReduce(Reduction reduction)
    {
        ArgumentNullException.ThrowIfNull(reduction);
        return (Time(reduction.Heat, Most), Time(reduction.Heat, Least));
    }

    private static Duration? Time(Energy heat, Power net) => net.Watts > 0 ? heat / net : null;
}
