using Coulisse.Cards.Layout;

namespace Coulisse.Cards.Reading;

/// <summary>Reads the lines and steps of a long card before they are put in their places, on whatever cores there are: each hangs on nothing but its own words, so the card is the same to the letter.</summary>
internal sealed class Ahead(List<Piece> pieces, string lang, FoodIds ids)
{
    /// <summary>A card of fewer pieces is read before other cores would have begun.</summary>
    private const int Fewest = 4_000;
    private const int Window = 16_384;
    private const int Stretch = 512;
    private readonly (object? Read, Doubt[] Asked)[] _read = pieces.Count < Fewest ? [] : new (object?, Doubt[])[Math.Min(Window, pieces.Count)];
    private int _from;
    private int _to;

    /// <summary>An item or a step as it was read ahead, and the questions it raised; null for a short card.</summary>
    /// <param name="i">Which piece; asked for in order.</param>
    public (object? Read, Doubt[] Asked) Of(int i)
    {
        if (_read.Length == 0)
        {
            return (null, []);
        }

        if (i >= _to)
        {
            _from = i;
            _to = Math.Min(pieces.Count, i + _read.Length);
            Parallel.For(0, (_to - _from + Stretch - 1) / Stretch, Fill);
        }

        return _read[i - _from];
    }

    private void Fill(int stretch)
    {
        int from = _from + stretch * Stretch;
        List<Doubt> doubts = [];
        for (int i = from; i < Math.Min(_to, from + Stretch); i++)
        {
            doubts.Clear();
            Piece p = pieces[i];
            object? read = p.Kind switch
            {
                PieceKind.Item => LineReader.Read(Footnotes.Bare(p.Text), lang, p.Span, doubts, ids),
                PieceKind.Step => StepReader.Alone(p.Text, lang, p.Span),
                _ => null,
            };
            _read[i - _from] = (read, doubts.Count == 0 ? [] : [.. doubts]);
        }
    }
}
