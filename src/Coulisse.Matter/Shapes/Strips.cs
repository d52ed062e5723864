using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A sheet cut into strips along its length.</summary>
/// <param name="Count">Strips from one sheet.</param>
/// <param name="Plan">Their places, with trim and drawing.</param>
/// <param name="Widths">Strip widths that use the sheet up: the row (W + k)/n − k.</param>
public sealed record Strips(int Count, CutPlan Plan, ComesOutEven Widths)
{
    /// <summary>Cuts strips as long as the sheet, edges trimmed.</summary>
    /// <param name="along">Length of the sheet; a strip's length.</param>
    /// <param name="across">Width of the sheet.</param>
    /// <param name="width">Width of a strip.</param>
    /// <param name="kerf">Lost at each cut.</param>
    /// <param name="edge">Trimmed from every side.</param>
    public static Strips Of(Length along, Length across, Length width, Length kerf = default, Length edge = default)
    {
        double length = Inside(along, edge);
        double wide = Inside(across, edge);
        CutPlan plan = Cutting.Fit(along, across, Length.FromMillimetres(length), width, kerf, edge, mayTurn: false);
        return new(plan.Count, plan, ComesOutEven.Shares(width.Millimetres, wide, kerf.Millimetres));
    }

    private static double Inside(Length whole, Length edge) => whole > edge * 2
        ? (whole - (edge * 2)).Millimetres
        : throw new ArgumentOutOfRangeException(nameof(edge), edge.Millimetres, FormattableString.Invariant($"A sheet of {whole.Millimetres:0.#} mm must be more than twice the edge."));
}
