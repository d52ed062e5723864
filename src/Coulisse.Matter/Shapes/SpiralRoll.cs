using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A sheet rolled up whole (roulade, Swiss roll, crêpe roll): R = √(r₀² + L t / π), turns (R − r₀)/t.</summary>
/// <param name="Diameter">Outer diameter.</param>
/// <param name="Turns">Turns.</param>
/// <remarks>Check: 8 mm thick, 380 mm long, no core: 62.2 mm across, 3.89 turns; 1.5 × 400 mm on a core of 6 mm radius: 30.1 mm, 6.0 turns.</remarks>
public sealed record SpiralRoll(Length Diameter, double Turns)
{
    /// <summary>Rolls a sheet.</summary>
    /// <param name="thickness">Sheet and filling, more than 0.</param>
    /// <param name="length">Length rolled.</param>
    /// <param name="core">Diameter of the core; 0 for none.</param>
    public static SpiralRoll Of(Length thickness, Length length, Length core = default)
    {
        double t = thickness.Millimetres > 0 ? thickness.Millimetres : throw new ArgumentOutOfRangeException(nameof(thickness), thickness.Millimetres, "A sheet is thicker than 0 mm.");
        double r0 = core.Millimetres / 2;
        double r = Math.Sqrt((r0 * r0) + (length.Millimetres * t / Math.PI));
        return new(Length.FromMillimetres(2 * r), (r - r0) / t);
    }

    /// <summary>Sheet lengths that end in whole turns, the seam underneath.</summary>
    /// <param name="thickness">Sheet and filling, more than 0.</param>
    /// <param name="length">Length asked for, more than 0.</param>
    /// <param name="core">Diameter of the core; 0 for none.</param>
    public static ComesOutEven WholeTurns(Length thickness, Length length, Length core = default)
        => ComesOutEven.Among(length.Millimetres, n => SheetFor(thickness, core + (thickness * (2 * n)), core).Millimetres, 3 + (int)Math.Sqrt(length.Millimetres / Math.Max(0.01, thickness.Millimetres)));

    /// <summary>Length of sheet for an outer diameter: π(R² − r₀²)/t; also the sheet peeled off a cylinder down to a core.</summary>
    /// <param name="thickness">Of the sheet, more than 0.</param>
    /// <param name="outer">Outer diameter.</param>
    /// <param name="core">Diameter of the core that is left.</param>
    /// <exception cref="ArgumentOutOfRangeException">The core is wider than the roll.</exception>
    public static Length SheetFor(Length thickness, Length outer, Length core = default)
    {
        double t = thickness.Millimetres > 0 ? thickness.Millimetres : throw new ArgumentOutOfRangeException(nameof(thickness), thickness.Millimetres, "A sheet is thicker than 0 mm.");
        double area = (outer.Millimetres * outer.Millimetres) - (core.Millimetres * core.Millimetres);
        return area >= 0
            ? Length.FromMillimetres(Math.PI * area / (4 * t))
            : throw new ArgumentOutOfRangeException(nameof(core), core.Millimetres, FormattableString.Invariant($"The core must be thinner than {outer.Millimetres:0.#} mm."));
    }
}
