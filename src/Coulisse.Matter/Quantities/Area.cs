namespace Coulisse.Matter.Quantities;

/// <summary>An area. Never NaN.</summary>
/// <remarks>Unit: mm². Range: 0 to 1e12. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Area : IComparable<Area>
{
    private Area(double value) => SquareMillimetres = value;

    /// <summary>The value in mm².</summary>
    public double SquareMillimetres { get; }

    /// <summary>Makes the value from mm².</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1e12, or NaN.</exception>
    public static Area FromSquareMillimetres(double value) => value is >= 0 and <= 1e12
        ? new Area(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "An area is 0 to 1e12 mm².");

    /// <summary>Sum.</summary>
    public static Area operator +(Area a, Area b) => FromSquareMillimetres(a.SquareMillimetres + b.SquareMillimetres);

    /// <summary>Difference; refused when it leaves the range.</summary>
    public static Area operator -(Area a, Area b) => FromSquareMillimetres(a.SquareMillimetres - b.SquareMillimetres);

    /// <summary>Scaled by a plain number.</summary>
    public static Area operator *(Area a, double factor) => FromSquareMillimetres(a.SquareMillimetres * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Area operator /(Area a, double divisor) => FromSquareMillimetres(a.SquareMillimetres / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Area a, Area b) => a.SquareMillimetres / b.SquareMillimetres;

    /// <summary>Smaller.</summary>
    public static bool operator <(Area a, Area b) => a.SquareMillimetres < b.SquareMillimetres;

    /// <summary>Larger.</summary>
    public static bool operator >(Area a, Area b) => a.SquareMillimetres > b.SquareMillimetres;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Area a, Area b) => a.SquareMillimetres <= b.SquareMillimetres;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Area a, Area b) => a.SquareMillimetres >= b.SquareMillimetres;

    /// <summary>Volume of a prism on this area.</summary>
    public static Volume operator *(Area a, Length h) => Volume.FromMillilitres(a.SquareMillimetres * h.Millimetres / 1000);

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMillimetres.CompareTo(other.SquareMillimetres);
}
