using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Finds the times of a sentence.</summary>
internal static class Clock
{
    private static readonly string[] French = ["à", "ou"];
    private static readonly string[] German = ["bis", "oder"];
    private static readonly string[] Southern = ["a", "o"];
    private static readonly string[] English = ["to", "or"];
    private static readonly string[] Agains = ["more", "further", "extra", "good", "full", "whole", "solid", "or so", "weitere", "weiteren", "gute", "volle", "autres", "bonnes", "petites", "altri", "buoni", "más", "buenos"];
    private static readonly Beginnings FirstOfAgains = new(Agains);
    private static readonly string[] Ands = ["and", "et", "und", "y", "e"];

    /// <summary>A stretch of time at a place: low, high, end; null when none begins there.</summary>
    public static (double Min, double Max, int Start, int End)? At(string s, int at, string lang)
    {
        if (!NumberBeginnings.May(s, at) || One(s, at, lang) is not { } first)
        {
            return null;
        }

        if (lang == "en" && first.Min == first.Max && first.Min is 1 or 60 or 1440 && Places.Skip(s, first.End) is var two && (s[at] is 'a' or 'A' || s.AsSpan(at).StartsWith("one", StringComparison.OrdinalIgnoreCase)) && Places.WordAt(s, two, "or two"))
        {
            // "a minute or two"
            return (first.Min, first.Min * 2, at, two + "or two".Length);
        }

        if (lang is "fr" or "de" or "es" or "it" && first.Min == first.Max && first.Min is 1 or 60 or 1440 && !char.IsAsciiDigit(s[at]) && Places.Behind(s, Places.Skip(s, first.End), OrTwos) is > 0 and var both && !Again(s, both))
        {
            // "un jour ou deux"
            return (first.Min, first.Min * 2, at, both);
        }

        // "45 minutes to 1 hour", "1 h à 1 h 30": a range told in two units
        if (first.Min == first.Max && (Join(s, first.End, lang) is > 0 and var j || Between(s, at, first.End, out j)) && One(s, j, lang) is { } second && second.Min > first.Min && second.Min <= first.Min * 12)
        {
            return (first.Min, second.Max, at, second.End);
        }

        return first;
    }

    /// <summary>True where a unit of its own stands behind: "une heure ou deux heures".</summary>
    private static bool Again(string s, int at) => TimeWords.Unit(s, Places.Skip(s, at), out _) is not null;

    private static readonly string[] OrTwos = ["ou deux", "oder zwei", "o dos", "o due"];

    /// <summary>True when a figure from a place on begins a stretch of time.</summary>
    public static bool Tells(string s, int from, string lang)
    {
        for (int i = from; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1]) || Places.IsJapanese(s[i - 1])) && At(s, i, lang) is not null)
            {
                return true;
            }
        }

        return false;
    }

    private static int Join(string s, int end, string lang)
    {
        int i = Places.Skip(s, end);
        if (i < s.Length && s[i] is '-' or '~')
        {
            return Places.Skip(s, i + 1);
        }

        return Places.Behind(s, i, lang switch { "fr" => French, "de" => German, "es" or "it" => Southern, _ => English }) is > 0 and var behind ? Places.Skip(s, behind) : 0;
    }

    /// <summary>"between 45 minutes and an hour": behind that word "and" joins the ends of one stretch; place behind it. "45 minutes and an hour later" are two.</summary>
    private static bool Between(string s, int at, int end, out int next)
    {
        next = Places.Skip(s, end);
        ReadOnlySpan<char> before = s.AsSpan(0, at).TrimEnd();
        foreach (string word in Betweens)
        {
            if (Places.EndsIn(before, word))
            {
                foreach (string and in Ands)
                {
                    if (Places.WordAt(s, next, and))
                    {
                        next = Places.Skip(s, next + and.Length);
                        return true;
                    }
                }
            }
        }

        return false;
    }

    /// <summary>"5m de ficelle", "3m di spago": where the letter is of metres.</summary>
    private static bool Metres(string s, int i) => s.Length > i && s[i] is '²' or '³' or '\'' || Places.Behind(s, Places.Skip(s, i), "de", "di", "von", "d", "Schnur", "Garn", "Folie", "lang", "breit", "largo", "ancho", "large", "long") > 0;

    private static readonly WordList Earlier = new("before", "later", "avant", "vor", "später", "antes", "prima", "dopo", "después");
    private static readonly string[] Betweens = ["between", "entre", "zwischen", "tra", "fra"];

    private static (double Min, double Max, int Start, int End)? One(string s, int at, string lang)
    {
        if (TimeWords.At(s, at, lang, out int phraseEnd) is { } phrase)
        {
            // "another hour and 15 mins"; "an hour and 15 minutes before serving" are two moments
            return phrase == 60 && Rest(s, phraseEnd, 60, lang) is { } beyond && !Earlier.In(s[beyond.End..Math.Min(s.Length, beyond.End + 10)]) ? (60 + beyond.Minutes, 60 + beyond.Minutes, at, beyond.End)
                : phrase % 60 == 0 ? Quarters(s, at, phrase, phrase, phraseEnd) : (phrase, phrase, at, phraseEnd);
        }

        if (lang == "ja" && KanjiTimes.At(s, at) is { } written)
        {
            return written;
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

        i = Roughly(s, i, lang);

        // "20+ min": the sign says "at least", which is read beside the words.
        if (i < s.Length && s[i] == '+')
        {
            i = Places.Skip(s, i + 1);
            if (Added(s, n, at, i, lang) is { } part)
            {
                return part;
            }
        }

        if (Colon(s, n, at, lang) is { } told)
        {
            return told;
        }

        foreach (string again in FirstOfAgains.May(s, i) ? Agains : [])
        {
            // "5 more minutes"
            i = Places.WordAt(s, i, again) ? Places.Skip(s, i + again.Length) : i;
        }

        if (lang == "fr" && s.AsSpan(i).StartsWith("d'heure", StringComparison.OrdinalIgnoreCase))
        {
            return (n.Min * 60, (n.Max ?? n.Min) * 60, at, Places.WordEnd(s, i + 2));
        }

        if (lang == "it" && s.AsSpan(i).StartsWith("d'or", StringComparison.OrdinalIgnoreCase))
        {
            return (n.Min * 60, (n.Max ?? n.Min) * 60, at, Places.WordEnd(s, i + 2));
        }

        if (TimeWords.Unit(s, i, out int end) is not { } unit)
        {
            // "45m", "1h 20m": minutes where the letter touches its figure
            bool glued = !n.InWords && i == n.End && i < s.Length && s[i] is 'm' or 'M' && (i + 1 == s.Length || !char.IsLetterOrDigit(s[i + 1])) && n.Min < 600 && (lang == "en" || n.Min > 1 && !Metres(s, i + 1));
            if (lang == "en" && !n.InWords && i == n.End && i < s.Length && s[i] == 'd' && (i + 1 == s.Length || !char.IsLetterOrDigit(s[i + 1]) && s[i + 1] != '\'') && n.Min <= 60)
            {
                // "cure 5d"
                return (n.Min * 1440, (n.Max ?? n.Min) * 1440, at, i + 1);
            }

            return glued ? (n.Min, n.Max ?? n.Min, at, i + 1) : Prime(s, n, at, lang);
        }

        // "a second time", "one day": an article is one only of what lasts.
        if (n.InWords && n.Min == 1 && unit is < 1 or >= 1440 && !(unit >= 1440 && OneLong.Is(s, at, end, lang)))
        {
            return null;
        }

        if (SlashTimes.Of(s, n, at, i, end, unit) is { } slashed)
        {
            return (slashed.Low * unit, slashed.High * unit, at, end);
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

    /// <summary>"35ish min", "40-odd minutes": near it, which the words tell; the place behind.</summary>
    private static int Roughly(string s, int i, string lang)
    {
        foreach (string word in lang == "en" ? Roughs : [])
        {
            if (string.Compare(s, i, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0 && (i + word.Length == s.Length || !char.IsLetterOrDigit(s[i + word.Length])))
            {
                return Places.Skip(s, i + word.Length);
            }
        }

        return i;
    }

    private static readonly string[] Roughs = ["ish", "odd"];

    /// <summary>25' and 2'30": minutes and seconds where the figure touches the mark. In English the double mark is an inch.</summary>
    private static (double Min, double Max, int Start, int End)? Prime(string s, Numeral n, int at, string lang)
    {
        int e = n.End;
        if (e >= s.Length || !char.IsAsciiDigit(s[e - 1]) || s[e] is not ('\'' or '"'))
        {
            return null;
        }

        bool two = s[e] == '"' || e + 1 < s.Length && s[e + 1] == '\'';
        if (two)
        {
            int close = s[e] == '"' ? e + 1 : e + 2;
            return s[e] == '"' && lang == "en" || close < s.Length && char.IsLetterOrDigit(s[close]) ? null : (n.Min / 60, (n.Max ?? n.Min) / 60, at, close);
        }

        if (e + 2 < s.Length && char.IsAsciiDigit(s[e + 1]) && Numbers.Single(s, e + 1, lang) is { Min: < 60 } seconds && (seconds.End >= s.Length || !char.IsLetterOrDigit(s[seconds.End])))
        {
            int close = seconds.End < s.Length && s[seconds.End] is '"' ? seconds.End + 1 : seconds.End + 1 < s.Length && s[seconds.End] == '\'' && s[seconds.End + 1] == '\'' ? seconds.End + 2 : seconds.End;
            return (n.Min + seconds.Min / 60, n.Min + seconds.Min / 60, at, close);
        }

        return e + 1 == s.Length || !char.IsLetterOrDigit(s[e + 1]) ? (n.Min, n.Max ?? n.Min, at, e + 1) : null;
    }

    /// <summary>"6 + 4 Min. kneten": the first of minutes told one after the other, which share their word.</summary>
    private static (double Min, double Max, int Start, int End)? Added(string s, Numeral n, int at, int next, string lang)
    {
        for (int guard = 0; guard < 4 && next < s.Length && char.IsAsciiDigit(s[next]) && Numbers.Range(s, next, lang) is { InWords: false } more; guard++)
        {
            int i = Places.Skip(s, more.End);
            if (TimeWords.Unit(s, i, out _) is { } unit)
            {
                // "180 + 20 min" is a heat and its time.
                return n.InWords || n.Min > 60 ? null : (n.Min * unit, (n.Max ?? n.Min) * unit, at, n.End);
            }

            next = i < s.Length && s[i] == '+' ? Places.Skip(s, i + 1) : s.Length;
        }

        return null;
    }

    /// <summary>"1:30 h", "0:45 Std.": hours and minutes with a colon, before the word of hours.</summary>
    private static (double Min, double Max, int Start, int End)? Colon(string s, Numeral n, int at, string lang)
    {
        int e = n.End;
        if (n.Max is not null || n.InWords || e + 2 >= s.Length || s[e] != ':' || !char.IsAsciiDigit(s[e + 1]) || !char.IsAsciiDigit(s[e + 2]) || e + 3 < s.Length && char.IsAsciiDigit(s[e + 3]))
        {
            return null;
        }

        double minutes = (n.Min * 60) + ((s[e + 1] - '0') * 10) + s[e + 2] - '0';
        _ = lang;
        if (TimeWords.Unit(s, Places.Skip(s, e + 3), out int end) is 60)
        {
            return (minutes, minutes, at, end);
        }

        if (TimeWords.Unit(s, Places.Skip(s, e + 3), out end) is 1)
        {
            // "6:30 min": minutes and seconds
            return (minutes / 60, minutes / 60, at, end);
        }

        return n.Min == 0 && minutes is > 0 and < 60 && Stretches(s, at, e + 3) ? (minutes, minutes, at, e + 3) : null;
    }

    /// <summary>"Backen 00:25": no hours and some minutes, where no hour of the night is meant ("until 00:30") and no machine runs for seconds ("blitz 00:25").</summary>
    private static bool Stretches(string s, int at, int end)
    {
        if (end < s.Length && (char.IsLetterOrDigit(s[end]) || s[end] is ':' or '.' && end + 1 < s.Length && char.IsAsciiDigit(s[end + 1])) || Quick.In(s))
        {
            return false;
        }

        ReadOnlySpan<char> before = s.AsSpan(0, at).TrimEnd(" (~");
        foreach (string hour in Hours)
        {
            if (before.EndsWith(hour, StringComparison.OrdinalIgnoreCase) && (before.Length == hour.Length || !char.IsLetter(before[^(hour.Length + 1)])))
            {
                return false;
            }
        }

        int next = Places.Skip(s, end);
        return before.Length > 0 && !Places.WordAt(s, next, "Uhr") && !Places.WordAt(s, next, "am") && !Places.WordAt(s, next, "o'clock") && before[^1] is not ('-' or '/' or ':');
    }

    private static readonly string[] Hours = ["at", "by", "until", "till", "before", "after", "from", "to", "um", "bis", "ab", "gegen", "vor", "nach", "à", "dès", "vers", "avant", "a las", "hasta las", "las", "alle", "dalle", "entro le", "le"];
    private static readonly WordList Quick = new("blend", "blitz", "pulse", "whizz", "mix", "mixer", "mixen", "pürieren", "triturar", "frullare", "speed", "vitesse", "Stufe", "velocidad", "velocità", "service", "midnight");

    /// <summary>What goes on in the next smaller unit: "1 hr 20", "2 h 15 min", "1h30", "1 h y 15 min", "1 min 30 sec", "1分30秒".</summary>
    private static (double Minutes, int End)? Rest(string s, int end, double unit, string lang)
    {
        int j = Places.Skip(s, end);
        foreach (string and in Ands)
        {
            if (Places.WordAt(s, j, and))
            {
                j = Places.Skip(s, j + and.Length);
                break;
            }
        }

        if (unit == 60 && j < s.Length && char.IsLetter(s[j]))
        {
            return SpelledMinutes.Behind(s, j, j > Places.Skip(s, end), lang);
        }

        if (j >= s.Length || !char.IsAsciiDigit(s[j]) || Numbers.Single(s, j, lang) is not { InWords: false } more || more.Min >= 60)
        {
            return null;
        }

        int k = Places.Skip(s, more.End);
        double? small = TimeWords.Unit(s, k, out int after);
        if (small is null && unit == 60 && lang == "en" && k == more.End && k < s.Length && s[k] is 'm' or 'M' && (k + 1 == s.Length || !char.IsLetterOrDigit(s[k + 1])))
        {
            return (more.Min, k + 1);
        }

        if (small is { } given)
        {
            return (unit == 60 && given == 1) || (unit == 1 && given < 1) ? (more.Min * given, after) : null;
        }

        // "1h30 at 26 °C", "1 hr 20": bare minutes behind an hour, when nothing else claims the figure
        bool glued = j == end;
        bool free = k >= s.Length || (s[k] is not ('°' or '%' or '-' or '/' or 'x' or '×') && Lexicon.LongestUnit(s, k, lang, out _) is null && !Places.WordAt(s, k, "degrees") && !Places.WordAt(s, k, "Grad") && !Places.WordAt(s, k, "C") && !Places.WordAt(s, k, "F"));
        // "1 h 15 with bicarb": hours told by the letter, and a round number of minutes
        bool letter = s[end - 1] is 'h' or 'H' && (end < 2 || !char.IsLetter(s[end - 2])) && more.Min >= 10 && more.Min % 5 == 0;
        // "1 ora e 30 con l'aglio": the hour's "and" before a round number, and no noun behind
        bool joined = !glued && Places.Skip(s, end) != j && more.Min >= 10 && more.Min % 5 == 0 && Places.Behind(s, k, Withs) > 0;
        bool stops = letter || joined || k >= s.Length || s[k] is '.' or ',' or ')' or ';' or '(' || Places.WordAt(s, k, "or") || Places.WordAt(s, k, "ou") || Places.WordAt(s, k, "oder") || Places.WordAt(s, k, "at") || Places.WordAt(s, k, "in") || Places.WordAt(s, k, "à") || Places.WordAt(s, k, "bei") || Places.WordAt(s, k, "a") || Places.WordAt(s, k, "until") || (lang == "fr" && s[k] is 'p');
        if (unit == 1)
        {
            // "1 min 30 de chaque côté", "2 min 30": a round number of seconds that belongs to nothing behind it
            return more.Min >= 10 && more.Min % 5 == 0 && (free && stops || k < s.Length && Array.Exists(Sides, w => Places.WordAt(s, k, w))) ? (more.Min / 60, more.End) : null;
        }

        return unit == 60 && more.Min >= 5 && (glued ? free : free && stops) ? (more.Min, more.End) : null;
    }

    private static readonly string[] Withs = ["con", "with", "avec", "mit", "bei", "covered", "coperto", "tapado", "couvert", "a fuoco", "a fuego", "à feu", "over", "on"];

    private static readonly string[] Sides = ["de chaque", "par face", "par côté", "par pièce", "sur chaque", "chaque", "each", "each side", "per side", "a side", "on each", "je Seite", "pro Seite", "auf jeder", "por cada", "por lado", "per lato", "per parte", "da ogni"];

    /// <summary>"and a half", "e un quarto", "et demie", "y media" behind hours.</summary>
    private static (double Min, double Max, int Start, int End) Quarters(string s, int at, double min, double max, int end)
    {
        int j = Places.Skip(s, end);
        foreach ((string words, double more) in (ReadOnlySpan<(string, double)>)[("e un quarto", 15), ("e tre quarti", 45), ("e mezza", 30), ("e mezzo", 30), ("and a half", 30), ("and a quarter", 15), ("and three quarters", 45), ("et demie", 30), ("et demi", 30), ("et quart", 15), ("trois quarts", 45), ("y media", 30), ("y cuarto", 15), ("y medio", 30), ("y tres cuartos", 45), ("e 1/2", 30), ("y 1/2", 30), ("et 1/2", 30), ("and 1/2", 30), ("und 1/2", 30), ("1/2", 30), ("½", 30), ("1/4", 15), ("¼", 15), ("3/4", 45), ("¾", 45)])
        {
            if (Places.WordAt(s, j, words))
            {
                return (min + more, max + more, at, j + words.Length);
            }
        }

        return (min, max, at, end);
    }
}
