namespace Coulisse.Cards.Layout;

/// <summary>"II.  Gnocchi" over "a. Floury potatoes, 1 kg": an outline with Roman numbers for the parts and letters for the lines.</summary>
internal static class Outline
{
    private static readonly string[] Romans = ["I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII"];

    /// <summary>The outline as headings with their lists; the lines as they were where they are none.</summary>
    public static List<RawLine> Off(List<RawLine> lines, string lang)
    {
        int parts = 0;
        for (int i = 0; i + 1 < lines.Count; i++)
        {
            parts += Roman(lines[i].Text, parts + 1) > 0 && Letter(lines[i + 1].Text, 0) > 0 ? 1 : 0;
        }

        if (parts < 2)
        {
            return lines;
        }

        List<RawLine> plain = new(lines.Count);
        int part = 0;
        int order = 0;
        bool method = false;
        foreach (RawLine line in lines)
        {
            if (Roman(line.Text, part + 1) is var head and > 0)
            {
                part++;
                order = 0;
                string name = line.Text[head..].Trim();
                method = Sections.Of(name, lang) == "method";
                plain.Add(line with { Text = "## " + name });
            }
            else if (part > 0 && Letter(line.Text, order) is var item and > 0)
            {
                order++;
                string body = line.Text[item..].Trim();
                plain.Add(line with { Text = method || Looks.Work(body, lang) && !Looks.Amounted(body, lang) ? System.FormattableString.Invariant($"{order}. {body}") : "- " + body });
            }
            else
            {
                plain.Add(line);
            }
        }

        return plain;
    }

    /// <summary>End of the Roman number of that part, with its stop; 0 when another or none stands there.</summary>
    private static int Roman(string s, int part) =>
        part <= Romans.Length && s.StartsWith(Romans[part - 1], StringComparison.Ordinal) && Romans[part - 1].Length is var end && end + 2 < s.Length && s[end] is '.' or ')' && s[end + 1] == ' ' ? end + 1 : 0;

    /// <summary>End of the letter of that line, with its stop; 0 when another or none stands there.</summary>
    private static int Letter(string s, int order) => s.Length > 3 && s[0] == 'a' + order && s[1] is '.' or ')' && s[2] == ' ' ? 2 : 0;
}
