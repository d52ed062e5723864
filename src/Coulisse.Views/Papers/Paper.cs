using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Coulisse.Matter.Shapes;

namespace Coulisse.Views.Papers;

/// <summary>One sheet of the trade, in finished words: what is printed, shown in the browser and in the terminal.</summary>
public sealed record Paper
{
    /// <summary>Name for files and choices ("run-sheet", "prep-list-2026-10-09-ada").</summary>
    public required string Id { get; init; }

    /// <summary>Kind as chosen on the command line ("run-sheet").</summary>
    public required string Kind { get; init; }

    /// <summary>Title on the sheet.</summary>
    public required string Title { get; init; }

    /// <summary>Dish or dishes it is of.</summary>
    public required string Dish { get; init; }

    /// <summary>Occasion it is for; empty for a card alone.</summary>
    public string Occasion { get; init; } = "";

    /// <summary>Version mark and hour of the bundle.</summary>
    public required PaperMark Mark { get; init; }

    /// <summary>Whose sheet it is; empty for everybody's.</summary>
    public string Person { get; init; } = "";

    /// <summary>Day it is for; null for a sheet of no one day.</summary>
    public NodaTime.LocalDate? Day { get; init; }

    /// <summary>Language of its words (BCP 47).</summary>
    public string Language { get; init; } = "en";

    /// <summary>Size of running text, points.</summary>
    public double TextSize { get; init; } = 10;

    /// <summary>Turned on its side.</summary>
    public bool Landscape { get; init; }

    /// <summary>What stands on it.</summary>
    public ImmutableArray<Block> Blocks { get; init; } = [];

    /// <summary>Twelve hex digits of what the sheet says, without the mark: equal while nothing on the sheet changed.</summary>
    public string Content => PaperHash.Of(this);
}

/// <summary>What every sheet of a bundle bears.</summary>
/// <param name="Version">Version mark of the bundle.</param>
/// <param name="Printed">Hour of printing, as words.</param>
public sealed record PaperMark(string Version, string Printed);

/// <summary>Hash of a sheet's content, so that a stale sheet can be named.</summary>
internal static class PaperHash
{
    public static string Of(Paper paper)
    {
        StringBuilder b = new();
        b.Append(paper.Id).Append('\u001F').Append(paper.Title).Append('\u001F').Append(paper.Dish).Append('\u001F').Append(paper.Occasion).Append('\u001F').Append(paper.Language).Append('\u001E');
        foreach (Block block in paper.Blocks)
        {
            b.Append(block.GetType().Name).Append('\u001F');
            b.AppendJoin('\u001F', Words(block)).Append('\u001E');
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(b.ToString())))[..12];
    }

    /// <summary>Every word of a block in reading order.</summary>
    internal static IEnumerable<string> Words(Block block) => block switch
    {
        HeadingBlock h => [h.Text],
        ParagraphBlock p => [p.Text],
        FactsBlock f => f.Facts.SelectMany(x => new[] { x.Label, x.Value }),
        ListBlock l => l.Entries.SelectMany(x => new[] { x.Mark, x.Text }),
        TableBlock t => [t.Caption, .. t.Columns.Select(c => c.Head), .. t.Rows.SelectMany(r => r.Cells.Select(c => c.Words))],
        FigureBlock f => [f.Caption, SvgDrawing.Write(f.Drawing)],
        CalloutBlock c => [c.Title, c.Text],
        LabelBlock l => [.. l.Words, l.Code],
        PenLinesBlock p => [p.Label, new string('_', p.Count)],
        _ => [],
    };
}
