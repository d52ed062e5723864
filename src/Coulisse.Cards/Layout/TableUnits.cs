using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Units a table tells once, and what it says beside its amounts.</summary>
internal static class TableUnits
{
    /// <summary>The heads with the units of a second row of heads, or with the one unit that the head over the foods tells for every column ("Ingredients (g)").</summary>
    public static string[] Told(string[] names, ref List<(string[] Cells, Span Span)> body, string lang)
    {
        if (names.Length < 2 || body.Count < 2)
        {
            return names;
        }

        string[] second = body[0].Cells;
        if (second[0].Length == 0 && second.Exists(c => c.Length > 0) && second.All(c => c.Length == 0 || TableColumns.UnitOf(c, lang) is not null && !c.Contains(' ')))
        {
            body = body[1..];
            return [.. names.Select((n, c) => c < second.Length && second[c].Length > 0 ? n.Length == 0 ? second[c] : $"{n} ({second[c]})" : n)];
        }

        if (TableColumns.Opens(names[0]) && names[0].IndexOfAny(['(', '[']) > 0 && TableColumns.UnitOf(names[0], lang) is { } unit && names.Skip(1).All(n => TableColumns.UnitOf(n, lang) is null))
        {
            return [.. names.Select((n, c) => c == 0 || ColumnHeads.Price(n) || ColumnHeads.Share(n) || ColumnHeads.Number(n) || ColumnHeads.Rate(n) ? n : $"{n} ({unit})")];
        }

        return names;
    }

    /// <summary>"COSTE TOTAL", "%": a row that sums or shares, and names no food.</summary>
    public static bool Sums(string food, string lang) =>
        food.Length > 0 && (food is "%" || ColumnHeads.Price(food) || Lexicon.Longest("total", food, 0, 2, lang, out _) is not null);

    /// <summary>Prices, allergens and what a food is made of, as one remark a column: shown, never read as amounts.</summary>
    public static void Beside(List<(string[] Cells, Span Span)> body, TableColumns plan, string[] names, string lang, List<Piece> into)
    {
        foreach (int column in plan.Beside)
        {
            string said = string.Join("; ", body.Where(r => column < r.Cells.Length && r.Cells[column].Length > 0 && plan.Food < r.Cells.Length && !Sums(r.Cells[plan.Food], lang)).Select(r => $"{r.Cells[plan.Food]} {r.Cells[column]}"));
            if (said.Length > 0)
            {
                into.Add(new Piece(PieceKind.Paragraph, $"{names[column]}: {said}", body[0].Span));
            }
        }
    }

    private static bool Exists(this string[] cells, Predicate<string> wanted) => Array.Exists(cells, wanted);
}
