using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>Equal rounds on a square plate or in a square box.</summary>
/// <param name="Count">How many fit.</param>
/// <param name="InRows">How many plain or offset rows give; places are drawn for these.</param>
/// <param name="LargestRound">Largest round of which as many still fit.</param>
/// <param name="NextRound">Largest round of which one more fits; null beyond the table.</param>
/// <param name="Rows">The rows, with places and drawing.</param>
public sealed record RoundsInSquare(int Count, int InRows, Length LargestRound, Length? NextRound, RoundsOnTray Rows)
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
        return new(count, rows.Count, largest, next, rows);
    }
}
