using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Note: for 20 people make 2.5 x", "Pour 40 personnes, doubler la recette": how to make more of it. The guests named there are not those the card feeds. "Serves 8, double for 16" tells its own first.</summary>
internal static class ScaledNotes
{
    private const int Longest = 160;
    private const int Near = 26;
    private static readonly string[] Labels = ["note", "notes", "n.b.", "nb", "n.b", "tip", "hint", "remarque", "astuce", "hinweis", "anmerkung", "tipp", "notiz", "nota", "consejo", "truco", "consiglio", "注意", "注", "メモ", "備考", "ポイント", "※"];
    private static readonly string[] Fors = ["for", "pour", "für", "para", "per"];
    private static readonly WordList Multiples = new("double", "triple", "halve", "multiply", "times", "twice", "x", "doubler", "doublez", "tripler", "multiplier", "multipliez", "fois", "verdoppeln", "verdreifachen", "halbieren", "multiplizieren", "fach", "doppelte", "mal", "doblar", "duplicar", "triplicar", "multiplicar", "veces", "raddoppiare", "raddoppia", "triplicare", "moltiplicare", "moltiplica", "volte");
    private static readonly Beginnings First = new([.. Labels, .. Fors]);

    /// <summary>True for such a sentence.</summary>
    public static bool Is(string s, string lang)
    {
        if (s.Length is < 8 or > Longest || !First.May(s, 0))
        {
            return false;
        }

        int from = Label(s);
        bool labelled = from > 0;
        int figure = Guests(s, from, lang);
        if (figure < 0 || Numbers.Range(s, figure, lang) is not { InWords: false } n)
        {
            return false;
        }

        int noun = Places.Skip(s, n.End);
        int end = lang == "ja" ? Person(s, noun) : Places.WordEnd(s, noun);
        if (end <= noun || end >= s.Length || lang != "ja" && !YieldWords.Guest(s[noun..end]))
        {
            return false;
        }

        return Multiplied(s[end..]) || labelled && lang != "ja" && s[end..].Trimmed(" .,:").Count(' ') > 1 && char.IsLetter(s[Places.Skip(s, end)]);
    }

    /// <summary>True where words of a multiple stand near, not in brackets, and no other guests behind them.</summary>
    private static bool Multiplied(string rest)
    {
        string near = rest.Length > Near ? rest[..Near] : rest;
        int open = near.IndexOf('(');
        near = open >= 0 ? near[..open] : near;
        bool told = Multiples.In(near) || near.Contains('倍', StringComparison.Ordinal) || near.Contains('×', StringComparison.Ordinal) || Crossed(near);
        return told && !Array.Exists(Fors, f => Places.FindWord(rest, f) is >= 0 and var again && rest.AsSpan(again).IndexOfAnyInRange('0', '9') is >= 0 and < 14);
    }

    /// <summary>"2.5x", "x2.5".</summary>
    private static bool Crossed(string s)
    {
        for (int i = 1; i < s.Length; i++)
        {
            if (s[i] is 'x' or 'X' && (char.IsAsciiDigit(s[i - 1]) || s[i - 1] == ' ' && i + 1 < s.Length && char.IsAsciiDigit(s[i + 1])))
            {
                return true;
            }
        }

        return false;
    }

    private static int Label(string s)
    {
        foreach (string w in Labels)
        {
            if (s.StartsWith(w, StringComparison.OrdinalIgnoreCase) && Places.Skip(s, w.Length) is var sign && sign < s.Length && (s[sign] is ':' or '-' or '.' || w == "※" || w is "n.b." or "nb"))
            {
                return Places.Skip(s, s[sign] is ':' or '-' or '.' ? sign + 1 : sign);
            }
        }

        return 0;
    }

    /// <summary>Where the count of guests stands behind "for"; -1 where the sentence opens otherwise.</summary>
    private static int Guests(string s, int from, string lang)
    {
        if (lang == "ja")
        {
            return from < s.Length && char.IsAsciiDigit(s[from]) ? from : -1;
        }

        foreach (string w in Fors)
        {
            if (Places.WordAt(s, from, w))
            {
                return Places.Skip(s, from + w.Length) is var at && at < s.Length && char.IsAsciiDigit(s[at]) ? at : -1;
            }
        }

        return -1;
    }

    private static int Person(string s, int at) => at + 1 < s.Length && s[at] == '人' ? at + (s[at + 1] is '分' or '前' ? 2 : 1) : at;
}
