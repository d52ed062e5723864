using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Finds the times of a sentence.</summary>
internal static class Clock
{
    private static readonly (string Word, double Minutes)[] Units =
    [
        ("minutes", 1), ("minute", 1), ("minuten", 1), ("minuti", 1), ("minuto", 1), ("minutos", 1), ("mins", 1), ("min", 1), ("分間", 1), ("分", 1),
        ("hours", 60), ("hour", 60), ("heures", 60), ("heure", 60), ("stunden", 60), ("stunde", 60), ("horas", 60), ("hora", 60), ("ore", 60), ("ora", 60), ("hrs", 60), ("hr", 60), ("std", 60), ("h", 60), ("時間", 60),
        ("seconds", 1 / 60.0), ("second", 1 / 60.0), ("secondes", 1 / 60.0), ("sekunden", 1 / 60.0), ("segundos", 1 / 60.0), ("secondi", 1 / 60.0), ("secs", 1 / 60.0), ("sec", 1 / 60.0), ("s", 1 / 60.0), ("秒", 1 / 60.0),
        ("days", 1440), ("day", 1440), ("jours", 1440), ("tage", 1440), ("días", 1440), ("giorni", 1440), ("日間", 1440),
    ];

    /// <summary>A stretch of time at a place: low, high, end; null when none begins there.</summary>
    public static (double Min, double Max, int Start, int End)? At(string s, int at, string lang)
    {
        if (lang == "it" && s.AsSpan(at).StartsWith("un'ora", StringComparison.OrdinalIgnoreCase))
        {
            return Quarters(s, at, 60, 60, at + 6);
        }

        if (Numbers.Range(s, at, lang) is not { } n || (n.InWords && n.Min == 1 && !Places.WordAt(s, at, "an")))
        {
            return null;
        }

        int i = Places.Skip(s, n.End);
        if (i < s.Length && s[i] == '-')
        {
            i++;
        }

        if (Unit(s, i, out int end) is not { } unit)
        {
            return null;
        }

        double min = n.Min * unit;
        double max = (n.Max ?? n.Min) * unit;
        int j = Places.Skip(s, end);
        if (end < s.Length && s[end] == '半')
        {
            return (min + 30, max + 30, at, end + 1);
        }

        if (unit == 60 && Numbers.Single(s, j, lang) is { InWords: false } more && more.Min < 60)
        {
            // "1 hr 20", "2 h 15 min"
            int k = Places.Skip(s, more.End);
            double? small = Unit(s, k, out int after);
            if (small == 1 || (small is null && (k >= s.Length || s[k] is '.' or ',' or ')' || (lang == "fr" && s[k] is 'à' or 'a' or 'p')) && lang is "en" or "fr"))
            {
                return (min + more.Min, max + more.Min, at, small == 1 ? after : more.End);
            }
        }

        return unit == 60 ? Quarters(s, at, min, max, end) : (min, max, at, end);
    }

    /// <summary>"and a half", "e un quarto", "et demie", "y media" behind hours.</summary>
    private static (double Min, double Max, int Start, int End) Quarters(string s, int at, double min, double max, int end)
    {
        int j = Places.Skip(s, end);
        foreach ((string words, double more) in (ReadOnlySpan<(string, double)>)[("e un quarto", 15), ("e mezza", 30), ("e mezzo", 30), ("and a half", 30), ("and a quarter", 15), ("et demie", 30), ("et quart", 15), ("y media", 30), ("y cuarto", 15), ("y medio", 30)])
        {
            if (Places.WordAt(s, j, words))
            {
                return (min + more, max + more, at, j + words.Length);
            }
        }

        return (min, max, at, end);
    }

    private static double? Unit(string s, int i, out int end)
    {
        foreach ((string word, double minutes) in Units)
        {
            if (i + word.Length <= s.Length && string.Compare(s, i, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0
                && (Places.IsJapanese(word[0]) || i + word.Length == s.Length || !char.IsLetter(s[i + word.Length])))
            {
                end = i + word.Length;
                if (word == "分" && s.AsSpan(end).StartsWith("立て"))
                {
                    continue;
                }

                end = end < s.Length && s[end] == '.' && end + 1 < s.Length && s[end + 1] == ' ' && word is "min" or "std" or "hr" ? end + 1 : end;
                return minutes;
            }
        }

        end = i;
        return null;
    }
}
