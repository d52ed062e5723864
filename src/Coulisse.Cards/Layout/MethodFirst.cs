using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A method that stands over its list, as old family cards have it: sentences that open with work, one under the other, on a card that has no other step. Left as remarks the whole work would be lost. One such sentence, or a head note, stays a remark.</summary>
internal static class MethodFirst
{
    private const int Fewest = 2;

    /// <summary>The pieces with such sentences as steps; the same list where there are none.</summary>
    public static List<Piece> Read(List<Piece> pieces, string lang)
    {
        int list = pieces.Count > ToldParts.MostPieces ? -1 : pieces.FindIndex(p => p.Kind == PieceKind.Item);
        if (list < Fewest || pieces.Exists(p => p.Kind == PieceKind.Step))
        {
            return pieces;
        }

        List<int> work = [];
        for (int i = 0; i < list; i++)
        {
            if (pieces[i].Kind == PieceKind.Heading && pieces[i].Level > 1 && work.Count > 0 && Sections.Of(pieces[i].Text, lang) != "ingredients")
            {
                // A part began: what stands over it is no method of the list under it.
                return pieces;
            }

            if (pieces[i].Kind == PieceKind.Paragraph && Orders(pieces[i].Text, lang))
            {
                work.Add(i);
            }
        }

        if (work.Count < Fewest)
        {
            return pieces;
        }

        int last = work[^1];
        while (last + 1 < list && pieces[last + 1] is { Kind: PieceKind.Paragraph } next && next.Span.Line == pieces[last].Span.Line + 1 && Marks.Strip(Folding.Line(next.Text)) is { Length: > 10 } body && body[^1] is '.' or '。' && Looks.Work(body, lang) && !Looks.Statement(body, lang))
        {
            // "Spoon into 6 ramekins and chill for 2 hours." right under an order
            last++;
        }

        // From the first order to the last every sentence is of the method ("The bay comes out after that.").
        for (int i = work[0]; i <= last; i++)
        {
            pieces[i] = pieces[i].Kind == PieceKind.Paragraph && !Looks.Statement(Folding.Line(pieces[i].Text), lang) ? pieces[i] with { Kind = PieceKind.Step } : pieces[i];
        }

        return pieces;
    }

    /// <summary>A sentence that opens with a verb of work and ends.</summary>
    private static bool Orders(string text, string lang)
    {
        string body = Marks.Strip(Folding.Line(text));
        return body.Length > 15 && body[^1] is '.' or '。' or '!' && !Looks.Statement(body, lang) && Looks.Work(body, lang) && (lang == "ja" || Looks.Opens(body, lang) || lang == "de" && Closes(body.TrimEnd('.', '!', ' '), lang));
    }

    /// <summary>"Bei 180 °C 45 Minuten backen": a German order ends with its verb; "… am Sonntag Krabben gekocht" tells what somebody did.</summary>
    private static bool Closes(string body, string lang) =>
        body.LastIndexOf(' ') is > 0 and var last && body.EndsWith("en", StringComparison.Ordinal) && !body.AsSpan(last + 1).StartsWith("ge") && char.IsLower(body[last + 1]) && Operations.In(body[(last + 1)..], lang).Count > 0;
}
