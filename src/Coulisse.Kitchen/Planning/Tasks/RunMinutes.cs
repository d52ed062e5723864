using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Minutes of steps whose length the kit's physics decides for the batch in hand; empty where the card's own minutes hold.</summary>
/// <param name="ByLine">Cautious minutes and why, by card line.</param>
/// <param name="Shelves">Tins the largest oven takes; more than that go in one load after the other.</param>
internal sealed record RunMinutes(ImmutableDictionary<int, (double Minutes, string Why)> ByLine, int Shelves)
{
    /// <summary>The card's minutes everywhere.</summary>
    public static RunMinutes None { get; } = new(ImmutableDictionary<int, (double, string)>.Empty, int.MaxValue);

    /// <summary>Works them out for a batch: one ring a pan, since a task holds one; the cautious figure, since food must be done when the plan says so. Trials calibrate, but never below the card's minutes.</summary>
    public static RunMinutes Of(Occasion occasion, Batch batch)
    {
        KitFacts kit = KitFacts.Of(occasion.Kit) with { Rings = 1 };
        Dictionary<int, double> measured = [];
        foreach (BatchStep s in batch.Components.SelectMany(c => c.Steps))
        {
            if (LearntTime.Of(occasion.Learnt, s.Step) is { } took && s.MinutesAsWritten is { } written)
            {
                measured[s.Step.Span.Line] = Math.Max(took.Median, written);
            }
        }

        var lines = ImmutableDictionary.CreateBuilder<int, (double, string)>();
        foreach (BatchStep s in ScaledTimes.For(batch, kit, measured.ToImmutableDictionary()).Components.SelectMany(c => c.Steps))
        {
            double? best = s.Minutes;
            double? minutes = s.MinutesCautious ?? best;
            if (minutes is > 0 and < 48 * 60 && (s.Physical || measured.ContainsKey(s.Step.Span.Line)))
            {
                // A smaller batch may be done sooner; it is planned on the card's minutes all the same, for those are what the card promises and what the plan is checked by.
                minutes = Math.Max(minutes.Value, s.MinutesAsWritten ?? 0);
                lines[s.Step.Span.Line] = (minutes.Value, string.Create(CultureInfo.InvariantCulture, $"{s.Why}; card {s.MinutesAsWritten:0.#} min, here {best:0.#} to {minutes:0.#}, planned on the longer"));
            }
        }

        return new RunMinutes(lines.ToImmutable(), kit.Shelves ?? int.MaxValue);
    }

    /// <summary>Minutes of a step, one load of it where it goes into an oven in loads; null where the card's hold.</summary>
    public (double Minutes, string Why)? Of(Step step, int vessels)
        => !ByLine.TryGetValue(step.Span.Line, out (double Minutes, string Why) found) ? null
            : step.Temperatures.Any(t => t.Of == TemperatureOf.Oven) && Loads(vessels) is > 1 and var loads ? (found.Minutes / loads, found.Why) : found;

    /// <summary>Loads in which so many tins go through the largest oven.</summary>
    public int Loads(int vessels) => Math.Max(1, (int)Math.Ceiling(vessels / (double)Shelves));
}
