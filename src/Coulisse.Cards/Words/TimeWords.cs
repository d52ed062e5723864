using System.Collections.Frozen;

namespace Coulisse.Cards.Words;

/// <summary>Units of time and the phrases that are a time by themselves ("half an hour", "un quart d'heure", "半日").</summary>
internal static class TimeWords
{
    private const double Second = 1 / 60.0;
    private const double Day = 1440;

    private static readonly FrozenDictionary<string, double> Units = Pairs(
        (1, "minutes minute minuten minuti minuto minutos mins min mn minuters"), (60, "hours hour heures heure stunden stunde horas hora ore ora hrs hr std stdn h hs uur"),
        (Second, "seconds second secondes seconde sekunden sekunde segundos segundo secondi secondo secs sec sek seg segs sg s"), (Day, "days day jours jour tage tag tagen días día dias dia giorni giorno j gg"),
        (7 * Day, "weeks week wks wk semaines semaine wochen woche semanas semana settimane settimana"), (30 * Day, "months month mo mos mth mths mois monate monat monaten meses mes mesi mese")).ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, double>.AlternateLookup<ReadOnlySpan<char>> Look = Units.GetAlternateLookup<ReadOnlySpan<char>>();

    private static readonly (string Word, double Minutes)[] Japanese = [("分間", 1), ("分", 1), ("時間", 60), ("秒間", Second), ("秒", Second), ("日間", Day), ("日", Day), ("週間", 7 * Day), ("か月", 30 * Day), ("ヶ月", 30 * Day), ("ヵ月", 30 * Day), ("カ月", 30 * Day)];

    private static readonly (string Lang, string Words, double Minutes)[] Phrases =
    [
        ("en", "half an hour", 30), ("en", "half-an-hour", 30), ("en", "a half hour", 30), ("en", "half hour", 30), ("en", "half-hour", 30), ("en", "a quarter of an hour", 15), ("en", "quarter of an hour", 15), ("en", "three quarters of an hour", 45), ("en", "three-quarters of an hour", 45),
        ("en", "an hour", 60), ("en", "another hour", 60), ("en", "a further hour", 60), ("en", "another minute", 1), ("en", "another day", 1440), ("en", "a minute", 1), ("en", "half a minute", 0.5), ("en", "half a day", 720), ("en", "a day and a night", 1440),
        ("fr", "un petit quart d'heure", 15), ("fr", "un bon quart d'heure", 15), ("fr", "un quart d'heure", 15), ("fr", "quart d'heure", 15), ("fr", "trois quarts d'heure", 45), ("fr", "une bonne demi-heure", 30), ("fr", "une demi-heure", 30), ("fr", "une demi heure", 30), ("fr", "demi-heure", 30), ("fr", "une bonne heure", 60), ("fr", "une petite heure", 60), ("fr", "une autre heure", 60), ("fr", "une demi-journée", 720), ("fr", "une demi-minute", 0.5),
        ("de", "eine Viertelstunde", 15), ("de", "Viertelstunde", 15), ("de", "eine Dreiviertelstunde", 45), ("de", "Dreiviertelstunde", 45), ("de", "eine gute halbe Stunde", 30), ("de", "eine knappe halbe Stunde", 30), ("de", "eine gute Stunde", 60), ("de", "eine knappe Stunde", 60), ("de", "einen halben Tag", 720), ("de", "eineinviertel Stunden", 75),
        ("es", "un cuarto de hora", 15), ("es", "cuarto de hora", 15), ("es", "tres cuartos de hora", 45), ("es", "otra hora", 60), ("es", "media hora", 30), ("es", "hora y media", 90), ("es", "hora y cuarto", 75), ("es", "medio día", 720),
        ("it", "un quarto d'ora", 15), ("it", "quarto d'ora", 15), ("it", "tre quarti d'ora", 45), ("it", "una mezz'ora", 30), ("it", "mezz'ora", 30), ("it", "mezz'oretta", 30), ("it", "mezzora", 30), ("it", "mezza ora", 30), ("it", "un'oretta", 60), ("it", "un'ora", 60), ("it", "un'altra ora", 60), ("it", "mezza giornata", 720), ("it", "ora e mezza", 90), ("it", "ora e mezzo", 90),
        ("ja", "半日", 720), ("ja", "一昼夜", 1440), ("ja", "半時間", 30), ("ja", "一時間半", 90), ("ja", "一時間", 60), ("ja", "二時間", 120),
    ];

    private static readonly FrozenDictionary<string, (string Words, double Minutes)[]> ByLanguage = Phrases.GroupBy(p => p.Lang, StringComparer.Ordinal)
        .ToFrozenDictionary(g => g.Key, g => g.Select(p => (p.Words, p.Minutes)).OrderByDescending(p => p.Words.Length).ToArray(), StringComparer.Ordinal);

    /// <summary>The phrases of all languages.</summary>
    public static IEnumerable<string> All => Phrases.Select(p => p.Words);

    /// <summary>Minutes of a phrase that begins at a place; null when none does. None begins with a figure.</summary>
    public static double? At(string s, int at, string lang, out int end)
    {
        end = at;
        if (at < s.Length && !char.IsAsciiDigit(s[at]) && ByLanguage.TryGetValue(lang, out (string Words, double Minutes)[]? phrases))
        {
            char first = Folding.Lower(s[at]);
            foreach ((string words, double minutes) in phrases)
            {
                if (Folding.Lower(words[0]) == first && (lang == "ja" ? s.AsSpan(at).StartsWith(words) : Places.WordAt(s, at, words)))
                {
                    if (minutes == 1440 && s.AsSpan(0, at).EndsWith("for ", StringComparison.OrdinalIgnoreCase) && Saved.In(s))
                    {
                        // "Keep the liquor for another day" says when it may be used, and waits for nothing.
                        return null;
                    }

                    end = at + words.Length;
                    return minutes;
                }
            }
        }

        return null;
    }

    private static readonly WordList Saved = new("keep", "save", "reserve", "use", "set aside");

    /// <summary>Minutes of the unit at a place; null when none stands there.</summary>
    public static double? Unit(string s, int i, out int end)
    {
        end = i;
        if (i >= s.Length)
        {
            return null;
        }

        if (Places.IsJapanese(s[i]))
        {
            foreach ((string word, double minutes) in Japanese)
            {
                if (s.AsSpan(i).StartsWith(word) && !(word == "分" && Shared(s.AsSpan(i + 1))))
                {
                    end = i + word.Length;
                    return minutes;
                }
            }

            return null;
        }

        int e = i;
        while (e < s.Length && e - i < 10 && char.IsLetter(s[e]) && !Places.IsJapanese(s[e]))
        {
            e++;
        }

        if (e == i || !Look.TryGetValue(s.AsSpan(i, e - i), out double found))
        {
            return null;
        }

        // "Min." in the middle of a sentence keeps its full stop.
        end = e + 1 < s.Length && s[e] == '.' && s[e + 1] == ' ' && e - i <= 3 ? e + 1 : e;
        return found;
    }

    /// <summary>"8分立て", "3分割", "7分目", "2分の1": how far or in how many parts, and no minutes.</summary>
    private static bool Shared(ReadOnlySpan<char> behind) =>
        behind is ['量' or '割' or '目', ..] or ['立' or 'づ' or '咲', 'て' or 'き', ..] or ['の', (>= '0' and <= '9') or (>= '０' and <= '９') or '一' or '二' or '三' or '四' or '五', ..];

    private static IEnumerable<KeyValuePair<string, double>> Pairs(params (double Minutes, string Words)[] rows) =>
        rows.SelectMany(r => r.Words.Split(' ').Select(w => new KeyValuePair<string, double>(w, r.Minutes)));
}
