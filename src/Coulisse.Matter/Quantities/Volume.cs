namespace Coulisse.Matter.Quantities;

/// <summary>A volume, never negative. Never NaN.</summary>
/// <remarks>Unit: mL. Range: 0 to 1e9. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double value) => Millilitres = value;

    /// <summary>The value in mL.</summary>
    public double Millilitres { get; }

    /// <summary>Makes the value from mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1e9, or NaN.</exception>
    public static Volume FromMillilitres(double value) => value is >= 0 and <= 1e9
        ? new Volume(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A volume is 0 to 1e9 mL.");

    /// <summary>Makes a volume from litres, 0 to 1e6.</summary>
    public static Volume FromLitres(double value) => FromMillilitres(value * 1000);

    /// <summary>The value in litres.</summary>
    public double Litres => Millilitres / 1000;

    /// <summary>Sum.</summary>
    public static Volume operator +(Volume a, Volume b) => FromMillilitres(a.Millilitres + b.Millilitres);

    /// <summary>Difference; refused when it leaves the range.</summary>
    public static Volume operator -(Volume a, Volume b) => FromMillilitres(a.Millilitres - b.Millilitres);

    /// <summary>Scaled by a plain number.</summary>
    public static Volume operator *(Volume a, double factor) => FromMillilitres(a.Millilitres * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Volume operator /(Volume a, double divisor) => FromMillilitres(a.Millilitres / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Volume a, Volume b) => a.Millilitres / b.Millilitres;

    /// <summary>Smaller.</summary>
    public static bool operator <(Volume a, Volume b) => a.Millilitres < b.Millilitres;

    /// <summary>Larger.</summary>
    public static bool operator >(Volume a, Volume b) => a.Millilitres > b.Millilitres;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Volume a, Volume b) => a.Millilitres <= b.Millilitres;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Volume a, Volume b) => a.Millilitres >= b.Millilitres;

    /// <summary>Mass of this volume at a density.</summary>
    public static Mass operator *(Volume v, Density d) => Mass.FromGrams(v.Millilitres * d.GramsPerMillilitre);

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Millilitres.CompareTo(other.Millilitres);
}
