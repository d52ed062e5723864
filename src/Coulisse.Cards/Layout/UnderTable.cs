using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"Hauptteig 8 Minuten kneten" over "Teigruhe 30 Minuten" behind a table of foods: the table ended the list, so short lines of which most tell a time, a heat or work are the method, though no heading, number or stop says so. Left as remarks the whole work would be lost.</summary>
internal static class UnderTable
{
    private const int Longest = 160;
    private const int LongestHead = 40;
    private const int FewestTold = 2;

    /// <summary>No method told so is longer.</summary>
    private const int MostLines = 60;

    /// <summary>True for a card that has a heading of its method: what stands right behind its table is a remark.</summary>
    public static bool Headed(List<RawLine> lines, string lang) =>
        lines.Exists(l => l.Text.Length < LongestHead && Folding.Line(l.Text.TrimStart('#', ' ')).Trimmed("*: ") is { Length: > 2 } head && Sections.Of(head, lang) == "method");

    /// <summary>Where the block of work that begins at a line ends; the line itself when it is none.</summary>
    public static int End(List<RawLine> lines, int from, string lang)
    {
        int told = 0;
        int work = 0;
        int counted = 0;
        int i = from;
        for (; i < lines.Count && lines[i].Block == lines[from].Block; i++)
        {
            string s = lines[i].Text;
            string body = Folding.Line(s);
            if (i - from > MostLines || s.Contains('|') || body.Length == 0 || body.Length > Longest || s[0] is '#' or '*' or '(' or '※' || body[^1] is '?' or ':' || Looks.Bullet(s) || Marks.ListNumber(s, 0) > 0)
            {
                return from;
            }

            if (Looks.Statement(body, lang))
            {
                continue;
            }

            List<(int At, string Id)> verbs = Operations.In(body, lang);
            bool heated = body.AsSpan().IndexOfAny('°', '℃') > 0;
            bool lasts = Looks.Timed(body, lang);
            bool timed = lasts || heated;
            if (!timed && verbs.Count == 0 && (Looks.Amounted(body, lang) || Looks.Food(body, lang) || Looks.Used(body, lang)) || Lexicon.Longest("total", body, 0, 2, lang, out _) is not null || Looks.Amounted(body, lang) && Amounts.At(body, 0, lang) is { Unit.Kind: "mass" or "volume" } && !timed)
            {
                // The list goes on under the table.
                return from;
            }

            counted++;
            // "Cuisson à blanc 20 min 170 °C": a stage with its time and its heat, whatever it is called.
            work += verbs.Count > 0 || heated && lasts ? 1 : 0;
            told += timed || verbs.Count > 0 ? 1 : 0;
        }

        // A line alone has to be work and to tell its time: "Photo taken 5 minutes after baking" is none of a card of many.
        bool alone = counted == 1 && work == 1 && Work(lines[from].Text, lang);
        return alone || counted > 1 && work > 0 && told >= FewestTold && told * 2 > counted ? i : from;
    }

    private static bool Work(string s, string lang) => Folding.Line(s) is var body && Looks.Timed(body, lang) && (Looks.Opens(body, lang) || Looks.Work(body, lang));
}
