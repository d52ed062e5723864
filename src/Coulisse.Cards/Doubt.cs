using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Coulisse.Cards;

/// <summary>A question to the chef.</summary>
/// <param name="Line">Card line.</param>
/// <param name="Question">One sentence.</param>
/// <param name="Candidates">Two or more readings.</param>
/// <param name="Moves">What the answer changes, in words ("429 g or 322 g").</param>
/// <param name="Weight">How much it moves, for ranking; larger first.</param>
public sealed record Doubt(int Line, string Question, ImmutableArray<Candidate> Candidates, string Moves, double Weight)
{
    /// <summary>The words asked about, as they stand in the card from <see cref="Line"/> on: an answer takes their place and nothing else's. Null when the answer is a sentence about the whole card.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Asked { get; init; }
}

/// <summary>One possible reading.</summary>
/// <param name="Text">What it would mean.</param>
/// <param name="Plain">The plain words that, in place of <see cref="Doubt.Asked"/>, settle it; “…” stands where the chef writes a figure. The words asked about themselves mean that they are left so.</param>
public sealed record Candidate(string Text, string Plain);

/// <summary>Something the card says against itself, or that is implausible; with both figures.</summary>
/// <param name="Line">Card line.</param>
/// <param name="Kind">"listed unused", "used unlisted", "sum mismatch", "yield mismatch", "measures clash", "temperatures clash", "implausible", "time mismatch".</param>
/// <param name="What">One sentence with both figures.</param>
public sealed record Remark(int Line, string Kind, string What);

/// <summary>A fault of an input that keeps it from being used: where, what, what would be right.</summary>
/// <param name="Code">Stable code, listed in docs/problems.md.</param>
/// <param name="Line">Line, from 1; 0 for the whole.</param>
/// <param name="Message">What is wrong, with the value found.</param>
/// <param name="Hint">What would be right.</param>
public sealed record Problem(string Code, int Line, string Message, string Hint);
