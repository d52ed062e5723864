namespace Coulisse.Cards.Words;

/// <summary>Units of time and the phrases that are a time by themselves ("half an hour", "un quart d'heure", "半日").</summary>
internal static class TimeWords
{
    private const double Second = 1 / 60.0;
    private const double Day = 1440;

    private static readonly SpanTable<double> Units = ByWord(
        new(1, "minutes minute minuten minuti minuto minutos mins min mn minuters"), new(60, "hours hour heures heure stunden stunde horas hora ore ora hrs hr std stdn h hs uur"),
        new(Second, "seconds second secondes seconde sekunden sekunde segundos segundo secondi secondo secs sec sek seg segs sg s"), new(Day, "days day jours jour tage tag tagen días día dias dia giorni giorno j gg"),
        new(7 * Day, "weeks week wks wk semaines semaine wochen woche semanas semana settimane settimana"), new(30 * Day, "months month mo mos mth mths mois monate monat monaten meses mes mesi mese"));

    private static readonly Named[] Japanese = [new(1, "分間"), new(1, "分"), new(60, "時間"), new(Second, "秒間"), new(Second, "秒"), new(Day, "日間"), new(Day, "日"), new(7 * Day, "週間"), new(30 * Day, "か月"), new(30 * Day, "ヶ月"), new(30 * Day, "ヵ月"), new(30 * Day, "カ月")];

    // The longer first: "half an hour" before "half".
    private static readonly SpanTable<Named[]> ByLanguage = Phrases();

    /// <summary>The phrases of all languages.</summary>
    public static IEnumerable<string> All
    {
        get
        {
            foreach (string lang in ByLanguage.Keys)
            {
                ByLanguage.TryGetValue(lang, out Named[] phrases);
                foreach (Named phrase in phrases)
                {
                    yield return phrase.Words;
                }
            }
        }
    }

    /// <summary>Minutes of a phrase that begins at a place; null when none does. None begins with a figure.</summary>
    public static double? At(string s, int at, string lang, out int end)
    {
        end = at;
        if (at < s.Length && !char.IsAsciiDigit(s[at]) && ByLanguage.TryGetValue(lang, out Named[] phrases))
        {
            char first = Folding.Lower(s[at]);
            foreach ((double minutes, string words) in phrases)
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
            foreach ((double minutes, string word) in Japanese)
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

        if (e == i || !Units.TryGetValue(s.AsSpan(i, e - i), out double found))
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

    private static SpanTable<double> ByWord(params Named[] rows)
    {
        SpanTable<double> all = new(anyCase: true);
        foreach ((double minutes, string words) in rows)
        {
            foreach (string word in words.Split(' '))
            {
                all.At(word, word) = minutes;
            }
        }

        return all;
    }

    private static SpanTable<Named[]> Phrases()
    {
        SpanTable<Named[]> all = new();
        Add("en",
            new(30, "half an hour"), new(30, "half-an-hour"), new(30, "a half hour"), new(30, "half hour"), new(30, "half-hour"), new(15, "a quarter of an hour"), new(15, "quarter of an hour"), new(45, "three quarters of an hour"), new(45, "three-quarters of an hour"),
            new(60, "an hour"), new(60, "another hour"), new(60, "a further hour"), new(1, "another minute"), new(1440, "another day"), new(1, "a minute"), new(0.5, "half a minute"), new(720, "half a day"), new(1440, "a day and a night"));
        Add("fr",
            new(15, "un petit quart d'heure"), new(15, "un bon quart d'heure"), new(15, "un quart d'heure"), new(15, "quart d'heure"), new(45, "trois quarts d'heure"), new(30, "une bonne demi-heure"), new(30, "une demi-heure"), new(30, "une demi heure"), new(30, "demi-heure"),
            new(60, "une bonne heure"), new(60, "une petite heure"), new(60, "une autre heure"), new(720, "une demi-journée"), new(0.5, "une demi-minute"));
        Add("de",
            new(15, "eine Viertelstunde"), new(15, "Viertelstunde"), new(45, "eine Dreiviertelstunde"), new(45, "Dreiviertelstunde"), new(30, "eine gute halbe Stunde"), new(30, "eine knappe halbe Stunde"), new(60, "eine gute Stunde"), new(60, "eine knappe Stunde"), new(720, "einen halben Tag"),
            new(75, "eineinviertel Stunden"));
        Add("es",
            new(15, "un cuarto de hora"), new(15, "cuarto de hora"), new(45, "tres cuartos de hora"), new(60, "otra hora"), new(30, "media hora"), new(90, "hora y media"), new(75, "hora y cuarto"), new(720, "medio día"));
        Add("it",
            new(15, "un quarto d'ora"), new(15, "quarto d'ora"), new(45, "tre quarti d'ora"), new(30, "una mezz'ora"), new(30, "mezz'ora"), new(30, "mezz'oretta"), new(30, "mezzora"), new(30, "mezza ora"), new(60, "un'oretta"),
            new(60, "un'ora"), new(60, "un'altra ora"), new(60, "un'altra oretta"), new(720, "mezza giornata"), new(90, "ora e mezza"), new(90, "ora e mezzo"));
        Add("ja",
            new(720, "半日"), new(1440, "一昼夜"), new(30, "半時間"), new(90, "一時間半"), new(60, "一時間"), new(120, "二時間"));
        return all;

        // Of equal length the first told stays the first.
        void Add(string lang, params Named[] phrases)
        {
            for (int i = 1; i < phrases.Length; i++)
            {
                for (int k = i; k > 0 && phrases[k - 1].Words.Length < phrases[k].Words.Length; k--)
                {
                    (phrases[k - 1], phrases[k]) = (phrases[k], phrases[k - 1]);
                }
            }

            all.At(lang, lang) = phrases;
        }
    }

    /// <summary>A time and the words for it.</summary>
    private readonly record struct Named(double Minutes, string Words);
}
