using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using NodaTime;

namespace Coulisse.Kitchen.Labels;

/// <summary>Until when a part may be used.</summary>
/// <param name="Moment">Last moment; null when the card does not say or nobody knows when it was made.</param>
/// <param name="WholeDay">The date counts, to its end; false when the hour does.</param>
/// <param name="Because">Which part decides, or what is missing.</param>
public sealed record UseBy(LocalDateTime? Moment, bool WholeDay, string Because)
{
    /// <summary>Use-by of a part: the earliest of its own and of all it holds, the day of making counted as day 1.</summary>
    /// <param name="dish">The dish.</param>
    /// <param name="part">The part.</param>
    /// <param name="made">When a part was made, by its name; null when nobody knows.</param>
    /// <remarks>
    /// A stay in the freezer and what the card says of quality do not count. A part inside that was heated again is still counted from its first making: cautious.
    /// Day 1 is the day of making: date marking of the US Food Code 2022, 3-501.17; taken for every code, since it is never the later.
    /// </remarks>
    public static UseBy Of(WeighedDish dish, WeighedComponent part, Func<string, LocalDateTime?> made)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(made);
        List<(LocalDateTime Moment, bool Day, string Name)> ends = [];
        List<string> missing = [];
        bool own = false;
        foreach (WeighedComponent c in Allergens.Reached(dish, part).DistinctBy(c => c.Component.Name))
        {
            bool self = ReferenceEquals(c.Component, part.Component);
            Keeping[] limits = [.. c.Component.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is not < 0 && (k.Hours is > 0 || k.SameDay))];
            if (limits.Length == 0)
            {
                if (self)
                {
                    missing.Add("the card does not say how long it keeps");
                }

                continue;
            }

            own |= self;
            if (made(c.Component.Name) is not { } when)
            {
                missing.Add(self ? "not known when it was made" : $"not known when {c.Component.Name} in it was made");
                continue;
            }

            ends.AddRange(limits.Select(k => End(when, k)).Select(e => (e.Moment, e.Day, c.Component.Name)));
        }

        if (!own || missing.Count > 0)
        {
            return new UseBy(null, false, string.Join("; ", missing.Distinct()));
        }

        (LocalDateTime moment, bool day, string name) = ends.MinBy(e => e.Moment);
        return new UseBy(moment, day, name == part.Component.Name ? "" : $"dated by {name} in it");
    }

    private static (LocalDateTime Moment, bool Day) End(LocalDateTime made, Keeping k)
    {
        if (k.SameDay || k.Hours is null)
        {
            return (made.Date.At(new LocalTime(23, 59)), true);
        }

        double hours = k.Hours.Value;
        return hours >= 24 && hours % 24 == 0
            ? (made.Date.PlusDays((int)(hours / 24) - 1).At(new LocalTime(23, 59)), true)
            : (made.PlusMinutes((long)(hours * 60)), false);
    }
}
