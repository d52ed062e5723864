using Coulisse.Cards.Layout;

namespace Coulisse.Cards.Reading;

/// <summary>Reads the lines and steps of a long card before they are put in their places, on whatever cores there are: each hangs on nothing but its own words, so the card is the same to the letter.</summary>
internal sealed class Ahead(List<Piece> pieces, string lang, FoodIds ids)
{
    /// <summary>A card of fewer pieces is read before other cores would have begun.</summary>
    private const int Fewest = 4_000;
    private const int Most = 8_192;
    private const int Stretch = 512;
    private readonly bool _long = pieces.Count >= Fewest;
    // Two windows take turns: while one is put in its places the other is read.
    private (object? Read, Doubt[] Asked)[] _read = [];
    private (object? Read, Doubt[] Asked)[] _other = [];
    private Task? _next;
    private int _from;
    private int _to;

    /// <summary>An item or a step as it was read ahead, and the questions it raised; null for a short card.</summary>
    /// <param name="i">Which piece; asked for in order.</param>
    public (object? Read, Doubt[] Asked) Of(int i)
    {
        if (!_long)
        {
            return (null, []);
        }

        if (i >= _to)
        {
            Turn(i);
        }

        return _read[i - _from];
    }

    private void Turn(int from)
    {
        if (_next is null)
        {
            _other = new (object?, Doubt[])[Most];
            _read = new (object?, Doubt[])[Most];
            Read(_other, from);
        }
        else
        {
            _next.GetAwaiter().GetResult();
        }

        (_read, _other) = (_other, _read);
        _from = from;
        _to = Math.Min(pieces.Count, from + Most);
        (object?, Doubt[])[] into = _other;
        int next = _to;
        _next = next < pieces.Count ? Task.Run(() => Read(into, next)) : null;
    }

    private void Read((object? Read, Doubt[] Asked)[] into, int from)
    {
        int count = Math.Min(Most, pieces.Count - from);
        Parallel.For(0, (count + Stretch - 1) / Stretch, stretch => Fill(into, from, stretch * Stretch, count));
    }

    private void Fill((object? Read, Doubt[] Asked)[] into, int from, int first, int count)
    {
        List<Doubt> doubts = [];
        // What comes again within a stretch ("- 1 g salt", a card pasted over and over) is read once; what raised a question is asked at each place.
        Dictionary<string, IngredientLine> lines = new(StringComparer.Ordinal);
        Dictionary<string, Step> steps = new(StringComparer.Ordinal);
        for (int k = first; k < Math.Min(count, first + Stretch); k++)
        {
            doubts.Clear();
            Piece p = pieces[from + k];
            object? read = null;
            if (p.Kind == PieceKind.Item)
            {
                if (lines.TryGetValue(p.Text, out IngredientLine? line))
                {
                    line = line with { Span = p.Span };
                }
                else
                {
                    line = LineReader.Read(Footnotes.Bare(p.Text), lang, p.Span, doubts, ids);
                    _ = doubts.Count > 0 || lines.TryAdd(p.Text, line);
                }

                read = line;
            }
            else if (p.Kind == PieceKind.Step)
            {
                if (steps.TryGetValue(p.Text, out Step? step))
                {
                    step = step with { Span = p.Span };
                }
                else
                {
                    step = StepReader.Alone(p.Text, lang, p.Span);
                    steps.Add(p.Text, step);
                }

                read = step;
            }

            into[k] = (read, doubts.Count == 0 ? [] : [.. doubts]);
        }
    }
}
