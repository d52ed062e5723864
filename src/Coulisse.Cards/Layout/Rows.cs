using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Names between the lines of one list without room around them: a block that opens with a bare name over amounts ("Reduction", "煮汁", "crab mix") may have more of them. "salt" among amounts is a food, and a food nobody knows with nothing to say for it stays one.</summary>
internal static class Rows
{
    /// <summary>A longer block is no list of one dish.</summary>
    private const int Highest = 60;

    /// <summary>True for a name in such a block.</summary>
    /// <param name="lines">The lines of the card.</param>
    /// <param name="i">Which.</param>
    /// <param name="body">Its words, without an amount.</param>
    /// <param name="amounted">True when an amount stands under it.</param>
    /// <param name="lang">The language of the card.</param>
    public static bool In(List<RawLine> lines, int i, string body, bool amounted, string lang)
    {
        int from = i;
        while (from > 0 && lines[from - 1].Block == lines[i].Block && i - from < Highest)
        {
            from--;
        }

        if (from == i || from + 1 >= i || body.Contains(',') || body.Contains('(') || Looks.Used(body, lang) || Folding.Line(lines[from].Text) is not { Length: > 0 } first || Looks.Bullet(lines[from].Text) || Looks.Amounted(first, lang) || Looks.Work(first, lang) || !Parts.Listed(lines[from + 1].Text, lang))
        {
            return false;
        }

        if (Tail(first) is { } tail && Tail(body) is not null)
        {
            // "Marinade - wed", "Pass - sat": dressed like the first
            return tail.Length > 0;
        }

        string name = body.TrimmedEnd(": ");
        return amounted && i > from + 1 && (Called(lines, i, name) || !Looks.Food(name, lang) && Under(lines, i, lang) && (lang == "ja" ? name.Length < 9 : char.IsUpper(name[0]) && Items(lines, from, i, lang)));
    }

    /// <summary>What stands behind the last dash of a name, when it is a word or two.</summary>
    private static string? Tail(string s) => s.LastIndexOf(" - ", StringComparison.Ordinal) is > 2 and var dash && s.Length - dash is > 4 and < 14 && s.AsSpan(dash).IndexOfAnyInRange('0', '9') < 0 ? s[(dash + 3)..] : null;

    /// <summary>True when a line further down begins with a word of the name: "- custard: warm the cream", "melba 110C 50 min".</summary>
    private static bool Called(List<RawLine> lines, int i, string name)
    {
        int last = name.LastIndexOf(' ') + 1;
        string word = name[last..];
        string opens = name[..Places.WordEnd(name, 0)];
        for (int k = i + 1; k < lines.Count && k < i + Highest; k++)
        {
            string line = lines[k].Block == lines[i].Block ? "" : Marks.Strip(Folding.Line(lines[k].Text));
            if (line.Length > name.Length && (Places.WordAt(line, 0, word) && word.Length > 3 || Places.WordAt(line, 0, opens) && opens.Length > 2) && Places.WordEnd(line, 0) is var end && (line[end..].TrimStart() is [':' or ',', ..] || char.IsLower(line[0]) && line.AsSpan().IndexOfAnyInRange('0', '9') > 0))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Two amounts under the name.</summary>
    private static bool Under(List<RawLine> lines, int i, string lang) => i + 2 < lines.Count && lines[i + 2].Block == lines[i].Block && Parts.Listed(lines[i + 1].Text, lang) && Parts.Listed(lines[i + 2].Text, lang);

    /// <summary>True when every line between the first name and this one carries an amount: bare foods are then not the way of this list.</summary>
    private static bool Items(List<RawLine> lines, int from, int i, string lang)
    {
        for (int k = from + 1; k < i; k++)
        {
            string body = Folding.Line(lines[k].Text);
            if (!Parts.Listed(lines[k].Text, lang) && (body.Length == 0 || char.IsUpper(body[0]) && Looks.Food(body, lang)))
            {
                return false;
            }
        }

        return true;
    }
}
