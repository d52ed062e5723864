using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A formula carried from one tin to another: by what factor, how deep it then stands, and what that does to the baking.</summary>
/// <param name="Factor">Multiply the formula by this.</param>
/// <param name="OldDepth">Depth in the tin of the card.</param>
/// <param name="NewDepth">Depth in the new tin.</param>
/// <param name="MinutesFactorLow">Baking time grows at least by this, when the depth changes.</param>
/// <param name="MinutesFactorHigh">Baking time grows at most by this.</param>
/// <param name="Warning">What to watch; empty when the depth stays within 10 %.</param>
public sealed record MouldScaling(double Factor, Length OldDepth, Length NewDepth, double MinutesFactorLow, double MinutesFactorHigh, string Warning)
{
    /// <summary>Keeps the depth: factor = volume of the new tin to that depth over volume of the old. For straight sides this is the ratio of areas.</summary>
    /// <param name="from">Tin of the card.</param>
    /// <param name="to">New tin.</param>
    /// <param name="depth">Depth that the card's batter stands at.</param>
    public static MouldScaling SameDepth(Mould from, Mould to, Length depth)
        => Of(to.VolumeTo(depth) / from.VolumeTo(depth), depth, depth);

    /// <summary>Keeps the share of the tin that is filled.</summary>
    /// <param name="from">Tin of the card.</param>
    /// <param name="to">New tin.</param>
    /// <param name="depth">Depth that the card's batter stands at.</param>
    public static MouldScaling SameShare(Mould from, Mould to, Length depth)
    {
        double share = from.VolumeTo(depth) / from.Volume;
        return Of(to.Volume / from.Volume, depth, to.DepthFor(to.Volume * share));
    }

    /// <summary>Keeps the formula: the same batter in the new tin.</summary>
    /// <param name="from">Tin of the card.</param>
    /// <param name="to">New tin.</param>
    /// <param name="depth">Depth that the card's batter stands at.</param>
    /// <exception cref="ArgumentOutOfRangeException">It does not go into the new tin.</exception>
    public static MouldScaling SameBatter(Mould from, Mould to, Length depth)
        => Of(1, depth, to.DepthFor(from.VolumeTo(depth)));

    // Conduction alone gives depth²; practice reads 1.5 to 2 since surface coefficients and moisture count too (common practice, no source).
    private static MouldScaling Of(double factor, Length before, Length after)
    {
        double ratio = after / before;
        double a = Math.Pow(ratio, 1.5);
        double b = Math.Pow(ratio, 2);
        string warning = Math.Abs(ratio - 1) <= 0.1
            ? ""
            : FormattableString.Invariant($"{before.Millimetres:0.#} mm becomes {after.Millimetres:0.#} mm deep: reckon {Math.Min(a, b):0.##} to {Math.Max(a, b):0.##} times the minutes and {(ratio > 1 ? "a cooler" : "a hotter")} oven, and go by the middle, not the clock.");
        return new(factor, before, after, Math.Min(a, b), Math.Max(a, b), warning);
    }
}
