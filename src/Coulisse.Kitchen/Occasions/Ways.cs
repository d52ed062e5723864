using Coulisse.Cards.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Occasions;

/// <summary>Where kit stands and how long it takes to carry food from one place to another.</summary>
public static class Ways
{
    /// <summary>Minutes of the way; null where a place is not known, both are one, or the sheet says nothing.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="from">From; null when not known.</param>
    /// <param name="to">To; null when not known.</param>
    public static double? Minutes(Occasion occasion, string? from, string? to)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        return from is null || to is null || Same(from, to) ? null
            : occasion.Sheet.Ways.FirstOrDefault(w => (Same(w.From, from) && Same(w.To, to)) || (!w.OneWay && Same(w.From, to) && Same(w.To, from)))?.Minutes;
    }

    /// <summary>Places a piece of kit may be said to stand at an hour: none when it can be anywhere, two when it is shared.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="at">The hour; null for any hour.</param>
    public static IEnumerable<string> Stands(SheetKit kit, LocalDateTime? at)
    {
        ArgumentNullException.ThrowIfNull(kit);
        bool moves = kit is { MovesAt: not null, EarlierPlace: not null };
        if (kit.Place.Length > 0 && (!moves || at is null || at >= kit.MovesAt))
        {
            yield return kit.Place;
        }

        if (moves && (at is null || at < kit.MovesAt))
        {
            yield return kit.EarlierPlace!;
        }

        // "shared with the back": carried there without being moved for good.
        int shared = kit.What.IndexOf("shared with ", StringComparison.OrdinalIgnoreCase);
        if (shared >= 0)
        {
            string with = kit.What[(shared + 12)..].Trim();
            yield return with.StartsWith("the ", StringComparison.OrdinalIgnoreCase) ? with[4..] : with;
        }
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
