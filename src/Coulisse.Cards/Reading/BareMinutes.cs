using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Minutes without their word: "Oven 160 fan, 35-40.", "180C, 12-14" right behind the heat of an oven, and what leans on a time before it ("another 20", "cook 10").</summary>
internal static class BareMinutes
{
    private const double Fewest = 4;
    private const double Most = 240;
    private const int Reach = 80;

    /// <summary>The minutes at a place; null when the figure there is none.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="at">Where the figure stands.</param>
    /// <param name="lang">Language.</param>
    /// <param name="temperatures">The heats of the step.</param>
    /// <param name="last">The time before; what is baked after it has minutes of its own ("prove 45 and bake at 180° 12-15").</param>
    public static (double Min, double Max, int Start, int End)? At(string s, int at, string lang, List<StepTemperature> temperatures, StepTime? last)
    {
        if (last is not null && !(char.IsAsciiDigit(s[at]) && temperatures.Count > 0 && last.Words.Length > 0 && s.LastIndexOf(last.Words, at, Math.Min(at + 1, Reach), StringComparison.Ordinal) is var told and >= 0 && told + last.Words.Length <= at && Places.HasAny(s[(told + last.Words.Length)..at], "bake", "roast", "cuire", "enfourner", "backen", "hornear", "cuocere", "infornare")))
        {
            return null;
        }

        if (!char.IsAsciiDigit(s[at]) || !temperatures.Exists(t => t.Of == TemperatureOf.Oven && !t.Inherited) || Numbers.Range(s, at, lang) is not { InWords: false, Max: { } max } n || n.Min < Fewest || max > Most || n.Min >= max)
        {
            return null;
        }

        int behind = Places.Skip(s, n.End);
        string before = s[..at].TrimEnd();
        bool closes = behind >= s.Length || s[behind] is ',' or ';' || s[behind] == '.' && (behind + 1 == s.Length || s[behind + 1] == ' ');
        return closes && before.Length > 1 && (before[^1] is ',' or '/' && Heated(before[..^1].TrimEnd(), temperatures[^1]) || before[^1] is '°' or 'C' && Heated(before, temperatures[^1])) ? (n.Min, max, at, n.End) : null;
    }

    /// <summary>"Hornear a 180º 25 m.": the letter of metres with its stop, in a step that tells a heat, where nobody measures metres. A noun behind it ("2 m. string") makes it one.</summary>
    public static (double Min, double Max, int Start, int End)? Letter(string s, int at, string lang, List<StepTemperature> temperatures)
    {
        if (temperatures.Count == 0 || !char.IsAsciiDigit(s[at]) || Numbers.Range(s, at, lang) is not { InWords: false, Min: >= 1 and <= Most } n)
        {
            return null;
        }

        int m = Places.Skip(s, n.End);
        if (m >= s.Length || s[m] is not ('m' or 'M') || m + 1 < s.Length && s[m + 1] is not ('.' or ',' or ';' or ')'))
        {
            return null;
        }

        int stop = m + 1 < s.Length && s[m + 1] == '.' ? m + 2 : m + 1;
        int next = Places.Skip(s, stop);
        // Behind the stop a new sentence begins, or a mark goes on.
        return next >= s.Length || !char.IsLetter(s[next]) || char.IsUpper(s[next]) || s[stop - 1] != '.' || Places.WordAt(s, next, "at") || Places.WordAt(s, next, "a") || Places.WordAt(s, next, "à") || Places.WordAt(s, next, "bei") || Places.WordAt(s, next, "then") ? (n.Min, n.Max ?? n.Min, at, stop) : null;
    }

    /// <summary>A figure that leans on the time or the oven before it: "25 to 30 more", "4 on medium", "another 20", "for ten", "turn down to 200 and bake 30".</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="at">Where the figure stands.</param>
    /// <param name="lang">Language.</param>
    /// <param name="timed">True when a time was told before.</param>
    /// <param name="temperatures">The heats of the step.</param>
    public static (double Min, double Max, int Start, int End)? Leaning(string s, int at, string lang, bool timed, List<StepTemperature> temperatures)
    {
        // Without a time or a heat before it a figure leans on "another" alone: asked first, as this is asked at every word.
        if (lang != "en" || !NumberBeginnings.May(s, at) || !timed && temperatures.Count == 0 && !More(s.AsSpan(0, at).TrimEnd()) || Numbers.Range(s, at, lang) is not { } n || n.Min > 600)
        {
            return null;
        }

        int j = Places.Skip(s, n.End);
        bool stops = j >= s.Length || s[j] is ',' or '.' or ';';
        string before = stops ? s[..at].TrimEnd() : "";
        bool another = stops && !Places.HasAny(before, "or on") && More(before) && n is { InWords: false, Min: >= 2 and <= 120 };
        bool verb = stops && n is { InWords: false, Min: >= 2 and <= 60 } && Places.Ends(before.ToLowerInvariant(), Verbs);
        if (!timed)
        {
            // "Lid off another 30." goes on from the step before; "bake 30" stands beside the oven's own figure.
            // "until it reads 54 °C in the middle, then rest 10": what is rested was hot.
            bool rested = verb && temperatures.Count > 0 && before.EndsWith("rest", StringComparison.OrdinalIgnoreCase);
            return another || rested || verb && n.Max is null && OvenBefore(s, at, temperatures) ? (n.Min, n.Max ?? n.Min, at, n.End) : null;
        }

        bool leans = Places.WordAt(s, j, "more") || Places.WordAt(s, j, "on medium") || Places.WordAt(s, j, "on high") || Places.WordAt(s, j, "on low") || Places.WordAt(s, j, "on fast")
            || verb || another || (stops && !Places.HasAny(before, "or on") && (More(before) || before.EndsWith(" for", StringComparison.Ordinal) && !Places.Ends(before[..^4].ToLowerInvariant(), Units)));
        return leans ? (n.Min, n.Max ?? n.Min, at, n.End) : null;
    }

    /// <summary>Right behind the unit of a time "for 8" counts people: "70 minutes for 8".</summary>
    private static readonly string[] Units = ["minutes", "minute", "mins", "min", "hours", "hour", "hrs", "hr"];

    // Apart, as this is asked at every word: nothing is made for the asking.
    private static bool OvenBefore(string s, int at, List<StepTemperature> temperatures) => temperatures.Exists(t => t.Of == TemperatureOf.Oven && !t.Inherited && s.IndexOf(t.Words, StringComparison.Ordinal) < at);

    /// <summary>"another 30", "for a further 30".</summary>
    private static bool More(ReadOnlySpan<char> before) => before.EndsWith(" another", StringComparison.Ordinal) || before.EndsWith(" a further", StringComparison.Ordinal);

    // "sweat 15 min, add cream, cook 10, blend 3 min"
    private static readonly string[] Verbs = ["cook", "simmer", "boil", "fry", "sweat", "roast", "bake", "rest", "blend", "steam", "poach", "knead", "braise"];

    /// <summary>True when nothing but the heat and its "fan" stands before.</summary>
    private static bool Heated(string before, StepTemperature last)
    {
        foreach (string word in (ReadOnlySpan<string>)[.. Heat.Fans, "C", "F", "°"])
        {
            before = before.EndsWith(word, StringComparison.OrdinalIgnoreCase) ? before[..^word.Length].TrimEnd() : before;
        }

        int figure = before.Length;
        while (figure > 0 && char.IsAsciiDigit(before[figure - 1]))
        {
            figure--;
        }

        return figure < before.Length && last.Words.StartsWith(before[figure..], StringComparison.Ordinal);
    }
}
