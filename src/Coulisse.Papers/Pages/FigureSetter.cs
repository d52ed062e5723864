using System.Collections.Immutable;
using Coulisse.Matter.Shapes;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Pages;

/// <summary>Puts a drawing on paper: at 1 to 1 when it fits, else at a round scale that is written under it.</summary>
internal static class FigureSetter
{
    private static readonly double[] Scales = [1, 1 / 2d, 1 / 3d, 1 / 4d, 1 / 5d, 1 / 8d, 1 / 10d, 1 / 20d, 1 / 50d, 1 / 100d];

    public static Slab Set(FigureBlock figure, double width, double most, double size)
    {
        Drawing d = figure.Drawing;
        double mm = PageFormat.Millimetre;
        double caption = size * 0.9;
        double scale = Scales.FirstOrDefault(s => d.Width * s * mm <= width && d.Height * s * mm <= most - (caption * 3), Scales[^1]);
        double k = scale * mm;
        string words = !figure.ToScale ? figure.Caption : $"{figure.Caption} {(scale == 1 ? "Drawn at its true size; print at 100 %." : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Scale 1 : {1 / scale:0}."))}";
        ImmutableArray<string> lines = Measure.Wrap(words, width, caption, false);
        double drawn = d.Height * k;
        ImmutableArray<Op> ops = [.. d.Marks.Select(m => Of(m, k))];
        ImmutableArray<Op> under = [.. lines.Select((l, i) => (Op)new TextOp(0, drawn + (caption * 1.4) + (i * caption * 1.25), l, caption, false))];
        return new Slab
        {
            Height = drawn + (caption * 1.25 * lines.Length) + (caption * 0.6), Before = size * 0.8,
            Pieces = [new Piece(PieceTag.Figure, ops, figure.Caption), new Piece(PieceTag.Paragraph, under)],
        };
    }

    private static Op Of(Mark mark, double k)
    {
        (double weight, double fill, bool dashed) = mark.Ink switch
        {
            Ink.Outline => (0.6, -1d, false),
            Ink.Piece => (0.3, 0.95, false),
            Ink.PieceTwo => (0.3, 0.83, true),
            Ink.Trim => (0.2, 0.9, true),
            Ink.Solid => (0, 0, false),
            _ => (0.2, -1d, true),
        };
        weight *= PageFormat.Millimetre;
        return mark switch
        {
            RectMark r => new PathOp([(r.X * k, r.Y * k), ((r.X + r.Width) * k, r.Y * k), ((r.X + r.Width) * k, (r.Y + r.Height) * k), (r.X * k, (r.Y + r.Height) * k)], true, weight, fill, dashed),
            CircleMark c => new CircleOp(c.X * k, c.Y * k, c.Radius * k, weight, fill, dashed),
            LineMark l => new RuleOp(l.X1 * k, l.Y1 * k, l.X2 * k, l.Y2 * k, weight, 0, dashed),
            PolygonMark p => new PathOp([.. p.Points.Select(q => (q.X * k, q.Y * k))], p.Closed, weight, p.Closed ? fill : -1, dashed),
            TextMark t => Label(t, k),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>Letters of a drawing shrink with it, but never under what can be read.</summary>
    private static TextOp Label(TextMark t, double k)
    {
        double size = Math.Max(6.5, t.Size * k);
        return new TextOp((t.X * k) - (Measure.Width(t.Text, size, false) / 2), t.Y * k, t.Text, size, false);
    }
}
