using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A list without any amount and without the word over it: under the title a block of short lines, nearly all of them foods everybody knows, and under that the work. Left as remarks its foods, and an allergen with them, would be lost.</summary>
internal static class BareLists
{
    private const int Fewest = 3;
    private const int Longest = 40;
    private const int MostLines = 40;

    /// <summary>Where such a list that begins at a line ends; the line itself for any other.</summary>
    public static int End(List<RawLine> lines, int i, string lang)
    {
        if (lines[i - 1].Block == lines[i].Block || i > MostLines)
        {
            return i;
        }

        int end = i;
        int known = 0;
        while (end < lines.Count && lines[end].Block == lines[i].Block)
        {
            string s = Folding.Line(lines[end].Text);
            if (end - i > MostLines || s.Length is < 2 or > Longest || s[^1] is '.' or ':' or '!' or '?' or '。' || !Parts.Numberless(s) || Looks.Bullet(lines[end].Text) || !char.IsLetter(s[0]))
            {
                return i;
            }

            known += Array.TrueForAll(s.Split([',', '、', '/', '&'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries), f => FoodIds.Match(f, lang) is not null) ? 1 : 0;
            end++;
        }

        int count = end - i;
        return count >= Fewest && known * 4 >= count * 3 && end < lines.Count && Folding.Line(lines[end].Text) is { Length: > 5 } work && (Looks.Work(work, lang) || Looks.Opens(Marks.Strip(work), lang)) ? end : i;
    }
}
