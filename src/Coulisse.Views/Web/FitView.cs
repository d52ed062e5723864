using System.Collections.Immutable;

namespace Coulisse.Views.Web;

/// <summary>The page of shapes: one question of what fits, its answer with a drawing to scale, and what comes out even next to it.</summary>
/// <param name="Kinds">All questions: address word and title.</param>
/// <param name="Kind">The one that is open.</param>
/// <param name="Title">Its title.</param>
/// <param name="What">What it answers.</param>
/// <param name="Fields">What it asks for, as typed.</param>
/// <param name="Says">The answer, one sentence a line.</param>
/// <param name="Even">What comes out even, one row a sentence.</param>
/// <param name="Svg">The drawing to scale; empty when there is no answer.</param>
/// <param name="Drawn">What is drawn, in words.</param>
/// <param name="Faults">What was wrong with the question.</param>
public sealed record FitView(ImmutableArray<(string Key, string Word)> Kinds, string Kind, string Title, string What, ImmutableArray<FitFieldView> Fields, ImmutableArray<string> Says, ImmutableArray<FitEvenView> Even, string Svg, string Drawn, ImmutableArray<string> Faults);

/// <summary>A field of the question.</summary>
/// <param name="Name">Name.</param>
/// <param name="Label">What it is, with its unit.</param>
/// <param name="Value">As typed.</param>
/// <param name="Flag">A box to tick.</param>
/// <param name="Words">Words to choose from; empty for a text.</param>
public sealed record FitFieldView(string Name, string Label, string Value, bool Flag, ImmutableArray<string> Words);

/// <summary>What was asked among what comes out even.</summary>
/// <param name="Of">What is counted or measured.</param>
/// <param name="Smaller">The next smaller; empty for none.</param>
/// <param name="Asked">What was asked, and whether it comes out even.</param>
/// <param name="Larger">The next larger; empty for none.</param>
public sealed record FitEvenView(string Of, string Smaller, string Asked, string Larger);
