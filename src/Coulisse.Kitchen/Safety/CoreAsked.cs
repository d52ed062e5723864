using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety;

/// <summary>A core limit as a card sets it, with what it says about the piece.</summary>
/// <param name="Weighed">Component.</param>
/// <param name="Step">Step that heats it.</param>
/// <param name="Thickness">Greatest thickness, mm; null when not said.</param>
/// <param name="Start">Start, °C.</param>
/// <param name="Frozen">It goes in frozen.</param>
/// <param name="Minutes">How long it stays in; null when not said.</param>
/// <param name="Core">Limit for the middle, °C.</param>
/// <param name="Hold">Minutes it is held there.</param>
/// <param name="Limit">The limit in words.</param>
internal sealed record CoreAsked(WeighedComponent Weighed, Step Step, double? Thickness, double Start, bool Frozen, double? Minutes, double Core, double Hold, string Limit)
{
    /// <summary>Its component's name.</summary>
    public string Component => Weighed.Component.Name;
}
