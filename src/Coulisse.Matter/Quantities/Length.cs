namespace Coulisse.Matter.Quantities;

/// <summary>A length or thickness. Never NaN.</summary>
/// <remarks>Unit: mm. Range: 0 to 1e6. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Length : IComparable<Length>
{
    private Length(double value) => Millimetres = value;

    /// <summary>The value in mm.</summary>
    public double Millimetres { get; }

    /// <summary>Makes the value from mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1e6, or NaN.</exception>
    public static Length FromMillimetres(double value) => value is >= 0 and <= 1e6
        ? new Length(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A length is 0 to 1e6 mm.");

    /// <summary>Makes a length from metres.</summary>
    public static Length FromMetres(double value) => FromMillimetres(value * 1000);

    /// <summary>The value in metres.</summary>
    public double Metres => Millimetres / 1000;

    /// <summary>Sum.</summary>
    public static Length operator +(Length a, Length b) => FromMillimetres(a.Millimetres + b.Millimetres);

    /// <summary>Difference; refused when it leaves the range.</summary>
    public static Length operator -(Length a, Length b) => FromMillimetres(a.Millimetres - b.Millimetres);

    /// <summary>Scaled by a plain number.</summary>
    public static Length operator *(Length a, double factor) => FromMillimetres(a.Millimetres * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Length operator /(Length a, double divisor) => FromMillimetres(a.Millimetres / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Length a, Length b) => a.Millimetres / b.Millimetres;

    /// <summary>Smaller.</summary>
    public static bool operator <(Length a, Length b) => a.Millimetres < b.Millimetres;

    /// <summary>Larger.</summary>
    public static bool operator >(Length a, Length b) => a.Millimetres > b.Millimetres;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Length a, Length b) => a.Millimetres <= b.Millimetres;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Length a, Length b) => a.Millimetres >= b.Millimetres;

    /// <summary>Area of a rectangle.</summary>
    public static Area operator *(Length a, Length b) => Area.FromSquareMillimetres(a.Millimetres * b.Millimetres);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);
}
