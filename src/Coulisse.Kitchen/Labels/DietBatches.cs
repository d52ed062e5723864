using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Labels;

/// <summary>A part made for declared diets alone, in the smallest batch that works.</summary>
/// <param name="Dish">Dish.</param>
/// <param name="Component">The part ("set with agar").</param>
/// <param name="Seats">Seats that get it.</param>
/// <param name="Needed">Portions of it they take together.</param>
/// <param name="Makes">What one batch makes, in the card's unit; null when the card does not say.</param>
/// <param name="Unit">That unit.</param>
/// <param name="Batches">Whole batches: the card's own amount is the smallest that is known to work.</param>
/// <param name="Allergens">What it carries.</param>
public sealed record DietBatch(string Dish, string Component, ImmutableArray<int> Seats, double Needed, double? Makes, string Unit, int Batches, ImmutableArray<AllergenLine> Allergens)
{
    /// <summary>In words.</summary>
    public string Text => string.Create(CultureInfo.InvariantCulture, $"{Component}: {Needed:0.##} {Unit} for seat {string.Join(", ", Seats)}; {Batches} batch{(Batches == 1 ? "" : "es")}{(Makes is { } m ? string.Create(CultureInfo.InvariantCulture, $" of {m:0.##}, {(Batches * m) - Needed:0.##} over") : " (the card does not say what it makes)")}");
}

/// <summary>Batches made for declared diets.</summary>
public static class DietBatches
{
    /// <summary>One for each part that only a diet's seats get.</summary>
    public static ImmutableArray<DietBatch> Of(Occasion occasion, ImmutableArray<GuestRow> rows, AllergenRegime regime)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        List<(OccasionDish Dish, Component Part, ImmutableArray<int> Seats)> wanted = [];
        foreach (GuestRow row in rows)
        {
            foreach (GuestPlate plate in row.Plates.Where(p => p.Served))
            {
                OccasionDish dish = occasion.Dishes.First(d => d.Name == plate.Dish);
                wanted.AddRange(plate.Instead.Select(i => Takes.Find(dish.Dish, Bare(i))).OfType<Component>().Select(c => (dish, c, row.Seats)));
            }
        }

        return [.. wanted.GroupBy(w => (w.Dish, w.Part)).Select(g =>
        {
            WeighedDish weighed = Weighing.Weigh(g.Key.Dish.Dish);
            WeighedComponent part = weighed.Components.First(c => ReferenceEquals(c.Component, g.Key.Part));
            ImmutableArray<int> seats = [.. g.SelectMany(w => w.Seats).Distinct().Order()];
            CardYield? makes = g.Key.Part.Makes.FirstOrDefault(y => y.Amount > 0 && y.Unit is not ("g" or "kg" or "ml" or "l"));

            // A variant stands in for the part it is named after: so many pieces of that go on a plate.
            double each = g.Key.Dish.Dish.Plate.Where(p => p.Component is { } name && Code(g.Key.Part) is { } code && Takes.Find(g.Key.Dish.Dish, name)?.Code is { } of && code.StartsWith(of, StringComparison.OrdinalIgnoreCase)).Select(p => p.Pieces).FirstOrDefault() ?? 1;
            double needed = seats.Length * each;
            return new DietBatch(g.Key.Dish.Name, g.Key.Part.Name, seats, needed, makes?.Amount, makes?.Unit ?? "portions", makes is { } m ? Math.Max(1, (int)Math.Ceiling((needed / m.Amount) - 1e-9)) : 1,
                Allergens.Merge(Allergens.Reached(weighed, part).SelectMany(c => Allergens.Reasons(c, g.Key.Dish.Dish.Language, g.Key.Dish.Dish.Foods)), regime));
        })];
    }

    private static string? Code(Component c) => c.Code is { Length: > 1 } code ? code : null;

    // "1 C1v bar" and "C1v" both name the part.
    private static string Bare(string words) => words.Split(' ').FirstOrDefault(w => w.Length > 1 && char.IsLetter(w[0]) && w.Any(char.IsAsciiDigit)) ?? words;
}
