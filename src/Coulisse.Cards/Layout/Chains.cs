using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"shallot 80g + butter 50g → sweat 6 min": a job told as a chain of arrows, with the amounts inside. The amounts are items, the whole line is the step.</summary>
internal static class Chains
{
    private const int Fewest = 3;
    private const int Longest = 300;
    private static readonly string[] Links = ["→", "➔", "->", "=>", " + "];

    /// <summary>The lines with their chains told as items and steps; as they were where fewer than three lines hold an arrow.</summary>
    public static List<RawLine> Cut(List<RawLine> lines, string lang)
    {
        if (lines.Count(l => Chained(l.Text)) < Fewest || !lines.Exists(l => Chained(l.Text) && NoteHeats.Weighs(Folding.Line(l.Text), lang)) && NoteCards.Of(lines, lang) is not null)
        {
            return lines;
        }

        List<RawLine> cut = new(lines.Count * 2);
        int step = 0;
        foreach (RawLine line in lines)
        {
            if (!Chained(line.Text))
            {
                cut.Add(line);
                continue;
            }

            foreach (string piece in line.Text.Split(Links, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(p => p.TrimStart('+', ' ')))
            {
                int colon = piece.IndexOf(": ", StringComparison.Ordinal);
                string food = Folding.Line(colon > 0 ? piece[(colon + 2)..] : piece).Trim().TrimStart('+').Trim();
                if (food.Length is > 3 and < 60 && Looks.Amounted(food, lang) && !Looks.Timed(food, lang) && !Looks.Work(food, lang))
                {
                    cut.Add(line with { Text = "- " + food });
                }
            }

            cut.Add(line with { Text = System.FormattableString.Invariant($"{++step}. {line.Text.TrimStart('→', '➔', '>', '-', '=', '+', ' ')}") });
        }

        return cut;
    }

    private static bool Chained(string s) => s.Length is > 6 and < Longest && (s.Contains('→') || s.Contains('➔') || s.Contains(" -> ", StringComparison.Ordinal) || s.Contains(" => ", StringComparison.Ordinal));
}
