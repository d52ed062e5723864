using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>How rounds stand on a tray.</summary>
public enum RoundRows
{
    /// <summary>In square rows.</summary>
    Square,

    /// <summary>In offset rows that run along the tray's length.</summary>
    OffsetAlong,

    /// <summary>In offset rows that run across it.</summary>
    OffsetAcross,
}

/// <summary>Rounds of one size on a tray, cloth or shelf.</summary>
/// <param name="Count">How many stand on one tray in the best of the three ways.</param>
/// <param name="Rows">Which way that is; square when it is as good.</param>
/// <param name="Square">How many in square rows.</param>
/// <param name="OffsetAlong">How many in offset rows along the length.</param>
/// <param name="OffsetAcross">How many in offset rows across it.</param>
/// <param name="LargestPitch">Largest distance from centre to centre that still gives <paramref name="Count"/> in these rows; null for a single round.</param>
/// <param name="LargestRound">Largest round with the same gap that still gives <paramref name="Count"/> in these rows.</param>
/// <param name="NextMore">Largest round with the same gap of which more fit; null above 10,000 a tray.</param>
/// <param name="Centres">Where the centres stand, mm from the tray's corner.</param>
/// <param name="Drawing">To scale.</param>
public sealed record RoundsOnTray(int Count, RoundRows Rows, int Square, int OffsetAlong, int OffsetAcross, Length? LargestPitch, Length LargestRound, Length? NextMore, ImmutableArray<DrawnPoint> Centres, Drawing Drawing)
{
    /// <summary>Fits rounds on a tray.</summary>
    /// <param name="along">Usable length of the tray.</param>
    /// <param name="across">Usable width of the tray.</param>
    /// <param name="round">Diameter as it will be (after spreading).</param>
    /// <param name="gap">Room between two; centre to centre is diameter and gap.</param>
    /// <remarks>
    /// Square ⌊(L+g)/(d+g)⌋ · ⌊(W+g)/(d+g)⌋; offset rows stand (d+g)·√3/2 apart and hold n and n or n − 1 in turn.
    /// A true optimum can be one or two higher for a few large rounds (no published table for oblongs is held).
    /// Check: 600 × 400 mm, 60 mm with 10 mm gap: 40 square, 48 offset.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A measure is zero.</exception>
    public static RoundsOnTray Fit(Length along, Length across, Length round, Length gap = default)
    {
        double l = More(along, nameof(along));
        double w = More(across, nameof(across));
        double d = More(round, nameof(round));
        double g = gap.Millimetres;
        int square = Standing(RoundRows.Square, l, w, d, g);
        int offsetAlong = Standing(RoundRows.OffsetAlong, l, w, d, g);
        int offsetAcross = Standing(RoundRows.OffsetAcross, l, w, d, g);
        int count = Math.Max(square, Math.Max(offsetAlong, offsetAcross));
        RoundRows rows = count == square ? RoundRows.Square : count == offsetAlong ? RoundRows.OffsetAlong : RoundRows.OffsetAcross;
        ImmutableArray<DrawnPoint> centres = Centre(rows, l, w, d, g);
        double largestRound = count == 0 ? 0 : Largest(x => Standing(rows, l, w, x, g) >= count, d, Math.Min(l, w));
        Length? pitch = count <= 1 ? null : Length.FromMillimetres(d + Largest(x => Standing(rows, l, w, d, x) >= count, g, l + w));
        double smaller = count >= 10_000 ? 0 : Largest(x => x <= 0 || Best(l, w, x, g) > count, 0, d);
        Length? more = smaller < 0.1 ? null : Length.FromMillimetres(smaller);
        return new(count, rows, square, offsetAlong, offsetAcross, pitch, Length.FromMillimetres(largestRound), more, centres, Draw(l, w, d, centres));
    }

    /// <summary>Diameters that fill the tray: the widest round of which one, two, three … stand, in the best of the three ways.</summary>
    /// <param name="along">Usable length of the tray.</param>
    /// <param name="across">Usable width of the tray.</param>
    /// <param name="round">Diameter asked for, mm.</param>
    /// <param name="gap">Room between two.</param>
    public static ComesOutEven Sizes(Length along, Length across, Length round, Length gap = default)
    {
        double l = More(along, nameof(along));
        double w = More(across, nameof(across));
        double d = More(round, nameof(round));
        double g = gap.Millimetres;

        // many numbers can share one width, so the row is looked at as far as the next width goes
        return ComesOutEven.Among(d, n => Widest(l, w, n, g), Math.Max(2, Best(l, w, Math.Max(0.1, Widest(l, w, Best(l, w, d, g) + 1, g)), g)));
    }

    /// <summary>Widest round of which n stand, mm.</summary>
    internal static double Widest(double l, double w, int n, double g) => Largest(x => x <= 0 || Best(l, w, x, g) >= n, 0, Math.Min(l, w) + 1);

    /// <summary>Trays for a number of rounds.</summary>
    /// <param name="rounds">How many must stand.</param>
    /// <exception cref="InvalidOperationException">Not one stands on a tray.</exception>
    public int TraysFor(int rounds) => Count > 0 ? (rounds + Count - 1) / Count : throw new InvalidOperationException("Not one fits on the tray.");

    private static double More(Length value, string name) => value.Millimetres > 0
        ? value.Millimetres
        : throw new ArgumentOutOfRangeException(name, value.Millimetres, "A tray and a round measure more than 0 mm.");

    private static int Best(double l, double w, double d, double g)
        => Math.Max(Standing(RoundRows.Square, l, w, d, g), Math.Max(Standing(RoundRows.OffsetAlong, l, w, d, g), Standing(RoundRows.OffsetAcross, l, w, d, g)));

    private static int Standing(RoundRows rows, double l, double w, double d, double g)
    {
        if (rows == RoundRows.OffsetAcross)
        {
            (l, w) = (w, l);
        }

        if (d > l + 1e-9 || d > w + 1e-9)
        {
            return 0;
        }

        double p = d + g;
        int first = 1 + Steps(l - d, p);
        if (rows == RoundRows.Square)
        {
            return first * (1 + Steps(w - d, p));
        }

        int rowCount = 1 + Steps(w - d, p * Math.Sqrt(3) / 2);
        int second = l - d >= p / 2 - 1e-9 ? 1 + Steps(l - d - (p / 2), p) : 0;
        return (first * ((rowCount + 1) / 2)) + (second * (rowCount / 2));
    }

    private static int Steps(double room, double pitch) => Math.Max(0, (int)Math.Floor((room / pitch) + 1e-9));

    private static ImmutableArray<DrawnPoint> Centre(RoundRows rows, double l, double w, double d, double g)
    {
        bool turned = rows == RoundRows.OffsetAcross;
        if (turned)
        {
            (l, w) = (w, l);
        }

        if (d > l + 1e-9 || d > w + 1e-9)
        {
            return [];
        }

        double p = d + g;
        double rise = rows == RoundRows.Square ? p : p * Math.Sqrt(3) / 2;
        ImmutableArray<DrawnPoint>.Builder points = ImmutableArray.CreateBuilder<DrawnPoint>();
        for (int r = 0; r <= Steps(w - d, rise); r++)
        {
            double shift = rows == RoundRows.Square || r % 2 == 0 ? 0 : p / 2;
            double room = l - d - shift;
            for (int c = 0; room > -1e-9 && c <= Steps(room, p); c++)
            {
                double x = (d / 2) + shift + (c * p);
                double y = (d / 2) + (r * rise);
                points.Add(turned ? new(y, x) : new(x, y));
            }
        }

        return points.ToImmutable();
    }

    // Largest x in [from, to] with a property that, once lost, stays lost; it holds at 'from'.
    private static double Largest(Func<double, bool> holds, double from, double to)
    {
        double low = from;
        double high = to;
        for (int i = 0; i < 50; i++)
        {
            double middle = (low + high) / 2;
            if (holds(middle))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    private static Drawing Draw(double l, double w, double d, ImmutableArray<DrawnPoint> centres) => new(
        FormattableString.Invariant($"{centres.Length} rounds of {d:0.#} mm on {l:0.#} × {w:0.#} mm"),
        l,
        w,
        [new RectMark(0, 0, l, w, Ink.Outline), .. centres.Select(c => new CircleMark(c.X, c.Y, d / 2, Ink.Piece))]);
}
