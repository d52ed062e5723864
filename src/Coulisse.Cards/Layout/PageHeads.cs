using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Layout;

/// <summary>The line a printer sets over every page: the first line of the card, told again beside the number of a page. What stands between the two belongs to the page too; none of it is a food or a part.</summary>
internal static class PageHeads
{
    /// <summary>How far the line stands from the number of its page.</summary>
    private const int Near = 3;
    private const string Gap = "   ";
    private static readonly HashSet<int> None = [];

    /// <summary>Which lines belong to the pages, running heads among them. The first one is the name of the dish unless it has two ends far apart ("KITCHEN MANUAL        Section 4").</summary>
    public static HashSet<int> Of(List<RawLine> lines, string lang)
    {
        HashSet<int>? running = Running(lines, lang);
        if (lines.Count < 4 || lines[0].Text is not { Length: > 5 } head || !char.IsLetter(head[0]))
        {
            return running ?? None;
        }

        HashSet<int>? found = running;
        bool again = false;
        for (int i = 1; i < lines.Count; i++)
        {
            if (lines[i].Text != head)
            {
                continue;
            }

            int page = i - 1;
            while (page > 0 && i - page <= Near && !Furniture.Page(lines[page].Text))
            {
                page--;
            }

            bool above = page > 0 && i - page <= Near;
            if (above || i + 1 < lines.Count && Furniture.Page(lines[i + 1].Text))
            {
                found ??= [];
                again = true;
                for (int k = above ? page : i; k <= i; k++)
                {
                    found.Add(k);
                }
            }
        }

        if (again && found is not null && (head.Contains(Gap, StringComparison.Ordinal) || Chapter(head)))
        {
            found.Add(0);
        }

        return found ?? None;
    }

    /// <summary>"Section 2: Cold larder", "Kapitel 3": where in a book the page stands.</summary>
    private static bool Chapter(string head) => head.IndexOf(' ') is > 3 and var end && end + 1 < head.Length && char.IsAsciiDigit(head[end + 1]) && Chapters.Contains(head[..end]);

    private static readonly HashSet<string> Chapters = new(StringComparer.OrdinalIgnoreCase) { "section", "chapter", "unit", "module", "lesson", "kapitel", "abschnitt", "lektion", "modul", "chapitre", "leçon", "unité", "capítulo", "sección", "unidad", "módulo", "lección", "tema", "capitolo", "sezione", "unità", "modulo", "lezione" };

    private static HashSet<int>? Running(List<RawLine> lines, string lang)
    {
        HashSet<int>? found = null;
        for (int i = 0; i < lines.Count; i++)
        {
            if (RunningHeads.At(lines, i, lang))
            {
                (found ??= []).Add(i);
            }
        }

        return Counted(lines, found, lang);
    }

    /// <summary>"Dispensa, 2° modulo        22" and further down the same with 23: one line over every page, and its number. Each stands where a block begins or ends; a row of a list stands among its like.</summary>
    private static HashSet<int>? Counted(List<RawLine> lines, HashSet<int>? found, string lang)
    {
        Dictionary<string, (int Line, int Number)>? seen = null;
        for (int i = 0; i < lines.Count; i++)
        {
            string s = lines[i].Text;
            int gap = char.IsAsciiDigit(s[^1]) && char.IsLetter(s[0]) ? s.LastIndexOf(Gap, StringComparison.Ordinal) : -1;
            if (gap < Shortest || s.Length - gap > LongestNumber || i > 0 && i + 1 < lines.Count && lines[i - 1].Block == lines[i].Block && lines[i + 1].Block == lines[i].Block || !int.TryParse(s.AsSpan(gap).Trim(), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int number))
            {
                continue;
            }

            string stem = s[..gap].TrimEnd();
            seen ??= [];
            if (seen.TryGetValue(stem, out (int Line, int Number) last) && number > last.Number && number - last.Number <= FarthestPages && stem.Contains(' ') && FoodIds.Match(stem, lang) is null)
            {
                found ??= [];
                found.Add(last.Line);
                found.Add(i);
            }

            seen[stem] = (i, number);
        }

        return found;
    }

    private const int Shortest = 6;
    private const int FarthestPages = 3;

    /// <summary>A number of a page, and the room before it.</summary>
    private const int LongestNumber = 80;
}
