using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>How long a thing keeps, told beside the lists: each place with its own time ("5 days in the fridge or 3 months frozen"). What ripens before it keeps is no keeping.</summary>
internal static class Keepings
{
    private const double Day = 1440;
    private static readonly char[] Bars = ['|', '·'];
    private const double Frost = -10;
    private static readonly WordList SameDay = new("same day", "le jour même", "am selben Tag", "am gleichen Tag", "el mismo día", "lo stesso giorno", "in giornata");
    private static readonly WordList Speaks = new("keeps", "keep", "lasts", "will last", "shelf life", "use within", "storage:", "storage", "se conserve", "conservation", "hält", "haltbar", "Haltbarkeit", "life:", "aguanta", "se conserva", "conservación", "si conserva", "conservazione");
    private static readonly string[] Ripe = ["after", "nach", "après", "dopo", "después de", "tras"];

    /// <summary>Adds what a sentence says.</summary>
    public static void Add(string s, Span span, string lang, List<Keeping> keeps)
    {
        if (SameDay.In(s) || s.Contains("当日中", StringComparison.Ordinal))
        {
            StepTemperature? cold = Cold(s, lang);
            keeps.Add(new Keeping(24, cold?.Celsius, Where(s, s, cold?.Celsius), s, span) { SameDay = true, CelsiusMax = cold?.CelsiusMax });
            return;
        }

        if (s.AsSpan().IndexOfAny('|', '·') > 0 && KeepLabels.In(s))
        {
            // "Temps : 2 h | DLC : J+3": the head of a form, of which one cell speaks of keeping
            foreach (string cell in s.Split(Bars, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            {
                Add(cell, span, lang, keeps);
            }

            return;
        }

        bool speaks = Speaks.In(s) || s.Contains("保存", StringComparison.Ordinal) || Storing.Eaten(s) || KeepLabels.In(s) || PlaceTimes.Is(s, lang);
        if (!speaks && !Storing.Mentioned(s))
        {
            return;
        }

        StepTemperature? heat = null;
        bool asked = false;
        int before = keeps.Count;
        for (int i = 0; i < s.Length; i++)
        {
            if (!(char.IsAsciiDigit(s[i]) || i > 0 && s[i - 1] == ' ' && char.IsLetter(s[i])) || i > 0 && char.IsLetterOrDigit(s[i - 1]) && !Places.IsJapanese(s[i - 1]) || KeepLabels.Dated(s, i) || ((speaks ? PlaceTimes.Letter(s, i) : null) ?? Clock.At(s, i, lang) ?? KeepTimes.Told(s, i, lang)) is not { } t)
            {
                continue;
            }

            string words = s[i..t.End];
            if (!speaks && !Storing.Keeps(s, t.Start, t.Min, lang))
            {
                // "Refrigerate for up to 3 days": only the words around the time say that it keeps.
                i = t.End - 1;
                continue;
            }

            bool ripens = Places.Ends(s[Math.Max(0, i - 14)..i].TrimEnd(), Ripe);
            i = t.End - 1;
            heat = asked ? heat : Cold(s, lang);
            asked = true;
            if (ripens)
            {
                continue;
            }

            string part = StoragePlaces.Part(s, words);
            string own = StoragePlaces.In(part);
            if (keeps.Count == before)
            {
                keeps.Add(new Keeping(t.Max / 60, heat?.Celsius, Where(own.Length > 0 || StoragePlaces.Elsewhere(s, part) ? part : s, s, heat?.Celsius), s, span) { CelsiusMax = heat?.CelsiusMax });
            }
            else if (own.Length == 0 && t.Min >= Day && KeptDays.Opened(part))
            {
                // "8 days at 3 °C, 2 days once cut"
                keeps.Add(new Keeping(t.Max / 60, heat?.Celsius, keeps[before].Where, s, span) { CelsiusMax = heat?.CelsiusMax });
            }
            else if (own.Length > 0 && t.Min >= Day && !keeps.Exists(k => k.Where == own && k.Text == s))
            {
                // A heat told once is of the place told first.
                keeps.Add(new Keeping(t.Max / 60, null, own, s, span));
            }
        }
    }

    private static StepTemperature? Cold(string s, string lang) => Heat.In(s, lang, null, []) is { Count: > 0 } heats ? heats[0] : null;

    private static string Where(string part, string whole, double? celsius)
    {
        if (Places.HasAny(part, "drying agent"))
        {
            return "airtight";
        }

        string named = StoragePlaces.In(part);
        return named is not ("" or "room") ? named : celsius <= Frost ? "freezer" : celsius <= 8 ? "fridge" : Places.HasAny(whole, "cool and dry", "dry") ? "dry" : named is "room" || Places.HasAny(part, "room") ? "room" : "";
    }
}
