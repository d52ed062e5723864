namespace Coulisse.Cards.Layout;

/// <summary>Tables whose only figures are shares, prices, energy or rates: the foods are listed, the figures are no amounts and stay as remarks.</summary>
internal static class UnweighedTable
{
    /// <summary>The pieces of a table that weighs nothing; false for any other.</summary>
    public static bool Cut(List<(string[] Cells, Span Span)> body, string[] names, TableColumns plan, List<Piece> into)
    {
        int food = Array.FindIndex(names, TableColumns.Opens);
        if (plan.Amounts.Count > 0 || food < 0 || !names.Where((_, c) => c != food).All(h => h.Length == 0 || ColumnHeads.Share(h) || ColumnHeads.Price(h) || ColumnHeads.Energy(h)) || !names.Any(h => ColumnHeads.Share(h) || ColumnHeads.Price(h)))
        {
            return false;
        }

        foreach ((string[] cells, Span span) in body)
        {
            string name = food < cells.Length ? cells[food] : "";
            if (name.Length > 0)
            {
                into.Add(new Piece(PieceKind.Item, name, span));
            }

            string beside = string.Join(", ", cells.Select((cell, c) => c != food && cell.Length > 0 ? $"{cell} {(c < names.Length ? names[c] : "")}".Trim() : "").Where(t => t.Length > 0));
            if (beside.Length > 0)
            {
                into.Add(new Piece(PieceKind.Paragraph, name.Length > 0 ? $"{name}: {beside}" : beside, span));
            }
        }

        return true;
    }

    /// <summary>"| Purée | 1 day ahead | 2 days |": every figure is a time. When things are made and how long they keep is no food, and stays as remarks; false for any other table.</summary>
    public static bool Times(string[] head, List<(string[] Cells, Span Span)> body, string lang, List<Piece> into)
    {
        bool timed = false;
        foreach ((string[] cells, _) in body)
        {
            foreach (string cell in cells)
            {
                int figure = cell.AsSpan().IndexOfAnyInRange('0', '9');
                if (figure >= 0 && (figure > 6 || Reading.Clock.At(cell, figure, lang) is null))
                {
                    return false;
                }

                timed |= figure >= 0;
            }
        }

        if (!timed)
        {
            return false;
        }

        foreach ((string[] cells, Span span) in body)
        {
            into.Add(new Piece(PieceKind.Paragraph, string.Join(", ", cells.Select((cell, c) => cell.Length == 0 ? "" : c > 0 && c < head.Length && head[c].Length > 0 ? $"{head[c]} {cell}" : cell).Where(t => t.Length > 0)), span));
        }

        return true;
    }

    /// <summary>A row under a rate: grams to the kilogram are a share of the mass, any other rate is a remark beside the food.</summary>
    public static void Rate(string food, string figure, string head, Span span, List<Piece> into)
    {
        if (figure.Length > 0 && head.Replace(" ", "", StringComparison.Ordinal).Contains("g/kg", StringComparison.OrdinalIgnoreCase) && char.IsAsciiDigit(figure[^1]))
        {
            into.Add(new Piece(PieceKind.Item, $"{figure} g/kg {food}", span));
            return;
        }

        into.Add(new Piece(PieceKind.Item, food, span));
        if (figure.Length > 0)
        {
            into.Add(new Piece(PieceKind.Paragraph, $"{food}: {figure} {head}", span));
        }
    }
}
