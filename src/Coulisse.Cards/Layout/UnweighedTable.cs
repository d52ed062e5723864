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
