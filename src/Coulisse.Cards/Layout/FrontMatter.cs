using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Labels at the head of a text between two rules: title, yield and others.</summary>
internal static class FrontMatter
{
    private const int MostLines = 200;

    /// <summary>Reads them; gives the place of the line behind, 0 when the rule opens no such head.</summary>
    public static int Read(List<RawLine> lines, Action<Piece> add)
    {
        int end = 1;
        while (end < lines.Count && end < MostLines && lines[end].Text != "---")
        {
            end++;
        }

        if (end >= lines.Count || lines[end].Text != "---" || !lines[1].Text.Contains(':'))
        {
            return 0;
        }

        for (int i = 1; i < end; i++)
        {
            string s = lines[i].Text;
            int colon = s.IndexOf(':');
            string key = colon > 0 ? s[..colon].Trim().ToLowerInvariant() : "";
            string value = colon > 0 ? s[(colon + 1)..].Trimmed(" \"\'") : "";
            if (key is "title" or "name" or "titre" or "titel" or "título" or "titolo" && value.Length > 0)
            {
                add(new Piece(PieceKind.Heading, value, lines[i].Span, 1));
            }
            else if (key is "yield" or "yields" or "makes" or "servings" or "serves" && value.Length > 0)
            {
                add(new Piece(PieceKind.Paragraph, (key[0] == 's' ? "Serves " : "Makes ") + value, lines[i].Span));
            }
            else
            {
                add(new Piece(PieceKind.Paragraph, s, lines[i].Span));
            }
        }

        return end + 1;
    }
}
