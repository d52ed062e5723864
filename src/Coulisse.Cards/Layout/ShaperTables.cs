namespace Coulisse.Cards.Layout;

/// <content>Tables and columns among the lines.</content>
internal sealed partial class Shaper
{
    private bool _tabled;
    private int _under;
    private bool? _methods;

    // A long run of rows that is no table from any of its first lines is none from the others: without a bound every line would walk to its end.
    private const int MostTries = 40;
    private int _rowsEnd;
    private int _rowsTried;

    /// <summary>True for a line behind a table of foods that is of the work told there without a heading, a number or a stop.</summary>
    private bool UnderTable(int i, string body)
    {
        if (!_tabled || _numbered || _mode == "method" || i < _under && body[^1] == ':')
        {
            return false;
        }

        if (i >= _under && (i == 0 || lines[i - 1].Block != lines[i].Block || lines[i - 1].Text.Contains('|')))
        {
            _under = !(_methods ??= Layout.UnderTable.Headed(lines, lang)) ? Layout.UnderTable.End(lines, i, lang) : i;
        }

        return i < _under && !Looks.Statement(body, lang);
    }

    private bool Columned(int i, out int end)
    {
        int from = _pieces.Count;
        bool cut = HeadedColumn.Cut(lines, i, lang, _pieces, out end) || Rows(i, out end);
        if (cut)
        {
            Note(from);
            _plain += _pieces.Count - from;
            _tabled = _items;
        }

        return cut;
    }

    private bool Rows(int i, out int end)
    {
        end = i;
        if (i < _rowsEnd && _rowsTried >= MostTries)
        {
            return false;
        }

        if (Columns.Of(lines, i, out end) is { } rows && (CellLists.Cut(rows, 0, rows.Count, lang, _pieces) || Tables.Cut(rows, 0, rows.Count, lang, _pieces, TableUnits.Stated(lines, i, end, lang))))
        {
            return true;
        }

        (_rowsTried, _rowsEnd) = end > _rowsEnd ? (1, end) : (_rowsTried + 1, _rowsEnd);
        return false;
    }

    private int Table(int i, int end)
    {
        int from = _pieces.Count;
        if (CellLists.Cut(lines, i, end, lang, _pieces) || Tables.Cut(lines, i, end, lang, _pieces))
        {
            Note(from);
            _tabled = _items;
            return end;
        }

        if (Tables.Under(lines, i, end, lang) is { } under)
        {
            Head(under.Name, _titled || _pieces.Count > 0 ? 2 : 1, lines[i].Span);
            _pieces.AddRange(under.Pieces);
            Note(from);
            _tabled = _items;
            return end;
        }

        for (int k = i; k < end; k++)
        {
            Add(new Piece(PieceKind.Paragraph, lines[k].Text, lines[k].Span));
        }

        return end;
    }
}
