using System.Collections.Immutable;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Pages;

/// <summary>Turns the blocks of a paper into slabs of one width.</summary>
/// <param name="width">Width of the body.</param>
/// <param name="size">Size of running text.</param>
/// <param name="room">Height of the body of a page.</param>
/// <param name="air">Share of the usual blank between blocks and inside rows; 1 for all of it.</param>
internal sealed class BlockSetter(double width, double size, double room, double air = 1)
{
    private const double Leading = 1.3;

    private int _table;

    public IEnumerable<Slab> Set(Paper paper)
    {
        yield return Title(paper);
        bool breaks = false;
        for (int i = 0; i < paper.Blocks.Length; i++)
        {
            Block block = paper.Blocks[i];
            if (block is PageBreakBlock)
            {
                breaks = true;
                continue;
            }

            // Facts under a heading say what the table under them is of: neither is left alone at the foot of a page.
            bool leads = block is FactsBlock && i > 0 && paper.Blocks[i - 1] is HeadingBlock && i + 1 < paper.Blocks.Length && paper.Blocks[i + 1] is TableBlock or HeadingBlock or FigureBlock;
            foreach (Slab slab in Of(block))
            {
                yield return slab with { PageFirst = breaks || slab.PageFirst, KeepNext = leads || slab.KeepNext, Before = slab.Before * air };
                breaks = false;
            }
        }
    }

    private Slab Title(Paper paper)
    {
        double big = size * 1.9;
        ImmutableArray<string> lines = Measure.Wrap(paper.Title.Trim().Length > 0 ? paper.Title : "(no title)", width, big, true);
        ImmutableArray<Op> ops = Text(lines, 0, big * 0.95, big * 1.12, big, true);
        return new Slab { Height = (lines.Length * big * 1.12) + (size * 0.3), KeepNext = true, Pieces = [new Piece(PieceTag.Title, ops)] };
    }

    private IEnumerable<Slab> Of(Block block) => block switch
    {
        HeadingBlock h => [Heading(h)],
        ParagraphBlock p => Paragraph(p.Text, 0, p.Small ? size * 0.86 : size, p.Strong, size * 0.45, PieceTag.Paragraph),
        FactsBlock f => Facts(f),
        ListBlock l => l.Entries.SelectMany(e => Entry(l, e)),
        TableBlock t => Table(t),
        FigureBlock f => [FigureSetter.Set(f, width, room * f.Share, size)],
        CalloutBlock c => Callout(c),
        PenLinesBlock p => PenLines(p),
        _ => [],
    };

    private Slab Heading(HeadingBlock h)
    {
        double s = h.Level <= 1 ? size * 1.3 : size * 1.08;
        ImmutableArray<string> lines = Measure.Wrap(h.Text, width, s, true);
        double height = (lines.Length * s * 1.2) + (size * 0.2);
        return new Slab
        {
            Height = height, Before = h.Level <= 1 ? size * 1.3 : size * 0.9, KeepNext = true,
            Pieces = [new Piece(h.Level <= 1 ? PieceTag.Heading1 : PieceTag.Heading2, Text(lines, 0, s * 0.95, s * 1.2, s, true))],
        };
    }

    /// <summary>A slab a line, so that a paragraph may be cut; the first two and the last two lines stay together.</summary>
    private IEnumerable<Slab> Paragraph(string text, double indent, double s, bool strong, double before, PieceTag tag, double lead = Leading)
    {
        ImmutableArray<string> lines = Measure.Wrap(text, width - indent, s, strong);
        for (int i = 0; i < lines.Length; i++)
        {
            bool keep = lines.Length > 1 && (i == 0 || i == lines.Length - 2);
            yield return new Slab { Height = s * lead, Before = i == 0 ? before : 0, KeepNext = keep, Pieces = [new Piece(tag, [new TextOp(indent, s * 0.98, lines[i], s, strong)])] };
        }
    }

    private IEnumerable<Slab> Entry(ListBlock list, ListEntry entry)
    {
        double indent = Math.Min(width * 0.3, list.Entries.Max(e => Measure.Width(e.Mark, size, true)) + (size * 0.7));
        bool first = true;
        foreach (Slab slab in Paragraph(entry.Text, indent, size, false, size * 0.4, PieceTag.ListItem))
        {
            yield return first && entry.Mark.Length > 0
                ? slab with { Pieces = [slab.Pieces[0] with { Ops = slab.Pieces[0].Ops.Insert(0, new TextOp(0, size * 0.98, entry.Mark, size, true)) }] }
                : slab;
            first = false;
        }
    }

    /// <summary>Facts in columns: the label small above its value.</summary>
    private IEnumerable<Slab> Facts(FactsBlock facts)
    {
        // Four stand beside each other on an upright sheet, six on one that lies.
        double gap = size * 1.2;
        int across = Math.Clamp((int)((width + gap) / ((size * 9.5) + gap)), 1, width > 600 ? 6 : 4);
        double column = (width - (gap * (across - 1))) / across;
        double small = size * 0.8;
        for (int i = 0; i < facts.Facts.Length; i += across)
        {
            ImmutableArray<Piece>.Builder pieces = ImmutableArray.CreateBuilder<Piece>();
            int most = 1;
            foreach ((Fact fact, int k) in facts.Facts.Skip(i).Take(across).Select((f, k) => (f, k)))
            {
                double x = k * (column + gap);
                ImmutableArray<string> label = Measure.Wrap(fact.Label, column, small, false);
                ImmutableArray<string> value = Measure.Wrap(fact.Value, column, size, true);
                ImmutableArray<Op> ops = [.. Text(label, x, small, small * 1.2, small, false), .. Text(value, x, (label.Length * small * 1.2) + (size * 1.0), size * 1.25, size, true)];
                double under = (label.Length * small * 1.2) + (size * 1.15);
                pieces.Add(new Piece(PieceTag.Paragraph, fact.Value.Length > 0 ? ops : ops.Add(new RuleOp(x, under, x + column, under, 0.5, 0.25, Dashed: true))));
                most = Math.Max(most, (int)Math.Ceiling(((label.Length * small * 1.2) + (value.Length * size * 1.25)) / (size * 0.25)));
            }

            yield return new Slab { Height = most * size * 0.25, Before = size * 0.55, Pieces = pieces.ToImmutable() };
        }
    }

    private IEnumerable<Slab> Table(TableBlock table)
    {
        if (table.Caption.Length > 0)
        {
            foreach (Slab slab in Paragraph(table.Caption, 0, size * 0.9, false, size * 0.6, PieceTag.Paragraph))
            {
                yield return slab with { KeepNext = true };
            }
        }

        if (table.Columns.IsEmpty)
        {
            yield break;
        }

        _table++;
        foreach (Slab slab in new TableSetter(width, size, room, air).Set(table, _table))
        {
            yield return slab;
        }
    }

    private IEnumerable<Slab> Callout(CalloutBlock c)
    {
        double indent = size * 1.1;
        double pad = size * 0.25;
        bool first = true;
        IEnumerable<Slab> lines = [.. Paragraph(c.Title, indent, size, true, size * 0.7, PieceTag.Paragraph).Select(s => s with { KeepNext = true }), .. c.Text.Length > 0 ? Paragraph(c.Text, indent, size, false, 0, PieceTag.Paragraph) : []];
        foreach (Slab slab in lines)
        {
            yield return slab with
            {
                Before = first ? size * 0.7 : 0,
                Height = slab.Height,
                Pieces = slab.Pieces.Add(new Piece(PieceTag.Artifact, [new BoxOp(pad, 0, size * 0.32, slab.Height, 0, 0)])),
            };
            first = false;
        }
    }

    private IEnumerable<Slab> PenLines(PenLinesBlock p)
    {
        foreach (Slab slab in Paragraph(p.Label, 0, size, true, size * 0.9, PieceTag.Paragraph))
        {
            yield return slab with { KeepNext = true };
        }

        double step = Math.Max(size * 2.2, 8 * PageFormat.Millimetre);
        for (int i = 0; i < p.Count; i++)
        {
            yield return new Slab { Height = step, KeepNext = i + 1 < p.Count && i == 0, Pieces = [new Piece(PieceTag.Artifact, [new RuleOp(0, step - 1, width, step - 1, 0.5, 0.25, Dashed: true)])] };
        }
    }

    private static ImmutableArray<Op> Text(ImmutableArray<string> lines, double x, double baseline, double lead, double s, bool strong)
        => [.. lines.Select((l, i) => (Op)new TextOp(x, baseline + (i * lead), l, s, strong))];
}
