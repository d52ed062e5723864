using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Units a table tells once, and what it says beside its amounts.</summary>
internal static class TableUnits
{
    private const int LongestStatement = 60;
    private static readonly WordList Weights = new("weights", "weight", "amounts", "quantities", "figures", "measures", "poids", "quantités", "masses", "Mengen", "Gewichte", "Angaben", "Mengenangaben", "cantidades", "pesos", "medidas", "quantità", "pesi", "dosi", "単位", "分量");

    /// <summary>"All weights in grams." right before or behind a table: the unit of its bare figures; null where no such line stands there, or where it tells a figure of its own.</summary>
    public static string? Stated(List<RawLine> lines, int from, int to, string lang) =>
        to < lines.Count && Stated(lines[to].Text, lang) is { } behind ? behind : from > 0 ? Stated(lines[from - 1].Text, lang) : null;

    private static string? Stated(string s, string lang)
    {
        if (s.Length is < 4 or > LongestStatement || s.AsSpan().IndexOfAnyInRange('0', '9') >= 0 || s.Contains('|') || !Weights.In(s))
        {
            return null;
        }

        string words = s.TrimmedEnd(" .)。");
        int last = words.AsSpan().LastIndexOfAny(" :：(は");
        return last > 0 ? TableColumns.UnitOf(words[(last + 1)..], lang) : null;
    }

    /// <summary>The heads with the units of a second row of heads, or with the one unit told for every column: by the head over the foods ("Ingredients (g)"), else by a line beside the table.</summary>
    public static string[] Told(string[] names, ref List<(string[] Cells, Span Span)> body, string? stated, string lang)
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

        string? unit = TableColumns.Opens(names[0]) && names[0].IndexOfAny(['(', '[']) > 0 ? TableColumns.UnitOf(names[0], lang) : stated;
        if (unit is not null && names.Skip(1).All(n => TableColumns.UnitOf(n, lang) is null))
        {
            return [.. names.Select((n, c) => c == 0 || ColumnHeads.Price(n) || ColumnHeads.Share(n) || ColumnHeads.Number(n) || ColumnHeads.Rate(n) ? n : $"{n} ({unit})")];
        }

        return names;
    }

    /// <summary>"COSTE TOTAL", "%", "je Portion": a row that sums or shares, and names no food.</summary>
    public static bool Sums(string food, string lang) =>
        food.Length > 0 && (food is "%" || ColumnHeads.Price(food) || ColumnHeads.ForEach(food) || Lexicon.Longest("total", food, 0, 2, lang, out _) is not null);

    /// <summary>"n.", "ea", "Stk": the column of units says that the food is counted.</summary>
    public static bool Counts(string unit) => Pieces.Contains(unit);

    private static readonly HashSet<string> Pieces = new(StringComparer.OrdinalIgnoreCase) { "n", "n.", "n°", "nr", "nr.", "no", "no.", "num", "ea", "ea.", "each", "cad", "cad.", "u", "u.", "-" };

    /// <summary>Prices, allergens and what a food is made of, as one remark a column: shown, never read as amounts.</summary>
    public static void Beside(List<(string[] Cells, Span Span)> body, TableColumns plan, string[] names, string lang, List<Piece> into)
    {
        foreach (int column in plan.Beside)
        {
            string said = string.Join("; ", body.Where(r => column < r.Cells.Length && r.Cells[column].Length > 0 && plan.Food < r.Cells.Length && r.Cells[plan.Food].Length > 0 && !Sums(r.Cells[plan.Food], lang)).Select(r => $"{r.Cells[plan.Food]} {r.Cells[column]}"));
            if (said.Length > 0)
            {
                into.Add(new Piece(PieceKind.Paragraph, $"{names[column]}: {said}", body[0].Span));
            }
        }
    }

    private static bool Exists(this string[] cells, Predicate<string> wanted) => Array.Exists(cells, wanted);
}
