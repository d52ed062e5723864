using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Finds the times of a sentence.</summary>
internal static class Clock
{
    /// <summary>A stretch of time at a place: low, high, end; null when none begins there.</summary>
    public static (double Min, double Max, int Start, int End)? At(string s, int at, string lang)
    {
        if (One(s, at, lang) is not { } first)
        {
            return null;
        }

        // "45 minutes to 1 hour", "1 h à 1 h 30": a range told in two units
        if (first.Min == first.Max && Join(s, first.End, lang) is var j and > 0 && One(s, j, lang) is { } second && second.Min > first.Min && second.Min <= first.Min * 12)
        {
            return (first.Min, second.Max, at, second.End);
        }

        return first;
    }

    private static int Join(string s, int end, string lang)
    {
        int i = Places.Skip(s, end);
        if (i < s.Length && s[i] is '-' or '~')
        {
            return Places.Skip(s, i + 1);
        }

        string[] words = lang switch { "fr" => ["à", "ou"], "de" => ["bis", "oder"], "es" => ["a", "o"], "it" => ["a", "o"], _ => ["to", "or"] };
        foreach (string w in words)
        {
            if (Places.WordAt(s, i, w))
            {
                return Places.Skip(s, i + w.Length);
            }
        }

        return 0;
    }

    private static (double Min, double Max, int Start, int End)? One(string s, int at, string lang)
    {
        if (TimeWords.At(s, at, lang, out int phraseEnd) is { } phrase)
        {
            return phrase % 60 == 0 ? Quarters(s, at, phrase, phrase, phraseEnd) : (phrase, phrase, at, phraseEnd);
        }

        if (Numbers.Range(s, at, lang) is not { } n)
        {
            return null;
        }

        int i = Places.Skip(s, n.End);
        if (lang == "ja" && n.Max is null && i + 1 < s.Length && s[i] is '、' or '，' && char.IsAsciiDigit(s[i + 1]) && Numbers.Single(s, i + 1, lang) is { } upper && upper.Min > n.Min)
        {
            // 2、3分
            n = n with { Max = upper.Min, End = upper.End };
            i = n.End;
        }

        if (i < s.Length && s[i] == '-')
        {
            i++;
        }

        foreach (string again in (ReadOnlySpan<string>)["more", "further", "extra", "weitere", "weiteren", "autres", "altri", "más"])
        {
            // "5 more minutes"
            i = Places.WordAt(s, i, again) ? Places.Skip(s, i + again.Length) : i;
        }

        if (TimeWords.Unit(s, i, out int end) is not { } unit)
        {
            return Prime(s, n, at);
        }

        // "a second time", "one day": an article is one only of what lasts.
        if (n.InWords && n.Min == 1 && unit is < 1 or >= 1440)
        {
            return null;
        }

        double min = n.Min * unit;
        double max = (n.Max ?? n.Min) * unit;
        if (end < s.Length && s[end] == '半')
        {
            return (min + (unit / 2), max + (unit / 2), at, end + 1);
        }

        if (unit is 60 or 1 && n.Max is null && Rest(s, end, unit, lang) is { } more)
        {
            return (min + more.Minutes, max + more.Minutes, at, more.End);
        }

        return unit == 60 ? Quarters(s, at, min, max, end) : (min, max, at, end);
    }

    /// <summary>25': minutes where the figure touches the mark.</summary>
    private static (double Min, double Max, int Start, int End)? Prime(string s, Numeral n, int at)
    {
        int e = n.End;
        bool prime = e < s.Length && s[e] == '\'' && char.IsAsciiDigit(s[e - 1]) && (e + 1 == s.Length || !char.IsLetterOrDigit(s[e + 1]) && s[e + 1] != '\'');
        return prime ? (n.Min, n.Max ?? n.Min, at, e + 1) : null;
    }

    /// <summary>What goes on in the next smaller unit: "1 hr 20", "2 h 15 min", "1h30", "1 h y 15 min", "1 min 30 sec", "1分30秒".</summary>
    private static (double Minutes, int End)? Rest(string s, int end, double unit, string lang)
    {
        int j = Places.Skip(s, end);
        foreach (string and in (ReadOnlySpan<string>)["and", "et", "und", "y", "e"])
        {
            if (Places.WordAt(s, j, and))
            {
                j = Places.Skip(s, j + and.Length);
                break;
            }
        }

        if (j >= s.Length || !char.IsAsciiDigit(s[j]) || Numbers.Single(s, j, lang) is not { InWords: false } more || more.Min >= 60)
        {
            return null;
        }

        int k = Places.Skip(s, more.End);
        double? small = TimeWords.Unit(s, k, out int after);
        if (small is { } given)
        {
            return (unit == 60 && given == 1) || (unit == 1 && given < 1) ? (more.Min * given, after) : null;
        }

        // "1h30 at 26 °C", "1 hr 20": bare minutes behind an hour, when nothing else claims the figure
        bool glued = j == end;
        bool free = k >= s.Length || (s[k] is not ('°' or '%' or '-' or '/' or 'x' or '×') && Lexicon.LongestUnit(s, k, lang, out _) is null && !Places.WordAt(s, k, "degrees") && !Places.WordAt(s, k, "Grad") && !Places.WordAt(s, k, "C") && !Places.WordAt(s, k, "F"));
        bool stops = k >= s.Length || s[k] is '.' or ',' or ')' or ';' || Places.WordAt(s, k, "at") || Places.WordAt(s, k, "in") || Places.WordAt(s, k, "à") || Places.WordAt(s, k, "bei") || Places.WordAt(s, k, "a") || Places.WordAt(s, k, "until") || (lang == "fr" && s[k] is 'p');
        return unit == 60 && more.Min >= 5 && (glued ? free : free && stops) ? (more.Min, more.End) : null;
    }

    /// <summary>"and a half", "e un quarto", "et demie", "y media" behind hours.</summary>
    private static (double Min, double Max, int Start, int End) Quarters(string s, int at, double min, double max, int end)
    {
        int j = Places.Skip(s, end);
        foreach ((string words, double more) in (ReadOnlySpan<(string, double)>)[("e un quarto", 15), ("e tre quarti", 45), ("e mezza", 30), ("e mezzo", 30), ("and a half", 30), ("and a quarter", 15), ("and three quarters", 45), ("et demie", 30), ("et demi", 30), ("et quart", 15), ("trois quarts", 45), ("y media", 30), ("y cuarto", 15), ("y medio", 30), ("y tres cuartos", 45)])
        {
            if (Places.WordAt(s, j, words))
            {
                return (min + more, max + more, at, j + words.Length);
            }
        }

        return (min, max, at, end);
    }
}
