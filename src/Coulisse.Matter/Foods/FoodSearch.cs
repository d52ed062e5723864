namespace Coulisse.Matter.Foods;

/// <summary>A food found for what was typed so far.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">English name to show.</param>
/// <param name="Alias">The name of ours that fits what was typed.</param>
/// <param name="Rank">0 the very name, 1 begins so, 2 a word begins so, 3 contains it, 4 and more a spelling apart.</param>
public sealed record FoundFood(string Id, string Name, string Alias, int Rank);

/// <summary>Search as you type over the food table: names of all languages, beginnings, parts, and spellings one or two letters apart.</summary>
public sealed class FoodSearch
{
    private static readonly Lazy<FoodSearch> Shipped = new(() => new FoodSearch(FoodTable.Default));

    private readonly (string Id, string Name, string Alias, string Key, bool Own)[] _names;

    /// <summary>A search over a table.</summary>
    public FoodSearch(FoodTable table)
        : this(table.Ids.Select(id => table.Find(id)!))
    {
    }

    private FoodSearch(IEnumerable<Food> foods) => _names = [.. foods.SelectMany(f => f.Names.SelectMany(n => n.Value.Select(alias => (f.Id, f.Name, alias, FoodName.Fold(alias), n.Key == "en"))))];

    /// <summary>The search over the foods that ship with the program.</summary>
    public static FoodSearch Default => Shipped.Value;

    /// <summary>Foods of a house that what was typed may mean, its own first, then those that ship.</summary>
    /// <param name="table">The house's foods.</param>
    /// <param name="typed">As typed, whole or not.</param>
    /// <param name="most">At most so many.</param>
    public static IReadOnlyList<FoundFood> In(FoodTable table, string typed, int most)
    {
        ArgumentNullException.ThrowIfNull(table);
        IReadOnlyList<FoundFood> own = new FoodSearch(table.Ids.Where(table.IsOwn).Select(id => table.Find(id)!)).Find(typed, most);
        return own.Count == 0 ? Default.Find(typed, most)
            : [.. own.Concat(Default.Find(typed, most).Where(f => f.Rank < 4 && own.All(o => o.Id != f.Id))).OrderBy(f => f.Rank < 4 ? 0 : 1).Take(most)];
    }

    /// <summary>Foods that what was typed may mean, best first, each once.</summary>
    /// <param name="typed">As typed, whole or not.</param>
    /// <param name="most">At most so many.</param>
    public IReadOnlyList<FoundFood> Find(string typed, int most)
    {
        string key = FoodName.Fold(typed.Length > 80 ? typed[..80] : typed);
        if (key.Length == 0 || most < 1)
        {
            return [];
        }

        Dictionary<string, FoundFood> best = new(StringComparer.Ordinal);
        foreach ((string id, string name, string alias, string folded, bool own) in _names)
        {
            Take(best, new FoundFood(id, name, alias, Rank(key, folded)), own);
        }

        if (best.Count == 0)
        {
            // Nothing holds it: perhaps a letter is wrong.
            int far = key.Length < 4 ? 0 : key.Length < 7 ? 1 : 2;
            foreach ((string id, string name, string alias, string folded, bool own) in _names)
            {
                int apart = far > 0 ? Apart(key, folded, far) : int.MaxValue;
                Take(best, new FoundFood(id, name, alias, apart <= far ? 3 + apart : int.MaxValue), own);
            }
        }

        return [.. best.Values.OrderBy(f => f.Rank).ThenBy(f => f.Alias.Length).ThenBy(f => f.Alias, StringComparer.Ordinal).Take(most)];
    }

    /// <summary>What an unknown food may have meant: spellings near it, then foods that share its last word.</summary>
    public IReadOnlyList<FoundFood> DidYouMean(string food, int most)
    {
        IReadOnlyList<FoundFood> near = Find(food, most);
        string[] words = FoodName.Fold(food).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (int i = words.Length - 1; near.Count == 0 && i >= 0 && words.Length > 1; i--)
        {
            near = words[i].Length > 3 ? Find(words[i], most) : [];
        }

        return near;
    }

    private static void Take(Dictionary<string, FoundFood> best, FoundFood f, bool own)
    {
        if (f.Rank < int.MaxValue && (!best.TryGetValue(f.Id, out FoundFood? had) || f.Rank < had.Rank || (f.Rank == had.Rank && own && f.Alias.Length < had.Alias.Length)))
        {
            best[f.Id] = f;
        }
    }

    private static int Rank(string key, string folded)
    {
        int at = folded.IndexOf(key, StringComparison.Ordinal);
        return at < 0 ? int.MaxValue : at == 0 ? (folded.Length == key.Length ? 0 : 1) : folded[at - 1] == ' ' ? 2 : key.Length > 2 ? 3 : int.MaxValue;
    }

    /// <summary>Letters changed, left out, put in or swapped between two words; more than <paramref name="far"/> as soon as that is sure.</summary>
    private static int Apart(string a, string b, int far)
    {
        if (Math.Abs(a.Length - b.Length) > far)
        {
            return int.MaxValue;
        }

        Span<int> before = stackalloc int[b.Length + 1];
        Span<int> last = stackalloc int[b.Length + 1];
        Span<int> row = stackalloc int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            int least = i;
            for (int j = 1; j <= b.Length; j++)
            {
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }

                least = Math.Min(least, row[j]);
            }

            if (least > far)
            {
                return int.MaxValue;
            }

            last.CopyTo(before);
            row.CopyTo(last);
        }

        return last[b.Length];
    }
}
