using System.Collections.Immutable;

namespace Coulisse.Formats.Out;

/// <summary>A table for other programs: names of columns and typed cells, nothing set in words that is a figure.</summary>
/// <param name="Name">Name of the sheet, at most 31 signs.</param>
/// <param name="Columns">Heads, the unit in the name.</param>
/// <param name="Rows">Cells: text, decimal, whole number, day, or null for empty.</param>
public sealed record Grid(string Name, ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<object?>> Rows)
{
    /// <summary>A row of cells.</summary>
    public static ImmutableArray<object?> Row(params ReadOnlySpan<object?> cells) => [.. cells.ToArray()];
}
