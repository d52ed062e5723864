using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"20 min (fan oven: 17 min)", "35 min (mini tins 18 min)", "2 h (30 min if pre-soaked)": the same work in another oven, size or state, in a bracket right behind its time. "30 min (turn after 15 min)" is no other way.</summary>
internal static class BracketWays
{
    private const int Longest = 34;
    private static readonly string[] Labels = ["fan", "fan oven", "convection", "mini", "minis", "small", "smaller", "large", "larger", "individual", "pressure cooker", "microwave", "Umluft", "Heißluft", "kleine", "große", "chaleur tournante", "four ventilé", "petits", "petites", "grands", "individuels", "con ventilador", "pequeños", "pequeñas", "grandes", "ventilato", "forno ventilato", "piccoli", "piccole", "grandi"];
    private static readonly string[] Ifs = ["if", "when", "si", "wenn", "falls", "se"];
    private static readonly Beginnings First = new([.. Labels, .. Ifs]);

    /// <summary>Where such a bracket's words begin and end; null where none stands.</summary>
    /// <param name="s">The step.</param>
    /// <param name="lang">Language.</param>
    public static (int From, int Word, int To)? In(string s, string lang)
    {
        int open = lang == "ja" ? -1 : s.IndexOf('(');
        for (int guard = 0; open > 3 && guard < 4; guard++, open = s.IndexOf('(', open + 1))
        {
            int close = s.IndexOf(')', open);
            if (close < 0)
            {
                return null;
            }

            if (close - open <= Longest && Other(s, open + 1, close, lang) && Behind(s, open, lang))
            {
                return (open, open + 1, close);
            }
        }

        return null;
    }

    private static bool Other(string s, int from, int close, string lang)
    {
        if (Clock.At(s, from, lang) is { } time)
        {
            int next = Places.Skip(s, time.End);
            return Array.Exists(Ifs, w => Places.WordAt(s, next, w));
        }

        if (!First.May(s, from) || !Array.Exists(Labels, w => Places.WordAt(s, from, w)))
        {
            return false;
        }

        int figure = s.AsSpan(from, close - from).IndexOfAnyInRange('0', '9');
        return figure > 0 && Clock.At(s, from + figure, lang) is { } told && Places.Skip(s, told.End) >= close;
    }

    /// <summary>True where a time ends right before the bracket.</summary>
    private static bool Behind(string s, int open, string lang)
    {
        int figure = open - 1;
        while (figure > 0 && open - figure < 14 && !char.IsAsciiDigit(s[figure]))
        {
            figure--;
        }

        while (figure > 0 && char.IsAsciiDigit(s[figure - 1]))
        {
            figure--;
        }

        return char.IsAsciiDigit(s[figure]) && Clock.At(s, figure, lang) is { } time && Places.Skip(s, time.End) >= open;
    }
}
