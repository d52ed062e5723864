namespace Coulisse.Cards;

/// <summary>The handle by which a step or a line is found again after the text was edited.</summary>
/// <param name="Component">Name of the component it stands in, folded to lower case.</param>
/// <param name="Order">Its place in the component, from 1.</param>
/// <param name="Fingerprint">Hash of its words, insensitive to case, spacing and punctuation.</param>
public sealed record Anchor(string Component, int Order, string Fingerprint);
