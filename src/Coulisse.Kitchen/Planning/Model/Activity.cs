using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Model;

/// <summary>Something that takes time.</summary>
/// <param name="Name">Name, for messages.</param>
/// <param name="Modes">Ways to do it, one or more.</param>
public sealed record Activity(string Name, ImmutableArray<Mode> Modes)
{
    /// <summary>It may be left out.</summary>
    public bool Optional { get; init; }

    /// <summary>It lies wholly in one of these; empty means anywhere.</summary>
    public ImmutableArray<Stretch> Windows { get; init; } = [];

    /// <summary>Fixed start; null when free.</summary>
    public int? FixedStart { get; init; }

    /// <summary>Where a search may begin; null when there is no hint.</summary>
    public int? HintStart { get; init; }

    /// <summary>Mode a search may begin with; null when there is no hint.</summary>
    public int? HintMode { get; init; }

    /// <summary>Resources that a search may let serve first; default when there is no hint.</summary>
    public ImmutableArray<int> HintServed { get; init; }
}

/// <summary>One way to do an activity.</summary>
/// <param name="Duration">Steps, 0 or more.</param>
/// <param name="Demands">What it holds while it runs.</param>
public sealed record Mode(int Duration, ImmutableArray<Demand> Demands)
{
    /// <summary>What it uses up.</summary>
    public ImmutableArray<Demand> Uses { get; init; } = [];

    /// <summary>Demands that one of several resources may serve (any of the able people).</summary>
    public ImmutableArray<Choice> Choices { get; init; } = [];

    /// <summary>State it needs of a kit; null when none.</summary>
    public StateUse? State { get; init; }
}

/// <summary>An amount of a resource or a stock.</summary>
/// <param name="Resource">Position of the resource (or stock).</param>
/// <param name="Amount">How much, 0 or more.</param>
public readonly record struct Demand(int Resource, int Amount);

/// <summary>A demand served by exactly <paramref name="Count"/> of the named resources, each held whole.</summary>
/// <param name="Resources">Positions of those able to.</param>
/// <param name="Count">How many of them.</param>
public sealed record Choice(ImmutableArray<int> Resources, int Count);

/// <summary>A state needed of a kit while the activity runs.</summary>
/// <param name="Kit">Position of the state kit.</param>
/// <param name="State">The state (a set point); uses at the same state may overlap.</param>
public readonly record struct StateUse(int Kit, int State);

/// <summary>A stretch of time.</summary>
/// <param name="Start">First step.</param>
/// <param name="End">Step after the last.</param>
public readonly record struct Stretch(int Start, int End)
{
    /// <summary>What is left of it outside another: itself, one piece, two, or nothing.</summary>
    /// <param name="other">What is taken out.</param>
    public Stretch[] Without(Stretch other)
        => other.End <= Start || End <= other.Start ? [this] : [.. new[] { new Stretch(Start, other.Start), new Stretch(other.End, End) }.Where(s => s.End > s.Start)];
}
