using System.Collections.Immutable;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Formulas.Targets;

/// <summary>A mixture to bring to its targets by moving lines within bounds.</summary>
/// <param name="Lines">All lines, those that stay put included.</param>
/// <param name="Targets">What is wanted, at least one.</param>
/// <param name="KeepWeight">True when the weight of the whole stays.</param>
public sealed record TargetTask(ImmutableArray<TargetLine> Lines, ImmutableArray<Target> Targets, bool KeepWeight);

/// <summary>A line of such a mixture.</summary>
/// <param name="Name">Food as written.</param>
/// <param name="Line">Card line; 0 for a food that is not on the card.</param>
/// <param name="Grams">As written; 0 for a food that may be added.</param>
/// <param name="Low">Least grams; equal to <paramref name="High"/> when it stays put.</param>
/// <param name="High">Most grams.</param>
/// <param name="Composition">Per 100 g.</param>
public sealed record TargetLine(string Name, int Line, double Grams, double Low, double High, Composition Composition)
{
    /// <summary>True when it may move.</summary>
    public bool Moves => High > Low;
}

/// <summary>What a fit came to.</summary>
/// <param name="Lines">Every line with its grams before and after.</param>
/// <param name="Targets">Every target with its figure before and after.</param>
/// <param name="Reached">True when all are met; false makes the grams the nearest that can be reached.</param>
/// <param name="Stopped">When not reached: the lines that stand at a bound and would have to go on.</param>
public sealed record TargetAnswer(ImmutableArray<TargetGrams> Lines, ImmutableArray<TargetFigure> Targets, bool Reached, ImmutableArray<string> Stopped);

/// <summary>A line before and after.</summary>
/// <param name="Line">The line.</param>
/// <param name="Grams">Grams after.</param>
public sealed record TargetGrams(TargetLine Line, double Grams)
{
    /// <summary>Grams more (or fewer) than written.</summary>
    public double Moved => Grams - Line.Grams;
}

/// <summary>A target before and after.</summary>
/// <param name="Target">The target.</param>
/// <param name="Before">Figure as written.</param>
/// <param name="After">Figure of the answer.</param>
public sealed record TargetFigure(Target Target, double Before, double After);
