using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>Drawings to scale of what is filled, rolled, piped and closed: from above and from the side.</summary>
public static class ShapeDrawings
{
    private const double Between = 6;

    /// <summary>A mould from above and cut through, with the level of its filling.</summary>
    public static Drawing Of(MouldFill fill)
    {
        ArgumentNullException.ThrowIfNull(fill);
        double depth = fill.Mould.Depth.Millimetres;
        (double along, double across, bool round, double inner) = Rim(fill.Mould);
        double top = across + Between;
        ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(round ? along == across ? new CircleMark(along / 2, across / 2, along / 2, Ink.Outline) : Ellipse(along / 2, across / 2, along / 2, across / 2, Ink.Outline) : new RectMark(0, 0, along, across, Ink.Outline));
        if (inner > 0)
        {
            marks.Add(new CircleMark(along / 2, across / 2, inner / 2, Ink.Outline));
        }

        // the cut through the middle: the filling below its level, then the wall
        foreach ((double left, double right) in Walls(fill.Mould))
        {
            double Half(double h) => Width(fill.Mould, h, right - left) / 2;
            double middle = (left + right) / 2;
            ImmutableArray<DrawnPoint> Side(double level) =>
            [
                .. Enumerable.Range(0, 25).Select(i => level * (24 - i) / 24).Select(h => new DrawnPoint(middle - Half(h), top + depth - h)),
                .. Enumerable.Range(0, 25).Select(i => level * i / 24).Select(h => new DrawnPoint(middle + Half(h), top + depth - h)),
            ];
            marks.Add(new PolygonMark(Side(fill.Depth.Millimetres), Closed: true, Ink.Piece));
            marks.Add(new PolygonMark(Side(depth), Closed: false, Ink.Outline));
        }

        marks.Add(new LineMark(0, top + depth - fill.Depth.Millimetres, along, top + depth - fill.Depth.Millimetres, Ink.Guide));
        return new(FormattableString.Invariant($"Mould of {fill.Mould.Volume.Millilitres:0} mL from above and cut through: {fill.Mass.Grams:0} g stand {fill.Depth.Millimetres:0.0} mm deep, {fill.Headroom.Millimetres:0.0} mm free"), along, top + depth, marks.ToImmutable());
    }

    /// <summary>A sheet rolled whole, from the side.</summary>
    /// <param name="roll">The roll.</param>
    /// <param name="thickness">Of the sheet.</param>
    public static Drawing Of(SpiralRoll roll, Length thickness)
    {
        ArgumentNullException.ThrowIfNull(roll);
        double r = roll.Diameter.Millimetres / 2;
        double core = r - (roll.Turns * thickness.Millimetres);
        int points = Math.Clamp((int)(roll.Turns * 72), 24, 6000);
        return new(FormattableString.Invariant($"Roll {roll.Diameter.Millimetres:0.0} mm across, {roll.Turns:0.00} turns of {thickness.Millimetres:0.0} mm"), 2 * r, 2 * r,
        [
            new CircleMark(r, r, r, Ink.Outline),
            new PolygonMark([.. Enumerable.Range(0, points + 1).Select(i => (Turn: roll.Turns * 2 * Math.PI * i / points, R: Math.Max(0, core) + ((r - Math.Max(0, core)) * i / points))).Select(p => new DrawnPoint(r + (p.R * Math.Cos(p.Turn)), r + (p.R * Math.Sin(p.Turn))))], Closed: false, Ink.Guide),
        ]);
    }

    /// <summary>A disc closed in two over its filling, from above, with its seam.</summary>
    /// <param name="disc">Diameter of the open disc.</param>
    /// <param name="seam">Width pressed together.</param>
    public static Drawing Closed(Length disc, Length seam)
    {
        double r = disc.Millimetres / 2;
        return new(FormattableString.Invariant($"Folded disc of {disc.Millimetres:0.#} mm, seam {seam.Millimetres:0.#} mm"), 2 * r, r,
            [new PolygonMark(HalfCircle(r, r, r), Closed: true, Ink.Outline), new PolygonMark(HalfCircle(r, r, Math.Max(0, r - seam.Millimetres)), Closed: true, Ink.Piece)]);
    }

    /// <summary>Something piped or spooned, from above: a line, a drop, a disc, a quenelle.</summary>
    /// <param name="along">Length or diameter.</param>
    /// <param name="across">Width; the same for a round thing.</param>
    /// <param name="pointed">True for an oval that narrows to its ends (quenelle), false for a line with round ends.</param>
    public static Drawing Piped(Length along, Length across, bool pointed)
    {
        (double a, double b) = (along.Millimetres, across.Millimetres);
        Mark mark = Math.Abs(a - b) < 1e-9 ? new CircleMark(a / 2, b / 2, a / 2, Ink.Piece) : pointed ? Ellipse(a / 2, b / 2, a / 2, b / 2, Ink.Piece)
            : new RectMark(0, 0, a, b, Ink.Piece);
        return new(FormattableString.Invariant($"{a:0.#} × {b:0.#} mm from above"), a, b, [mark]);
    }

    private static PolygonMark Ellipse(double x, double y, double a, double b, Ink ink) => new([.. Enumerable.Range(0, 72).Select(i => i * Math.PI / 36).Select(t => new DrawnPoint(x + (a * Math.Cos(t)), y + (b * Math.Sin(t))))], Closed: true, ink);

    private static ImmutableArray<DrawnPoint> HalfCircle(double x, double y, double r) => [.. Enumerable.Range(0, 61).Select(i => Math.PI * i / 60).Select(t => new DrawnPoint(x - (r * Math.Cos(t)), y - (r * Math.Sin(t))))];

    private static (double Along, double Across, bool Round, double Inner) Rim(Mould mould) => mould switch
    {
        RoundMould m => (m.Diameter.Millimetres, m.Diameter.Millimetres, true, 0),
        TaperedMould m => (Math.Max(m.Top.Millimetres, m.Bottom.Millimetres), Math.Max(m.Top.Millimetres, m.Bottom.Millimetres), true, 0),
        BoxMould m => (m.Along.Millimetres, m.Across.Millimetres, false, 0),
        LoafMould m => (Math.Max(m.TopAlong.Millimetres, m.BottomAlong.Millimetres), Math.Max(m.TopAcross.Millimetres, m.BottomAcross.Millimetres), false, 0),
        RingMould m => (m.Outer.Millimetres, m.Outer.Millimetres, true, Math.Max(0, m.Outer.Millimetres - (2 * m.Tube.Millimetres))),
        ChimneyMould m => (m.Outer.Millimetres, m.Outer.Millimetres, true, m.Inner.Millimetres),
        DomeMould m => (m.Rim.Millimetres, m.Rim.Millimetres, true, 0),
        ShellMould m => (m.Along.Millimetres, m.Across.Millimetres, true, 0),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    // Where the cut meets food: once, or on both sides of a hole.
    private static (double Left, double Right)[] Walls(Mould mould) => Rim(mould) is var (along, _, _, inner) && inner > 0
        ? [(0, (along - inner) / 2), ((along + inner) / 2, along)]
        : [(0, along)];

    // Inside width of the cut at a height over the bottom.
    private static double Width(Mould mould, double height, double widest)
    {
        double depth = mould.Depth.Millimetres;
        return mould switch
        {
            TaperedMould m => m.Bottom.Millimetres + ((m.Top.Millimetres - m.Bottom.Millimetres) * height / depth),
            LoafMould m => m.BottomAlong.Millimetres + ((m.TopAlong.Millimetres - m.BottomAlong.Millimetres) * height / depth),
            RingMould m => 2 * Math.Sqrt(Math.Max(0, (m.Tube.Millimetres * height) - (height * height))),
            DomeMould m => Cap(m.Rim.Millimetres / 2, depth, height),
            ShellMould m => m.Along.Millimetres * Math.Sqrt(Math.Max(0, 1 - Math.Pow(1 - (height / depth), 2))),
            _ => widest,
        };
    }

    private static double Cap(double rim, double depth, double height)
    {
        double sphere = ((rim * rim) + (depth * depth)) / (2 * depth);
        return 2 * Math.Sqrt(Math.Max(0, (2 * sphere * height) - (height * height)));
    }
}
