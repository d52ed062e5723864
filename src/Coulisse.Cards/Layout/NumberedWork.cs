using System.Globalization;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"1  Sweat the onions for 20 min" over "2  Add the tomatoes, simmer 90 min", parted by a blank or a tab: numbers of steps whose stop was left out, as forms and pasted tables have them. Read as they stand one is a count of something that is no food.</summary>
internal static class NumberedWork
{
    private const int Fewest = 2;

    /// <summary>The lines with a stop behind the numbers of such runs; the same lines when there is none.</summary>
    public static List<RawLine> Dotted(List<RawLine> lines, string lang)
    {
        List<RawLine>? dotted = null;
        for (int i = 0; i < lines.Count; i++)
        {
            if (Number(lines[i].Text, out _) != 1)
            {
                continue;
            }

            int end = i + 1;
            while (end < lines.Count && Number(lines[end].Text, out _) == end - i + 1)
            {
                end++;
            }

            if (end - i >= Fewest && Work(lines, i, end, lang))
            {
                dotted ??= [.. lines];
                for (int k = i; k < end; k++)
                {
                    Number(lines[k].Text, out int rest);
                    dotted[k] = lines[k] with { Text = string.Create(CultureInfo.InvariantCulture, $"{k - i + 1}. {lines[k].Text[rest..]}") };
                }
            }

            i = end - 1;
        }

        return dotted ?? lines;
    }

    /// <summary>Most lines are work, one tells a time or a heat, and none is a food or is measured.</summary>
    private static bool Work(List<RawLine> lines, int from, int end, string lang)
    {
        int works = 0;
        bool timed = false;
        for (int i = from; i < end; i++)
        {
            Number(lines[i].Text, out int at);
            string rest = Folding.Line(lines[i].Text[at..]).TrimEnd('|', ' ');
            bool told = Looks.Timed(rest, lang) || rest.AsSpan().IndexOfAny('°', '℃') > 0;
            if (rest.Length < 3 || rest.Contains('|') || FoodIds.Match(rest.IndexOf(',') is > 0 and var comma ? rest[..comma] : rest, lang) is not null || !told && Looks.Amounted(rest, lang))
            {
                return false;
            }

            timed |= told;
            works += Looks.Work(rest, lang) || Looks.Opens(rest, lang) || told && Operations.In(rest, lang).Count > 0 ? 1 : 0;
        }

        return timed && works * 2 > end - from;
    }

    /// <summary>The number at the front of a line that a blank or a tab parts from words; 0 for any other line.</summary>
    private static int Number(string s, out int rest)
    {
        rest = 0;
        while (rest < s.Length && rest < 2 && char.IsAsciiDigit(s[rest]))
        {
            rest++;
        }

        if (rest == 0 || rest + 3 > s.Length || s[rest] is not (' ' or '\t'))
        {
            return 0;
        }

        int number = int.Parse(s.AsSpan(0, rest), CultureInfo.InvariantCulture);
        while (rest < s.Length && s[rest] is ' ' or '\t')
        {
            rest++;
        }

        return rest < s.Length && char.IsLetter(s[rest]) ? number : 0;
    }
}
