using System.Collections.Immutable;
using System.Diagnostics;

namespace Coulisse.Cards;

/// <summary>The outcome of reading an input that may be refused: a value, or every problem found.</summary>
/// <typeparam name="T">What was read.</typeparam>
public abstract record Parsed<T>
{
    private Parsed()
    {
    }

    /// <summary>It was read.</summary>
    /// <param name="Value">What was read.</param>
    public sealed record Ok(T Value) : Parsed<T>;

    /// <summary>It was refused.</summary>
    /// <param name="Problems">All problems, each with its place and remedy.</param>
    public sealed record Failed(ImmutableArray<Problem> Problems) : Parsed<T>;

    /// <summary>Goes on with whichever it is.</summary>
    public TOut Match<TOut>(Func<T, TOut> ok, Func<ImmutableArray<Problem>, TOut> failed) => this switch
    {
        Ok(var value) => ok(value),
        Failed(var problems) => failed(problems),
        _ => throw new UnreachableException(),
    };
}
