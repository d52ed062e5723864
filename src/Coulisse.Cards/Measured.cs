using System.Globalization;

namespace Coulisse.Cards;

/// <summary>What good runs of a standardised card came to, in place of a figure that was only written or assumed. The unit is that of the property that holds it.</summary>
/// <param name="Runs">Good runs that measured it, three or more.</param>
/// <param name="Mean">Their mean.</param>
/// <param name="Deviation">Sample standard deviation.</param>
/// <param name="Least">Smallest; where a measurement has a range of its own, its low end.</param>
/// <param name="Most">Largest, in the same way.</param>
public sealed record Measured(int Runs, double Mean, double Deviation, double Least, double Most)
{
    /// <summary>Runs that are needed: one good day is no rule, two tell hardly a spread (USDA Recipe Standardization Guide: at least three).</summary>
    public const int LeastRuns = 3;

    /// <summary>The figure as it stands beside a number: how many runs, mean, spread.</summary>
    /// <param name="unit">Unit, with its space.</param>
    public string Words(string unit) => string.Create(CultureInfo.InvariantCulture, $"learnt from {Runs} runs: {Mean:0.###}{unit}, {Least:0.###} to {Most:0.###} (deviation {Deviation:0.##})");
}
