using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>Straight round tin or ring: π d² h / 4.</summary>
/// <param name="Diameter">Inside diameter.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record RoundMould(Length Diameter, Length Depth) : Mould
{
    /// <inheritdoc/>
    public override Length Depth { get; } = Positive(Depth, nameof(Depth));

    /// <summary>Inside diameter.</summary>
    public Length Diameter { get; } = Positive(Diameter, nameof(Diameter));

    private protected override double CubicMillimetresTo(double depth) => Math.PI * Diameter.Millimetres * Diameter.Millimetres / 4 * depth;
}

/// <summary>Round tin that widens upwards (muffin, basin, timbale): frustum π h (d₁² + d₁d₂ + d₂²) / 12.</summary>
/// <param name="Bottom">Inside diameter at the bottom.</param>
/// <param name="Top">Inside diameter at the rim.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record TaperedMould(Length Bottom, Length Top, Length Depth) : Mould
{
    /// <inheritdoc/>
    public override Length Depth { get; } = Positive(Depth, nameof(Depth));

    /// <summary>Inside diameter at the bottom.</summary>
    public Length Bottom { get; } = Positive(Bottom, nameof(Bottom));

    /// <summary>Inside diameter at the rim.</summary>
    public Length Top { get; } = Positive(Top, nameof(Top));

    private protected override double CubicMillimetresTo(double depth)
    {
        double d1 = Bottom.Millimetres;
        double d = d1 + ((Top.Millimetres - d1) * depth / Depth.Millimetres);
        return Math.PI * depth * ((d1 * d1) + (d1 * d) + (d * d)) / 12;
    }
}

/// <summary>Straight-sided square or oblong tin, tray or frame: a · b · h.</summary>
/// <param name="Along">Inside length.</param>
/// <param name="Across">Inside width.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record BoxMould(Length Along, Length Across, Length Depth) : Mould
{
    /// <inheritdoc/>
    public override Length Depth { get; } = Positive(Depth, nameof(Depth));

    /// <summary>Inside length.</summary>
    public Length Along { get; } = Positive(Along, nameof(Along));

    /// <summary>Inside width.</summary>
    public Length Across { get; } = Positive(Across, nameof(Across));

    private protected override double CubicMillimetresTo(double depth) => Along.Millimetres * Across.Millimetres * depth;
}

/// <summary>Loaf tin with flat sloping sides: prismatoid h/6 · (A₁ + A₂ + (a₁ + a₂)(b₁ + b₂)), exact for flat sides.</summary>
/// <param name="BottomAlong">Inside length at the bottom.</param>
/// <param name="BottomAcross">Inside width at the bottom.</param>
/// <param name="TopAlong">Inside length at the rim.</param>
/// <param name="TopAcross">Inside width at the rim.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record LoafMould(Length BottomAlong, Length BottomAcross, Length TopAlong, Length TopAcross, Length Depth) : Mould
{
    /// <inheritdoc/>
    public override Length Depth { get; } = Positive(Depth, nameof(Depth));

    /// <summary>Inside length at the bottom.</summary>
    public Length BottomAlong { get; } = Positive(BottomAlong, nameof(BottomAlong));

    /// <summary>Inside width at the bottom.</summary>
    public Length BottomAcross { get; } = Positive(BottomAcross, nameof(BottomAcross));

    /// <summary>Inside length at the rim.</summary>
    public Length TopAlong { get; } = Positive(TopAlong, nameof(TopAlong));

    /// <summary>Inside width at the rim.</summary>
    public Length TopAcross { get; } = Positive(TopAcross, nameof(TopAcross));

    private protected override double CubicMillimetresTo(double depth)
    {
        double share = depth / Depth.Millimetres;
        double a1 = BottomAlong.Millimetres;
        double b1 = BottomAcross.Millimetres;
        double a2 = a1 + ((TopAlong.Millimetres - a1) * share);
        double b2 = b1 + ((TopAcross.Millimetres - b1) * share);
        return depth / 6 * ((a1 * b1) + (a2 * b2) + ((a1 + a2) * (b1 + b2)));
    }
}

/// <summary>Ring mould with a half-round bottom: half a torus, π² D t² / 8 with D the diameter of the tube's centre line and t the tube.</summary>
/// <param name="Outer">Outer diameter.</param>
/// <param name="Tube">Width of the tube at the rim.</param>
public sealed record RingMould(Length Outer, Length Tube) : Mould
{
    /// <summary>Outer diameter.</summary>
    public Length Outer { get; } = Outer.Millimetres >= 2 * Tube.Millimetres
        ? Positive(Outer, nameof(Outer))
        : throw new ArgumentOutOfRangeException(nameof(Outer), Outer.Millimetres, FormattableString.Invariant($"A ring with a tube of {Tube.Millimetres:0.#} mm is at least twice that across."));

    /// <summary>Width of the tube at the rim.</summary>
    public Length Tube { get; } = Positive(Tube, nameof(Tube));

    /// <inheritdoc/>
    public override Length Depth => Tube / 2;

    private protected override double CubicMillimetresTo(double depth)
    {
        // Pappus: the segment's area times the way of its centroid, which lies on the tube's centre line.
        double r = Tube.Millimetres / 2;
        double segment = (r * r * Math.Acos((r - depth) / r)) - ((r - depth) * Math.Sqrt(Math.Max(0, (2 * r * depth) - (depth * depth))));
        return Math.PI * (Outer.Millimetres - Tube.Millimetres) * segment;
    }
}

/// <summary>Straight tin with a chimney: π h (D² − d²) / 4.</summary>
/// <param name="Outer">Inside diameter of the wall.</param>
/// <param name="Inner">Outside diameter of the chimney.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record ChimneyMould(Length Outer, Length Inner, Length Depth) : Mould
{
    /// <inheritdoc/>
    public override Length Depth { get; } = Positive(Depth, nameof(Depth));

    /// <summary>Inside diameter of the wall.</summary>
    public Length Outer { get; } = Outer > Inner
        ? Outer
        : throw new ArgumentOutOfRangeException(nameof(Outer), Outer.Millimetres, FormattableString.Invariant($"The wall must be wider than the chimney of {Inner.Millimetres:0.#} mm."));

    /// <summary>Outside diameter of the chimney.</summary>
    public Length Inner { get; } = Positive(Inner, nameof(Inner));

    private protected override double CubicMillimetresTo(double depth)
        => Math.PI / 4 * ((Outer.Millimetres * Outer.Millimetres) - (Inner.Millimetres * Inner.Millimetres)) * depth;
}

/// <summary>Dome: a cap of a sphere, π h (3a² + h²) / 6 with a half the rim's diameter; h = a is the half-sphere.</summary>
/// <param name="Rim">Inside diameter at the rim.</param>
/// <param name="Depth">Inside depth, at most half the rim.</param>
public sealed record DomeMould(Length Rim, Length Depth) : Mould
{
    /// <inheritdoc/>
    public override Length Depth { get; } = Depth.Millimetres <= Rim.Millimetres / 2 * (1 + 1e-12)
        ? Positive(Depth, nameof(Depth))
        : throw new ArgumentOutOfRangeException(nameof(Depth), Depth.Millimetres, FormattableString.Invariant($"A dome of {Rim.Millimetres:0.#} mm is at most half that deep."));

    /// <summary>Inside diameter at the rim.</summary>
    public Length Rim { get; } = Positive(Rim, nameof(Rim));

    /// <summary>A half-sphere.</summary>
    /// <param name="diameter">Inside diameter.</param>
    public static DomeMould HalfSphere(Length diameter) => new(diameter, diameter / 2);

    private protected override double CubicMillimetresTo(double depth)
    {
        double a = Rim.Millimetres / 2;
        double h = Depth.Millimetres;
        double sphere = ((a * a) + (h * h)) / (2 * h);
        return Math.PI * depth * depth * ((3 * sphere) - depth) / 3;
    }
}

/// <summary>Shell (madeleine) or oval dish: half an ellipsoid, 2π abc / 3 with a, b half the rim's length and width and c the depth.</summary>
/// <param name="Along">Inside length at the rim.</param>
/// <param name="Across">Inside width at the rim.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record ShellMould(Length Along, Length Across, Length Depth) : Mould
{
    /// <inheritdoc/>
    public override Length Depth { get; } = Positive(Depth, nameof(Depth));

    /// <summary>Inside length at the rim.</summary>
    public Length Along { get; } = Positive(Along, nameof(Along));

    /// <summary>Inside width at the rim.</summary>
    public Length Across { get; } = Positive(Across, nameof(Across));

    private protected override double CubicMillimetresTo(double depth)
    {
        double c = Depth.Millimetres;
        double left = c - depth;
        return Math.PI * Along.Millimetres * Across.Millimetres / 4 * (depth - (((c * c * c) - (left * left * left)) / (3 * c * c)));
    }
}
