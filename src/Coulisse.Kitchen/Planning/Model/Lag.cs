namespace Coulisse.Kitchen.Planning.Model;

/// <summary>An end of an activity.</summary>
public enum Edge
{
    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its end.</summary>
    End,
}

/// <summary>A lag: the later edge comes at least <paramref name="Least"/> steps after the earlier one.</summary>
/// <remarks>
/// time(To) ≥ time(From) + Least; and, when <see cref="Most"/> is given, time(To) ≤ time(From) + Most.
/// A negative least is a maximum lag the other way round. A lag of an absent activity binds nothing.
/// </remarks>
/// <param name="From">Position of the earlier activity.</param>
/// <param name="FromEdge">Which of its edges.</param>
/// <param name="To">Position of the later activity.</param>
/// <param name="ToEdge">Which of its edges.</param>
/// <param name="Least">Least steps between, may be negative.</param>
public sealed record Lag(int From, Edge FromEdge, int To, Edge ToEdge, int Least)
{
    /// <summary>Most steps between; null for no upper end.</summary>
    public int? Most { get; init; }

    /// <summary>When true, <see cref="Most"/> may be overrun and the excess is counted by a goal (<see cref="TermKind.LagExcess"/>).</summary>
    public bool Soft { get; init; }

    /// <summary>Where it comes from, in words.</summary>
    public string Because { get; init; } = "";

    /// <summary>The plain precedence: <paramref name="to"/> starts when <paramref name="from"/> has ended.</summary>
    public static Lag After(int from, int to, int least = 0) => new(from, Edge.End, to, Edge.Start, least);

    /// <summary>From start to start.</summary>
    public static Lag StartToStart(int from, int to, int least) => new(from, Edge.Start, to, Edge.Start, least);
}
