using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Foods;

namespace Coulisse.Views.Web;

/// <summary>Foods the bench knows, by the beginnings of words, each with its composition and where it is from.</summary>
/// <param name="Query">Words searched.</param>
/// <param name="Says">How many.</param>
/// <param name="Rows">Foods.</param>
public sealed record FoodsView(string Query, string Says, ImmutableArray<FoodRowView> Rows)
{
    private const int Most = 60;

    /// <summary>Finds foods.</summary>
    public static FoodsView Find(FoodTable table, string query, CultureInfo culture)
    {
        string[] words = query.ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        ImmutableArray<Food> found = [.. table.Ids.Select(table.Find).OfType<Food>()
            .Where(f => words.All(w => Names(f).Any(n => n.StartsWith(w, StringComparison.OrdinalIgnoreCase))))
            .OrderBy(f => f.Name, StringComparer.Ordinal)];
        return new FoodsView(query, found.Length switch
        {
            0 => $"No food begins with “{query}”. A food that is not known keeps its weight; what needs its composition says so.",
            > Most => string.Create(culture, $"{found.Length} foods; the first {Most} are shown."),
            _ => string.Create(culture, $"{found.Length} {(found.Length == 1 ? "food" : "foods")}."),
        }, [.. found.Take(Most).Select(f => Row(f, culture))]);
    }

    private static IEnumerable<string> Names(Food food) => food.Names.Values.SelectMany(n => n).Append(food.Name).SelectMany(n => n.Split([' ', ',', '-', '('], StringSplitOptions.RemoveEmptyEntries));

    private static FoodRowView Row(Food f, CultureInfo culture)
    {
        string Share(double? value) => value is { } v ? v.ToString("0.0", culture) : "unknown";
        Composition c = f.Composition;
        string weights = string.Join("; ", f.Densities.Select(d => string.Create(culture, $"{d.Value.Value:0.00} g/mL{(d.Key.Length > 0 ? " " + d.Key : "")}{(d.Value.Assumed ? ", assumed" : "")}")).Concat(f.Units.Select(u => string.Create(culture, $"one {u.Key} {u.Value.Value:0.#} g{(u.Value.Assumed ? ", assumed" : "")}"))));
        return new FoodRowView(f.Name, Share(c.Water), Share(c.Fat), Share(c.Sugars), Share(c.Protein), Share(c.Starch), weights, f.Contains.IsEmpty ? "" : string.Join(", ", f.Contains), f.Source + (f.Why.Length > 0 ? "; " + f.Why : ""));
    }
}

/// <summary>A food; shares in percent, "unknown" where no figure is held.</summary>
public sealed record FoodRowView(string Name, string Water, string Fat, string Sugars, string Protein, string Starch, string Weights, string Allergens, string Source);
