using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A root trimmed to a cylinder and turned against the knife into one sheet, down to a core.</summary>
/// <param name="Sheet">Length of the sheet.</param>
/// <param name="Height">Width of the sheet: height of the cylinder.</param>
/// <param name="UsableShare">Share of the cylinder, peel counted, that ends in the sheet.</param>
/// <param name="Volume">Of the sheet.</param>
/// <param name="Whole">Of the cylinder as bought.</param>
/// <param name="Drawing">From the end: peel, spiral and core; and the sheet beside it.</param>
/// <remarks>Length π(D² − c²)/(4t), no sheet lost to the knife. Check: 60 mm peeled 2 mm to 56, sheet 1 mm, core 20 mm: 2,149 mm.</remarks>
public sealed record PeeledSheet(Length Sheet, Length Height, Fraction UsableShare, Volume Volume, Volume Whole, Drawing Drawing)
{
    /// <summary>Turns a root into a sheet.</summary>
    /// <param name="across">Diameter as bought.</param>
    /// <param name="tall">Height once both ends are cut off.</param>
    /// <param name="peel">Peeled all round.</param>
    /// <param name="thickness">Of the sheet, more than 0.</param>
    /// <param name="core">Diameter of what is left in the middle.</param>
    public static PeeledSheet Of(Length across, Length tall, Length peel, Length thickness, Length core)
    {
        Bulb cylinder = new Bulb(across, tall + (peel * 2)).Peeled(peel);
        Length sheet = SpiralRoll.SheetFor(thickness, cylinder.Across, core);
        double D(Length l) => l.Millimetres;
        Volume whole = Volume.FromMillilitres(Math.PI * D(across) * D(across) / 4 * D(tall) / 1000);
        Volume made = Volume.FromMillilitres(D(sheet) * D(tall) * D(thickness) / 1000);
        double r = D(across) / 2;
        int turns = Math.Clamp((int)((D(cylinder.Across) - D(core)) / 2 / D(thickness)), 1, 80);
        double from = D(core) / 2;
        double rise = ((D(cylinder.Across) / 2) - from) / turns;
        return new(sheet, tall, Fraction.FromValue(Math.Clamp(made.Millilitres / whole.Millilitres, 0, 1)), made, whole, new(
            FormattableString.Invariant($"Sheet of {D(sheet):0} × {D(tall):0} mm from a root {2 * r:0.#} mm across, core {D(core):0.#} mm"),
            Math.Max(2 * r, D(sheet)),
            (2 * r) + 6 + D(tall),
            [
                new CircleMark(r, r, r, Ink.Trim),
                new CircleMark(r, r, D(cylinder.Across) / 2, Ink.Piece),
                .. Enumerable.Range(1, turns - 1).Select(i => new CircleMark(r, r, from + (i * rise), Ink.Guide)),
                new CircleMark(r, r, Math.Max(from, 0.5), Ink.Trim),
                new RectMark(0, (2 * r) + 6, D(sheet), D(tall), Ink.Piece),
            ]));
    }
}
