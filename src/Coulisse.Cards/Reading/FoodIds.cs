using System.Collections.Concurrent;
using Coulisse.Cards.Words;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>Names the food of our table that a cook's words mean, when that is sure: a wrong food is worse than none. Each wording is looked up once a card.</summary>
internal sealed class FoodIds(string lang)
{
    private const double Sure = 0.8;
    private const double VerySure = 0.95;
    private const int LongestName = 60;
    private static readonly string[] Tins = ["can", "cans", "tin", "tins"];
    private readonly ConcurrentDictionary<string, Known> _known = new(StringComparer.Ordinal);

    /// <summary>The food a wording of this card surely means; null when none is sure. A name of many words is a sentence. The wording becomes the one kept of it, so that a food told often is held once.</summary>
    public FoodMatch? Of(ref string food)
    {
        if (food.Length is 0 or > LongestName)
        {
            return null;
        }

        if (!_known.TryGetValue(food, out Known? known))
        {
            known = _known.GetOrAdd(food, new Known(food, Match(food, lang) is { Confidence: >= Sure } sure ? sure : null));
        }

        food = known.Name;
        return known.Match;
    }

    /// <summary>The food of a line: as it is written with its state, where that is a name of its own ("minced beef", "coco rallado"), and out of a tin where it is ("1 tin chickpeas").</summary>
    /// <param name="d">The line's food; its name becomes the one kept of it.</param>
    /// <param name="s">The line.</param>
    public FoodMatch? Of(Draft d, string s)
    {
        FoodMatch? plain = Of(ref d.Food);
        if (Tinned(d, s))
        {
            return Tinned(d.Food, plain);
        }

        // "2 Stangen Sellerie": the word of the count and the food are a name of their own
        if (d.Unit?.Kind == "count" && d.Food.Length > 2 && (d.Said ?? s) is var line && line.IndexOf(" " + d.Food, StringComparison.Ordinal) is var at and > 1 && line.LastIndexOf(' ', at - 1) + 1 is var word && char.IsLetter(line[word]) && Whole(line[word..(at + 1 + d.Food.Length)], line) is { } counted)
        {
            return counted;
        }

        // "2 chopped tomatoes" are tomatoes: what is counted is whole
        if (d.Preparation is not { } prepared || (d.Unit is null && d.Amount is not null) || d.Food.Length == 0)
        {
            return plain;
        }

        string state = prepared.IndexOf(',') is var comma and > 0 ? prepared[..comma] : prepared;
        string said = d.Said ?? s;
        return Whole(state + " " + d.Food, said) ?? Whole(d.Food + " " + state, said) ?? plain;
    }

    private FoodMatch? Whole(string name, string s) => name.Length <= LongestName && s.Contains(name, StringComparison.OrdinalIgnoreCase) && Of(ref name) is { Confidence: >= VerySure } match ? match : null;

    private static bool Tinned(Draft d, string s)
    {
        if (d.Unit?.Unit == "tin")
        {
            return true;
        }

        // "400 g can chopped tomatoes"
        int food = d.Unit?.Kind == "mass" && d.Food.Length > 0 ? s.IndexOf(d.Food, StringComparison.OrdinalIgnoreCase) : -1;
        return food > 0 && Tins.Any(w => Places.FindWord(s, w) is var at and > 0 && at < food);
    }

    /// <summary>What comes out of a tin: its own row where there is one; else none for what grows or swims, as the row is of the raw or the dried.</summary>
    private FoodMatch? Tinned(string food, FoodMatch? plain)
    {
        string tinned = "tinned " + food;
        if (lang == "en" && tinned.Length <= LongestName && Of(ref tinned) is { Confidence: >= VerySure } told)
        {
            return told;
        }

        if (plain is null || plain.Id.EndsWith("-tinned", StringComparison.Ordinal))
        {
            return plain;
        }

        foreach (string id in (ReadOnlySpan<string>)[plain.Id + "-tinned", plain.Id.TrimmedEnd("s") + "-tinned"])
        {
            if (FoodTable.Default.Find(id) is not null)
            {
                return plain with { Id = id };
            }
        }

        return FoodTable.Default.Find(plain.Id) is { Class: "vegetable" or "fruit" or "pulse" or "roots" or "greens" or "fish" or "shellfish" or "beef" or "pork" or "poultry" } raw && !raw.Names.Values.Any(n => n.Any(x => x.Contains("tin", StringComparison.OrdinalIgnoreCase))) ? null : plain;
    }

    /// <summary>The food a wording means; null also for what is no wording: half a pair, a sign outside every alphabet.</summary>
    public static FoodMatch? Match(string name, string lang)
    {
        foreach (char c in name)
        {
            if (char.IsSurrogate(c) || c >= '\uFFFE')
            {
                return null;
            }
        }

        return FoodTable.Default.Match(name, lang);
    }

    private sealed record Known(string Name, FoodMatch? Match);
}
