using Coulisse.Cards.Layout;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Reads the lines and steps of a long card before they are put in their places, on whatever cores there are: each hangs on nothing but its own words, so the card is the same to the letter.</summary>
internal sealed class Ahead(List<Piece> pieces, string lang, FoodIds ids)
{
    /// <summary>A card of fewer pieces is read before other cores would have begun.</summary>
    private const int Fewest = 4_000;
    private const int Most = 8_192;
    private const int Stretch = 512;
    private readonly bool _long = pieces.Count >= Fewest;
    // What comes again ("- 1 g salt", a card pasted over and over) is read once; what raised a question is asked at each place.
    private readonly ReadBefore<IngredientLine> _lines = new();
    private readonly ReadBefore<Step> _steps = new();
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
        for (int k = first; k < Math.Min(count, first + Stretch); k++)
        {
            doubts.Clear();
            Piece p = pieces[from + k];
            object? read = p.Kind switch
            {
                PieceKind.Item => Line(p, doubts),
                PieceKind.Step => Step(p),
                _ => null,
            };
            into[k] = (read, doubts.Count == 0 ? [] : [.. doubts]);
        }
    }

    private IngredientLine Line(Piece p, List<Doubt> doubts)
    {
        if (_lines.Of(p.Text) is { } known)
        {
            return known with { Span = p.Span };
        }

        IngredientLine line = LineReader.Read(Footnotes.Bare(p.Text), lang, p.Span, doubts, ids);
        if (doubts.Count == 0)
        {
            _lines.Keep(p.Text, line);
        }

        return line;
    }

    private Step Step(Piece p)
    {
        if (!_steps.Keeps)
        {
            return StepReader.Alone(p.Text, lang, p.Span);
        }

        // The number of a step says nothing of it.
        string told = Struck.In(p.Text) ? p.Text : Marks.Strip(Folding.Line(p.Text));
        if (_steps.Of(told) is { } known)
        {
            return known with { Span = p.Span };
        }

        Step step = StepReader.Alone(p.Text, lang, p.Span);
        _steps.Keep(told, step);
        return step;
    }
}
