using System.Globalization;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Formulas;

/// <summary>A dish with a line changed, for trying it before it is written into the card. The card's text stays as it is.</summary>
public static class CardEdit
{
    /// <summary>The one weighed or unweighed food of a dish that words mean: a card line number, its id, its name, or a part of its name.</summary>
    /// <param name="dish">The dish.</param>
    /// <param name="words">"14", "fine sea salt", "salt".</param>
    /// <param name="component">Component to look in; null for all.</param>
    public static Parsed<WeighedLine> Find(WeighedDish dish, string words, string? component = null)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ArgumentNullException.ThrowIfNull(words);
        string w = words.Trim();
        if (component is not null && Takes.Find(dish.Dish, component) is null)
        {
            return Refuse($"No component of the card is “{component}”.", "Its components are: " + string.Join(", ", dish.Components.Select(c => c.Component.Name)) + ".");
        }

        WeighedLine[] lines = [.. dish.Components.Where(c => component is null || ReferenceEquals(c.Component, Takes.Find(dish.Dish, component))).SelectMany(c => c.Lines)];
        Func<WeighedLine, bool>[] ways =
        [
            l => int.TryParse(w, NumberStyles.None, CultureInfo.InvariantCulture, out int n) && l.Source.Span.Line == n,
            l => l.Food.Food.Equals(w, StringComparison.OrdinalIgnoreCase),
            l => w.Length > 0 && l.Food.FoodId == w,
            l => w.Length > 2 && l.Food.Food.Contains(w, StringComparison.OrdinalIgnoreCase),
        ];
        foreach (Func<WeighedLine, bool> way in ways)
        {
            WeighedLine[] found = [.. lines.Where(way)];
            if (found.Length == 1)
            {
                return new Parsed<WeighedLine>.Ok(found[0]);
            }

            if (found.Length > 1)
            {
                return Refuse($"“{w}” stands on several lines: " + string.Join("; ", found.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Source.Span.Line} {l.Source.Text}"))) + ".", "Name the card line by its number, or the component.");
            }
        }

        return Refuse($"No line of the card is “{w}”.", "Its foods are: " + string.Join(", ", lines.Select(l => l.Food.Food).Distinct().Take(20)) + ".");
    }

    /// <summary>The dish with one food of a line exchanged.</summary>
    /// <param name="dish">The dish.</param>
    /// <param name="line">The food that goes.</param>
    /// <param name="with">The line that comes.</param>
    public static Dish Exchange(Dish dish, WeighedLine line, IngredientLine with) => Change(dish, line.Source, line.Source.Foods.Length == 1
        ? with with { Span = line.Source.Span, Group = line.Source.Group }
        : line.Source with { Foods = [.. line.Source.Foods.SelectMany(f => ReferenceEquals(f, Read(line)) ? with.Foods.AsEnumerable() : [f])], Text = $"{line.Source.Text} ({with.Text})" });

    /// <summary>The dish with other grams on some lines; the words stay.</summary>
    public static Dish Reweigh(Dish dish, IEnumerable<(WeighedLine Line, double Grams)> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        foreach (IGrouping<IngredientLine, (WeighedLine Line, double Grams)> source in lines.GroupBy(l => l.Line.Source))
        {
            dish = Change(dish, source.Key, source.Key with
            {
                Foods = [.. source.Key.Foods.Select(f => source.Where(s => ReferenceEquals(f, Read(s.Line))).Select(s => f with
                {
                    Grams = s.Grams, GramsMax = null, Amount = s.Grams, AmountMax = null, Unit = "g", Fill = null, PackGrams = null, BoughtGrams = null, Percent = null, PercentOf = null,
                }).FirstOrDefault(f))],
            });
        }

        return dish;
    }

    // Weighing may have given the food its id, so the read food is the one with the same words in the same place.
    private static FoodAmount Read(WeighedLine line) => line.Source.Foods.FirstOrDefault(f => ReferenceEquals(f, line.Food)) ?? line.Source.Foods.First(f => f.Food == line.Food.Food && f.Amount == line.Food.Amount);

    private static Dish Change(Dish dish, IngredientLine line, IngredientLine to) => dish with
    {
        Components = [.. dish.Components.Select(c => c.Ingredients.Any(i => ReferenceEquals(i, line)) ? c with { Ingredients = [.. c.Ingredients.Select(i => ReferenceEquals(i, line) ? to : i)] } : c)],
    };

    private static Parsed<WeighedLine>.Failed Refuse(string message, string hint) => new([new Problem("MIX005", 0, message, hint)]);
}
