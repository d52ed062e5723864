using System.Collections.Immutable;

namespace Coulisse.Views.Web;

/// <summary>The card file, or what a search found in it.</summary>
/// <param name="Query">Words searched; empty for all.</param>
/// <param name="Says">How many, in words.</param>
/// <param name="Rows">Cards.</param>
public sealed record CardFileView(string Query, string Says, ImmutableArray<CardFileRow> Rows)
{
    /// <summary>What else of the kitchen holds the words, by kind: occasions, trials, records, foods; a kind without any is left out.</summary>
    public ImmutableArray<FoundElsewhere> Elsewhere { get; init; } = [];
}

/// <summary>Finds of one kind.</summary>
/// <param name="Kind">In words.</param>
/// <param name="Rows">Finds.</param>
public sealed record FoundElsewhere(string Kind, ImmutableArray<CardFileRow> Rows);

/// <summary>A card in the file.</summary>
/// <param name="At">Address.</param>
/// <param name="Title">Title.</param>
/// <param name="Detail">Version and day.</param>
public sealed record CardFileRow(string At, string Title, string Detail);
