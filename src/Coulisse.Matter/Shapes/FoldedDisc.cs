using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A disc folded in two like a hinge over a filling: filled leaves, crêpes, dumplings before they are pinched.</summary>
/// <param name="Angle">Angle between the leaves, radians.</param>
/// <param name="Wedge">Volume between the leaves, out to the rim: ⅔ R³ θ.</param>
/// <param name="FilledShare">Share of the wedge within the filling's reach: 1 − (1 − (s/R)²)^1.5.</param>
/// <param name="Filling">Volume of the filling.</param>
/// <param name="Mass">Grams of the filling.</param>
/// <param name="CleanRim">Rim left clean.</param>
/// <param name="Disc">Diameter of the disc.</param>
/// <remarks>
/// The leaves are taken as flat and thin, the fold as sharp. Check: disc 60 mm, mouth 6 mm, filling to 18 mm from the fold, 1.02 g/mL:
/// θ 0.2003, wedge 3.606 mL, share 0.488, 1.76 mL, 1.8 g.
/// </remarks>
public sealed record FoldedDisc(double Angle, Volume Wedge, Fraction FilledShare, Volume Filling, Mass Mass, Length CleanRim, Length Disc)
{
    /// <summary>Folds a disc.</summary>
    /// <param name="disc">Diameter.</param>
    /// <param name="mouth">How far the rim stands open at its middle, at most the diameter.</param>
    /// <param name="reach">How far from the fold the filling goes, at most the radius.</param>
    /// <param name="density">Of the filling.</param>
    public static FoldedDisc Of(Length disc, Length mouth, Length reach, Density density)
    {
        double r = disc.Millimetres > 0 ? disc.Millimetres / 2 : throw new ArgumentOutOfRangeException(nameof(disc), disc.Millimetres, "A disc measures more than 0 mm.");
        double m = mouth.Millimetres <= disc.Millimetres ? mouth.Millimetres : throw new ArgumentOutOfRangeException(nameof(mouth), mouth.Millimetres, "A folded disc opens at most by its own diameter.");
        double s = reach.Millimetres <= r ? reach.Millimetres : throw new ArgumentOutOfRangeException(nameof(reach), reach.Millimetres, FormattableString.Invariant($"The filling reaches at most to the rim, {r:0.#} mm from the fold."));
        double theta = 2 * Math.Asin(m / 2 / r);
        double wedge = 2.0 / 3 * r * r * r * theta;
        double share = 1 - Math.Pow(1 - (s / r * (s / r)), 1.5);
        Volume filling = Volume.FromMillilitres(wedge * share / 1000);
        return new(theta, Volume.FromMillilitres(wedge / 1000), Fraction.FromValue(share), filling, filling * density, Length.FromMillimetres(r - s), disc);
    }

    /// <summary>How far from the fold a filling reaches: s = R √(1 − (1 − V/W)^⅔); null when it does not go in.</summary>
    /// <param name="filling">Volume between the leaves.</param>
    public Length? ReachFor(Volume filling) => filling <= Wedge
        ? Disc / 2 * Math.Sqrt(1 - Math.Pow(1 - (filling / Wedge), 2.0 / 3))
        : null;

    /// <summary>The folded disc from the side, with its filling's edge.</summary>
    public Drawing Draw()
    {
        double r = Disc.Millimetres / 2;
        double s = r - CleanRim.Millimetres;
        double half = Math.Sqrt(Math.Max(0, (r * r) - (s * s)));
        return new(
            FormattableString.Invariant($"Folded disc of {2 * r:0.#} mm disc, {Mass.Grams:0.0} g"),
            2 * r,
            r,
            [new PolygonMark(HalfDisc(r, r, r, 0), Closed: true, Ink.Piece), new LineMark(r - half, r - s, r + half, r - s, Ink.Guide)]);
    }

    /// <summary>Outline of a half-disc whose straight side runs through (x, y), bulging away from the direction of <paramref name="turn"/> = 0 upwards.</summary>
    /// <param name="x">Middle of the fold, mm.</param>
    /// <param name="y">Middle of the fold, mm.</param>
    /// <param name="radius">Radius, mm.</param>
    /// <param name="turn">Degrees clockwise from upwards.</param>
    public static ImmutableArray<DrawnPoint> HalfDisc(double x, double y, double radius, double turn)
    {
        ImmutableArray<DrawnPoint>.Builder points = ImmutableArray.CreateBuilder<DrawnPoint>(25);
        for (int i = 0; i <= 24; i++)
        {
            double a = (turn - 90 + (i * 7.5)) * Math.PI / 180;
            points.Add(new(x + (radius * Math.Sin(a)), y - (radius * Math.Cos(a))));
        }

        return points.MoveToImmutable();
    }
}
