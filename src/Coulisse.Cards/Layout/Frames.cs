namespace Coulisse.Cards.Layout;

/// <summary>A card drawn in a box: "+-----+" over and under, "| 50 ml  apple brandy |" between. A row with a bar inside is a table and stays one.</summary>
internal static class Frames
{
    /// <summary>The lines without the box; a stroke of it parts blocks.</summary>
    public static List<RawLine> Off(List<RawLine> lines)
    {
        int strokes = lines.Count(l => Stroke(l.Text));
        if (strokes < 2 || lines.Exists(l => Framed(l.Text) && Inner(l.Text).AsSpan().ContainsAny('|', '│', '║')))
        {
            return lines;
        }

        List<RawLine> bare = new(lines.Count);
        int shift = 0;
        foreach (RawLine line in lines)
        {
            if (Stroke(line.Text))
            {
                shift++;
                continue;
            }

            string text = Framed(line.Text) ? Inner(line.Text).Trim() : line.Text;
            if (text.Length > 0)
            {
                bare.Add(line with { Text = text, Block = line.Block + shift });
            }
        }

        return bare;
    }

    private static bool Stroke(string s) => s.Length > 4 && s[0] is '+' or '┌' or '└' or '├' or '╔' or '╚' or '╠' && s[^1] is '+' or '┐' or '┘' or '┤' or '╗' or '╝' or '╣' && s.AsSpan(1, s.Length - 2).Trim("-=─═+┬┴┼").IsEmpty;

    private static bool Framed(string s) => s.Length > 1 && s[0] is '|' or '│' or '║' && s[^1] == s[0];

    private static string Inner(string s) => s[1..^1];
}
