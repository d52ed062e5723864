using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A root or bulb as an ellipsoid of revolution: so wide, so tall. A ball is as tall as it is wide.</summary>
/// <param name="Across">Widest diameter.</param>
/// <param name="Tall">Height along the axis.</param>
public sealed record Bulb(Length Across, Length Tall)
{
    /// <summary>Widest diameter.</summary>
    public Length Across { get; } = Across.Millimetres > 0 ? Across : throw new ArgumentOutOfRangeException(nameof(Across), Across.Millimetres, "A bulb is wider than 0 mm.");

    /// <summary>Height along the axis.</summary>
    public Length Tall { get; } = Tall.Millimetres > 0 ? Tall : throw new ArgumentOutOfRangeException(nameof(Tall), Tall.Millimetres, "A bulb is taller than 0 mm.");

    /// <summary>A ball.</summary>
    /// <param name="across">Diameter.</param>
    public static Bulb Ball(Length across) => new(across, across);

    /// <summary>Volume π D² H / 6.</summary>
    public Volume Volume => Volume.FromMillilitres(Math.PI * Across.Millimetres * Across.Millimetres * Tall.Millimetres / 6 / 1000);

    /// <summary>Peeled all round.</summary>
    /// <param name="peel">Thickness taken off.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is left.</exception>
    public Bulb Peeled(Length peel)
    {
        double d = Across.Millimetres - (2 * peel.Millimetres);
        double h = Tall.Millimetres - (2 * peel.Millimetres);
        return d > 0 && h > 0
            ? new(Length.FromMillimetres(d), Length.FromMillimetres(h))
            : throw new ArgumentOutOfRangeException(nameof(peel), peel.Millimetres, "Peeling leaves nothing.");
    }

    /// <summary>Height of the middle part that is at least so wide: H √(1 − (d/D)²).</summary>
    /// <param name="width">Width wanted.</param>
    /// <remarks>Check: 86 × 74 mm, 60 mm wide: 53.0 mm.</remarks>
    public Length HeightAtLeast(Length width) => width > Across
        ? default
        : Length.FromMillimetres(Tall.Millimetres * Math.Sqrt(1 - Math.Pow(width / Across, 2)));
}
