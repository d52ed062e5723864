using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Simmer 20 min or heat in the oven 40 min": one or the other. The first way is read, the other is kept as written.</summary>
internal static class OtherWay
{
    private static readonly string[] Ors = ["or", "ou", "oder", "o", "oppure", "o bien", "ou bien"];
    private static readonly Beginnings FirstOfOrs = new(Ors);
    private static readonly string[] Same = ["so", "more", "less", "until", "till", "longer", "up", "better", "overnight", "plus", "bis", "mehr", "länger", "más", "hasta", "più", "fino", "jusqu'à"];

    /// <summary>Where the other way begins and ends; null when there is none.</summary>
    /// <param name="s">The step.</param>
    /// <param name="lang">Language.</param>
    public static (int From, int Word, int To)? In(string s, string lang)
    {
        if (lang == "ja")
        {
            return null;
        }

        if (ColdStates.In(s, lang) is { } state)
        {
            return state;
        }

        if (s.IndexOf('/') is var bar and > 0 && Places.Skip(s, bar + 1) is var pot && (Places.WordAt(s, pot, "high") || Places.WordAt(s, pot, "low")) && Clock.Tells(s[..bar], Sentences.Begin(s, bar), lang) && End(s, pot) is var last && Clock.Tells(s[..last], pot, lang))
        {
            // "on high 4 hrs / low 8 hrs"
            return (bar, pot, last);
        }

        if (BracketWays.In(s, lang) is { } bracket)
        {
            return bracket;
        }

        if (!FirstOfOrs.MayIn(s))
        {
            return OtherCuts.In(s, lang);
        }

        foreach (string or in Ors)
        {
            for (int at = Places.FindWord(s, or); at > 0; at = Places.FindWord(s, or, at + 1))
            {
                int word = Places.Skip(s, at + or.Length);
                if (word >= s.Length || !char.IsLetter(s[word]) && !char.IsAsciiDigit(s[word]) || Array.Exists(Same, w => Places.WordAt(s, word, w)))
                {
                    continue;
                }

                int to = End(s, word);
                int sentence = Sentences.Begin(s, at);
                // A figure right behind is another end of the same time ("20 or 25 min"), unless it is in brackets with its own vessel.
                bool another = char.IsLetter(s[word]) || s[at - 1] == '(' && Places.HasAny(s[word..to], "in", "im", "en", "dans", "on") || Own(s, at, word, lang) || HeatWays.Other(s, at, word, lang);
                if (another && Clock.Tells(s[..at], sentence, lang) && (Clock.Tells(s[..to], word, lang) || Setting(s, word)) && !Storing.Speaks(s, at))
                {
                    return (at, word, to);
                }
            }
        }

        return OtherCuts.In(s, lang);
    }

    /// <summary>"on low for 8 hours or high for 4": the other setting of the same pot with a bare figure, which is of the same unit.</summary>
    private static bool Setting(string s, int word)
    {
        word = Places.WordAt(s, word, "on") ? Places.Skip(s, word + 2) : word;
        int end = Places.WordAt(s, word, "high") ? word + 4 : Places.WordAt(s, word, "low") ? word + 3 : -1;
        int next = end < 0 ? -1 : Places.Skip(s, end);
        return next > 0 && Places.WordAt(s, next, "for") && Places.Skip(s, next + 3) is var figure && figure < s.Length && char.IsAsciiDigit(s[figure]);
    }

    /// <summary>"10 min, or 6 min in a stand mixer", "2 h (2 cm thick) or 3 h (4 cm)": a figure that is a way of its own, by its vessel or its size.</summary>
    private static bool Own(string s, int at, int word, string lang)
    {
        char last = s.AsSpan(0, at).TrimEnd() is { Length: > 0 } t ? t[^1] : ' ';
        bool hand = Places.Ends(s[Math.Max(0, at - 12)..at].TrimEnd(), "by hand", "von Hand", "à la main", "a mano");
        if (!hand && last is not (',' or ')') || !char.IsAsciiDigit(s[word]) || Clock.At(s, word, lang) is not { } time)
        {
            return false;
        }

        int behind = Places.Skip(s, time.End);
        return last == ')' ? behind < s.Length && s[behind] == '(' : Array.Exists(Vessels, v => Places.WordAt(s, behind, v));
    }

    private static readonly string[] Vessels = ["in a", "in the", "by", "with a", "im", "in der", "in einem", "mit der", "von Hand", "au", "à la", "dans", "en", "con", "a mano", "in", "nella", "nel"];

    /// <summary>End of the clause of the other way: a full stop, a semicolon, its bracket, or what is done next.</summary>
    private static int End(string s, int from)
    {
        int depth = 0;
        for (int i = from; i < s.Length; i++)
        {
            if (s[i] == ')' && --depth < 0 || s[i] == ';' || s[i] == '.' && (i + 1 == s.Length || s[i + 1] == ' ' && Sentences.Stops(s, i)) || s[i] == ',' && Places.Skip(s, i + 1) is var next && (Places.WordAt(s, next, "then") || Places.WordAt(s, next, "and") || Places.WordAt(s, next, "puis") || Places.WordAt(s, next, "dann") || Places.WordAt(s, next, "luego") || Places.WordAt(s, next, "poi")))
            {
                return i;
            }

            depth += s[i] == '(' ? 1 : 0;
        }

        return s.Length;
    }
}
