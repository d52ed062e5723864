using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A recipe told in the messages of a chat, some of them a list and some of them sentences: "then 12g salt and let them sit 30 min", "per la salsa 300 g di tonno, 30 g di capperi". Where one message was read as a list, the foods and the work of the others would be lost.</summary>
internal static class ChatTold
{
    private const int MostPieces = 400;
    private static readonly string[] Thens = ["then", "and then", "next", "next day", "after that", "puis", "ensuite", "et puis", "après", "dann", "danach", "anschließend", "luego", "después", "y luego", "entonces", "poi", "e poi", "dopo", "quindi"];
    private static readonly Beginnings FirstOfThens = new(Thens);

    /// <summary>The pieces with such messages read as they are on a card that is all sentences; the same list where there are none.</summary>
    public static List<Piece> Read(List<Piece> pieces, string lang)
    {
        if (lang == "ja" || pieces.Count > MostPieces || !pieces.Exists(p => p.Kind == PieceKind.Item) || pieces.Exists(p => p is { Kind: PieceKind.Heading, Level: > 1 }))
        {
            return pieces;
        }

        List<Piece> result = new(pieces.Count + 8);
        foreach (Piece p in pieces)
        {
            switch (p.Kind)
            {
                case PieceKind.Item when Looks.Bullet(p.Text):
                    result.Add(p);
                    break;
                case PieceKind.Item when Amounts.At(p.Text, 0, lang) is null:
                    if (Lasts(p.Text, lang) || RunningText.NamedBy(p.Text) is not null && Prose.Foods(p.Text, lang).Count > 0)
                    {
                        Prose.Cut(p with { Kind = PieceKind.Paragraph }, lang, result);
                    }
                    else
                    {
                        result.Add(p);
                    }

                    break;
                case PieceKind.Item when p.Text.LastIndexOf(", ", StringComparison.Ordinal) is > 2 and var comma && Lasts(p.Text[(comma + 2)..], lang):
                    // "1 cipolla, e lo lascio marinare tutta la notte"
                    result.Add(p with { Text = p.Text[..comma] });
                    result.Add(p with { Kind = PieceKind.Step, Text = p.Text[(comma + 2)..] });
                    break;
                case PieceKind.Step when Statements.Sentences(p.Text).Any(s => ToldYields.In(s, default, lang) is not null):
                    // "ci mangiamo in 10. Sta 3 giorni in frigo"
                    result.AddRange(Statements.Sentences(p.Text).Select(s => p with { Kind = Looks.Work(s, lang) ? PieceKind.Step : PieceKind.Paragraph, Text = s }));
                    break;
                case PieceKind.Paragraph when Goes(p.Text, lang) || p.Text[^1] != '?' && !Looks.Statement(p.Text, lang) && Prose.Foods(p.Text, lang).Count > 0:
                    Prose.Cut(p, lang, result);
                    break;
                default:
                    result.Add(p);
                    break;
            }
        }

        return result;
    }

    /// <summary>True for words that hold a time of work.</summary>
    private static bool Lasts(string s, string lang) => StepReader.Alone(s, lang, new Span(0, 0, 0)).Times.Length > 0;

    /// <summary>"then split it into 12 and roll them thin": work that goes on from the message before.</summary>
    private static bool Goes(string s, string lang)
    {
        foreach (string w in FirstOfThens.May(s, 0) ? Thens : [])
        {
            if (Places.WordAt(s, 0, w) && Operations.In(s, lang).Count > 0)
            {
                return true;
            }
        }

        return false;
    }
}
