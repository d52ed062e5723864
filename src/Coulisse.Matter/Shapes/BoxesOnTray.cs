using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>Boxes, tubs or oblong plates on a tray or shelf, and how many trays they take. Boxes are set down, so the layout is that of cutting with a kerf of one gap.</summary>
/// <param name="PerTray">How many stand on one tray.</param>
/// <param name="Layout">Their places.</param>
public sealed record BoxesOnTray(int PerTray, CutPlan Layout)
{
    /// <summary>Fits boxes on a tray.</summary>
    /// <param name="along">Length of the tray.</param>
    /// <param name="across">Width of the tray.</param>
    /// <param name="boxAlong">Length of a box.</param>
    /// <param name="boxAcross">Width of a box.</param>
    /// <param name="gap">Room between two.</param>
    /// <remarks>Check: 120 × 90 mm on a tray of 530 × 325 mm: 12 in plain rows, 13 mixed; 48 boxes take four trays either way.</remarks>
    public static BoxesOnTray Fit(Length along, Length across, Length boxAlong, Length boxAcross, Length gap = default)
    {
        CutPlan plan = Cutting.Fit(along, across, boxAlong, boxAcross, gap);
        return new(plan.Count, plan);
    }

    /// <summary>Trays for a number of boxes.</summary>
    /// <param name="boxes">How many must stand.</param>
    /// <exception cref="InvalidOperationException">Not one stands on a tray.</exception>
    public int TraysFor(int boxes) => PerTray > 0 ? (boxes + PerTray - 1) / PerTray : throw new InvalidOperationException("Not one fits on the tray.");
}
