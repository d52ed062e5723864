using System.Collections.Immutable;

namespace Coulisse.Matter.Shapes;

/// <summary>Best number of equal pieces from a block when every cut goes from edge to edge of what is left and pieces may be turned.</summary>
/// <remarks>
/// Exact recursion over the block: only cuts at sums of piece lengths can matter ("normal" cuts), so sizes are rounded down to such sums and each size is solved once.
/// Kerf is dealt with by adding it once to block and piece. Where the block would need more than <c>Budget</c> trials, the best split into two blocks
/// of strips is given instead and marked as not proven; with very many pieces it is split at whole rows and columns only, from either side.
/// </remarks>
internal sealed class GuillotineCut
{
    private const double Budget = 1e6;
    private const int LongestRow = 1500;
    private const double Slack = 1e-7;
    private readonly double _a;
    private readonly double _b;
    private readonly double _l;
    private readonly double _w;
    private double[] _xs = [];
    private double[] _ys = [];
    private int[] _best = [];
    private int[] _cut = [];
    private double _split;

    private GuillotineCut(double l, double w, double a, double b)
    {
        _l = l;
        _w = w;
        _a = a;
        _b = b;
    }

    public int Count { get; private set; }

    public bool Proven { get; private set; }

    /// <summary>Solves; gives up early when a plain grid of <paramref name="grid"/> already meets the bound by area.</summary>
    public static GuillotineCut Best(double l, double w, double a, double b, int grid)
    {
        GuillotineCut g = new(l, w, a, b);
        if (grid >= Math.Floor((l * w / (a * b)) + 1e-9))
        {
            g.Count = grid;
            g.Proven = true;
            return g;
        }

        if (Math.Max(l, w) / Math.Min(a, b) > LongestRow)
        {
            g.Count = grid;
            return g;
        }

        // With thousands of pieces listing every sum of lengths takes longer than all else; (l/a)(l/b)/2 is the most there can be.
        double mostX = ((l / a) + 1) * ((l / b) + 1) / 2;
        double mostY = ((w / a) + 1) * ((w / b) + 1) / 2;
        bool listed = mostX * mostY * (mostX + mostY) / 2 <= 4 * Budget;
        g._xs = listed ? Sums(l, a, b) : Edges(l, a, b);
        g._ys = listed ? Sums(w, a, b) : Edges(w, a, b);
        double trials = (double)g._xs.Length * g._ys.Length * (g._xs.Length + g._ys.Length) / 2;
        if (listed && trials <= Budget)
        {
            g.Exhaust();
            g.Proven = true;
        }
        else
        {
            g.TwoBlocks();
        }

        return g;
    }

    /// <summary>The pieces of the best layout, without their kerf, shifted by the edge.</summary>
    public ImmutableArray<CutPiece> Pieces(double kerf, double edge)
    {
        List<CutPiece> into = [];
        if (_best.Length > 0)
        {
            Collect(Floor(_xs, _l), Floor(_ys, _w), edge, edge, kerf, into);
        }
        else if (_split > 0)
        {
            Strips(_split, _w, edge, edge, kerf, into);
            Strips(_l - _split, _w, edge + _split, edge, kerf, into);
        }
        else
        {
            Strips(_l, -_split, edge, edge, kerf, into);
            Strips(_l, _w + _split, edge, edge - _split, kerf, into);
        }

        return [.. into];
    }

    private static double[] Sums(double room, double a, double b)
    {
        List<double> all = [0];
        for (double x = 0; x <= room + Slack; x += a)
        {
            for (double y = x; y <= room + Slack; y += b)
            {
                all.Add(y);
            }
        }

        all.Sort();
        List<double> distinct = [all[0]];
        foreach (double v in all)
        {
            if (v > distinct[^1] + Slack)
            {
                distinct.Add(v);
            }
        }

        return [.. distinct];
    }

    // Whole rows of either kind from one side or the other.
    private static double[] Edges(double room, double a, double b)
    {
        SortedSet<double> all = [0];
        foreach (double side in (ReadOnlySpan<double>)[a, b])
        {
            for (double x = side; x <= room + Slack; x += side)
            {
                all.Add(x);
                all.Add(Math.Max(0, room - x));
            }
        }

        return [.. all];
    }

    // Last sum that is no longer than the room.
    private static int Floor(double[] sums, double room)
    {
        int low = 0;
        int high = sums.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (sums[middle] <= room + Slack)
            {
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        return low;
    }

    private void Exhaust()
    {
        int nx = _xs.Length;
        int ny = _ys.Length;
        _best = new int[nx * ny];
        _cut = new int[nx * ny];
        int[][] restX = Rests(_xs);
        int[][] restY = Rests(_ys);
        for (int i = 1; i < nx; i++)
        {
            for (int j = 1; j < ny; j++)
            {
                bool straight = _xs[i] >= _a - Slack && _ys[j] >= _b - Slack;
                bool turned = _xs[i] >= _b - Slack && _ys[j] >= _a - Slack;
                int best = straight || turned ? 1 : 0;
                int cut = 0;
                int bound = (int)Math.Floor((_xs[i] * _ys[j] / (_a * _b)) + 1e-9);
                int[] rx = restX[i];
                for (int p = 1; p < rx.Length && best < bound; p++)
                {
                    int n = _best[(p * ny) + j] + _best[(rx[p] * ny) + j];
                    if (n > best)
                    {
                        best = n;
                        cut = p;
                    }
                }

                int[] ry = restY[j];
                for (int p = 1; p < ry.Length && best < bound; p++)
                {
                    int n = _best[(i * ny) + p] + _best[(i * ny) + ry[p]];
                    if (n > best)
                    {
                        best = n;
                        cut = -p;
                    }
                }

                _best[(i * ny) + j] = best;
                _cut[(i * ny) + j] = cut;
            }
        }

        Count = _best[(Floor(_xs, _l) * ny) + Floor(_ys, _w)];
    }

    // For each size, the rest after a cut at p, for p up to half the size.
    private static int[][] Rests(double[] sums)
    {
        int[][] rests = new int[sums.Length][];
        for (int i = 0; i < sums.Length; i++)
        {
            int half = Floor(sums, sums[i] / 2);
            rests[i] = new int[half + 1];
            for (int p = 1; p <= half; p++)
            {
                rests[i][p] = Floor(sums, sums[i] - sums[p]);
            }
        }

        return rests;
    }

    private void Collect(int i, int j, double x, double y, double kerf, List<CutPiece> into)
    {
        int ny = _ys.Length;
        int cut = _cut[(i * ny) + j];
        if (cut > 0)
        {
            Collect(cut, j, x, y, kerf, into);
            Collect(Floor(_xs, _xs[i] - _xs[cut]), j, x + _xs[cut], y, kerf, into);
        }
        else if (cut < 0)
        {
            Collect(i, -cut, x, y, kerf, into);
            Collect(i, Floor(_ys, _ys[j] - _ys[-cut]), x, y + _ys[-cut], kerf, into);
        }
        else if (_best[(i * ny) + j] == 1)
        {
            bool straight = _xs[i] >= _a - Slack && _ys[j] >= _b - Slack;
            into.Add(straight
                ? new(x, y, _a - kerf, _b - kerf, Turned: false)
                : new(x, y, _b - kerf, _a - kerf, Turned: true));
        }
    }

    private void TwoBlocks()
    {
        Count = -1;
        foreach (double x in _xs)
        {
            int n = StripCount(x, _w) + StripCount(_l - x, _w);
            if (n > Count)
            {
                Count = n;
                _split = x;
            }
        }

        foreach (double y in _ys)
        {
            int n = StripCount(_l, y) + StripCount(_l, _w - y);
            if (n > Count)
            {
                Count = n;
                _split = -y;
            }
        }

        Proven = Count >= Math.Floor((_l * _w / (_a * _b)) + 1e-9);
    }

    private int StripCount(double x, double y) => Math.Max(Rows(x, y, _a, _b).Count, Rows(y, x, _a, _b).Count);

    // Rows across x: m rows of height b holding ⌊x/a⌋, the others of height a holding ⌊x/b⌋.
    private static (int Count, int Straight, int Turned) Rows(double x, double y, double a, double b)
    {
        int acrossStraight = (int)Math.Floor((x / a) + 1e-9);
        int acrossTurned = (int)Math.Floor((x / b) + 1e-9);
        (int Count, int Straight, int Turned) best = (0, 0, 0);
        for (int m = 0; (m * b) <= y + Slack; m++)
        {
            int n = (int)Math.Floor(((y - (m * b)) / a) + 1e-9);
            int count = (m * acrossStraight) + (n * acrossTurned);
            if (count > best.Count)
            {
                best = (count, m, n);
            }
        }

        return best;
    }

    private void Strips(double x, double y, double atX, double atY, double kerf, List<CutPiece> into)
    {
        (int Count, int Straight, int Turned) rows = Rows(x, y, _a, _b);
        (int Count, int Straight, int Turned) columns = Rows(y, x, _a, _b);
        bool byRows = rows.Count >= columns.Count;
        (double length, double breadth) = byRows ? (x, y) : (y, x);
        (_, int straight, int turned) = byRows ? rows : columns;
        _ = breadth;
        double at = 0;
        for (int r = 0; r < straight + turned; r++)
        {
            bool first = r < straight;
            double along = first ? _a : _b;
            double high = first ? _b : _a;
            for (int c = 0; c < (int)Math.Floor((length / along) + 1e-9); c++)
            {
                // in columns the axes are swapped: a piece that is "straight" in its own strip lies turned in the block
                into.Add(byRows
                    ? new(atX + (c * along), atY + at, along - kerf, high - kerf, Turned: !first)
                    : new(atX + at, atY + (c * along), high - kerf, along - kerf, Turned: first));
            }

            at += high;
        }
    }
}
