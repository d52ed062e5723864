using System.Collections.Immutable;
using Coulisse.Matter.Shapes;

namespace Coulisse.Views.Papers;

/// <summary>A piece of a paper: finished words, no page yet. A closed family; PDF, HTML and terminal are written from the same blocks.</summary>
public abstract record Block
{
    private protected Block()
    {
    }
}

/// <summary>A heading inside a paper; level 1 stands under the paper's title.</summary>
public sealed record HeadingBlock(int Level, string Text) : Block;

/// <summary>Running text.</summary>
public sealed record ParagraphBlock(string Text, bool Strong = false, bool Small = false) : Block;

/// <summary>Short facts, each with its label ("Serves  53").</summary>
public sealed record FactsBlock(ImmutableArray<Fact> Facts) : Block;

/// <summary>A label and what stands behind it; an empty value is a place to write.</summary>
public sealed record Fact(string Label, string Value);

/// <summary>A numbered or marked list.</summary>
public sealed record ListBlock(ImmutableArray<ListEntry> Entries) : Block;

/// <summary>An entry with its mark ("1", "–").</summary>
public sealed record ListEntry(string Mark, string Text);

/// <summary>A table whose head is repeated on every page it reaches.</summary>
public sealed record TableBlock(ImmutableArray<PaperColumn> Columns, ImmutableArray<PaperRow> Rows, string Caption = "") : Block
{
    /// <summary>Rows of one head are not parted, nor the rows of a table without heads, as far as a page is long enough.</summary>
    public bool Together { get; init; }

    /// <summary>The table without columns in which nothing stands and nothing is written by hand.</summary>
    public TableBlock Tidy()
    {
        int[] kept = [.. Enumerable.Range(0, Columns.Length).Where(i => Columns[i].Pen > 0 || Rows.Any(r => r.Kind != RowKind.Group && i < r.Cells.Length && (r.Cells[i].Words.Length > 0 || r.Cells[i].Hand != ByHand.Nothing)))];
        if (kept.Length == 0)
        {
            return this;   // heads of groups alone still have something to say
        }

        return this with
        {
            Columns = [.. kept.Select(i => Columns[i])],
            Rows = [.. Rows.Select(r => r.Kind == RowKind.Group ? r : r with { Cells = [.. kept.Select(i => i < r.Cells.Length ? r.Cells[i] : new PaperCell(""))] })],
        };
    }
}

/// <summary>How a column stands.</summary>
public enum Side
{
    Left,
    Right,
    Centre,
}

/// <summary>A column.</summary>
/// <param name="Head">Its head; may be empty.</param>
/// <param name="Side">Figures stand right.</param>
/// <param name="Pen">Least width in millimetres that a pen needs; 0 when nothing is written by hand.</param>
/// <param name="Strong">Set in bold.</param>
public sealed record PaperColumn(string Head, Side Side = Side.Left, double Pen = 0, bool Strong = false);

/// <summary>What a row is.</summary>
public enum RowKind
{
    Body,

    /// <summary>A head over the rows that follow; never the last row of a page.</summary>
    Group,

    /// <summary>A total; never parted from the row before it.</summary>
    Total,
}

/// <summary>A row.</summary>
public sealed record PaperRow(ImmutableArray<PaperCell> Cells, RowKind Kind = RowKind.Body)
{
    /// <summary>A row of plain texts.</summary>
    public static PaperRow Of(params ReadOnlySpan<string> cells) => new([.. cells.ToArray().Select(c => new PaperCell(c))]);

    /// <summary>A head over the rows that follow.</summary>
    public static PaperRow Group(string text) => new([new PaperCell(text)], RowKind.Group);

    /// <summary>A total.</summary>
    public static PaperRow Total(params ReadOnlySpan<string> cells) => new([.. cells.ToArray().Select(c => new PaperCell(c))], RowKind.Total);
}

/// <summary>What the hand puts into a cell.</summary>
public enum ByHand
{
    Nothing,

    /// <summary>A box to tick.</summary>
    Tick,

    /// <summary>A line to write on.</summary>
    Write,
}

/// <summary>A cell.</summary>
public sealed record PaperCell(string Text, bool Strong = false, ByHand Hand = ByHand.Nothing)
{
    /// <summary>A box to tick.</summary>
    public static PaperCell Tick { get; } = new("", Hand: ByHand.Tick);

    /// <summary>A place to write.</summary>
    public static PaperCell Blank { get; } = new("", Hand: ByHand.Write);

    /// <summary>What the text is of, in bold on a line of its own above it; empty for none.</summary>
    public string Lead { get; init; } = "";

    /// <summary>All that is read in it: what it is of, then the text.</summary>
    public string Words => Lead.Length == 0 ? Text : (Lead + " " + Text).TrimEnd();

    public static implicit operator PaperCell(string text) => new(text);
}

/// <summary>A drawing to scale with its line.</summary>
/// <param name="Drawing">Marks in millimetres.</param>
/// <param name="Caption">What it shows; also the text for those who cannot see it.</param>
/// <param name="Share">Most of a page's height it may take.</param>
/// <param name="ToScale">The drawing is of a thing, so its scale is said; false for a chart.</param>
public sealed record FigureBlock(Drawing Drawing, string Caption, double Share = 0.85, bool ToScale = true) : Block;

/// <summary>Something not to be missed: a limit, an allergen, a question. Told by a heavy bar and its word, never by colour.</summary>
public sealed record CalloutBlock(string Title, string Text) : Block;

/// <summary>One label. A paper of labels holds nothing else.</summary>
/// <param name="Name">What is in it, large.</param>
/// <param name="Facts">Made, use by, batch …; an empty value is a place to write.</param>
/// <param name="Texts">Running text in order: allergens, ingredients.</param>
/// <param name="Code">What its square code holds; empty for none.</param>
public sealed record LabelBlock(string Name, ImmutableArray<Fact> Facts, ImmutableArray<string> Texts, string Code = "") : Block
{
    /// <summary>Every word of it in reading order.</summary>
    public IEnumerable<string> Words => [Name, .. Facts.SelectMany(f => new[] { f.Label, f.Value }), .. Texts];
}

/// <summary>Lines for a pen.</summary>
public sealed record PenLinesBlock(string Label, int Count) : Block;

/// <summary>The next block begins a page.</summary>
public sealed record PageBreakBlock : Block;
