using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Occasions;

/// <summary>What good runs of a standardised card came to: only a card that may be called standardised has one, so one or two runs never change a figure.</summary>
/// <param name="Card">Title of the card.</param>
/// <param name="Runs">Good runs.</param>
/// <param name="Parts">What its parts weighed when they were done.</param>
/// <param name="Steps">What its steps drove off, and how fast heat went in.</param>
public sealed record LearntCard(string Card, int Runs, ImmutableArray<LearntPart> Parts, ImmutableArray<LearntStep> Steps)
{
    /// <summary>The card with what was learnt of it laid over: grams a part makes, pace and end of a reduction, h of a bath. Every figure says that it was learnt; nothing else of the card moves.</summary>
    /// <param name="dish">As read, or a part of it.</param>
    /// <param name="learnt">All that was learnt.</param>
    public static Dish Onto(Dish dish, ImmutableArray<LearntCard> learnt)
    {
        ArgumentNullException.ThrowIfNull(dish);
        return learnt.FirstOrDefault(l => l.Card.Equals(dish.Title, StringComparison.OrdinalIgnoreCase)) is not { Runs: >= Measured.LeastRuns } card ? dish : dish with
        {
            // a card of one part may state what that part makes at its head
            Yields = dish.Components.Length == 1 && dish.Yields.Any(y => y.Unit == "g") ? Makes(dish.Yields, dish.Components[0].Span, card.Of(dish.Components[0])) : dish.Yields,
            Components = [.. dish.Components.Select(c => c with
            {
                Makes = Makes(c.Makes, c.Span, card.Of(c)),
                Steps = [.. c.Steps.Select(s => card.Steps.FirstOrDefault(l => l.Fingerprint == s.Anchor.Fingerprint && l.Component == s.Anchor.Component) is { } step
                    ? s with { BoiledOffPerMinute = Enough(step.BoiledOffPerMinute), LeftShare = Enough(step.LeftShare), SurfaceWatts = Enough(step.SurfaceWatts) }
                    : s)],
            })],
        };
    }

    /// <summary>What the next plan takes from the trials, a sentence a figure.</summary>
    /// <param name="dish">The card.</param>
    public ImmutableArray<string> Sentences(Dish dish)
    {
        ArgumentNullException.ThrowIfNull(dish);
        string Step(LearntStep s) => dish.Components.SelectMany(c => c.Steps).FirstOrDefault(x => x.Anchor.Fingerprint == s.Fingerprint && x.Anchor.Component == s.Component)?.Text ?? s.Component;
        return
        [
            .. Parts.Select(p => $"{(p.Component.Length > 0 ? p.Component : dish.Title)} comes out, {p.Grams.Words(" g")}"),
            .. Steps.Where(s => s.BoiledOffPerMinute is not null).Select(s => $"{Step(s)} boils off, {s.BoiledOffPerMinute!.Words(" g/min")}"),
            .. Steps.Where(s => s.LeftShare is not null).Select(s => $"{Step(s)} leaves of what went in, {s.LeftShare!.Words("")}"),
            .. Steps.Where(s => s.SurfaceWatts is not null).Select(s => $"{Step(s)} h of the bath, {s.SurfaceWatts!.Words(" W/(m²·K)")}; safety takes it only where it is below its own"),
        ];
    }

    private Measured? Of(Component component) => Parts.FirstOrDefault(p => p.Component.Equals(component.Name, StringComparison.OrdinalIgnoreCase))?.Grams;

    // Pieces stay as the card counts them; grams are what the scale said.
    private static ImmutableArray<CardYield> Makes(ImmutableArray<CardYield> makes, Span span, Measured? grams)
    {
        if (Enough(grams) is not { Mean: > 0 } came)
        {
            return makes;
        }

        int at = makes.ToList().FindIndex(m => m.Unit == "g");
        string said = at < 0 ? "the card states no weight" : string.Create(CultureInfo.InvariantCulture, $"the card says {makes[at].Amount:0.#} g");
        CardYield now = new(came.Mean, "g", $"{came.Words(" g")}; {said}", at < 0 ? span : makes[at].Span) { Measured = came };
        return at < 0 ? makes.Add(now) : makes.SetItem(at, now);
    }

    private static Measured? Enough(Measured? m) => m is { Runs: >= Measured.LeastRuns } ? m : null;
}

/// <summary>What a part weighed when it was done.</summary>
/// <param name="Component">Its name on the card; empty when the card has one part.</param>
/// <param name="Grams">Grams at the card's amount.</param>
public sealed record LearntPart(string Component, Measured Grams);

/// <summary>What a step did in good runs.</summary>
/// <param name="Component">Component, folded as in the step's anchor.</param>
/// <param name="Fingerprint">Fingerprint of the step's words: an edited step has learnt nothing yet.</param>
/// <param name="BoiledOffPerMinute">g/min in one pan; null when not learnt.</param>
/// <param name="LeftShare">Share of what went in that was left; null when not learnt.</param>
/// <param name="SurfaceWatts">h fitted to probe curves, W/(m²·K); null when not learnt.</param>
public sealed record LearntStep(string Component, string Fingerprint, Measured? BoiledOffPerMinute, Measured? LeftShare, Measured? SurfaceWatts);
