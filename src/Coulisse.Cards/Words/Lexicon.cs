using System.Collections.Frozen;
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

    private static readonly Lazy<WordTable<UnitWord>> LazyUnits = new(LoadUnits);
    private static readonly Lazy<FrozenDictionary<string, WordTable<string>>> LazyWords = new(LoadWords);

    /// <summary>The unit a word names in a language; null when it names none.</summary>
    public static UnitWord? Unit(ReadOnlySpan<char> key, string lang)
    {
        if (LazyUnits.Value.Find(key) is not { } found)
        {
            return null;
        }

        UnitWord? any = null;
        foreach ((string l, UnitWord unit) in found)
        {
            if (l == lang)
            {
                return unit;
            }

            any ??= l == "*" || lang == "en" ? unit : null;
        }

        return any ?? (found.Length == 1 && key.Length > 2 ? found[0].Value : null);
    }

    /// <summary>What a word of a class becomes; null when it is not of the class in this language.</summary>
    public static string? Word(string kind, ReadOnlySpan<char> key, string lang) => Word(LazyWords.Value[kind], key, lang);

    private static string? Word(WordTable<string> table, ReadOnlySpan<char> key, string lang)
    {
        if (table.Find(key) is not { } found)
        {
            return null;
        }

        foreach ((string l, string value) in found)
        {
            if (l == lang || l == "*")
            {
                return value;
            }
        }

        return null;
    }

    /// <summary>The keys of a class in all languages.</summary>
    public static IReadOnlyList<string> Keys(string kind) => LazyWords.Value[kind].Keys;

    /// <summary>Longest phrase of a class that begins at a place; gives its end.</summary>
    public static string? Longest(string kind, string s, int at, int words, string lang, out int end)
    {
        end = at;
        WordTable<string> table = LazyWords.Value[kind];
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
        ReferenceTable t = ReferenceTable.Load("reading/units.tsv");
        return new WordTable<UnitWord>(t.Rows.GroupBy(r => Folding.Key(r[0]), StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.Select(r => (r[1], new UnitWord(r[2], r[3], ReferenceTable.Number(r[4])))).ToArray(), StringComparer.Ordinal));
    }

    private static FrozenDictionary<string, WordTable<string>> LoadWords()
    {
        ReferenceTable t = ReferenceTable.Load("reading/words.tsv");
        return t.Rows.GroupBy(r => r[2], StringComparer.Ordinal).ToFrozenDictionary(
            c => c.Key,
            c => new WordTable<string>(c.SelectMany(r => Forms(r).Select(form => (Form: form, Row: r))).GroupBy(f => Folding.Key(f.Form), StringComparer.Ordinal)
                .ToFrozenDictionary(g => g.Key, g => g.Select(f => (f.Row[1], f.Row[3])).Distinct().ToArray(), StringComparer.Ordinal)),
            StringComparer.Ordinal);

        // What is done to a food agrees with it in gender and number.
        static IEnumerable<string> Forms(string[] row) => row[2] == "prep" ? Inflections.Of(row[0], row[1]) : [row[0]];
    }
}
