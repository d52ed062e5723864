using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Components by code, by name and by the words that tell them apart, so that a food finds its component without looking at every pair.</summary>
internal sealed class ComponentIndex
{
    private readonly SpanTable<Pair> _names = new(anyCase: true, ofText: true);
    private readonly SpanTable<Pair> _codes = new(anyCase: true, ofText: true);
    private readonly SpanTable<Pair> _words = new(anyCase: true, ofText: true);
    private readonly IReadOnlyList<Component> _all;

    /// <summary>An index of these components.</summary>
    public ComponentIndex(IReadOnlyList<Component> all)
    {
        _all = all;
        for (int i = 0; i < all.Count; i++)
        {
            Component c = all[i];
            if (c.Name.Length == 0)
            {
                continue;
            }

            Add(_names, c.Name, i);
            if (PartNames.Of(c.Name) is { } called && !Holds(c, called))
            {
                Add(_names, called, i);
            }

            if (c.Code is { } code)
            {
                Add(_codes, code, i);
            }

            foreach (string w in Words(c.Name))
            {
                Add(_words, w, i);
            }
        }
    }

    /// <summary>The component a food is taken from; null when it is a food of its own.</summary>
    public string? From(string food, string line, Component own)
    {
        bool the = line.StartsWith("the ", StringComparison.OrdinalIgnoreCase) || line.Contains(" of the ", StringComparison.OrdinalIgnoreCase);
        int best = Other(_names, food, own);
        if (_codes.Count == 0 && !the)
        {
            return best == int.MaxValue ? null : _all[best].Name;
        }

        foreach (string word in Tokens(food))
        {
            best = Math.Min(best, Other(_codes, word, own));
            best = the ? Math.Min(best, Other(_words, word, own)) : best;
        }

        return best == int.MaxValue ? null : _all[best].Name;
    }

    /// <summary>Words of a name that tell it from others.</summary>
    public static IEnumerable<string> Words(string name) =>
        name.Split([' ', '-', ','], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 3 && !Places.HasAny(w, "with", "layer", "fluid", "green", "filling"));

    /// <summary>"For the leeks" over leeks is called by its food: leeks elsewhere are bought.</summary>
    private static bool Holds(Component c, string food) => c.Ingredients.Any(l => l.Foods.Any(f => f.Food.Contains(food, StringComparison.OrdinalIgnoreCase)));

    private int Other(SpanTable<Pair> index, string key, Component own)
    {
        if (!index.TryGetValue(key, out Pair found))
        {
            return int.MaxValue;
        }

        return _all[found.First].Name != own.Name ? found.First : found.Second;
    }

    /// <summary>Keeps the first two components of different names: one of them is never the asking one.</summary>
    private void Add(SpanTable<Pair> index, string key, int i)
    {
        bool known = index.TryGetValue(key, out Pair found);
        if (!known)
        {
            index.At(key, key) = new Pair(i, int.MaxValue);
        }
        else if (found.Second == int.MaxValue && _all[found.First].Name != _all[i].Name)
        {
            index.At(key) = found with { Second = i };
        }
    }

    private static IEnumerable<string> Tokens(string food)
    {
        int i = 0;
        while (i < food.Length)
        {
            while (i < food.Length && !char.IsLetterOrDigit(food[i]))
            {
                i++;
            }

            int start = i;
            while (i < food.Length && char.IsLetterOrDigit(food[i]))
            {
                i++;
            }

            if (i > start)
            {
                yield return food[start..i];
            }
        }
    }

    private readonly record struct Pair(int First, int Second);
}
