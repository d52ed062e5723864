using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>The running head of a book or a magazine: its name at one end of the line, the number of the page at the other ("La cuisine du dimanche        p. 32", "42 | Sunday baking"). No food is counted there.</summary>
internal static class RunningHeads
{
    private const int Longest = 120;
    private const int LongestPage = 16;
    private const string Gap = "   ";
    private static readonly string[] Parting = [Gap, "\t", ", ", " | ", " · ", " • ", " — ", " – "];

    /// <summary>True for such a line where a page may begin or end: the first of the card, or one with room over and under it. In a list "Pâte brisée      p. 32" points to another page.</summary>
    public static bool At(List<RawLine> lines, int i, string lang)
    {
        bool over = i == 0 || lines[i - 1].Block != lines[i].Block;
        bool under = i + 1 < lines.Count && lines[i + 1].Block != lines[i].Block;
        if (i == 0 && lines.Count > 1 && lines[1].Text.Length < LongestPage && Sections.Of(lines[1].Text.TrimmedEnd(": "), lang) is not null)
        {
            // Right over the word for the list or the method stands the name of the dish, whatever page it is on.
            return false;
        }

        string s = lines[i].Text;
        return over && (under || i == 0 || i + 1 == lines.Count) && s.Length is > 5 and < Longest && s.AsSpan().IndexOfAnyInRange('0', '9') >= 0 && Is(s, i == 0 && under, over && under, lang);
    }

    private static bool Is(string s, bool opens, bool alone, string lang)
    {
        foreach (string sign in Parting)
        {
            int at = s.IndexOf(sign, StringComparison.Ordinal);
            int last = at < 0 ? -1 : s.LastIndexOf(sign, StringComparison.Ordinal);
            if (at > 0 && (Ends(s[..at], s[(at + sign.Length)..], sign, opens, alone, lang) || Ends(s[(last + sign.Length)..], s[..last], sign, opens, alone, lang)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A page at one end, and at the other a name without a figure, or alone in its block one that is numbered ("Section 4 – Mother sauces"). A bare figure is one only over the card and behind a bar: "Eggs    12" are counted.</summary>
    private static bool Ends(string page, string name, string sign, bool opens, bool alone, string lang)
    {
        page = page.Trim();
        name = name.Trim();
        bool named = name.Length > 3 && char.IsLetter(name[0]) && (name.AsSpan().IndexOfAnyInRange('0', '9') < 0 || alone && sign == Gap && !Looks.Amounted(Folding.Line(name), lang));
        return named && (sign == ", " ? opens && Issue(page) : page.Length is > 1 and < LongestPage && (Furniture.Page(page) || opens && Issue(page)) || opens && sign == " | " && page.Length is > 0 and < 4 && page.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0 && name.Contains(' ') && FoodIds.Match(name, lang) is null);
    }

    /// <summary>"n° 7", "No. 12", "Nr. 3": which issue it is.</summary>
    private static bool Issue(string s) =>
        s.Length is > 2 and < 9 && s[0] is 'n' or 'N' && s[1..].TrimStart('o', 'r', 'º', '°', '.', ' ') is { Length: > 0 and < 4 } number && number.Length < s.Length - 1 && number.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0;
}
