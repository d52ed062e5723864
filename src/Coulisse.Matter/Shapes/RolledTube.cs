using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A strip rolled on a rod into a tube.</summary>
/// <param name="StripLength">Length of the strip round the rod, overlap included.</param>
/// <param name="Outer">Outer diameter beside the seam.</param>
/// <param name="AtSeam">Outer diameter over the seam: what a ring must take.</param>
/// <param name="Turns">Whole turns under the overlap.</param>
/// <param name="Hole">Rod or hole diameter.</param>
/// <param name="Height">Height of the tube: width of the strip.</param>
/// <remarks>Wet or soft sheets stretch 3 to 8 % (common practice, no source): cut one, measure, correct.</remarks>
public sealed record RolledTube(Length StripLength, Length Outer, Length AtSeam, int Turns, Length Hole, Length Height)
{
    /// <summary>Volume of the hole.</summary>
    public Volume HoleVolume => Volume.FromMillilitres(Math.PI * Hole.Millimetres * Hole.Millimetres / 4 * Height.Millimetres / 1000);

    /// <summary>Grams of filling.</summary>
    /// <param name="density">Of the filling.</param>
    /// <param name="full">Share of the hole that is filled; 0.97 leaves a clean edge (common practice, no source).</param>
    /// <remarks>Check: hole 14 mm, 40 mm high, 1.02 g/mL, 97 %: 6.16 mL, 6.09 g.</remarks>
    public Mass Filling(Density density, Fraction full) => HoleVolume * density * full.Value;

    /// <summary>Rolls a tube of whole turns: L = π((d/2 + n t)² − (d/2)²)/t + overlap.</summary>
    /// <param name="hole">Rod diameter; 0 for a roll without a core is not a tube, see <see cref="SpiralRoll"/>.</param>
    /// <param name="thickness">Of the sheet, more than 0.</param>
    /// <param name="turns">Whole turns, 1 or more.</param>
    /// <param name="overlap">Past the last whole turn.</param>
    /// <param name="height">Height of the tube.</param>
    /// <remarks>Check: hole 14, thickness 1.2, one turn, overlap 8: strip 55.8 mm, 16.4 mm across, 17.6 mm at the seam.</remarks>
    public static RolledTube Of(Length hole, Length thickness, int turns, Length overlap, Length height)
    {
        double d = hole.Millimetres;
        double t = thickness.Millimetres > 0 ? thickness.Millimetres : throw new ArgumentOutOfRangeException(nameof(thickness), thickness.Millimetres, "A sheet is thicker than 0 mm.");
        ArgumentOutOfRangeException.ThrowIfLessThan(turns, 1);
        if (d <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(hole), d, "A rod measures more than 0 mm.");
        }

        double r = d / 2;
        double length = (Math.PI * (((r + (turns * t)) * (r + (turns * t))) - (r * r)) / t) + overlap.Millimetres;
        double outer = d + (2 * turns * t);
        return new(Length.FromMillimetres(length), Length.FromMillimetres(outer), Length.FromMillimetres(overlap.Millimetres > 0 ? outer + t : outer), turns, hole, height);
    }

    /// <summary>Strip lengths that close in whole turns.</summary>
    /// <param name="hole">Rod diameter, more than 0.</param>
    /// <param name="thickness">Of the sheet, more than 0.</param>
    /// <param name="overlap">Past the last whole turn.</param>
    /// <param name="strip">Strip asked for.</param>
    public static ComesOutEven WholeTurns(Length hole, Length thickness, Length overlap, Length strip)
        => ComesOutEven.Among(strip.Millimetres, n => Of(hole, thickness, n, overlap, thickness).StripLength.Millimetres, 3 + (int)(strip / (Of(hole, thickness, 1, overlap, thickness).Hole * Math.PI)));

    /// <summary>Tubes from a sheet cut into strips as wide as the tube is high.</summary>
    /// <param name="sheetAlong">Length of the sheet.</param>
    /// <param name="sheetAcross">Width of the sheet.</param>
    /// <param name="kerf">Width lost at each cut.</param>
    /// <param name="edge">Trimmed from every side.</param>
    public CutPlan FromSheet(Length sheetAlong, Length sheetAcross, Length kerf = default, Length edge = default)
        => Cutting.Fit(sheetAlong, sheetAcross, StripLength, Height, kerf, edge);

    /// <summary>The tube from above and its strip, to scale.</summary>
    public Drawing Draw()
    {
        double a = AtSeam.Millimetres;
        return new(
            FormattableString.Invariant($"Tube {Outer.Millimetres:0.#} mm across, {AtSeam.Millimetres:0.#} mm at the seam; strip {StripLength.Millimetres:0.#} × {Height.Millimetres:0.#} mm"),
            Math.Max(a, StripLength.Millimetres),
            a + 4 + Height.Millimetres,
            [
                new CircleMark(a / 2, a / 2, Outer.Millimetres / 2, Ink.Piece),
                new CircleMark(a / 2, a / 2, Hole.Millimetres / 2, Ink.Outline),
                new RectMark(0, a + 4, StripLength.Millimetres, Height.Millimetres, Ink.Piece),
            ]);
    }
}
