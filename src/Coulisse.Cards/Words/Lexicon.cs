using Coulisse.Matter.Reference;

namespace Coulisse.Cards.Words;

/// <summary>A unit word and what it is.</summary>
/// <param name="Unit">One spelling.</param>
/// <param name="Kind">mass, volume, spoon, cup, container, count, word, dozen, length.</param>
/// <param name="Base">Grams or millilitres of one; null when that depends.</param>
internal sealed record UnitWord(string Unit, string Kind, double? Base);

/// <summary>The words of the trade, loaded when first asked for and never changed.</summary>
internal static class Lexicon
{
    /// <summary>Languages whose own words win in their own cards.</summary>
    public static readonly string[] Languages = ["en", "fr", "de", "es", "it", "ja"];

    // No word of our tables is nearly as long.
    private const int LongestKey = 256;
    private static readonly Lazy<WordTable<UnitWord>> LazyUnits = new(LoadUnits);
    private static readonly Lazy<SpanTable<WordTable<string>>> LazyWords = new(LoadWords);

    /// <summary>The unit a word names in a language; null when it names none.</summary>
    public static UnitWord? Unit(ReadOnlySpan<char> key, string lang)
    {
        if (LazyUnits.Value.Find(key) is not { } found)
        {
            return null;
        }

        UnitWord? any = null;
        for (Meaning<UnitWord>? m = found; m is not null; m = m.Next)
        {
            if (m.Lang == lang)
            {
                return m.Value;
            }

            any ??= m.Lang == "*" || lang == "en" ? m.Value : null;
        }

        return any ?? (found.Next is null && key.Length > 2 ? found.Value : null);
    }

    /// <summary>What a word of a class becomes; null when it is not of the class in this language.</summary>
    public static string? Word(string kind, ReadOnlySpan<char> key, string lang) => Word(Class(kind), key, lang);

    private static string? Word(WordTable<string> table, ReadOnlySpan<char> key, string lang)
    {
        for (Meaning<string>? m = table.Find(key); m is not null; m = m.Next)
        {
            if (m.Lang == lang || m.Lang == "*")
            {
                return m.Value;
            }
        }

        return null;
    }

    /// <summary>The keys of a class in all languages.</summary>
    public static IEnumerable<string> Keys(string kind) => Class(kind).Keys;

    private static WordTable<string> Class(string kind) => LazyWords.Value.TryGetValue(kind, out WordTable<string> table) ? table : throw new KeyNotFoundException($"There is no class of words called {kind}.");

    /// <summary>Longest phrase of a class that begins at a place; gives its end.</summary>
    public static string? Longest(string kind, string s, int at, int words, string lang, out int end)
    {
        end = at;
        WordTable<string> table = Class(kind);
        if (at >= s.Length || !table.MayBegin(s, at))
        {
            return null;
        }

        Span<char> buffer = stackalloc char[96];
        string? best = null;
        int i = at;
        int told = at;
        int n = 0;
        for (int w = 0; w < words && i < s.Length; w++)
        {
            i = Places.WordEnd(s, i);
            if (i - at > 44)
            {
                break;
            }

            n = Folding.Key(s.AsSpan(told, i - told), buffer, n);
            told = i;
            if (n > 0 && Word(table, buffer[..n], lang) is { } value)
            {
                best = value;
                end = i < s.Length && s[i] == '.' ? i + 1 : i;
            }

            while (i < s.Length && s[i] is ' ' or '.')
            {
                i++;
            }
        }

        return best;
    }

    /// <summary>Longest unit that begins at a place.</summary>
    public static UnitWord? LongestUnit(string s, int at, string lang, out int end)
    {
        end = at;
        if (at >= s.Length || s[at] is not ('T' or 't') && !LazyUnits.Value.MayBegin(s, at))
        {
            return null;
        }

        Span<char> buffer = stackalloc char[96];
        UnitWord? best = null;
        int i = at;
        int told = at;
        int n = 0;
        for (int w = 0; w < 4 && i < s.Length; w++)
        {
            i = Places.WordEnd(s, i);
            if (i - at > 30)
            {
                break;
            }

            n = Folding.Key(s.AsSpan(told, i - told), buffer, n);
            told = i;

            // Capital T is a tablespoon, small t a teaspoon: the one place where case is meaning.
            if (i - at == 1 && s[at] is 'T' or 't' && (i >= s.Length || s[i] is ' ' or '.'))
            {
                best = Unit(s[at] == 'T' ? "tbsp" : "tsp", lang);
                end = i;
            }
            else
            {
                // "1 kl. Zwiebel" is a small one, "1 KL Zucker" a spoon.
                bool small = lang == "de" && i - at == 2 && s[at] == 'k' && s[at + 1] == 'l';
                if (n > 0 && !small && Unit(buffer[..n], lang) is { } unit)
                {
                    best = unit;
                    end = i < s.Length && s[i] == '.' ? i + 1 : i;
                }
            }

            while (i < s.Length && s[i] is ' ' or '.')
            {
                i++;
            }
        }

        return best;
    }

    private static WordTable<UnitWord> LoadUnits()
    {
        WordTable<UnitWord> units = new();
        Span<char> key = stackalloc char[LongestKey];
        foreach (string[] r in ReferenceTable.Load("reading/units.tsv").Rows)
        {
            units.Add(key[..Folding.Key(r[0], key)], r[0], Language(r[1]), new UnitWord(r[2], r[3], ReferenceTable.Number(r[4])));
        }

        return units;
    }

    private static SpanTable<WordTable<string>> LoadWords()
    {
        SpanTable<WordTable<string>> classes = new();
        Span<char> key = stackalloc char[LongestKey];
        foreach (string[] r in ReferenceTable.Load("reading/words.tsv").Rows)
        {
            WordTable<string> words = classes.At(r[2], r[2]) ??= new WordTable<string>();
            string lang = Language(r[1]);
            if (r[2] != "prep")
            {
                words.Add(key[..Folding.Key(r[0], key)], r[0], lang, r[3]);
                continue;
            }

            // What is done to a food agrees with it in gender and number.
            string[] endings = Inflections.Of(r[0], r[1], out int stem);
            int n = Folding.Key(r[0].AsSpan(0, stem), key);
            foreach (string ending in endings)
            {
                words.Add(key[..Folding.Key(ending, key, n)], r[0], lang, r[3]);
            }
        }

        return classes;
    }

    // One string for a language, not one for each row.
    private static string Language(string lang) => Array.IndexOf(Languages, lang) is var at and >= 0 ? Languages[at] : lang;
}
