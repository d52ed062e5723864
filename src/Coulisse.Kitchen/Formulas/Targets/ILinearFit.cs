using System.Collections.Immutable;

namespace Coulisse.Kitchen.Formulas.Targets;

/// <summary>Solves small linear fits: amounts within bounds that meet rows, moved as little as can be.</summary>
public interface ILinearFit
{
    /// <summary>First misses the soft rows as little as possible, then moves the amounts as little as possible.</summary>
    /// <returns>Null when bounds and firm rows already contradict each other.</returns>
    LinearAnswer? Solve(LinearTask task);
}

/// <summary>A small linear fit.</summary>
/// <param name="Amounts">Unknowns.</param>
/// <param name="Rows">What they must meet.</param>
public sealed record LinearTask(ImmutableArray<LinearAmount> Amounts, ImmutableArray<LinearRow> Rows);

/// <summary>One unknown.</summary>
/// <param name="Low">Least.</param>
/// <param name="High">Most, at least <paramref name="Low"/>.</param>
/// <param name="Start">Where it stands; moving away costs.</param>
/// <param name="Weight">Cost of moving by one, above 0.</param>
public readonly record struct LinearAmount(double Low, double High, double Start, double Weight);

/// <summary>One row: Low ≤ Σ factor·amount ≤ High.</summary>
/// <param name="Factors">One for each amount.</param>
/// <param name="Low">Least; −∞ when there is none.</param>
/// <param name="High">Most; +∞ when there is none.</param>
/// <param name="Scale">A miss is counted in units of this, above 0.</param>
/// <param name="Firm">True when it may not be missed at all.</param>
public sealed record LinearRow(ImmutableArray<double> Factors, double Low, double High, double Scale, bool Firm);

/// <summary>The answer of a linear fit.</summary>
/// <param name="Amounts">One for each unknown.</param>
/// <param name="Missed">Sum of the misses of the soft rows in their own scales; 0 when all are met.</param>
public sealed record LinearAnswer(ImmutableArray<double> Amounts, double Missed);
