using System.Collections.Immutable;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Pages;

/// <summary>Turns a table into slabs: a head that can be repeated, rows that are not cut unless longer than a page.</summary>
internal sealed class TableSetter(double width, double size, double room, double air)
{
    private const double Leading = 1.26;
    private const double Gap = 0.9;

    private readonly double _line = size * Leading;
    private readonly double _pad = size * 0.32 * ((1 + air) / 2);

    public IEnumerable<Slab> Set(TableBlock table, int id)
    {
        int n = table.Columns.Length;
        double[] widths = Widths(table);
        double[] lefts = new double[n];
        for (int i = 1; i < n; i++)
        {
            lefts[i] = lefts[i - 1] + widths[i - 1] + (size * Gap);
        }

        Slab head = Head(table, id, widths, lefts);
        // A row is cut when it is longer than most of a page, so that a head over it still fits.
        double most = (room - head.Height) * 0.7;
        yield return head with { Before = size * 0.5 };
        List<Slab> rows = [];
        for (int r = 0; r < table.Rows.Length; r++)
        {
            PaperRow row = table.Rows[r];
            bool lastOnes = r == table.Rows.Length - 2 && r > 0;
            bool beforeTotal = r + 1 < table.Rows.Length && table.Rows[r + 1].Kind == RowKind.Total;
            bool keep = beforeTotal || lastOnes || (r == 0 && table.Rows.Length > 1) || (table.Together && r + 1 < table.Rows.Length && table.Rows[r + 1].Kind != RowKind.Group);
            ImmutableArray<Slab> pieces = row.Kind == RowKind.Group ? [Group(row, id, head)] : Row(row, table, id, head, widths, lefts, most);
            rows.AddRange(pieces.Take(pieces.Length - 1));
            rows.Add(pieces[^1] with { KeepIfCan = keep && pieces.Length == 1 && !(lastOnes && table.Together && table.Rows[r + 1].Kind == RowKind.Group) });
        }

        foreach (Slab row in rows)
        {
            yield return row;
        }
    }

    /// <summary>Columns get what they need; what is left goes to those that would wrap, and what is missing is taken from the widest.</summary>
    private double[] Widths(TableBlock table)
    {
        int n = table.Columns.Length;
        double free = width - (size * Gap * (n - 1));
        double[] least = new double[n];
        double[] natural = new double[n];
        for (int i = 0; i < n; i++)
        {
            PaperColumn c = table.Columns[i];
            double pen = c.Pen * PageFormat.Millimetre;
            least[i] = Math.Max(pen, Measure.Widest(c.Head, HeadSize, true));
            natural[i] = Math.Max(pen, Measure.Natural(c.Head, HeadSize, true));
            foreach (PaperRow row in table.Rows.Where(r => r.Kind != RowKind.Group && i < r.Cells.Length))
            {
                PaperCell cell = row.Cells[i];
                bool strong = Strong(cell, c, row);
                double hand = cell.Hand == ByHand.Tick ? size * 1.3 : cell.Hand == ByHand.Write ? Math.Max(pen, size * 4) : 0;
                least[i] = Math.Max(least[i], Math.Max(hand, Math.Min(Math.Max(Measure.Widest(cell.Text, size, strong), Measure.Widest(cell.Lead, size, true)), free * 0.45)));
                natural[i] = Math.Max(natural[i], Math.Max(hand, Math.Max(Measure.Natural(cell.Text, size, strong), Measure.Natural(cell.Lead, size, true))));
            }
        }

        double needed = natural.Sum();
        double[] result = new double[n];
        if (needed <= free)
        {
            // The slack goes to the widest column that holds words, so that figures stay close together.
            int words = Enumerable.Range(0, n).Where(i => table.Columns[i].Side == Side.Left && table.Columns[i].Pen == 0).OrderByDescending(i => natural[i]).Append(-1).First();
            double spare = free - needed;
            for (int i = 0; i < n; i++)
            {
                result[i] = natural[i] + (i == words ? spare : words < 0 ? spare / n : 0);
            }

            return result;
        }

        double floor = least.Sum();
        if (floor >= free)
        {
            return [.. least.Select(l => l * free / floor)];
        }

        return Shared(table, least, natural, free - floor);
    }

    /// <summary>Between least and natural: what is free goes to the columns in proportion to all the text they hold, so that the rows together are as few lines as can be.</summary>
    private double[] Shared(TableBlock table, double[] least, double[] natural, double spare)
    {
        int n = least.Length;
        double[] text = [.. Enumerable.Range(0, n).Select(i => table.Rows.Where(r => r.Kind != RowKind.Group && i < r.Cells.Length).Sum(r => r.Cells[i].Words.Split('\n').Sum(l => Measure.Natural(l, size, false))))];
        double[] result = [.. least];
        for (int round = 0; round < n && spare > 0.01; round++)
        {
            int[] open = [.. Enumerable.Range(0, n).Where(i => natural[i] - result[i] > 0.01)];
            double all = open.Sum(i => text[i]);
            if (all <= 0)
            {
                break;
            }

            double shared = spare;
            foreach (int i in open)
            {
                double more = Math.Min(natural[i] - result[i], shared * text[i] / all);
                result[i] += more;
                spare -= more;
            }
        }

        return result;
    }

    private double HeadSize => size * 0.86;

    private static bool Strong(PaperCell cell, PaperColumn column, PaperRow row) => cell.Strong || column.Strong || row.Kind == RowKind.Total;

    private Slab Head(TableBlock table, int id, double[] widths, double[] lefts)
    {
        ImmutableArray<string>[] lines = [.. table.Columns.Select((c, i) => c.Head.Length == 0 ? [] : Measure.Wrap(c.Head, widths[i], HeadSize, true))];
        int most = lines.Max(l => l.Length);
        double lead = HeadSize * 1.18;
        double height = Math.Max(1, most) * lead + (most == 0 ? 0 : _pad);
        height = most == 0 ? _pad : height;
        ImmutableArray<Piece>.Builder pieces = ImmutableArray.CreateBuilder<Piece>();
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].Length == 0)
            {
                continue;
            }

            // Heads stand on the rule.
            double top = height - _pad - (lines[i].Length * lead);
            pieces.Add(new Piece(PieceTag.HeadCell, Lines(lines[i], lefts[i], widths[i], top + (HeadSize * 0.92), lead, HeadSize, true, table.Columns[i].Side)));
        }

        pieces.Add(new Piece(PieceTag.Artifact, [new RuleOp(0, height, width, height, 0.9)]));
        return new Slab { Height = height, KeepNext = true, Table = id, Pieces = pieces.ToImmutable() };
    }

    private Slab Group(PaperRow row, int id, Slab head)
    {
        string text = row.Cells[0].Text;
        ImmutableArray<string> lines = Measure.Wrap(text, width, size, true);
        double height = (lines.Length * _line) + (_pad * 2.4);
        return new Slab
        {
            Height = height, KeepNext = true, Table = id, Head = head,
            Pieces =
            [
                new Piece(PieceTag.HeadCell, Lines(lines, 0, width, (_pad * 1.8) + (size * 0.95), _line, size, true, Side.Left)),
                new Piece(PieceTag.Artifact, [new RuleOp(0, height, width, height, 0.5)]),
            ],
        };
    }

    private ImmutableArray<Slab> Row(PaperRow row, TableBlock table, int id, Slab head, double[] widths, double[] lefts, double most)
    {
        ImmutableArray<CellLine>[] lines = [.. table.Columns.Select((c, i) => i < row.Cells.Length ? Cell(row.Cells[i], widths[i], Strong(row.Cells[i], c, row)) : [])];
        int count = Math.Max(1, lines.Max(l => l.Length));
        int fit = Math.Max(1, (int)((most - (2 * _pad)) / _line));
        double pen = row.Cells.Any(c => c.Hand == ByHand.Write) ? size * 2.1 : row.Cells.Any(c => c.Hand == ByHand.Tick) ? size * 1.75 : 0;
        ImmutableArray<Slab>.Builder slabs = ImmutableArray.CreateBuilder<Slab>();
        for (int from = 0; from < count; from += fit)
        {
            int take = Math.Min(fit, count - from);
            double height = Math.Max(pen, (take * _line) + (2 * _pad));
            double first = _pad + (size * 0.95);
            ImmutableArray<Piece>.Builder pieces = ImmutableArray.CreateBuilder<Piece>();
            for (int i = 0; i < lines.Length; i++)
            {
                PaperCell? cell = i < row.Cells.Length ? row.Cells[i] : null;
                ImmutableArray<CellLine> part = [.. lines[i].Skip(from).Take(take)];
                ImmutableArray<Op> ops = part.IsEmpty || cell is null ? [] : [.. part.SelectMany((l, k) => Lines([l.Text], lefts[i], widths[i], first + (k * _line), _line, size, l.Strong, table.Columns[i].Side))];
                if (cell?.Hand == ByHand.Tick && from == 0)
                {
                    double box = size * 1.05;
                    double x = lefts[i] + (table.Columns[i].Side switch { Side.Right => widths[i] - box, Side.Centre => (widths[i] - box) / 2, _ => 0 });
                    ops = ops.Add(new BoxOp(x, (height - box) / 2, box, box, 0.8));
                }

                if (cell?.Hand == ByHand.Write && from == 0)
                {
                    ops = ops.Add(new RuleOp(lefts[i], height - (_pad * 1.6), lefts[i] + widths[i], height - (_pad * 1.6), 0.5, 0.25, Dashed: true));
                }

                pieces.Add(new Piece(PieceTag.Cell, ops));
            }

            bool last = from + take >= count;
            Op rule = row.Kind == RowKind.Total ? new RuleOp(0, 0, width, 0, 0.9) : new RuleOp(0, height, width, height, 0.3, 0.55);
            if (row.Kind == RowKind.Total || last)
            {
                pieces.Add(new Piece(PieceTag.Artifact, [rule]));
            }

            slabs.Add(new Slab { Height = height, Table = id, Head = head, Pieces = pieces.ToImmutable() });
        }

        return slabs.ToImmutable();
    }

    private readonly record struct CellLine(string Text, bool Strong);

    private ImmutableArray<CellLine> Cell(PaperCell cell, double wide, bool strong) =>
    [
        .. cell.Lead.Length > 0 ? Measure.Wrap(cell.Lead, wide, size, true).Select(l => new CellLine(l, true)) : [],
        .. cell.Text.Length > 0 ? Measure.Wrap(cell.Text, wide, size, strong).Select(l => new CellLine(l, strong)) : [],
    ];

    private static ImmutableArray<Op> Lines(ImmutableArray<string> lines, double left, double width, double baseline, double lead, double size, bool strong, Side side)
    {
        ImmutableArray<Op>.Builder ops = ImmutableArray.CreateBuilder<Op>();
        for (int k = 0; k < lines.Length; k++)
        {
            double x = side == Side.Left ? left : side == Side.Right ? left + width - Measure.Width(lines[k], size, strong) : left + ((width - Measure.Width(lines[k], size, strong)) / 2);
            ops.Add(new TextOp(x, baseline + (k * lead), lines[k], size, strong));
        }

        return ops.ToImmutable();
    }
}
