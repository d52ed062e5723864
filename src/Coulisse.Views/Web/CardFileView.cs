using System.Collections.Immutable;

namespace Coulisse.Views.Web;

/// <summary>The card file, or what a search found in it.</summary>
/// <param name="Query">Words searched; empty for all.</param>
/// <param name="Says">How many, in words.</param>
/// <param name="Rows">Cards.</param>
public sealed record CardFileView(string Query, string Says, ImmutableArray<CardFileRow> Rows);

/// <summary>A card in the file.</summary>
/// <param name="At">Address.</param>
/// <param name="Title">Title.</param>
/// <param name="Detail">Version and day.</param>
public sealed record CardFileRow(string At, string Title, string Detail);
