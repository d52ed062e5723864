using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"From frozen: 25 min. From chilled: 15 min.": a time for each state a food comes in, of which one is cooked and which do not add up. The first is read, the other is kept as the other way.</summary>
internal static class ColdStates
{
    private static readonly string[] Frozen = ["from frozen", "if frozen", "frozen:", "depuis surgelé", "si surgelé", "surgelé :", "surgelé:", "gefroren:", "tiefgekühlt:", "aus dem Tiefkühler:", "congelado:", "si está congelado", "da congelato", "da surgelato", "congelato:"];
    private static readonly string[] Others = ["from chilled", "if chilled", "chilled:", "from fresh", "if fresh", "fresh:", "from defrosted", "if defrosted", "defrosted:", "from thawed", "if thawed", "thawed:", "from raw", "si frais", "frais :", "frais:", "décongelé :", "décongelé:", "frisch:", "gekühlt:", "aufgetaut:", "fresco:", "descongelado:", "da fresco", "fresco:", "scongelato:"];
    private static readonly Beginnings First = new(Frozen);

    /// <summary>Where the other way begins and ends; null when there is none.</summary>
    public static (int From, int Word, int To)? In(string s, string lang)
    {
        if (lang == "ja" || !First.MayIn(s))
        {
            return null;
        }

        int frozen = Find(s, Frozen, 0);
        int other = frozen < 0 ? -1 : Find(s, Others, 0);
        if (other < 0)
        {
            return null;
        }

        if (Behind(s, Math.Min(frozen, other), Math.Max(frozen, other), lang) is { } behind)
        {
            return behind;
        }

        int one = Math.Min(frozen, other);
        int two = Math.Max(frozen, other);
        int to = two;
        while (to < s.Length && !Sentences.Ends(s, to))
        {
            to++;
        }

        return Clock.Tells(s[..two], one, lang) && Clock.Tells(s[..to], two, lang) ? (two, two, to) : null;
    }

    /// <summary>"20 mins if chilled, 35 mins if frozen": the time stands before its state.</summary>
    private static (int From, int Word, int To)? Behind(string s, int one, int two, string lang)
    {
        int begin = Sentences.Begin(s, one);
        int to = two;
        while (to < s.Length && !Sentences.Ends(s, to) && s[to] is not (',' or ')'))
        {
            to++;
        }

        if (Sentences.Begin(s, two) != begin || !Clock.Tells(s[..one], begin, lang) || Clock.Tells(s[..to], two, lang))
        {
            return null;
        }

        int figure = one;
        while (figure < two && !(char.IsAsciiDigit(s[figure]) && Clock.At(s, figure, lang) is not null))
        {
            figure++;
        }

        return figure < two ? (figure, figure, to) : null;
    }

    private static int Find(string s, string[] words, int from)
    {
        foreach (string w in words)
        {
            int at = s.IndexOf(w, from, StringComparison.OrdinalIgnoreCase);
            if (at >= 0 && (at == 0 || !char.IsLetter(s[at - 1])) && (w[^1] == ':' || at + w.Length == s.Length || !char.IsLetter(s[at + w.Length])))
            {
                return at;
            }
        }

        return -1;
    }
}
