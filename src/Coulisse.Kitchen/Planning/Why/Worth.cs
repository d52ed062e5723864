using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Why;

/// <summary>What one more of something would save.</summary>
/// <param name="What">One more what, in words.</param>
/// <param name="Words">What it would save, one sentence.</param>
/// <param name="Levels">Each level of the objective without it and with it; from the first that differs on, later levels may be worse.</param>
public sealed record Worth(string What, string Words, ImmutableArray<WorthLevel> Levels)
{
    /// <summary>True when the first level that changes is better with it.</summary>
    public bool Saves => Levels.FirstOrDefault(l => Math.Abs(l.With - l.Without) > 1e-9) is { } l && l.With < l.Without;
}

/// <summary>One level of the objective.</summary>
/// <param name="Level">Name.</param>
/// <param name="Without">Value of the plan as it is.</param>
/// <param name="With">Best value found with one more.</param>
/// <param name="Bound">Best value that any plan with one more could have; negative infinity when nothing is proven.</param>
/// <param name="Unit">Unit.</param>
public sealed record WorthLevel(string Level, double Without, double With, double Bound, string Unit);
