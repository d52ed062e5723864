using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A table with a column that names the part of each row; an empty cell goes on with the part above it.</summary>
internal static class PartColumn
{
    private static readonly HashSet<string> Heads = new(StringComparer.OrdinalIgnoreCase)
    {
        "component", "components", "part", "section", "stage", "element", "sub-recipe", "teil", "komponente", "bestandteil", "stufe", "partie", "composant", "élément", "étape", "sous-recette", "parte", "componente", "elaboración", "elemento", "fase", "preparazione", "パーツ", "パート", "部分", "構成", "部位", "工程", "区分",
    };

    /// <summary>Place of the column; -1 when there is none.</summary>
    public static int Of(string[] names) => names.Length < 3 ? -1 : Array.FindIndex(names, Says);

    /// <summary>True for a head that says its column holds parts, and so names none itself.</summary>
    public static bool Says(string head) => Heads.Contains(head.Trimmed(" *:"));

    /// <summary>The rows part by part, each as a table without that column.</summary>
    public static bool Cut((string[] Cells, Span Span) head, List<(string[] Cells, Span Span)> body, string[] names, int column, string lang, List<Piece> into)
    {
        string[] rest = Without(names, column);
        List<(string Part, List<(string[] Cells, Span Span)> Rows)> parts = [];
        foreach ((string[] cells, Span span) in body)
        {
            string part = column < cells.Length ? cells[column] : "";
            if (parts.Count == 0 || part.Length > 0 && !part.Equals(parts[^1].Part, StringComparison.OrdinalIgnoreCase))
            {
                parts.Add((part, []));
            }

            parts[^1].Rows.Add((Without(cells, column), span));
        }

        TableColumns plan = TableColumns.Of(rest, parts.SelectMany(p => p.Rows).Select(r => r.Cells), rest.Length, lang);
        if (plan.Amounts.Count != 1 && !plan.SecondMeasures || plan.Food < 0)
        {
            return false;
        }

        foreach ((string part, List<(string[] Cells, Span Span)> rows) in parts)
        {
            if (part.Length > 0)
            {
                into.Add(new Piece(PieceKind.Heading, Folding.Line(part).Trimmed(" :"), rows[0].Span, 2));
            }

            Tables.Planned([(rest, head.Span), .. rows], rows, rest, plan, lang, into);
        }

        return true;
    }

    private static string[] Without(string[] cells, int column) => [.. cells.Where((_, i) => i != column)];
}
