namespace Coulisse.Matter.Quantities;

/// <summary>One input of a computed figure, ready to be shown, with where it came from in turn.</summary>
/// <param name="Name">What it is, in the words of the trade or the symbol of the equation.</param>
/// <param name="Value">The value with its unit, as text.</param>
/// <param name="Origin">Where that input came from; null when the name says it all.</param>
public sealed record OriginInput(string Name, string Value, Origin? Origin = null);
