using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A part told in sentences on a card whose other parts have lists: "Mix 100 g salt with 80 g sugar. Cure the salmon 12 h." Its foods and its work are read as they are on a card that is all sentences; left as remarks they would be lost, an allergen with them.</summary>
internal static class ToldParts
{
    private const int FewestFoods = 2;

    /// <summary>A card of more pieces is a book and is left as it is.</summary>
    internal const int MostPieces = 4_000;

    /// <summary>The pieces with such parts cut; the same list where there are none.</summary>
    public static List<Piece> Read(List<Piece> pieces, string lang)
    {
        if (pieces.Count > MostPieces || !pieces.Exists(p => p.Kind == PieceKind.Paragraph))
        {
            return pieces;
        }

        List<Piece>? result = null;
        int from = 0;
        while (from < pieces.Count)
        {
            int end = from + 1;
            bool titled = pieces[from] is { Kind: PieceKind.Heading, Level: 1 } or { Kind: PieceKind.Paragraph };
            while (end < pieces.Count && pieces[end].Kind is not (PieceKind.Heading or PieceKind.Variant) && !(titled && pieces[end].Kind is PieceKind.Item or PieceKind.Step && pieces[end - 1].Kind == PieceKind.Paragraph))
            {
                // Sentences under the title are a part of their own, whatever list stands behind them.
                end++;
            }

            bool told = Told(pieces, from, end, lang);
            if (told && result is null)
            {
                result = [.. pieces.Take(from)];
            }

            bool began = false;
            for (int i = from; i < end && result is not null; i++)
            {
                if (told && pieces[i].Kind is PieceKind.Paragraph && (Sentences(pieces[i], lang) || began && GoesOn(pieces[i], lang)))
                {
                    began = true;
                    Prose.Cut(pieces[i], lang, result);
                }
                else
                {
                    result.Add(pieces[i]);
                }
            }

            from = end;
        }

        return result ?? pieces;
    }

    /// <summary>True for a part without a list and without steps whose sentences are work and take at least two foods everybody knows, none of them another part of the card.</summary>
    private static bool Told(List<Piece> pieces, int from, int end, string lang)
    {
        string heading = pieces[from].Kind == PieceKind.Heading ? pieces[from].Text : "";
        if (heading.Length > 0 && (Sections.Of(heading, lang) is not null || Parts.Finish(heading, lang)))
        {
            return false;
        }

        int foods = 0;
        bool worked = false;
        for (int i = from; i < end; i++)
        {
            if (pieces[i].Kind is PieceKind.Item or PieceKind.Step or PieceKind.Variant)
            {
                return false;
            }

            if (pieces[i].Kind != PieceKind.Paragraph || !Sentences(pieces[i], lang) && !(worked && GoesOn(pieces[i], lang)))
            {
                continue;
            }

            foreach (string food in Prose.Foods(Marks.Strip(Folding.Line(pieces[i].Text)), lang))
            {
                foods += LineReader.Read(food, lang, pieces[i].Span, []).Foods is [{ Amount: not null } read, ..] && FoodIds.Match(read.Food, lang) is not null && !Parts.Headed(pieces, read.Food) ? 1 : 0;
            }

            worked = true;
        }

        return worked && foods >= FewestFoods;
    }

    /// <summary>True for a paragraph whose first sentence is work: a head note that tells how somebody came to the dish is none.</summary>
    private static bool Sentences(Piece p, string lang)
    {
        string text = Marks.Strip(Folding.Line(p.Text));
        return text.Length > 3 && !Looks.Statement(text, lang) && Prose.Full(text).First() is var first && (Looks.Work(first, lang) || Looks.Opens(first, lang));
    }

    /// <summary>"Mash them with 80 g of butter." behind a sentence of work: it takes a food, whatever its verb.</summary>
    private static bool GoesOn(Piece p, string lang)
    {
        string text = Marks.Strip(Folding.Line(p.Text));
        return text.Length > 10 && text[^1] is '.' or '。' && !Looks.Statement(text, lang) && Prose.Foods(text, lang).Count > 0;
    }
}
