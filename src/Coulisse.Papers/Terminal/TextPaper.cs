using System.Text;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Terminal;

/// <summary>A paper for the terminal, from the same blocks.</summary>
public static class TextPaper
{
    /// <summary>The paper as plain text.</summary>
    public static string Write(Paper paper)
    {
        StringBuilder b = new();
        b.Append(paper.Title).Append('\n');
        foreach (Block block in paper.Blocks)
        {
            b.Append(Of(block));
        }

        return b.Append('\n').Append(System.Globalization.CultureInfo.InvariantCulture, $"{paper.Dish}{(paper.Occasion.Length > 0 ? " · " + paper.Occasion : "")} · version {paper.Mark.Version} · sheet {paper.Content} · printed {paper.Mark.Printed}\n").ToString();
    }

    private static string Of(Block block) => block switch
    {
        HeadingBlock h => $"\n{h.Text}\n",
        ParagraphBlock p => p.Text + "\n",
        FactsBlock f => string.Concat(f.Facts.Select(x => $"  {x.Label}: {(x.Value.Length > 0 ? x.Value : "______")}\n")),
        ListBlock l => string.Concat(l.Entries.Select(x => $"  {x.Mark}  {x.Text}\n")),
        TableBlock t => Table(t),
        FigureBlock f => $"  [drawing: {f.Caption}]\n",
        CalloutBlock c => $"| {c.Title}\n| {c.Text}\n",
        LabelBlock l => $"\n  {l.Name}\n" + string.Concat(l.Facts.Select(x => $"  {x.Label}: {(x.Value.Length > 0 ? x.Value : "______")}\n")) + string.Concat(l.Texts.Select(x => $"  {x}\n")),
        PenLinesBlock p => $"{p.Label}: {string.Concat(Enumerable.Repeat("\n  ________________", p.Count))}\n",
        _ => "",
    };

    private static string Table(TableBlock t)
    {
        string Cell(PaperCell c) => c.Hand switch { ByHand.Tick => "[ ]", ByHand.Write => "____", _ => c.Words.Replace('\n', ' ') };
        int[] widths = [.. t.Columns.Select((c, i) => t.Rows.Where(r => r.Kind != RowKind.Group && i < r.Cells.Length).Select(r => Cell(r.Cells[i]).Length).Append(c.Head.Length).Max())];
        string Line(IEnumerable<string> cells) => "  " + string.Join("  ", cells.Select((c, i) => t.Columns[i].Side == Side.Right ? c.PadLeft(widths[i]) : c.PadRight(widths[i]))).TrimEnd() + "\n";
        StringBuilder b = new();
        b.Append(t.Caption.Length > 0 ? t.Caption + "\n" : "").Append(Line(t.Columns.Select(c => c.Head)));
        foreach (PaperRow row in t.Rows)
        {
            b.Append(row.Kind == RowKind.Group ? row.Cells[0].Text + "\n" : Line(row.Cells.Select(Cell)));
        }

        return b.ToString();
    }
}
