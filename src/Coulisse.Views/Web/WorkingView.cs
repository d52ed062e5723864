using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Views.Web;

/// <summary>How a figure came about, ready to be shown: typed, looked up, computed, measured or assumed.</summary>
/// <param name="Kind">One word.</param>
/// <param name="Text">One sentence.</param>
/// <param name="Equation">Equation in its source's letters; null when nothing was computed.</param>
/// <param name="Range">Range in which it holds; null when it has none.</param>
/// <param name="Source">Source; empty when a person's word is the source.</param>
/// <param name="Inputs">Inputs, each with its own working.</param>
public sealed record WorkingView(string Kind, string Text, string? Equation, string? Range, string Source, ImmutableArray<WorkingInput> Inputs)
{
    private const int Deepest = 6;

    /// <summary>From an origin; deep chains are cut at six levels, which is said.</summary>
    public static WorkingView From(Origin origin) => From(origin, 0);

    /// <summary>The word for a kind of origin.</summary>
    public static string Word(OriginKind kind) => kind switch
    {
        OriginKind.Typed => "typed",
        OriginKind.LookedUp => "looked up",
        OriginKind.Computed => "computed",
        OriginKind.Measured => "measured here",
        _ => "assumed",
    };

    private static WorkingView From(Origin origin, int depth) => new(
        Word(origin.Kind), origin.Text, origin.Equation, origin.Range, origin.Source,
        [.. origin.Inputs.Select(i => new WorkingInput(i.Name, i.Value, i.Origin is null ? null : depth < Deepest ? From(i.Origin, depth + 1) : new WorkingView("", "The chain goes on; open the figure itself.", null, null, "", [])))]);
}

/// <summary>One input of a computed figure.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Value with unit.</param>
/// <param name="Working">Where it came from in turn; null when the name says it all.</param>
public sealed record WorkingInput(string Name, string Value, WorkingView? Working);
