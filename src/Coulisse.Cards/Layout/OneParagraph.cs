using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A whole method told in one paragraph: each of its sentences is a step, as each has its own time and its own pan. A numbered step, a line among other steps, the paragraph of one part beside another's, and two sentences stay what they are.</summary>
internal static class OneParagraph
{
    private const int Fewest = 3;
    private const int Short = 60;

    /// <summary>The pieces with that paragraph cut; the same list for any other card.</summary>
    public static List<Piece> Cut(List<Piece> pieces, string lang)
    {
        int only = pieces.Count > ToldParts.MostPieces ? -1 : Only(pieces, lang);
        List<string> sentences = only < 0 ? [] : Sentences(Folding.Line(pieces[only].Text), lang);
        if (sentences.Count == 0)
        {
            return pieces;
        }

        Piece p = pieces[only];
        pieces.RemoveAt(only);
        pieces.InsertRange(only, sentences.Select(s => p with { Text = s, Kind = Looks.Statement(s, lang) && !Looks.Work(s, lang) ? PieceKind.Paragraph : PieceKind.Step }));
        return pieces;
    }

    /// <summary>The only step of the card, when nothing marks it as one of a row; -1 for none. "Keeps 2 days." is no work.</summary>
    private static int Only(List<Piece> pieces, string lang)
    {
        int only = -1;
        for (int i = 0; i < pieces.Count; i++)
        {
            string text = pieces[i].Text;
            if (pieces[i].Kind != PieceKind.Step || text.Length < Short && Operations.In(text, lang).Count == 0)
            {
                continue;
            }

            if (only >= 0 || Looks.Bullet(text) || Marks.ListNumber(text, 0) > 0)
            {
                return -1;
            }

            only = i;
        }

        return only;
    }

    /// <summary>Its sentences, when they are steps of their own: three and more of them, two of which tell a time.</summary>
    private static List<string> Sentences(string body, string lang)
    {
        List<string> all = MethodProse.Sentences(body);
        return all.Count >= Fewest && all.Count(s => Timed(s, lang)) > 1 ? all : [];
    }

    private static bool Timed(string s, string lang) => lang == "ja" ? s.AsSpan().ContainsAny("分秒") || s.Contains("時間", StringComparison.Ordinal) : Clock.Tells(s, 0, lang) || Places.HasAny(s, "overnight");
}
