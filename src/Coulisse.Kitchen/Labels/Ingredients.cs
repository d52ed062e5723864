using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Labels;

/// <summary>The list of ingredients of a dish: every food once, by weight at mixing, parts that are made here opened into their foods.</summary>
public static class Ingredients
{
    private static readonly Lazy<Dictionary<string, (string Class, string E, string Anz, string Opened)>> Named = new(() =>
        ReferenceTable.Load("foods/declared.tsv").Rows.ToDictionary(r => r[0], r => (r[1], r[2], r[3], r[4]), StringComparer.Ordinal));

    /// <summary>Lists the foods of a dish.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="regime">Whose names and additive numbers.</param>
    /// <remarks>A line that takes from another part of the same dish is not listed again: its foods already are.</remarks>
    public static IngredientList Of(WeighedDish dish, AllergenRegime regime)
    {
        ArgumentNullException.ThrowIfNull(dish);
        WeighedLine[] lines = [.. dish.Components.SelectMany(c => c.Lines).Where(l => l.Food.FromComponent is null)];
        WeighedLine[] weighed = [.. lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        double total = weighed.Sum(l => l.Grams);
        string[] title = Words(dish.Dish.Title);
        ImmutableArray<IngredientItem> items = [.. weighed.GroupBy(l => l.Food.FoodId ?? "?" + l.Food.Food.ToLowerInvariant(), StringComparer.Ordinal)
            .Select(g => Item(g, total, title, dish.Dish.Language, regime))
            .OrderByDescending(i => i.Grams).ThenBy(i => i.Name, StringComparer.Ordinal)];
        string[] unplaced = [.. lines.Where(l => l.Grade == WeightGrade.Unknown).Select(l => l.Food.Food).Distinct(StringComparer.OrdinalIgnoreCase)];
        List<string> remarks = [.. items.Where(i => i.FoodId is null).Select(i => $"“{i.Name}” is not in the food table: its own ingredients and allergens must be read from its label.")];
        remarks.AddRange(items.Where(i => i.Opened.Length > 0).Select(i => $"“{i.Name}” is opened as it is usually made; take the maker's own list."));
        return new IngredientList(items, total, [.. unplaced], [.. remarks]);
    }

    private static IngredientItem Item(IGrouping<string, WeighedLine> lines, double total, string[] title, string language, AllergenRegime regime)
    {
        WeighedLine first = lines.MaxBy(l => l.Grams)!;
        Food? food = first.Known;
        (string Class, string E, string Anz, string Opened) named = food is not null && Named.Value.TryGetValue(food.Id, out var found) ? found : ("", "", "", "");
        string number = regime switch { AllergenRegime.Eu => named.E, AllergenRegime.Anz => named.Anz, _ => "" };
        string additive = named.Class.Length == 0 || regime == AllergenRegime.Us ? "" : $"{named.Class} ({number})";
        double grams = lines.Sum(l => l.Grams);
        string[] names = [.. Words(first.Food.Food), .. food is null ? [] : Words(food.Name)];
        ImmutableArray<string> allergens = [.. lines.SelectMany(l => Allergens.Merge(Allergens.Of(l.Food, language, "", l.Source.Span.Line, l.Source.Text, l.Known), regime))
            .Where(a => a.Status == AllergenStatus.Contains && a.Code is not null).Select(a => a.Name).Distinct(StringComparer.Ordinal)];
        return new IngredientItem(first.Food.Food, food?.Id, grams, 100 * grams / total, names.Any(n => title.Contains(n, StringComparer.OrdinalIgnoreCase)), additive, named.Opened, allergens);
    }

    // Words that name a food in a title; short and general ones do not.
    private static string[] Words(string text) => [.. text.ToLowerInvariant().Split([' ', ',', '-', '(', ')', '.', '/', '’', '\''], StringSplitOptions.RemoveEmptyEntries)
        .Where(w => w.Length > 3 && w is not ("with" or "without" or "from" or "fresh" or "cold" or "white" or "dark" or "whole" or "full" or "fine" or "ground" or "tray" or "powder" or "seed" or "seeds" or "juice" or "paste" or "butter" or "green" or "brown" or "black" or "sauce"))
        .Select(w => w.EndsWith('s') && w[^2] != 's' ? w[..^1] : w)];
}
