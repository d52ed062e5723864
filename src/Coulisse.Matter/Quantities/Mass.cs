namespace Coulisse.Matter.Quantities;

/// <summary>An amount of matter, never negative. Never NaN.</summary>
/// <remarks>Unit: g. Range: 0 to 1e9. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double value) => Grams = value;

    /// <summary>The value in g.</summary>
    public double Grams { get; }

    /// <summary>Makes the value from g.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1e9, or NaN.</exception>
    public static Mass FromGrams(double value) => value is >= 0 and <= 1e9
        ? new Mass(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A mass is 0 to 1e9 g.");

    /// <summary>Makes a mass from kilograms, 0 to 1e6.</summary>
    public static Mass FromKilograms(double value) => FromGrams(value * 1000);

    /// <summary>The value in kilograms.</summary>
    public double Kilograms => Grams / 1000;

    /// <summary>Sum.</summary>
    public static Mass operator +(Mass a, Mass b) => FromGrams(a.Grams + b.Grams);

    /// <summary>Difference; refused when it leaves the range.</summary>
    public static Mass operator -(Mass a, Mass b) => FromGrams(a.Grams - b.Grams);

    /// <summary>Scaled by a plain number.</summary>
    public static Mass operator *(Mass a, double factor) => FromGrams(a.Grams * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Mass operator /(Mass a, double divisor) => FromGrams(a.Grams / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Mass a, Mass b) => a.Grams / b.Grams;

    /// <summary>Smaller.</summary>
    public static bool operator <(Mass a, Mass b) => a.Grams < b.Grams;

    /// <summary>Larger.</summary>
    public static bool operator >(Mass a, Mass b) => a.Grams > b.Grams;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Mass a, Mass b) => a.Grams <= b.Grams;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Mass a, Mass b) => a.Grams >= b.Grams;

    /// <summary>Mass over volume.</summary>
    public static Density operator /(Mass m, Volume v) => Density.FromGramsPerMillilitre(m.Grams / v.Millilitres);

    /// <summary>Volume of this mass at a density.</summary>
    public static Volume operator /(Mass m, Density d) => Volume.FromMillilitres(m.Grams / d.GramsPerMillilitre);

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Grams.CompareTo(other.Grams);
}
