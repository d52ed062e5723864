using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Foods and one column of figures, under a head that names the part and the unit: "Sauerteig      kg" over "Wasser      9,600".</summary>
internal static class HeadedColumn
{
    private const int FewestRows = 2;

    /// <summary>True for such a head over a stroke.</summary>
    public static bool Head(List<RawLine> lines, int i) =>
        i + 2 < lines.Count && lines[i + 2].Block == lines[i].Block && Halves(lines[i].Text) is { } head && head.Right.Length < 30 && ColumnHeads.Weighs(head.Right, "en") && Halves(lines[i + 2].Text) is not null;

    /// <summary>The name of the part that stands right over such a head, without its number ("ELABORACIÓN 1: CARRILLERA" over "Género   Cantidad (kg)"); null for any other line.</summary>
    public static string? Named(List<RawLine> lines, int i, bool opened, string lang)
    {
        if (i + 1 >= lines.Count || lines[i + 1].Block != lines[i].Block || Halves(lines[i + 1].Text) is not { } head || Halves(lines[i].Text) is not null || !TableColumns.Opens(head.Left) || Measure(head, lang) is null || !Listed(lines, i + 1, lang))
        {
            return null;
        }

        string name = Folding.Line(lines[i].Text).Trimmed(" :");
        bool numbered = Parts.Numbered(name);
        int colon = numbered ? name.IndexOf(':') : -1;
        return (opened || numbered) && Looks.Heading(name) ? colon > 0 ? name[(colon + 1)..].Trim() : name : null;
    }

    /// <summary>Adds the parts; false when there are none. <paramref name="end"/> is the place of the first line behind them.</summary>
    public static bool Cut(List<RawLine> lines, int at, string lang, List<Piece> into, out int end)
    {
        end = at;
        int from = into.Count;
        int rows = 0;
        double sum = 0;
        string measure = "";
        string unit = "";
        for (; end < lines.Count && lines[end].Block == lines[at].Block; end++)
        {
            RawLine line = lines[end];
            if (Titles.Rule(line.Text) && rows > 0 || end == at + 1 && Titles.Rule(line.Text))
            {
                continue;
            }

            if (Halves(line.Text) is not { } row)
            {
                if (rows > 0 && Bare(line.Text, lang) is { } printed && Math.Abs(printed - sum) <= sum * 0.005)
                {
                    // A sum that stands alone under its rows.
                    into.Add(new Piece(PieceKind.Item, $"{Sum(lang)}: {line.Text} {unit}".TrimEnd(), line.Span));
                    continue;
                }

                break;
            }

            if (Measure(row, lang) is { } told && Listed(lines, end, lang))
            {
                (measure, unit, sum) = (told, TableColumns.UnitOf(told, lang) ?? "", 0);
                if (!TableColumns.Opens(row.Left))
                {
                    into.Add(new Piece(PieceKind.Heading, row.Left.Trimmed(" :"), line.Span, 2));
                }

                if (told.AsSpan().IndexOfAnyInRange('0', '9') >= 0)
                {
                    into.Add(new Piece(PieceKind.Paragraph, told, line.Span));
                }
            }
            else if (measure.Length > 0 && Amounted(row, lang))
            {
                bool bare = Bare(row.Right, lang) is not null;
                sum += Bare(row.Right, lang) ?? 0;
                rows++;
                string amount = bare ? $"{row.Right} {unit}".TrimEnd() : row.Right;
                bool total = Lexicon.Longest("total", row.Left, 0, 2, lang, out _) is not null;
                // A figure no unit stands by goes behind its food: there it is taken for grams from 40 on, and asked.
                into.Add(new Piece(PieceKind.Item, bare && unit.Length == 0 && !total ? $"{row.Left} {row.Right}" : total ? $"{row.Left}: {amount}" : lang == "ja" ? $"{row.Left} {amount}" : $"{amount} {row.Left}", line.Span));
            }
            else
            {
                break;
            }
        }

        if (rows >= FewestRows)
        {
            return true;
        }

        into.RemoveRange(from, into.Count - from);
        end = at;
        return false;
    }

    /// <summary>What the head over the figures says: a unit, a word for weight, the size of a batch; null for any other row.</summary>
    private static string? Measure((string Left, string Right) row, string lang)
    {
        bool named = row.Left.Length is > 1 and < 50 && (char.IsLetter(row.Left[0]) || char.IsAsciiDigit(row.Left[0]) && Amounts.At(row.Left, 0, lang) is null) && row.Right.Length is > 0 and < 30;
        bool measures = ColumnHeads.Weighs(row.Right, lang) || TableColumns.UnitOf(row.Right, lang) is not null;
        bool batch = row.Right.AsSpan().IndexOfAnyInRange('0', '9') < 0 || Places.HasAny(row.Right, "batch", "charge", "ansatz", "fournée", "hornada", "tirada", "infornata", "仕込み");
        return named && measures && batch && !char.IsAsciiDigit(row.Right[0]) && !ColumnHeads.Price(row.Right) && !ColumnHeads.Share(row.Right) && !ColumnHeads.Rate(row.Right) ? row.Right : null;
    }

    /// <summary>True when a row with an amount stands under the head.</summary>
    private static bool Listed(List<RawLine> lines, int at, string lang)
    {
        int next = at + 1 < lines.Count && Titles.Rule(lines[at + 1].Text) ? at + 2 : at + 1;
        return next < lines.Count && lines[next].Block == lines[at].Block && Halves(lines[next].Text) is { } row && Amounted(row, lang);
    }

    private static bool Amounted((string Left, string Right) row, string lang) =>
        row.Left.Length > 1 && char.IsLetter(row.Left[0]) && row.Right.Length < 40 && (Bare(row.Right, lang) is not null || Amounts.At(row.Right, 0, lang) is { } m && m.End >= row.Right.Length || TableColumns.Said(row.Right, lang));

    private static double? Bare(string s, string lang) =>
        s.Length > 0 && s.All(c => char.IsAsciiDigit(c) || c is '.' or ',') && Numbers.Single(s, 0, lang) is { } n ? n.Min : null;

    private static string Sum(string lang) => lang switch { "de" => "Summe", "it" => "Totale", "ja" => "合計", _ => "Total" };

    /// <summary>The two halves of a row; null for a line with none or with more gaps.</summary>
    private static (string Left, string Right)? Halves(string s)
    {
        if (!s.Contains('\t') && !s.Contains("  ", StringComparison.Ordinal))
        {
            return null;
        }

        string[] cells = s.Contains('\t') ? s.Split('\t', StringSplitOptions.TrimEntries) : s.Split("  ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return cells.Length == 2 && cells[0].Length > 0 && cells[1].Length > 0 && !s.Contains('|') && !Looks.Bullet(s) ? (Folding.Line(cells[0]), Folding.Line(cells[1])) : null;
    }
}
