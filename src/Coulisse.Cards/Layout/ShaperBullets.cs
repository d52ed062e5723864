using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <content>Lines with the mark of an item.</content>
internal sealed partial class Shaper
{
    private void Bullet(int i)
    {
        RawLine raw = lines[i];
        if (_mode == "method")
        {
            Add(new Piece(PieceKind.Step, raw.Text, raw.Span));
            return;
        }

        string body = Marks.Strip(Folding.Line(raw.Text));
        if (!_runs.Numbered(i) && _items && body.Length > 12 && (lang == "ja" && body[^1] == '。' || Amounts.At(body, 0, lang) is null && (_headedList || Looks.Work(body, lang)) && Looks.Timed(body, lang)))
        {
            // "* Dissolve, set in the bowls, 40ml each, 3 hrs": work that tells a time, whatever else it tells
            Add(new Piece(PieceKind.Step, raw.Text, raw.Span));
            return;
        }

        bool next = i + 1 < lines.Count && Looks.Bullet(lines[i + 1].Text);
        if (body.Length == 0 || Looks.Amounted(body, lang))
        {
            _bulleted = true;
            Add(new Piece(PieceKind.Item, raw.Text, raw.Span));
        }
        else if (next && lines[i + 1].Indent > raw.Indent && Looks.Heading(body.TrimEnd(':')))
        {
            Head(body.TrimmedEnd(": "), 3, raw.Span);
        }
        else if (_items && !_runs.Numbered(i) && !(_mode == "ingredients" && body[^1] is not ('.' or '。') && !Looks.Timed(body, lang)) && (Looks.Work(body, lang) || !_marked && (_plain > 1 || Looks.Timed(body, lang))))
        {
            // Behind a list without bullets, bullets are the steps.
            Add(new Piece(PieceKind.Step, raw.Text, raw.Span));
        }
        else if (next && body.Length < 30 && Sections.Of(body.TrimmedEnd(": "), lang) is not null || next && !_marked && Dresses.Bulleted(body, lines[i + 1].Text, _pieces.Count == 0 || _pieces[^1].Kind is not PieceKind.Item, _named, _headedList || _pieces.Count == 0 && Dresses.Rowed(lines, i, lang), lang))
        {
            _headedList = true;
            Head(body.TrimmedEnd(": "), 3, raw.Span);
        }
        else
        {
            _bulleted = true;
            Add(new Piece(PieceKind.Item, raw.Text, raw.Span));
        }
    }
}
