using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Where the sentence around a place begins and ends; the stop of "Min." ends none.</summary>
internal static class Sentences
{
    /// <summary>The sentence a place stands in.</summary>
    public static string Around(string s, int at)
    {
        int from = Begin(s, at);
        int to = at;
        while (to < s.Length && !Ends(s, to))
        {
            to++;
        }

        return from == 0 && to == s.Length ? s : s[from..to];
    }

    /// <summary>Where it begins.</summary>
    public static int Begin(string s, int at)
    {
        int from = at;
        while (from > 0 && !Ends(s, from - 1))
        {
            from--;
        }

        return from;
    }

    /// <summary>True for a full stop that ends a sentence.</summary>
    public static bool Stops(string s, int i)
    {
        int from = i;
        while (from > 0 && char.IsLetter(s[from - 1]))
        {
            from--;
        }

        bool shortened = i - from is > 0 and <= 4 && (TimeWords.Unit(s, from, out int end) is not null && end <= i + 1 || s.AsSpan(from, i - from) is "ca" or "approx" or "mind" or "max" or "Nr" or "env" or "aprox");
        int next = Places.Skip(s, i + 1);
        // "10 Min. kneten" goes on, "10 Min. Zugedeckt …" does not.
        return !shortened || next > i + 1 && next < s.Length && char.IsUpper(s[next]) && s.AsSpan(from, i - from) is not "ca";
    }

    /// <summary>True for a sign that ends a sentence.</summary>
    public static bool Ends(string s, int i) => s[i] is ';' or '。' or '\n' || s[i] is '.' or '!' && i + 1 < s.Length && s[i + 1] == ' ' && Stops(s, i);
}
