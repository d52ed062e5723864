using System.Collections.Immutable;

namespace Coulisse.Matter.Quantities;

/// <summary>Where a figure came from: enough for a person to redo it. The product calls this its working.</summary>
/// <param name="Kind">Typed, looked up, computed, assumed or measured.</param>
/// <param name="Text">One sentence in plain words.</param>
/// <param name="Source">Published source, table row or card line; empty when a person's word is the source.</param>
public sealed record Origin(OriginKind Kind, string Text, string Source = "")
{
    /// <summary>The equation in the letters of its source; null when nothing was computed.</summary>
    public string? Equation { get; init; }

    /// <summary>The range in which the equation or the value holds; null when it has none.</summary>
    public string? Range { get; init; }

    /// <summary>The inputs the equation took.</summary>
    public ImmutableArray<OriginInput> Inputs { get; init; } = [];

    /// <summary>A person wrote it.</summary>
    public static Origin Typed(string text) => new(OriginKind.Typed, text);

    /// <summary>An assumption; the text says which and why.</summary>
    public static Origin Assumed(string text, string source = "assumed (common practice, no source)") => new(OriginKind.Assumed, text, source);

    /// <summary>Read from a table.</summary>
    public static Origin LookedUp(string text, string source) => new(OriginKind.LookedUp, text, source);

    /// <summary>Computed by an equation.</summary>
    public static Origin Computed(string text, string equation, string source, params ImmutableArray<OriginInput> inputs)
        => new(OriginKind.Computed, text, source) { Equation = equation, Inputs = inputs };
}
