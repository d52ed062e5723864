using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>
/// Parts side by side in one table, each with its own foods and its own amounts ("| Scones | | Jam | |", "| Scones | g | Jam | g |"), or one list set in two halves ("| Ingredient | Qty | Ingredient | Qty |").
/// Read as one list the right half would be lost. A second column of words with figures that its head calls a price, a note or nothing alike is no such half.
/// </summary>
internal static class SideTables
{
    private const int FewestRows = 2;
    private const int MostHalves = 4;
    private const int FarIn = 12;

    /// <summary>Adds the halves one behind the other; false when the table has none.</summary>
    public static bool Cut(List<(string[] Cells, Span Span)> rows, List<(string[] Cells, Span Span)> body, string[] names, int columns, string lang, List<Piece> into)
    {
        int[] used = [.. Enumerable.Range(0, columns).Where(c => names.Length * 2 > columns && TableColumns.At(names, c).Length > 0 || body.Exists(r => TableColumns.At(r.Cells, c).Length > 0))];
        if (used.Length < 4 || used.Length % 2 != 0 || used.Length / 2 > MostHalves || body.Count < FewestRows)
        {
            return false;
        }

        // A typist sets each name once over its two columns: "Scones            Jam".
        string[] heads = names.Length * 2 == used.Length && Array.TrueForAll(names, n => n.Length > 0) ? [.. names.SelectMany(n => (string[])[n, ""])] : [.. used.Select(c => TableColumns.At(names, c))];
        List<(string[] Cells, Span Span)> cells = [.. body.Select(r => ((string[])[.. used.Select(c => TableColumns.At(r.Cells, c))], r.Span))];
        string[] parts = [.. Enumerable.Range(0, used.Length / 2).Select(k => heads[2 * k].Length > 0 && !ColumnHeads.Weighs(heads[2 * k], lang) ? heads[2 * k] : heads[(2 * k) + 1])];
        // A row of heads under the names: "| Ingredient | Qty | Ingredient | Qty |".
        if (names.Length > 0 && Enumerable.Range(0, parts.Length).All(k => TableColumns.Opens(cells[0].Cells[2 * k]) || TableColumns.Opens(cells[0].Cells[(2 * k) + 1])))
        {
            heads = cells[0].Cells;
            cells.RemoveAt(0);
        }

        bool? first = null;
        for (int k = 0; k < parts.Length; k++)
        {
            if (Foods(cells, 2 * k, lang) is not { } left || (first ??= left) != left)
            {
                return false;
            }
        }

        if (cells.Count < FewestRows || !Halves(parts, heads, first == true, names.Length == 0, lang))
        {
            return false;
        }

        bool one = names.Length == 0 || Array.TrueForAll(parts, TableColumns.Opens);
        for (int k = 0; k < parts.Length; k++)
        {
            if (!one)
            {
                into.Add(new Piece(PieceKind.Heading, Folding.Line(parts[k]).Trimmed(" :*"), rows[0].Span, 2));
            }

            string amount = first == true ? heads[(2 * k) + 1] : heads[2 * k];
            string[] own = first == true ? ["", amount] : [amount, ""];
            List<(string[] Cells, Span Span)> half = [.. cells.Where(r => r.Cells[2 * k].Length > 0 || r.Cells[(2 * k) + 1].Length > 0).Select(r => ((string[])[r.Cells[2 * k], r.Cells[(2 * k) + 1]], r.Span))];
            Tables.Planned([(own, rows[0].Span), .. half], half, own, TableColumns.Of(own, half.Select(r => r.Cells), 2, lang), lang, into);
        }

        return true;
    }

    /// <summary>A short row that stands far in belongs to the right half.</summary>
    public static void Place(List<(string[] Cells, Span Span)> rows, List<int> indents, int columns)
    {
        if (columns != 4 || rows[0].Cells.Length is not (2 or 4))
        {
            return;
        }

        int least = indents.Min();
        for (int i = 1; i < rows.Count; i++)
        {
            if (indents[i] - least >= FarIn && rows[i].Cells.Length == 2)
            {
                rows[i] = (["", "", .. rows[i].Cells], rows[i].Span);
            }
        }
    }

    /// <summary>True where the foods stand left of their amounts, false where they stand right; null for two columns that are no foods with amounts.</summary>
    private static bool? Foods(List<(string[] Cells, Span Span)> cells, int column, string lang)
    {
        (int left, int right, int other) = (0, 0, 0);
        foreach ((string[] row, _) in cells)
        {
            (string a, string b) = (row[column], row[column + 1]);
            if (a.Length == 0 && b.Length == 0)
            {
                continue;
            }

            left += Word(a) && Amount(b, lang) ? 1 : 0;
            right += Amount(a, lang) && Word(b) ? 1 : 0;
            other += a.Length > 0 && b.Length > 0 && !(Word(a) && Amount(b, lang)) && !(Amount(a, lang) && Word(b)) ? 1 : 0;
        }

        return other > 0 || left > 0 == right > 0 ? null : left > 0;
    }

    /// <summary>Heads that show halves: each names its part and nothing else, or every half has the heads of the first.</summary>
    private static bool Halves(string[] parts, string[] heads, bool first, bool bare, string lang)
    {
        if (bare)
        {
            return true;
        }

        for (int k = 0; k < parts.Length; k++)
        {
            string food = heads[first ? 2 * k : (2 * k) + 1];
            string amount = heads[first ? (2 * k) + 1 : 2 * k];
            bool measured = amount.Length == 0 || amount == parts[k] || ColumnHeads.Weighs(amount, lang) || TableColumns.UnitOf(amount, lang) is not null;
            if (parts[k].Length == 0 || !measured || ColumnHeads.Price(amount) || ColumnHeads.Share(amount) || ColumnHeads.Price(parts[k]) || ColumnHeads.Note(parts[k]) || ColumnHeads.Aside(parts[k]) || PartColumn.Says(parts[k]) || TableColumns.Opens(parts[k]) != TableColumns.Opens(parts[0]) || food.Length > 0 && food != parts[k] && !TableColumns.Opens(food))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Word(string cell) => cell.Length > 0 && char.IsLetter(cell[0]) && (cell.Length > 1 || Places.IsJapanese(cell[0]));

    private static bool Amount(string cell, string lang) => cell.Length is > 0 and < 30 && (char.IsAsciiDigit(cell[0]) || Numbers.Vulgar(cell[0]) > 0 || TableColumns.Said(cell, lang) || Amounts.At(cell, 0, lang) is { } m && m.End >= cell.Length);
}
