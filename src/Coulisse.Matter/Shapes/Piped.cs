using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>What is piped, spooned or dropped, as volumes. Grams follow with the density: volume · density.</summary>
public static class Piped
{
    /// <summary>A drop or kiss: cap of a sphere, π h (3a² + h²) / 6 with a half the base.</summary>
    /// <param name="across">Base diameter.</param>
    /// <param name="high">Height.</param>
    /// <remarks>Check: 35 × 12 mm 6.7 mL; 60 × 8 mm 11.6 mL.</remarks>
    public static Volume Drop(Length across, Length high)
    {
        double a = across.Millimetres / 2;
        double h = high.Millimetres;
        return Volume.FromMillilitres(Math.PI * h * ((3 * a * a) + (h * h)) / 6 / 1000);
    }

    /// <summary>A flat disc: π d² h / 4.</summary>
    /// <param name="across">Diameter.</param>
    /// <param name="high">Height.</param>
    /// <remarks>Check: 100 × 6 mm 47 mL.</remarks>
    public static Volume Disc(Length across, Length high)
        => Volume.FromMillilitres(Math.PI * across.Millimetres * across.Millimetres / 4 * high.Millimetres / 1000);

    /// <summary>A line from a round nozzle: π d² / 4 for each mm.</summary>
    /// <param name="nozzle">Nozzle diameter.</param>
    /// <param name="length">Length of the line.</param>
    /// <remarks>Soft masses swell 5 to 10 % (common practice, no source). Check: 10 mm nozzle, 100 mm: 7.9 mL; 8 mm, 35 mm: 1.759 mL.</remarks>
    public static Volume Line(Length nozzle, Length length) => Disc(nozzle, length);

    /// <summary>Length of line that a volume gives from a round nozzle.</summary>
    /// <param name="nozzle">Nozzle diameter, more than 0.</param>
    /// <param name="volume">Volume wanted.</param>
    public static Length LineFor(Length nozzle, Volume volume) => nozzle.Millimetres > 0
        ? Length.FromMillimetres(volume.Millilitres * 1000 / (Math.PI * nozzle.Millimetres * nozzle.Millimetres / 4))
        : throw new ArgumentOutOfRangeException(nameof(nozzle), nozzle.Millimetres, "A nozzle is wider than 0 mm.");

    /// <summary>A quenelle: ellipsoid by its full measures, π abc / 6.</summary>
    /// <param name="along">Length.</param>
    /// <param name="across">Width.</param>
    /// <param name="high">Height.</param>
    /// <remarks>Check: 60 × 30 × 25 mm 23.6 mL.</remarks>
    public static Volume Quenelle(Length along, Length across, Length high)
        => Volume.FromMillilitres(Math.PI * along.Millimetres * across.Millimetres * high.Millimetres / 6 / 1000);

    /// <summary>Diameter of a half-ball of a volume: (12 V / π)^⅓; the dot that a bottle sets down.</summary>
    /// <param name="volume">Volume of the dot.</param>
    /// <remarks>Check: 1.4 g at 1.05 g/mL: 17.2 mm.</remarks>
    public static Length DotAcross(Volume volume) => Length.FromMillimetres(Math.Cbrt(12 * volume.Millilitres * 1000 / Math.PI));

    /// <summary>What must go into the bag so that a mass comes out.</summary>
    /// <param name="wanted">Mass piped.</param>
    /// <param name="stays">Share that stays in bag and nozzle: 0.04 to 0.08 (common practice, no source).</param>
    public static Mass IntoTheBag(Mass wanted, Fraction stays) => wanted / stays.Rest.Value;
}
