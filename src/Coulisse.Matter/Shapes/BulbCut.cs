using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A root or bulb peeled, sliced across and stamped or diced: pieces from each, pieces to buy, usable share.</summary>
/// <param name="Whole">As bought.</param>
/// <param name="Peeled">After peeling.</param>
/// <param name="Slices">Slices wide enough for a piece.</param>
/// <param name="Counts">How many slices give how many pieces, most first.</param>
/// <param name="Pieces">Pieces from one, before losses.</param>
/// <param name="Good">Pieces from one after the stated loss, rounded down.</param>
/// <param name="PieceVolume">Volume of one piece.</param>
/// <param name="Drawing">The cut bulb from the side, to scale.</param>
public sealed record BulbCut(Bulb Whole, Bulb Peeled, int Slices, ImmutableArray<SliceCount> Counts, int Pieces, int Good, Volume PieceVolume, Drawing Drawing)
{
    /// <summary>Share of the bought bulb that ends in good pieces.</summary>
    public Fraction UsableShare => Fraction.FromValue(Math.Clamp(Good * PieceVolume.Millilitres / Whole.Volume.Millilitres, 0, 1));

    /// <summary>Discs stamped from slices, as many a slice as stand in it by the best-known packing.</summary>
    /// <param name="bulb">As bought.</param>
    /// <param name="peel">Peeled all round.</param>
    /// <param name="slice">Thickness of a slice, more than 0.</param>
    /// <param name="disc">Diameter of a disc, more than 0.</param>
    /// <param name="lost">Share of slices or discs lost.</param>
    /// <remarks>
    /// Slicing starts where the bulb is wide enough; a slice counts by its narrower face. Two discs need 2, three 2.155 disc diameters, and so on by the ring table.
    /// Check: 92 × 80 mm, peel 3, slice 1.2, disc 60: 44 slices, 39 good after 10 %. Ball of 120, peel 4, slice 1.0, disc 50: 30 slices of three, 20 of two, 50 of one: 180, good 162.
    /// </remarks>
    public static BulbCut Discs(Bulb bulb, Length peel, Length slice, Length disc, Fraction lost)
    {
        double d = More(disc, nameof(disc), "A disc measures more than 0 mm.");
        Volume piece = Volume.FromMillilitres(Math.PI * d * d / 4 * slice.Millimetres / 1000);
        return Cut(bulb, peel, slice, d, lost, piece, w => RoundsInRing.Most(w / d), FormattableString.Invariant($"discs of {d:0.#} mm"));
    }

    /// <summary>Dice: slices as thick as the die, cut both ways.</summary>
    /// <param name="bulb">As bought.</param>
    /// <param name="peel">Peeled all round.</param>
    /// <param name="side">Side of a die, more than 0.</param>
    /// <param name="lost">Share lost.</param>
    /// <remarks>Each slice counts whole squares in rows inside its narrower face, rows centred or split by the middle, whichever gives more.</remarks>
    public static BulbCut Dice(Bulb bulb, Length peel, Length side, Fraction lost)
    {
        double s = More(side, nameof(side), "A die measures more than 0 mm.");
        Volume piece = Volume.FromMillilitres(s * s * s / 1000);
        return Cut(bulb, peel, side, s * Math.Sqrt(2), lost, piece, w => SquaresInRound(w, s), FormattableString.Invariant($"dice of {s:0.#} mm"));
    }

    /// <summary>Whole slices, as they fall: those at least so wide.</summary>
    /// <param name="bulb">As bought.</param>
    /// <param name="peel">Peeled all round.</param>
    /// <param name="slice">Thickness of a slice, more than 0.</param>
    /// <param name="least">Narrowest slice that is of use, more than 0.</param>
    /// <param name="lost">Share lost.</param>
    /// <remarks>The piece is the mean slice: the ellipsoid's zone πD²/4·[z − 4z³/(3H²)] shared out.</remarks>
    public static BulbCut SlicesOf(Bulb bulb, Length peel, Length slice, Length least, Fraction lost)
    {
        double d = More(least, nameof(least), "A slice is wider than 0 mm.");
        BulbCut cut = Cut(bulb, peel, slice, d, lost, default, _ => 1, FormattableString.Invariant($"slices at least {d:0.#} mm wide"));
        if (cut.Slices == 0)
        {
            return cut;
        }

        double low = -cut.Peeled.HeightAtLeast(least).Millimetres / 2;
        double h = cut.Peeled.Tall.Millimetres;
        double Zone(double z) => Math.PI / 4 * cut.Peeled.Across.Millimetres * cut.Peeled.Across.Millimetres * (z - (4 * z * z * z / (3 * h * h)));
        return cut with { PieceVolume = Volume.FromMillilitres((Zone(low + (cut.Slices * slice.Millimetres)) - Zone(low)) / cut.Slices / 1000) };
    }

    /// <summary>How many to buy for a number of pieces.</summary>
    /// <param name="wanted">Good pieces wanted.</param>
    /// <param name="spare">Whole ones over.</param>
    /// <exception cref="InvalidOperationException">Not one piece comes from one.</exception>
    public int ToBuy(int wanted, int spare = 0) => Good > 0
        ? ((wanted + Good - 1) / Good) + spare
        : throw new InvalidOperationException("Not one piece comes from one of these.");

    internal static int SquaresInRound(double diameter, double side)
    {
        double r = diameter / 2;
        int best = 0;
        foreach (double start in (ReadOnlySpan<double>)[0, side / 2])
        {
            int n = 0;
            int rows = (int)Math.Ceiling(r / side) + 1;
            for (int i = -rows; i <= rows; i++)
            {
                double low = (i * side) - start;
                double far = Math.Max(Math.Abs(low), Math.Abs(low + side));
                if (far < r)
                {
                    n += (int)Math.Floor((2 * Math.Sqrt((r * r) - (far * far)) / side) + 1e-9);
                }
            }

            best = Math.Max(best, n);
        }

        return best;
    }

    private static double More(Length value, string name, string message) => value.Millimetres > 0
        ? value.Millimetres
        : throw new ArgumentOutOfRangeException(name, value.Millimetres, message);

    private static BulbCut Cut(Bulb bulb, Length peel, Length slice, double narrowest, Fraction lost, Volume piece, Func<double, int> inSlice, string what)
    {
        double t = More(slice, nameof(slice), "A slice is thicker than 0 mm.");
        Bulb peeled = bulb.Peeled(peel);
        double usable = narrowest > peeled.Across.Millimetres ? 0 : peeled.HeightAtLeast(Length.FromMillimetres(narrowest)).Millimetres;
        int slices = (int)Math.Floor((usable / t) + 1e-9);
        SortedDictionary<int, int> counts = [];
        for (int i = 0; i < slices; i++)
        {
            double low = (-usable / 2) + (i * t);
            double width = Width(peeled, Math.Max(Math.Abs(low), Math.Abs(low + t)));
            int n = Math.Max(1, inSlice(width + 1e-9));
            counts[n] = counts.GetValueOrDefault(n) + 1;
        }

        int pieces = counts.Sum(c => c.Key * c.Value);
        int good = (int)Math.Floor((pieces * lost.Rest.Value) + 1e-9);
        return new(bulb, peeled, slices, [.. counts.Reverse().Select(c => new SliceCount(c.Value, c.Key))], pieces, good, piece, Draw(bulb, peeled, usable, t, slices, what, good));
    }

    private static double Width(Bulb b, double height)
        => b.Across.Millimetres * Math.Sqrt(Math.Max(0, 1 - Math.Pow(2 * height / b.Tall.Millimetres, 2)));

    private static Drawing Draw(Bulb whole, Bulb peeled, double usable, double slice, int slices, string what, int good)
    {
        double w = whole.Across.Millimetres;
        double h = whole.Tall.Millimetres;
        ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new PolygonMark(Oval(w, h, w, h), Closed: true, Ink.Trim));
        marks.Add(new PolygonMark(Oval(peeled.Across.Millimetres, peeled.Tall.Millimetres, w, h), Closed: true, Ink.Piece));
        for (int i = 0; i <= slices; i++)
        {
            double z = (-usable / 2) + (i * slice);
            double half = Width(peeled, Math.Abs(z)) / 2;
            marks.Add(new LineMark((w / 2) - half, (h / 2) + z, (w / 2) + half, (h / 2) + z, Ink.Guide));
        }

        return new(FormattableString.Invariant($"{good} {what} from one of {w:0.#} × {h:0.#} mm"), w, h, marks.ToImmutable());
    }

    private static ImmutableArray<DrawnPoint> Oval(double across, double tall, double w, double h)
        => [.. Enumerable.Range(0, 72).Select(i => new DrawnPoint((w / 2) + (across / 2 * Math.Cos(i * Math.PI / 36)), (h / 2) + (tall / 2 * Math.Sin(i * Math.PI / 36))))];
}

/// <summary>Slices that give the same number of pieces.</summary>
/// <param name="Slices">How many slices.</param>
/// <param name="Each">Pieces from each.</param>
public readonly record struct SliceCount(int Slices, int Each);
