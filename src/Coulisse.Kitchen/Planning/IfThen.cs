using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning;

/// <summary>A single failure thought through the night before, with its answer already solved.</summary>
/// <param name="Case">What kind of failure: "kit", "person" or "delay".</param>
/// <param name="WhatFails">What fails, in words ("SO fails on the morning of the day", "segment 3 runs 2:00 late").</param>
/// <param name="Answer">What to do, one sentence.</param>
/// <param name="Changes">What changes, a sentence for each person; empty when nothing does.</param>
public sealed record IfThen(string Case, string WhatFails, string Answer, ImmutableArray<string> Changes)
{
    /// <summary>Kit code, person's name or segment number.</summary>
    public string Subject { get; init; } = "";

    /// <summary>True when all that was planned still stands ready and the slot ends on time; false when something is given up.</summary>
    public bool Holds { get; init; }
}
