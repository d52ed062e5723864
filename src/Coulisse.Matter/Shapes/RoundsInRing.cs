using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>Equal rounds (tubes, drops, rolls) standing in a ring.</summary>
/// <param name="Count">How many fit.</param>
/// <param name="Held">True when the count comes from the table of best-known packings (up to 127 rounds); false when it is what offset rows alone give, a lower bound.</param>
/// <param name="LargestRound">Largest round of which as many still fit.</param>
/// <param name="SmallestRing">Smallest ring that still takes as many.</param>
/// <param name="NextRound">Largest round of which one more fits.</param>
/// <param name="NextRing">Smallest ring that takes one more.</param>
/// <param name="Covered">Share of the ring's area under rounds.</param>
/// <param name="Centres">Where they stand, mm from the ring's middle; empty when no places are held for this number.</param>
/// <param name="Drawing">To scale.</param>
/// <remarks>
/// N fits when R/r is at least the table's ratio. Use the outer diameter at the seam and take 0.3 to 0.5 mm off the ring for easy standing (common practice, no source).
/// Check: ring 80 mm: 21 of 15.0 mm, 19 of 16.4 mm, 15 of 17.6 mm.
/// </remarks>
public sealed record RoundsInRing(int Count, bool Held, Length LargestRound, Length SmallestRing, Length NextRound, Length NextRing, Fraction Covered, ImmutableArray<DrawnPoint> Centres, Drawing Drawing)
{
    /// <summary>Largest number whose packing is held.</summary>
    public static int LargestHeld => RingTable.InRing.Length - 1;

    /// <summary>How many rounds stand in a ring.</summary>
    /// <param name="ring">Inside diameter of the ring.</param>
    /// <param name="round">Outer diameter of a round.</param>
    /// <param name="ease">Taken off the ring so that they stand easily.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is zero.</exception>
    public static RoundsInRing Fit(Length ring, Length round, Length ease = default)
    {
        double d = round.Millimetres > 0 ? round.Millimetres : throw new ArgumentOutOfRangeException(nameof(round), round.Millimetres, "A round measures more than 0 mm.");
        double room = ring.Millimetres - ease.Millimetres;
        if (room <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(ring), ring.Millimetres, "A ring measures more than 0 mm, and more than the ease taken off it.");
        }

        double[] ratios = RingTable.InRing;
        double have = room / d;
        int n = Most(have);
        bool held = n < LargestHeld || have < HexagonInRing.RatioFor(LargestHeld + 1);
        if (!held)
        {
            n = Math.Max(n, HexagonInRing.Count(have));
            held = n <= LargestHeld;
        }

        double here = n == 0 ? 1 : held ? ratios[n] : have;
        double next = n < LargestHeld ? ratios[n + 1] : HexagonInRing.RatioFor(n + 1);
        ImmutableArray<DrawnPoint> centres = Places(n, held, have, d / 2);
        double ease2 = ease.Millimetres;
        return new(
            n,
            held,
            Length.FromMillimetres(room / here),
            Length.FromMillimetres((here * d) + ease2),
            Length.FromMillimetres(room / next),
            Length.FromMillimetres((next * d) + ease2),
            Fraction.FromValue(Math.Min(1, n / (have * have))),
            centres,
            Draw(ring.Millimetres, d, n, centres));
    }

    /// <summary>Diameters that fill the ring: the widest round of which one, two, three … stand in it.</summary>
    /// <param name="ring">Inside diameter of the ring.</param>
    /// <param name="round">Diameter asked for.</param>
    /// <param name="ease">Taken off the ring.</param>
    /// <remarks>To 127 rounds by the table of best-known packings; what needs more has no next smaller here.</remarks>
    public static ComesOutEven Sizes(Length ring, Length round, Length ease = default)
        => ComesOutEven.Among(round.Millimetres, n => (ring - ease).Millimetres / RingTable.InRing[n], LargestHeld);

    /// <summary>Outer diameter so that a wanted number just fills a ring: D / ratio(N).</summary>
    /// <param name="ring">Inside diameter of the ring.</param>
    /// <param name="count">1 to <see cref="LargestHeld"/>.</param>
    /// <remarks>Check: 37 tubes in 100 mm: 14.80 mm.</remarks>
    public static Length RoundFor(Length ring, int count) => count >= 1 && count <= LargestHeld
        ? ring / RingTable.InRing[count]
        : throw new ArgumentOutOfRangeException(nameof(count), count, FormattableString.Invariant($"Packings are held for 1 to {LargestHeld} rounds."));

    /// <summary>How many discs of a given size can be stamped from a round slice; the same packing seen from the other side.</summary>
    /// <param name="ratio">Slice diameter over disc diameter.</param>
    internal static int Most(double ratio)
    {
        double[] ratios = RingTable.InRing;
        int low = 0;
        int high = ratios.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (ratios[middle] <= ratio + 1e-12)
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

    private static ImmutableArray<DrawnPoint> Places(int n, bool held, double ratio, double radius)
    {
        ImmutableArray<DrawnPoint>? unit = held ? RingTable.Places(n) : HexagonInRing.Places(ratio, n);
        return unit is null ? [] : [.. unit.Value.Select(p => new DrawnPoint(p.X * radius, p.Y * radius))];
    }

    private static Drawing Draw(double ring, double d, int n, ImmutableArray<DrawnPoint> centres)
    {
        double m = ring / 2;
        ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new CircleMark(m, m, m, Ink.Outline));
        marks.AddRange(centres.Select(c => new CircleMark(m + c.X, m + c.Y, d / 2, Ink.Piece)));
        if (centres.IsEmpty && n > 0)
        {
            marks.Add(new TextMark(m, m, FormattableString.Invariant($"{n} fit; places not held"), Math.Max(2, ring / 20), Ink.Guide));
        }

        return new(FormattableString.Invariant($"{n} rounds of {d:0.#} mm in a ring of {ring:0.#} mm"), ring, ring, marks.ToImmutable());
    }
}
