using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Heats as one jots them at night, without a sign and without a verb: "smoker 110 → 7h", "210 45m → 180 15m", "250 lid on 20m", "bulk 4h @ 25", "core 95 abt 4h", "kern 78", "chauffer 60 verser", "retard o/n 4c". Only in short lines, and only where kit, an arrow, a time or the middle of a food stands beside the figure; a unit or a food behind it makes it none.</summary>
internal static class NoteHeats
{
    private const int Longest = 120;

    /// <summary>Kit whose figure is the heat of its air.</summary>
    private static readonly string[] Kits = ["oven", "smoker", "combi", "deck oven", "four", "fumoir", "ofen", "backofen", "rohr", "smokerofen", "räucherofen", "horno", "ahumador", "forno", "affumicatore"];

    /// <summary>Names of the middle of a food, beside those a sentence says.</summary>
    private static readonly string[] Middles = [.. BareCores.Names, "kern", "corazon", "corazón", "cuore", "cœur", "coeur", "a coeur", "int"];

    /// <summary>What may stand between the figure of an oven and its time.</summary>
    private static readonly string[] Between = ["lid on", "lid off", "covered", "uncovered", "steam", "no steam", "fan", "full fan", "foil on", "foil off", "vent open", "couvert", "découvert", "decouvert", "avec buée", "vapeur", "zugedeckt", "offen", "ohne deckel", "mit deckel", "mit dampf", "mit schwaden", "tapado", "destapado", "con vapor", "sin tapa", "coperto", "scoperto", "con vapore", "x", "for", "about", "abt", "ca", "env", "aprox", "circa"];

    /// <summary>What is done to a lid or a foil before the oven's next figure.</summary>
    private static readonly string[] Uncovered = ["lid off", "lid on", "foil off", "foil on", "uncover", "uncovered", "cover", "découvrir", "decouvrir", "découvert", "couvert", "couvrir", "aufdecken", "offen", "deckel ab", "zugedeckt", "destapar", "destapado", "tapado", "tapar", "scoprire", "scoperto", "coperto", "finish", "finir", "terminar", "finire"];

    private static readonly string[] Hedges = ["abt", "about", "approx", "c.", "ca", "env", "environ", "aprox", "circa", "etwa", "~"];
    private static readonly string[] Warmers = ["warm", "heat", "reheat", "chauffer", "réchauffer", "rechauffer", "tiédir", "tiedir", "erhitzen", "erwärmen", "calentar", "templar", "scaldare", "intiepidire"];

    /// <summary>Cold places and the work that is done at a told warmth: a small figure and its "c" behind them are no cups.</summary>
    private static readonly string[] Held = ["retard", "fridge", "walk-in", "walkin", "chiller", "chill", "chill to", "blast", "blast to", "blast chill", "blast chill to", "cool to", "hold", "hold at", "prove", "proof", "cold prove", "cold proof", "prover", "frigo", "chambre froide", "cellule", "refroidir", "refroidir a", "refroidir à", "blocage", "pousse", "étuve", "kühlung", "kühlhaus", "kühlschrank", "kühlen", "abkühlen", "abkühlen auf", "gare", "nevera", "cámara", "camara", "abatir", "abatir a", "abatidor", "enfriar", "enfriar a", "cella", "abbattere", "abbattere a", "abbattitore", "lievitare"];
    private static readonly Beginnings FirstOfHeld = new(Held);
    private static readonly Beginnings FirstOfMiddles = new(Middles);
    private static readonly string[] Nights = ["o/n", "ü/n", "overnight", "nuit", "über nacht", "noche", "notte"];

    /// <summary>True for such a heat.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="i">Where the figure stands.</param>
    /// <param name="n">The figure.</param>
    /// <param name="operations">The words of work of the sentence.</param>
    /// <param name="lang">Language.</param>
    /// <param name="of">What it is of, where that is told by what stands beside it.</param>
    public static bool At(string s, int i, Numeral n, List<(int At, string Id)> operations, string lang, out TemperatureOf? of)
    {
        of = null;
        if (lang == "ja" || s.Length > Longest || n.InWords || n.Min is < 1 or > 300 || n.End < s.Length && char.IsLetterOrDigit(s[n.End]))
        {
            return false;
        }

        int from = Begins(s, i);
        int k = Places.Skip(s, n.End);
        bool ends = k >= s.Length || s[k] is ',' or ';' or ')' or '→' or '➔' or '+' || Arrow(s, k);
        bool timed = !ends && Timed(s, k, lang);
        ReadOnlySpan<char> before = s.AsSpan(from, i - from).TrimEnd(" :");
        bool oven = n.Min >= 60 && n.Min % 5 == 0 && (n.Max is null || n.Max % 5 == 0);
        bool led = from < i && s.AsSpan(from, i - from).TrimEnd().EndsWith(":") && !Places.EndsIn(before, Middles) && !Places.EndsIn(before, Kits);
        if (before.Length == 0 || led)
        {
            // "210 45m → 180 15m", "250 lid on 20m", "pick up: 220 12m"
            of = TemperatureOf.Oven;
            return oven && n.Max is null && n.Min is >= 100 and <= 280 && (i == 0 || led || from > 0 && Arrowed(s, from)) && (timed ? i > 0 && !led || Jotted(s, k) : Lidded(s, k, lang));
        }

        if (before[^1] == '@')
        {
            return (ends || timed) && (timed || Closes(before[..^1], lang));
        }

        if (n.Min is >= 35 and <= 99 && (ends || timed) && Places.EndsIn(before, Middles))
        {
            of = TemperatureOf.Core;
            return true;
        }

        if (oven && (ends || timed || Lidded(s, k, lang)) && Places.EndsIn(before, Kits) && !(lang != "fr" && Places.EndsIn(before, "four")))
        {
            of = TemperatureOf.Oven;
            return true;
        }

        bool arrowed = Arrow(s, k) && Timed(s, Places.Skip(s, k + (s[k] is '-' or '=' ? 2 : 1)), lang);
        bool heated = operations.Exists(o => o.At >= from && o.At < i && o.Id is "bake" or "roast" or "braise" or "gratinate");
        if (oven && n.Max is null && n.Min >= 120 && (timed && Jotted(s, k) && (heated || Places.EndsIn(before, Uncovered)) || arrowed && heated))
        {
            // "destapar 200 20m", "backen 180 → 14m", "roast 220 12m"
            of = TemperatureOf.Oven;
            return true;
        }

        return n.Max is null && n.Min is >= 35 and <= 120 && Places.EndsIn(before, Warmers) && (ends || operations.Exists(o => o.At == k));
    }

    /// <summary>True where the small "c" glued to a figure is Celsius and no cup: behind a cold place, behind work that is done at a warmth, or where the line waits over night. "salt 4c", "cold water 3c" are cups.</summary>
    /// <param name="s">The line.</param>
    /// <param name="c">Where the letter stands.</param>
    public static bool Cold(string s, int c)
    {
        if (s.Length > Longest || c + 1 < s.Length && s[c + 1] is not (' ' or ',' or ';' or ')' or '→'))
        {
            return false;
        }

        int figure = c;
        while (figure > 0 && char.IsAsciiDigit(s[figure - 1]))
        {
            figure--;
        }

        int from = Begins(s, figure);
        ReadOnlySpan<char> before = s.AsSpan(from, figure - from).TrimEnd(" :@");
        if (before.Length == 0)
        {
            return false;
        }

        foreach (string w in FirstOfHeld.May(s, from) ? Held : [])
        {
            if (Places.WordAt(s, from, w) && (before.Length == w.Length || before[w.Length..].IndexOfAnyInRange('0', '9') >= 0 || Places.EndsIn(before, Nights)))
            {
                return true;
            }
        }

        return Places.EndsIn(before, Nights) || Places.EndsIn(before, Held) && Array.Exists(Nights, w => Places.FindWord(s, w, from) >= 0);
    }

    /// <summary>True where a figure and its small "c" are no cups whatever stands before: nobody measures so many.</summary>
    public static bool TooMany(double cups) => cups >= 30;

    /// <summary>True for a line that is nothing but heat and time, or that brings the middle of a food or a cold place to its figure: no food and no list.</summary>
    public static bool Only(string s, string lang)
    {
        if (lang == "ja" || s.Length is < 5 or > Longest || s[^1] is '.' or ':' || s.AsSpan().IndexOfAnyInRange('0', '9') is not (>= 0 and var figure))
        {
            return false;
        }

        if (s.IndexOf(": ", StringComparison.Ordinal) is > 1 and < 24 and var label && label + 2 == figure && char.IsLetter(s[label - 1]))
        {
            // "pick up: 220 12m skin up"
            return Numbers.Range(s, figure, lang) is { } led && At(s, figure, led, [], lang, out _);
        }

        if (figure == 0)
        {
            return Numbers.Range(s, 0, lang) is { } n && At(s, 0, n, [], lang, out _);
        }

        foreach (string w in FirstOfMiddles.May(s, 0) ? Middles : [])
        {
            if (Places.WordAt(s, 0, w) && figure == Places.Skip(s, w.Length) && Numbers.Range(s, figure, lang) is { InWords: false, Min: >= 35 and <= 99 } core)
            {
                int k = Places.Skip(s, core.End);
                k = k < s.Length && s[k] == '°' ? k + 1 : k;
                k = k < s.Length && s[k] is 'c' or 'C' && (k + 1 == s.Length || !char.IsLetterOrDigit(s[k + 1])) ? k + 1 : k;
                return k == s.Length || k > core.End && s[k] is ' ' or ',' && Timed(s, Places.Skip(s, k), lang) || Arrow(s, Places.Skip(s, k));
            }
        }

        if (FirstOfHeld.May(s, 0))
        {
            for (int c = s.IndexOf('c', figure); c > 0; c = s.IndexOf('c', c + 1))
            {
                if (char.IsAsciiDigit(s[c - 1]))
                {
                    return Cold(s, c);
                }
            }
        }

        return Arrowed(s, s.Length) && !Weighs(s, lang) && Clock.Tells(s, 0, lang);
    }

    /// <summary>True where an arrow stands in the line, which parts one work from the next.</summary>
    private static bool Arrowed(string s, int end) => s.AsSpan(0, end) is var head && (head.IndexOfAny('→', '➔') >= 0 || head.IndexOf("->") >= 0 || head.IndexOf("=>") >= 0);

    private static bool Arrow(string s, int k) => k < s.Length && (s[k] is '→' or '➔' || k + 1 < s.Length && s[k] is '-' or '=' && s[k + 1] == '>');

    /// <summary>True where a weight or a volume is told: "shallot 80g + butter 50g → sweat 6 min" holds a list.</summary>
    internal static bool Weighs(string s, string lang)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1])) && Amounts.At(s, i, lang) is { Unit.Kind: "mass" or "volume" or "spoon" or "cup" } m && !(m.Unit.Unit == "cup" && Cold(s, m.Number.End)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Where the work that a figure stands in begins: behind an arrow, a comma or a stop.</summary>
    private static int Begins(string s, int i)
    {
        int from = i;
        while (from > 0 && s[from - 1] is not ('→' or '➔' or ',' or ';' or '>' or '('))
        {
            from--;
        }

        return Math.Min(i, Places.Skip(s, from));
    }

    /// <summary>True where a time stands at a place, about or at least so long.</summary>
    private static bool Timed(string s, int k, string lang)
    {
        foreach (string w in Hedges)
        {
            if (Places.WordAt(s, k, w) || w == "~" && k < s.Length && s[k] == '~')
            {
                k = Places.Skip(s, k + w.Length);
            }
        }

        return k < s.Length && char.IsAsciiDigit(s[k]) && Clock.At(s, k, lang) is not null;
    }

    /// <summary>True for a time whose unit is glued to it, as notes have it: "45m".</summary>
    private static bool Jotted(string s, int k)
    {
        while (k < s.Length && (char.IsAsciiDigit(s[k]) || s[k] == '-'))
        {
            k++;
        }

        return k > 0 && k < s.Length && char.IsAsciiDigit(s[k - 1]) && s[k] is 'm' or 'h' or '\'';
    }

    /// <summary>True where nothing but how the oven is stands between the figure and its time, or its arrow.</summary>
    private static bool Lidded(string s, int k, string lang)
    {
        for (int guard = 0; guard < 3; guard++)
        {
            int behind = Places.Behind(s, k, Between);
            if (behind == 0)
            {
                return guard > 0 && Timed(s, k, lang);
            }

            k = Places.Skip(s, behind);
        }

        return Timed(s, k, lang);
    }

    /// <summary>True where the words end with a time: "bulk 4h" before "@ 25".</summary>
    private static bool Closes(ReadOnlySpan<char> before, string lang)
    {
        string words = before.TrimEnd().ToString();
        int figure = words.Length;
        while (figure > 0 && !char.IsAsciiDigit(words[figure - 1]) && words.Length - figure < 8)
        {
            figure--;
        }

        while (figure > 0 && char.IsAsciiDigit(words[figure - 1]))
        {
            figure--;
        }

        return figure < words.Length && char.IsAsciiDigit(words[figure]) && Clock.At(words, figure, lang) is { } t && t.End >= words.Length;
    }
}
