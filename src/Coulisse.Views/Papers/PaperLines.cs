using System.Collections.Immutable;

namespace Coulisse.Views.Papers;

/// <summary>What a paper says, a line for each row, fact, entry or paragraph: for comparing two editions of one sheet.</summary>
public static class PaperLines
{
    /// <summary>The lines in reading order; blank ones are left out.</summary>
    public static ImmutableArray<string> Of(Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return [.. paper.Blocks.SelectMany(Of).Select(l => l.Trim()).Where(l => l.Length > 0)];
    }

    private static IEnumerable<string> Of(Block block) => block switch
    {
        HeadingBlock h => [h.Text],
        ParagraphBlock p => [p.Text],
        FactsBlock f => f.Facts.Where(x => x.Value.Length > 0).Select(x => $"{x.Label}: {x.Value}"),
        ListBlock l => l.Entries.Select(x => $"{x.Mark} {x.Text}"),
        TableBlock t => t.Rows.Select(r => string.Join("  ", r.Cells.Select(c => c.Words).Where(c => c.Length > 0))),
        CalloutBlock c => [$"{c.Title}: {c.Text}"],
        FigureBlock f => [f.Caption],
        LabelBlock l => [string.Join("  ", l.Words)],
        _ => [],
    };
}
