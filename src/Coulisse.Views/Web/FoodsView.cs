using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using Coulisse.Matter.Foods;

namespace Coulisse.Views.Web;

/// <summary>Foods the bench knows, by what was typed, each with its composition and where it is from.</summary>
/// <param name="Query">Words searched.</param>
/// <param name="Says">How many.</param>
/// <param name="Rows">Foods.</param>
public sealed record FoodsView(string Query, string Says, ImmutableArray<FoodRowView> Rows)
{
    private const int Most = 60;

    // One search of the whole bench; building it folds every name, so it is kept as long as its table is.
    private static readonly ConditionalWeakTable<FoodTable, FoodSearch> Searches = new();

    /// <summary>Finds foods: accents, cases and word order do not matter, and a letter may be wrong.</summary>
    /// <param name="table">Foods to look in; own foods of the kitchen are part of it.</param>
    /// <param name="query">As typed; empty for all of them by name.</param>
    /// <param name="culture">Culture of the figures.</param>
    public static FoodsView Find(FoodTable table, string query, CultureInfo culture)
    {
        Food[] found = query.Trim().Length == 0
            ? [.. table.Ids.Select(table.Find).OfType<Food>().OrderBy(f => f.Name, StringComparer.Ordinal)]
            : [.. Ids(table, query).Select(table.Find).OfType<Food>()];
        bool near = found.Length > 0 && query.Trim().Length > 0 && Searches.GetValue(table, t => new FoodSearch(t)).Find(query, 1) is [{ Rank: > 3 }];
        return new FoodsView(query, found.Length switch
        {
            0 => $"No food is called “{query}”. A food that is not known keeps its weight; what needs its composition says so.",
            _ when near => $"No food is called “{query}”. Spelled nearly so:",
            > Most => string.Create(culture, $"{found.Length} foods; the first {Most} are shown."),
            _ => string.Create(culture, $"{found.Length} {(found.Length == 1 ? "food" : "foods")}."),
        }, [.. found.Take(Most).Select(f => Row(f, culture))]);
    }

    private static IEnumerable<string> Ids(FoodTable table, string query)
    {
        FoodSearch search = Searches.GetValue(table, t => new FoodSearch(t));
        string[] words = query.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        IReadOnlyList<FoundFood> whole = search.Find(query, int.MaxValue);
        if (words.Length < 2 || whole is [{ Rank: <= 3 }, ..])
        {
            return whole.Select(f => f.Id);
        }

        // the words in another order, or of two names of one food
        HashSet<string>? all = null;
        foreach (string word in words)
        {
            IEnumerable<string> with = search.Find(word, int.MaxValue).Where(f => f.Rank <= 3).Select(f => f.Id);
            all = all is null ? new HashSet<string>(with, StringComparer.Ordinal) : [.. all.Intersect(with, StringComparer.Ordinal)];
        }

        return all is { Count: > 0 } ? search.Find(words[0], int.MaxValue).Select(f => f.Id).Where(all.Contains) : whole.Select(f => f.Id);
    }

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
