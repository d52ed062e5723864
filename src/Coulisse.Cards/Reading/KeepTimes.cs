using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Keeps for a year", "freeze for up to a month", "si conserva un anno": the article for one, and years. Only how long a thing keeps is told so; "add a month later" and "18 year old rum" are no times.</summary>
internal static class KeepTimes
{
    private const double Day = 1440;
    private static readonly One[] Ones =
    [
        new("a week", 7), new("a month", 30), new("a year", 365), new("a fortnight", 14), new("a day", 1), new("une semaine", 7), new("un mois", 30), new("un an", 365), new("une année", 365), new("eine Woche", 7), new("einen Monat", 30), new("ein Monat", 30), new("ein Jahr", 365),
        new("una semana", 7), new("un mes", 30), new("un año", 365), new("una settimana", 7), new("un mese", 30), new("un anno", 365),
    ];

    private static readonly string[] Years = ["years", "year", "yrs", "yr", "ans", "an", "années", "Jahre", "Jahren", "Jahr", "años", "año", "anni", "anno"];
    private static readonly Beginnings FirstOfOnes = new(FirstWords());

    /// <summary>Such a time at a place of a sentence that speaks of keeping; null when none stands there.</summary>
    public static (double Min, double Max, int Start, int End)? At(string s, int at, string lang) => Told(s, at, lang) is { } t && (Storing.Is(Sentences.Around(s, at), most: true, t.Min) || Storing.Said(s, at, "", t.Min)) ? t : null;

    /// <summary>"3d fridge / 3m freezer" in a step: months beside a freezer, where the sentence speaks of keeping or of a second place. "Freezer 10m, until firm" are minutes.</summary>
    public static (double Min, double Max, int Start, int End)? Frozen(string s, int at) =>
        char.IsAsciiDigit(s[at]) && PlaceTimes.Letter(s, at) is { } t && Sentences.Around(s, at) is var clause && (StoragePlaces.Cooled(clause) || Storing.Is(clause, most: false, 0)) ? t : null;

    /// <summary>Such a time at a place, whatever the sentence speaks of.</summary>
    public static (double Min, double Max, int Start, int End)? Told(string s, int at, string lang)
    {
        if (char.IsAsciiDigit(s[at]))
        {
            // Asked at every figure that is no time: most have no word of years behind them.
            int letter = at;
            while (letter < s.Length && letter - at < 8 && (char.IsAsciiDigit(s[letter]) || s[letter] is ' ' or '-' or '.' or ','))
            {
                letter++;
            }

            if (letter == s.Length || s[letter] is not ('y' or 'Y' or 'a' or 'A' or 'j' or 'J') || Numbers.Range(s, at, lang) is not { InWords: false, Min: >= 1 and <= 10 } n)
            {
                return null;
            }

            int unit = Places.Skip(s, n.End);
            foreach (string year in unit < s.Length && s[unit] is 'y' or 'Y' or 'a' or 'A' or 'J' ? Years : [])
            {
                if (Places.WordAt(s, unit, year))
                {
                    return (n.Min * 365 * Day, (n.Max ?? n.Min) * 365 * Day, at, unit + year.Length);
                }
            }

            return null;
        }

        if (at + 2 < s.Length && s[at + 1] == '+' && KeepLabels.Day0(s, at) is { } later)
        {
            return later;
        }

        if (!FirstOfOnes.May(s, at))
        {
            return null;
        }

        foreach ((string word, double days) in Ones)
        {
            if (Places.WordAt(s, at, word))
            {
                return (days * Day, days * Day, at, at + word.Length);
            }
        }

        return null;
    }

    private readonly record struct One(string Word, double Days);

    private static string[] FirstWords()
    {
        string[] words = new string[Ones.Length];
        for (int i = 0; i < words.Length; i++)
        {
            words[i] = Ones[i].Word;
        }

        return words;
    }
}
