using System.Collections.Immutable;

namespace Coulisse.Views.Web;

/// <summary>A planning in progress, or why it came to nothing.</summary>
/// <param name="Title">Occasion.</param>
/// <param name="Says">One sentence: how far it is.</param>
/// <param name="Percent">Share of the time allowed that is spent.</param>
/// <param name="At">Address of the kept plan; null while there is none.</param>
/// <param name="Failed">True when it ended without a plan.</param>
/// <param name="Why">Demands that cannot hold together, or what was wrong with what was asked.</param>
/// <param name="Remedies">What would help.</param>
public sealed record PlanningView(string Title, string Says, int Percent, string? At, bool Failed, ImmutableArray<string> Why, ImmutableArray<string> Remedies)
{
    /// <summary>Document of the occasion; empty when it is none yet.</summary>
    public string Occasion { get; init; } = "";

    /// <summary>Plan it was made from; empty for none.</summary>
    public string Since { get; init; } = "";

    /// <summary>Those of the remedies that can be tried by a touch.</summary>
    public ImmutableArray<string> Touch { get; init; } = [];
}

/// <summary>The list of occasions.</summary>
/// <param name="Rows">Last changed first.</param>
public sealed record OccasionsView(ImmutableArray<OccasionRow> Rows);

/// <summary>A line of it.</summary>
/// <param name="Id">Occasion.</param>
/// <param name="Title">Title.</param>
/// <param name="PlanAt">Address of its newest plan; null when it has none.</param>
/// <param name="Detail">Version and day.</param>
public sealed record OccasionRow(string Id, string Title, string? PlanAt, string Detail);
