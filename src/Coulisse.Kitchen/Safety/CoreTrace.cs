using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Safety;

/// <summary>What the middle of a piece does in a bath step of a card, in the cautious case and with everything a little off.</summary>
/// <param name="Component">Component.</param>
/// <param name="Line">Card line of the step.</param>
/// <param name="Thickness">Greatest thickness.</param>
/// <param name="Start">Start.</param>
/// <param name="Bath">Bath.</param>
/// <param name="Core">Limit the card sets for the middle.</param>
/// <param name="HoldMinutes">How long it must be held.</param>
/// <param name="Minutes">How long the card leaves it in.</param>
/// <param name="Cautious">Minute and middle, cautious case.</param>
/// <param name="Off">The same with the bath 1 °C low and the piece 10 % thicker.</param>
/// <param name="Why">Model, properties and source.</param>
public sealed record CoreTrace(
    string Component, int Line, Length Thickness, Temperature Start, Temperature Bath, Temperature Core, double HoldMinutes, double Minutes,
    ImmutableArray<(double Minute, Temperature At)> Cautious, ImmutableArray<(double Minute, Temperature At)> Off, string Why)
{
    private const int Moments = 120;

    /// <summary>Every bath step of a dish whose figures are all on the card; a step that cannot be worked out has none, and the safety review says why.</summary>
    public static ImmutableArray<CoreTrace> Of(WeighedDish dish) => [.. dish.Components.SelectMany(CoreHeldRule.Judge).Select(h => h.Trace).OfType<CoreTrace>()];

    /// <summary>It went in frozen.</summary>
    public bool Frozen { get; init; }

    /// <summary>Works one out; null where the model does not reach.</summary>
    internal static CoreTrace? Make(CoreAsked asked, double bath)
    {
        if (asked.Thickness is not (>= 1 and <= 250) || asked.Minutes is not > 0 || bath is not (>= 1 and <= 100))
        {
            return null;
        }

        Length thick = Length.FromMillimetres(asked.Thickness.Value);
        (Temperature at, Temperature core, double minutes) = (Temperature.FromCelsius(bath), Temperature.FromCelsius(asked.Core), asked.Minutes.Value);
        PieceHeating piece = PieceHeating.Of(asked, at);
        double long_ = Math.Min(24 * 60, Math.Max(minutes, (piece.TimeTo(thick, at, core)?.TotalMinutes ?? 0) + asked.Hold) * 1.15);
        ImmutableArray<(double, Temperature)> Curve(Length size, Temperature medium)
            // the card's own minute is one of the moments, so that the figure is the finding's
            => piece.Curve(size, medium, Enumerable.Range(0, Moments + 1).Select(i => long_ * i / Moments).Append(minutes).Distinct().Order());
        return new CoreTrace(asked.Component, asked.Step.Span.Line, thick, Temperature.FromCelsius(asked.Start), at, core, asked.Hold, minutes,
            Curve(thick, at), Curve(thick * 1.1, at - TemperatureDelta.FromKelvin(1)), piece.Why) { Frozen = asked.Frozen };
    }
}
