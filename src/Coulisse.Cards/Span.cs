namespace Coulisse.Cards;

/// <summary>A stretch of the card's text.</summary>
/// <param name="Start">First character, from 0.</param>
/// <param name="Length">Characters.</param>
/// <param name="Line">Line of the first character, from 1.</param>
public readonly record struct Span(int Start, int Length, int Line);
