using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"SAUCE – 1 litre", "Sponge ........ 820 g", "1/ Crème anglaise – 1 kg" over a list: the name of a part and what it makes. Read as an item it would be weighed on top of all it is made of. "Butter – 250 g" over more of its kind is the first item.</summary>
internal static class TotalHeads
{
    private const int Longest = 70;
    private const int LongestName = 40;
    private const double Slack = 0.02;
    private const int MostLines = 40;

    /// <summary>The name with its total behind a dash; null for any other line.</summary>
    public static string? Of(List<RawLine> lines, int i, string lang)
    {
        string s = lines[i].Text;
        if (i == 0 || i + 1 >= lines.Count || s.Length is < 6 or > Longest || lines[i + 1].Block != lines[i].Block || s.AsSpan().IndexOfAnyInRange('0', '9') < 0 || Looks.Bullet(s))
        {
            return null;
        }

        bool deeper = lines[i + 1].Indent > lines[i].Indent;
        int number = Marks.ListNumber(s, 0);
        if (!deeper && lines[i - 1].Block == lines[i].Block || Parted(Folding.Line(s.AsSpan(number))) is not ({ Length: > 1 and <= LongestName } name, { Length: > 0 } told) || !Parts.Numberless(name) || !Looks.Heading(name))
        {
            return null;
        }

        bool count = YieldWords.PiecesOf(told, lang) is not null;
        if (!count && !(Amounts.At(told, 0, lang) is { Unit.Kind: "mass" or "volume", Number: { Max: null, InWords: false } } m && m.End >= told.Length) || !Parts.Listed(lines[i + 1].Text, lang))
        {
            return null;
        }

        bool food = FoodIds.Match(name, lang) is not null;
        bool capitals = Looks.Capitals(name) && !Looks.Capitals(Folding.Line(lines[i + 1].Text)) && !food;
        bool numbered = number > 0 && Marks.ListNumber(lines[i + 1].Text, 0) == 0;
        bool sure = deeper || capitals || numbered || !food && (Parts.Called(name, lang) || Sums(lines, i, told, lang));
        return sure ? $"{name} - {told}" : null;
    }

    /// <summary>The words before the last dash or the dots, and those behind it.</summary>
    private static (string Name, string Told)? Parted(string s)
    {
        bool dots = Leaders.In(s);
        string body = dots ? Leaders.Plain(s) : s;
        string sign = dots ? ": " : " - ";
        int at = body.LastIndexOf(sign, StringComparison.Ordinal);
        return at > 1 ? (body[..at].Trim(), body[(at + sign.Length)..].Trim()) : null;
    }

    /// <summary>True when the lines under the name weigh what stands beside it.</summary>
    private static bool Sums(List<RawLine> lines, int i, string told, string lang)
    {
        if (Amounts.At(told, 0, lang) is not { Unit: { Kind: "mass", Base: { } b } } whole)
        {
            return false;
        }

        double sum = 0;
        int items = 0;
        for (int k = i + 1; k < lines.Count && k - i < MostLines && lines[k].Block == lines[i].Block; k++)
        {
            IngredientLine line = LineReader.Read(lines[k].Text, lang, lines[k].Span, []);
            if (line.Foods is not [{ Grams: { } grams, GramsMax: null }])
            {
                return false;
            }

            sum += grams;
            items++;
        }

        return items > 1 && Math.Abs(sum - (whole.Number.Min * b)) <= sum * Slack;
    }
}
