using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A table with a column that names the part of each row; an empty cell goes on with the part above it.</summary>
internal static class PartColumn
{
    private static readonly HashSet<string> Heads = new(StringComparer.OrdinalIgnoreCase)
    {
        "component", "components", "part", "section", "stage", "element", "sub-recipe", "teil", "komponente", "bestandteil", "stufe", "partie", "composant", "élément", "étape", "sous-recette", "parte", "componente", "elaboración", "elemento", "fase", "preparazione", "パーツ", "パート", "部分", "構成", "部位", "工程", "区分",
    };

    private const int FewestRows = 4;
    private static readonly HashSet<string> Groups = new(StringComparer.OrdinalIgnoreCase)
    {
        "category", "type", "group", "store", "storage", "place", "shop", "department", "kategorie", "art", "gruppe", "warengruppe", "lager", "ort", "abteilung", "catégorie", "groupe", "rayon", "stock", "lieu", "famille", "categoría", "tipo", "grupo", "almacén", "lugar", "familia", "categoria", "gruppo", "magazzino", "luogo", "分類", "カテゴリ", "種類", "保管", "売り場", "step", "stage no", "day", "station", "posten", "poste", "partida", "担当",
    };

    /// <summary>Place of the column; -1 when there is none.</summary>
    public static int Of(string[] names) => names.Length < 3 ? -1 : Array.FindIndex(names, Says);

    /// <summary>
    /// Place of a first column that nothing but its shape shows to name parts: beside a column that says it holds the foods, each of its words stands over several rows, told once and left blank under it or told in every row.
    /// Groups of goods, places and suppliers stand so as well, and name no part of a dish. -1 when there is none.
    /// </summary>
    public static int Shown(string[] names, List<(string[] Cells, Span Span)> body)
    {
        if (names.Length < 3 || names[0].Length == 0 || body.Count < FewestRows || TableColumns.Opens(names[0]) || !TableColumns.Opens(names[1]) || Groups.Contains(names[0].Trimmed(" *:")) || ColumnHeads.Number(names[0]) || ColumnHeads.Aside(names[0]) || ColumnHeads.Note(names[0]) || ColumnHeads.Time(names[0]) || ColumnHeads.Price(names[0]))
        {
            return -1;
        }

        (int parts, int under) = (0, 0);
        string last = "";
        HashSet<string> told = new(StringComparer.OrdinalIgnoreCase);
        foreach ((string[] cells, _) in body)
        {
            string part = cells.Length > 0 ? cells[0] : "";
            if (part.Length > 0 && (!char.IsLetter(part[0]) || cells.Length < 2 || cells[1].Length == 0))
            {
                return -1;
            }

            if (part.Length == 0 || part.Equals(last, StringComparison.OrdinalIgnoreCase))
            {
                under++;
                continue;
            }

            if (!told.Add(part))
            {
                // "Dairy, dry, dairy": a kind, told again further down.
                return -1;
            }

            parts++;
            last = part;
        }

        return parts > 1 && under >= parts && last.Length > 0 && body[0].Cells[0].Length > 0 ? 0 : -1;
    }

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
        if (plan.Sizes && plan.Food >= 0)
        {
            // Gross and net, one batch and two: the name of a part over its rows, as a table without this column has it.
            return Tables.Planned([(rest, head.Span), .. body], [.. parts.SelectMany(p => p.Part.Length > 0 ? p.Rows.Prepend((Alone(p.Part, plan.Food), p.Rows[0].Span)) : p.Rows)], rest, plan, lang, into);
        }

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

    private static string[] Alone(string part, int column) => [.. Enumerable.Repeat("", column), Folding.Line(part)];

    private static string[] Without(string[] cells, int column) => [.. cells.Where((_, i) => i != column)];
}
