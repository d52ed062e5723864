using System.Collections.Immutable;

namespace Coulisse.Kitchen.Formulas;

/// <summary>What a dish is scaled to.</summary>
public abstract record ScaleTo
{
    private ScaleTo()
    {
    }

    /// <summary>To a number of covers.</summary>
    /// <param name="Number">Covers, more than 0.</param>
    public sealed record Covers(double Number) : ScaleTo;

    /// <summary>To a finished weight.</summary>
    /// <param name="Grams">Grams wanted, more than 0.</param>
    public sealed record Yield(double Grams) : ScaleTo;

    /// <summary>To what there is of one ingredient.</summary>
    /// <param name="Food">Its name on the card, or its food id.</param>
    /// <param name="Grams">Grams at hand, more than 0.</param>
    public sealed record Have(string Food, double Grams) : ScaleTo;

    /// <summary>By a plain factor.</summary>
    /// <param name="By">Factor, more than 0.</param>
    public sealed record Factor(double By) : ScaleTo;

    /// <summary>To another tin, at the depth the card fills.</summary>
    /// <param name="Millimetres">One figure for a round, two or three for a box (length, width, depth).</param>
    public sealed record Tin(ImmutableArray<double> Millimetres) : ScaleTo;
}
