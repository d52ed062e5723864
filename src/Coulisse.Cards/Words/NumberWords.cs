using System.Globalization;

namespace Coulisse.Cards.Words;

/// <summary>Numbers in several words or in one long one: "three hundred and fifty", "ciento cincuenta", "deux cent cinquante", "zweihundertfünfzig", "trecentocinquanta".</summary>
internal static class NumberWords
{
    private const int MostWords = 4;
    private static readonly (string Lang, string Hundred, string[] Counts)[] Long =
    [
        ("de", "hundert", ["", "ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun"]),
        ("it", "cento", ["", "", "due", "tre", "quattro", "cinque", "sei", "sette", "otto", "nove"]),
    ];

    private static readonly (string Word, int Value)[] Spanish = [("trescient", 300), ("cuatrocient", 400), ("quinient", 500), ("seiscient", 600), ("setecient", 700), ("ochocient", 800), ("novecient", 900), ("doscient", 200), ("ciento", 100)];

    /// <summary>The number that goes on behind a first word of it; the first word's own where nothing goes on.</summary>
    public static (double Value, int End) Compound(string s, double value, int end, string lang)
    {
        for (int guard = 0; guard < MostWords && value is >= 2 and < 1000 && value == Math.Floor(value); guard++)
        {
            int next = Places.Skip(s, end);
            next = next < s.Length && s[next] == '-' && next == end ? next + 1 : next;
            int and = lang switch { "en" => Behind(s, next, "and"), "es" => Behind(s, next, "y"), "fr" => Behind(s, next, "et"), "it" => Behind(s, next, "e"), _ => next };
            if (and >= s.Length || !char.IsLetter(s[and]) || !(Lexicon.Longest("num", s, and, 1, lang, out int stop) is { } word && double.TryParse(word, CultureInfo.InvariantCulture, out double more) || Hundreds(s, and, lang, out more, out stop)))
            {
                return (value, end);
            }

            if (more == 100 && value is >= 2 and <= 9 && and == next)
            {
                value *= 100;
            }
            else if (value % 100 == 0 && value >= 100 && more is >= 1 and < 100 && more == Math.Floor(more) && !Article(s, and, stop)
                || value % 10 == 0 && value is >= 20 and <= 90 && more is >= 1 and <= 9 && !Article(s, and, stop) && (and == next || lang is "es"))
            {
                value += more;
            }
            else
            {
                return (value, end);
            }

            end = stop;
        }

        return (value, end);
    }

    /// <summary>A number of hundreds written as one word: "zweihundertfünfzig", "trecento", "trescientos"; false where the word is none.</summary>
    public static bool Hundreds(string s, int at, string lang, out double value, out int end)
    {
        value = 0;
        end = Places.WordEnd(s, at);
        string? sign = lang switch { "de" => "hundert", "it" => "cento", "es" => "ient", _ => null };
        if (sign is null || end - at < 5 || s.AsSpan(at, end - at).IndexOf(sign, StringComparison.OrdinalIgnoreCase) < 0)
        {
            // Nearly every word: said without making one of it.
            return false;
        }

        string word = Folding.Lower(s[at..end]);
        for (int k = 0; lang == "es" && k < Spanish.Length; k++)
        {
            (string start, int of) = Spanish[k];
            if (word.StartsWith(start, StringComparison.Ordinal) && word[start.Length..] is "" or "os" or "as")
            {
                value = of;
                return true;
            }
        }

        foreach ((string of, string hundred, string[] counts) in Long)
        {
            int split = of == lang ? word.IndexOf(hundred, StringComparison.Ordinal) : -1;
            if (split < 0)
            {
                continue;
            }

            int count = split == 0 ? 1 : Array.IndexOf(counts, word[..split]);
            string rest = word[(split + hundred.Length)..];
            rest = rest.StartsWith("und", StringComparison.Ordinal) ? rest[3..] : rest;
            double tail = 0;
            if (count < 1 || rest.Length > 0 && !(Lexicon.Longest("num", rest, 0, 1, lang, out int whole) is { } told && whole >= rest.Length && double.TryParse(told, CultureInfo.InvariantCulture, out tail) && tail < 100))
            {
                return false;
            }

            value = count * 100 + tail;
            return true;
        }

        return false;
    }

    private static int Behind(string s, int at, string and) => Places.WordAt(s, at, and) ? Places.Skip(s, at + and.Length) : at;

    /// <summary>"a hundred and a half", "cent un": an article is no number there.</summary>
    private static bool Article(string s, int at, int end) => s[at..end].ToLowerInvariant() is "a" or "an" or "one" or "un" or "une" or "una" or "uno" or "ein" or "eine";
}
