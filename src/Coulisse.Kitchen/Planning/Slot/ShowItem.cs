using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>A row of "what is shown", tied to the card it speaks of.</summary>
/// <param name="Show">The row.</param>
/// <param name="Dish">The dish it means.</param>
/// <param name="Component">The component; null when it means the plate as a whole.</param>
/// <param name="Step">The step; null for a finished piece.</param>
/// <param name="Seconds">How long it takes to show.</param>
internal sealed record ShowItem(SheetShow Show, OccasionDish Dish, Component? Component, Step? Step, ShowSeconds Seconds)
{
    public bool WholePlate => Component is null || Component.IsAssembly;

    /// <summary>Rows with the same subject are shown together.</summary>
    public string Subject => WholePlate ? "the plate" : Component!.Code ?? (Dish.Dish.Plate.IsEmpty ? Dish.Name : Component.Name);

    /// <summary>Steps that work on the food, in order: the component's own, or for a dish that is no plate those of its components up to this one.</summary>
    public Step[] Sequence
    {
        get
        {
            ImmutableArray<Component> all = [.. Dish.Dish.Components.Where(c => !c.IsAssembly)];
            int last = Component is null ? -1 : all.IndexOf(Component);
            IEnumerable<Component> mine = !Dish.Dish.Plate.IsEmpty || last < 0 ? all.Where(c => c == Component) : all.Take(last + 1);
            return [.. mine.SelectMany(c => c.Steps).Where(s => s == Step || s.Operation is not ("fill_bath" or "line_tin" or "preheat"))];
        }
    }

    public string Name => WholePlate ? Dish.Name : Dish.Dish.Plate.IsEmpty ? Dish.Name : Component!.Name;
}

/// <summary>Seconds a showing takes.</summary>
/// <param name="Least">The shortest at which it can still be followed.</param>
/// <param name="Best">As one would like it.</param>
/// <param name="Why">Where they came from.</param>
internal sealed partial record ShowSeconds(int Least, int Best, string Why)
{
    /// <summary>
    /// Talk and hands for each way of showing, in seconds. Common practice, no source: media coaches and demonstrators give lengths
    /// for whole dishes only. A rehearsal replaces them.
    /// </summary>
    public static ShowSeconds For(SheetShow show, Step? step, int plateParts)
    {
        int acts = 1 + show.StepText.Count(c => c is ',' or ';') + (show.StepText.Contains(" and ", StringComparison.Ordinal) ? 1 : 0);
        int stated = Stated(show.StepText, step);
        (int least, int best) = show.How switch
        {
            ShowKind.Tell => (20, 30),
            ShowKind.Finish => (30, 60),
            ShowKind.Begin => (30 + 10 * acts, 45 + 20 * acts),
            _ when plateParts > 0 => (25 * plateParts, 35 * plateParts),
            _ => (40 + 10 * acts, 60 + 20 * acts),
        };
        return stated > 0
            ? new ShowSeconds(Math.Max(least, stated + 15), Math.Max(best, stated + 40), $"{stated.ToString(System.Globalization.CultureInfo.InvariantCulture)} s stated, and talk")
            : new ShowSeconds(least, best, "assumed by the way of showing (common practice, no source)");
    }

    // Only what is stated in seconds, or up to a minute, can run while people watch; longer waits are what twins are for.
    private static int Stated(string text, Step? step)
    {
        Match m = Seconds().Match(text);
        if (m.Success && int.TryParse(m.Groups["n"].Value, System.Globalization.CultureInfo.InvariantCulture, out int seconds) && seconds <= 600)
        {
            return seconds;
        }

        return step is null ? 0 : (int)step.Times.Where(t => t.MinutesMin is <= 1 && t.Kind is TimeKind.Machine or TimeKind.Hands).Select(t => (t.MinutesMin ?? 0) * 60).DefaultIfEmpty(0).Max();
    }

    [GeneratedRegex(@"(?<!\d)(?<n>\d+)\s{0,3}s\b", RegexOptions.ExplicitCapture)]
    private static partial Regex Seconds();
}
