using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Rows that hold a whole part each: its name, all its foods in one cell ("200 g flour&lt;br&gt;2 eggs", "200 g flour, 2 eggs") and perhaps its work beside them. Read as a table of foods, every row would be one food of many amounts.</summary>
internal static class CellLists
{
    private const int LongestName = 60;

    /// <summary>Adds the parts; false for any other table.</summary>
    public static bool Cut(List<RawLine> lines, int from, int to, string lang, List<Piece> into)
    {
        if (!Gated(lines, from, to))
        {
            return false;
        }

        List<(string[] Cells, Span Span)> rows = [.. lines.Skip(from).Take(to - from).Where(l => l.Text.AsSpan().IndexOfAnyExcept("|-: ") >= 0).Select(l => (Cells(l.Text), l.Span))];
        bool head = rows.Count > 1 && (rows.Count < to - from || Array.Exists(rows[0].Cells, c => TableColumns.Opens(c) || Sections.Of(c, lang) is not null)) && !Array.Exists(rows[0].Cells, c => LineKinds.HasAmount(c, lang));
        string[] names = head ? rows[0].Cells : [];
        List<(string[] Cells, Span Span)> body = head ? rows[1..] : rows;
        int columns = rows.Max(r => r.Cells.Length);
        int list = List(body, names, columns, lang);
        if (list < 0 || columns < 2)
        {
            return false;
        }

        int method = Method(body, names, columns, list, lang);
        int name = Name(body, names, columns, list, method, lang);
        foreach ((string[] cells, Span span) in body)
        {
            Row(cells, span, names, (list, method, name), lang, into);
        }

        return true;
    }

    private static void Row(string[] cells, Span span, string[] names, (int List, int Method, int Name) at, string lang, List<Piece> into)
    {
        if (Folding.Line(TableColumns.At(cells, at.Name)).Trimmed(" :*") is { Length: > 0 } name)
        {
            into.Add(new Piece(PieceKind.Heading, name, span, 2));
        }

        into.AddRange(Foods(TableColumns.At(cells, at.List), lang).Select(f => new Piece(PieceKind.Item, f, span)));
        into.AddRange(Broken(TableColumns.At(cells, at.Method)).Select(s => new Piece(PieceKind.Step, s, span)));
        for (int c = 0; c < cells.Length; c++)
        {
            if (c != at.List && c != at.Method && c != at.Name && Folding.Line(cells[c]) is { Length: > 0 } told)
            {
                into.Add(new Piece(PieceKind.Paragraph, TableColumns.At(names, c) is { Length: > 0 } said && !ColumnHeads.Note(said) ? $"{Folding.Line(said)}: {told}" : told, span));
            }
        }
    }

    /// <summary>False for nearly every table: a cell with several foods breaks its lines, or parts them by commas.</summary>
    private static bool Gated(List<RawLine> lines, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (lines[i].Text.AsSpan().IndexOfAny("<,、;") > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The one column whose cells are lists in half of the rows and more; -1 for none, and where two are: those are sizes or choices.</summary>
    private static int List(List<(string[] Cells, Span Span)> body, string[] names, int columns, string lang)
    {
        int found = -1;
        for (int c = 0; c < columns; c++)
        {
            if (Sections.Of(TableColumns.At(names, c), lang) is "method" or "notes" || ColumnHeads.Note(TableColumns.At(names, c)))
            {
                continue;
            }

            bool said = TableColumns.Opens(TableColumns.At(names, c));
            int filled = body.Count(r => TableColumns.At(r.Cells, c).Length > 0);
            int lists = body.Count(r => Listed(Foods(TableColumns.At(r.Cells, c), lang), said, lang));
            if (lists > 0 && lists * 2 >= filled)
            {
                if (found >= 0)
                {
                    return -1;
                }

                found = c;
            }
        }

        return found;
    }

    /// <summary>Two foods with their amounts; under a head that says so two names everybody knows are enough. "200 g butter, diced" is one food.</summary>
    private static bool Listed(List<string> foods, bool said, string lang)
    {
        int told = foods.Count < 2 ? 0 : foods.Count(f => Amounts.At(f, 0, lang) is { } m ? m.End + 2 < f.Length : Looks.Amounted(f, lang));
        return told > 1 && told * 2 >= foods.Count || said && foods.Count > 1 && foods.Count(f => FoodIds.Match(f, lang) is not null) >= Math.Max(2, foods.Count - 1);
    }

    private static int Method(List<(string[] Cells, Span Span)> body, string[] names, int columns, int list, string lang)
    {
        for (int c = 0; c < columns; c++)
        {
            bool said = Sections.Of(TableColumns.At(names, c), lang) == "method" || TableColumns.At(names, c).Length > 0 && ColumnHeads.Note(TableColumns.At(names, c)) && Works(body, c, lang);
            if (c != list && (said || names.Length == 0 && c > 0 && Works(body, c, lang)))
            {
                return c;
            }
        }

        return -1;
    }

    private static bool Works(List<(string[] Cells, Span Span)> body, int c, string lang) =>
        body.Count(r => TableColumns.At(r.Cells, c) is { Length: > 8 } cell && (Looks.Work(Folding.Line(cell), lang) || Looks.Opens(Folding.Line(cell), lang))) * 2 >= body.Count;

    /// <summary>The first column of short names.</summary>
    private static int Name(List<(string[] Cells, Span Span)> body, string[] names, int columns, int list, int method, string lang)
    {
        for (int c = 0; c < columns; c++)
        {
            string head = TableColumns.At(names, c);
            bool other = ColumnHeads.Number(head) || ColumnHeads.Price(head) || ColumnHeads.Time(head) || ColumnHeads.Aside(head);
            if (c != list && c != method && !other && body.Exists(r => TableColumns.At(r.Cells, c).Length > 0) && body.TrueForAll(r => TableColumns.At(r.Cells, c) is var cell && (cell.Length == 0 || cell.Length < LongestName && (char.IsLetter(cell[0]) || cell[0] == '*') && !LineKinds.HasAmount(cell, lang))))
            {
                return c;
            }
        }

        return -1;
    }

    private static List<string> Foods(string cell, string lang)
    {
        List<string> broken = Broken(cell);
        return broken.Count != 1 ? broken : [.. RunningText.Foods(broken[0].TrimEnd('.', '。'), lang)];
    }

    /// <summary>The lines of a cell.</summary>
    private static List<string> Broken(string cell)
    {
        List<string> parts = [];
        int start = 0;
        while (start < cell.Length)
        {
            int at = cell.IndexOf("<br", start, StringComparison.OrdinalIgnoreCase);
            int close = at < 0 ? -1 : cell.IndexOf('>', at);
            int end = close < 0 ? cell.Length : at;
            if (Marks.Strip(Folding.Line(cell[start..end])).Trimmed(" ,;") is { Length: > 1 } part)
            {
                parts.Add(part);
            }

            start = close < 0 ? cell.Length : close + 1;
        }

        return parts;
    }

    private static string[] Cells(string row)
    {
        string s = row.Trim();
        s = s.StartsWith('|') ? s[1..] : s;
        s = s.EndsWith('|') ? s[..^1] : s;
        return s.Split('|', StringSplitOptions.TrimEntries);
    }
}
