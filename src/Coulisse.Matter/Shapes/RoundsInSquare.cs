using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>Equal rounds on a square plate or in a square box.</summary>
/// <param name="Count">How many fit.</param>
/// <param name="InRows">How many plain or offset rows give.</param>
/// <param name="LargestRound">Largest round of which as many still fit.</param>
/// <param name="NextRound">Largest round of which one more fits; null beyond the table.</param>
/// <param name="Centres">Where they stand, mm from the square's corner.</param>
/// <param name="Drawing">To scale.</param>
public sealed record RoundsInSquare(int Count, int InRows, Length LargestRound, Length? NextRound, ImmutableArray<DrawnPoint> Centres, Drawing Drawing)
{
    /// <summary>How many rounds stand in a square.</summary>
    /// <param name="side">Inside of the square.</param>
    /// <param name="round">Diameter of a round.</param>
    /// <remarks>The table of best-known packings reaches 50; beyond, rows. Check: 30 rounds need a side of 10.9086 radii, plain rows 12.</remarks>
    public static RoundsInSquare Fit(Length side, Length round)
    {
        RoundsOnTray rows = RoundsOnTray.Fit(side, side, round);
        double have = 2 * (side / round);
        double[] ratios = RingTable.InSquare;
        int n = 0;
        for (int i = 1; i < ratios.Length && ratios[i] <= have + 1e-9; i++)
        {
            n = i;
        }

        int count = Math.Max(n, rows.Count);
        Length largest = count > 0 && count < ratios.Length ? Length.FromMillimetres(Math.Max(2 * side.Millimetres / ratios[count], rows.Count == count ? rows.LargestRound.Millimetres : 0)) : rows.LargestRound;
        Length? next = count + 1 < ratios.Length ? Length.FromMillimetres(2 * side.Millimetres / ratios[count + 1]) : rows.NextMore;
        ImmutableArray<DrawnPoint> centres = count > rows.Count && RingTable.SquarePlaces(count) is { } places
            ? [.. places.Select(p => new DrawnPoint((side.Millimetres / 2) + (p.X * round.Millimetres / 2), (side.Millimetres / 2) + (p.Y * round.Millimetres / 2)))]
            : rows.Centres;
        return new(count, rows.Count, largest, next, centres, Draw(side.Millimetres, round.Millimetres, centres));
    }

    /// <summary>Diameters that fill the square: the widest round of which one, two, three … stand in it.</summary>
    /// <param name="side">Inside of the square.</param>
    /// <param name="round">Diameter asked for.</param>
    /// <remarks>To 50 rounds by the table; beyond, plain or offset rows alone.</remarks>
    public static ComesOutEven Sizes(Length side, Length round)
    {
        double a = side.Millimetres;
        double[] ratios = RingTable.InSquare;
        double Widest(int n) => Math.Max(n < ratios.Length ? 2 * a / ratios[n] : 0, RoundsOnTray.Widest(a, a, n, 0));
        int now = Fit(side, round).Count;
        return ComesOutEven.Among(round.Millimetres, Widest, Math.Max(ratios.Length, Fit(side, Length.FromMillimetres(Math.Max(0.1, Widest(now + 1)))).Count));
    }

    private static Drawing Draw(double side, double d, ImmutableArray<DrawnPoint> centres) => new(
        FormattableString.Invariant($"{centres.Length} rounds of {d:0.##} mm in a square of {side:0.#} mm"), side, side,
        [new RectMark(0, 0, side, side, Ink.Outline), .. centres.Select(c => new CircleMark(c.X, c.Y, d / 2, Ink.Piece))]);
}
