using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>Cuts a block, frame, slab or sheet into equal oblong pieces: both ways round, and mixed when that gives more.</summary>
/// <remarks>
/// Grid: n = ⌊(L + k)/(a + k)⌋ · ⌊(W + k)/(b + k)⌋, k the width of the cut (hot knife 0 to 1 mm, saw or wire 1.5 to 3 mm: common practice, no source), L and W after the edges are trimmed.
/// Check: 580 × 380 mm into 90 × 30 mm with 1.5 mm kerf gives 72; 320 × 210 mm into 40 × 30 mm gives 8 × 7 = 56.
/// </remarks>
public static class Cutting
{
    /// <summary>As many pieces as fit.</summary>
    /// <param name="along">Length of the block.</param>
    /// <param name="across">Width of the block.</param>
    /// <param name="pieceAlong">Length of a piece.</param>
    /// <param name="pieceAcross">Width of a piece.</param>
    /// <param name="kerf">Width lost at each cut.</param>
    /// <param name="edge">Trimmed from every side first.</param>
    /// <param name="mayTurn">False when the grain or a pattern fixes the way the pieces lie.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is zero, or the edges leave nothing.</exception>
    public static CutPlan Fit(Length along, Length across, Length pieceAlong, Length pieceAcross, Length kerf = default, Length edge = default, bool mayTurn = true)
    {
        (double l, double w) = Inside(along, across, edge);
        double k = kerf.Millimetres;
        double a = More(pieceAlong, nameof(pieceAlong));
        double b = More(pieceAcross, nameof(pieceAcross));
        int straight = Along(l, a, k) * Along(w, b, k);
        int turned = mayTurn ? Along(l, b, k) * Along(w, a, k) : 0;
        int count = Math.Max(straight, turned);
        CutLayout layout = turned > straight ? CutLayout.Turned : CutLayout.Straight;
        ImmutableArray<CutPiece> pieces;
        bool proven = true;
        if (mayTurn)
        {
            GuillotineCut mixed = GuillotineCut.Best(l + k, w + k, a + k, b + k, count);
            proven = mixed.Proven;
            if (mixed.Count > count)
            {
                count = mixed.Count;
                layout = CutLayout.Mixed;
            }

            pieces = layout == CutLayout.Mixed ? mixed.Pieces(k, edge.Millimetres) : Grid(l, w, a, b, k, edge.Millimetres, layout);
        }
        else
        {
            pieces = Grid(l, w, a, b, k, edge.Millimetres, layout);
        }

        int columns = layout == CutLayout.Turned ? Along(l, b, k) : Along(l, a, k);
        int rows = layout == CutLayout.Turned ? Along(w, a, k) : Along(w, b, k);
        return new()
        {
            Count = count,
            Straight = straight,
            Turned = turned,
            Layout = layout,
            Proven = proven,
            Pieces = pieces,
            Block = along * across,
            Used = Area.FromSquareMillimetres(count * a * b),
            Even = columns * rows > 0 ? Stretched(l, w, k, columns, rows) : null,
            NextFewer = FewerPieces(l, w, k, count, columns, rows),
            NextMore = MorePieces(l, w, k, count, columns, rows),
            Drawing = Draw(along.Millimetres, across.Millimetres, edge.Millimetres, a, b, pieces),
        };
    }

    /// <summary>A given number of columns and rows: what size the pieces get.</summary>
    /// <param name="along">Length of the block.</param>
    /// <param name="across">Width of the block.</param>
    /// <param name="columns">Pieces along the length, 1 or more.</param>
    /// <param name="rows">Pieces along the width, 1 or more.</param>
    /// <param name="kerf">Width lost at each cut.</param>
    /// <param name="edge">Trimmed from every side first.</param>
    /// <remarks>Check: 330 × 230 mm into 7 × 4 gives pieces of 47.1 × 57.5 mm.</remarks>
    public static EvenCut Into(Length along, Length across, int columns, int rows, Length kerf = default, Length edge = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 1);
        (double l, double w) = Inside(along, across, edge);
        return Stretched(l, w, kerf.Millimetres, columns, rows)
            ?? throw new ArgumentOutOfRangeException(nameof(kerf), kerf.Millimetres, "The cuts alone are wider than the block.");
    }

    // The tolerance keeps pieces that fit exactly (230 / 4) from being lost to the last bit of a double.
    private static int Along(double room, double piece, double kerf) => (int)Math.Floor(((room + kerf) / (piece + kerf)) + 1e-9);

    private static double More(Length value, string name) => value.Millimetres > 0
        ? value.Millimetres
        : throw new ArgumentOutOfRangeException(name, value.Millimetres, "A piece measures more than 0 mm.");

    private static (double L, double W) Inside(Length along, Length across, Length edge)
    {
        double l = along.Millimetres - (2 * edge.Millimetres);
        double w = across.Millimetres - (2 * edge.Millimetres);
        return l > 0 && w > 0
            ? (l, w)
            : throw new ArgumentOutOfRangeException(nameof(edge), edge.Millimetres, FormattableString.Invariant($"A block of {along.Millimetres:0.#} × {across.Millimetres:0.#} mm must be more than twice the edge on both sides."));
    }

    private static ImmutableArray<CutPiece> Grid(double l, double w, double a, double b, double k, double edge, CutLayout layout)
    {
        bool turn = layout == CutLayout.Turned;
        (double x, double y) = turn ? (b, a) : (a, b);
        int columns = Along(l, x, k);
        int rows = Along(w, y, k);
        ImmutableArray<CutPiece>.Builder pieces = ImmutableArray.CreateBuilder<CutPiece>(columns * rows);
        for (int r = 0; r < rows; r++)
        {
            for (int c = 0; c < columns; c++)
            {
                pieces.Add(new(edge + (c * (x + k)), edge + (r * (y + k)), x, y, turn));
            }
        }

        return pieces.MoveToImmutable();
    }

    private static EvenCut? Stretched(double l, double w, double k, int columns, int rows)
    {
        if (columns < 1 || rows < 1)
        {
            return null;
        }

        double x = ((l + k) / columns) - k;
        double y = ((w + k) / rows) - k;
        return x > 0 && y > 0 ? new(columns, rows, Length.FromMillimetres(x), Length.FromMillimetres(y)) : null;
    }

    // The same columns and rows or fewer of them (larger pieces), the same or more (smaller ones): of those grids the one next to the count.
    private static EvenCut? FewerPieces(double l, double w, double k, int count, int columns, int rows)
    {
        (int C, int R)[] grids = columns * rows < count ? [(columns, rows)] : [(columns - 1, rows), (columns, rows - 1)];
        return grids.Where(g => g.C > 0 && g.R > 0).OrderByDescending(g => g.C * g.R).Select(g => Stretched(l, w, k, g.C, g.R)).FirstOrDefault(c => c is not null);
    }

    private static EvenCut? MorePieces(double l, double w, double k, int count, int columns, int rows)
    {
        EvenCut? best = null;
        for (int c = Math.Max(1, columns); best is null ? c <= columns + count + 1 : c * Math.Max(1, rows) < best.Count; c++)
        {
            EvenCut? cut = Stretched(l, w, k, c, Math.Max(Math.Max(1, rows), (count / c) + 1));
            best = cut is not null && (best is null || cut.Count < best.Count) ? cut : best;
        }

        return best;
    }

    private static Drawing Draw(double along, double across, double edge, double a, double b, ImmutableArray<CutPiece> pieces)
    {
        ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new RectMark(0, 0, along, across, Ink.Trim));
        foreach (CutPiece p in pieces)
        {
            marks.Add(new RectMark(p.X, p.Y, p.Width, p.Height, p.Turned ? Ink.PieceTwo : Ink.Piece));
        }

        if (edge > 0)
        {
            marks.Add(new RectMark(edge, edge, along - (2 * edge), across - (2 * edge), Ink.Guide));
        }

        marks.Add(new RectMark(0, 0, along, across, Ink.Outline));
        return new(FormattableString.Invariant($"{pieces.Length} pieces of {a:0.#} × {b:0.#} mm from {along:0.#} × {across:0.#} mm"), along, across, marks.ToImmutable());
    }
}
