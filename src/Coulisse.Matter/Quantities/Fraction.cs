namespace Coulisse.Matter.Quantities;

/// <summary>A share between nothing and all. Never NaN.</summary>
/// <remarks>Unit: 1. Range: 0 to 1. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Fraction : IComparable<Fraction>
{
    private Fraction(double value) => Value = value;

    /// <summary>The value in 1.</summary>
    public double Value { get; }

    /// <summary>Makes the value from 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1, or NaN.</exception>
    public static Fraction FromValue(double value) => value is >= 0 and <= 1
        ? new Fraction(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A share is 0 to 1 1.");

    /// <summary>Makes a share from percent, 0 to 100.</summary>
    public static Fraction FromPercent(double value) => FromValue(value / 100);

    /// <summary>The share in percent.</summary>
    public double Percent => Value * 100;

    /// <summary>What is left over.</summary>
    public Fraction Rest => FromValue(1 - Value);

    /// <summary>Scaled by a plain number.</summary>
    public static Fraction operator *(Fraction a, double factor) => FromValue(a.Value * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Fraction operator /(Fraction a, double divisor) => FromValue(a.Value / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Fraction a, Fraction b) => a.Value / b.Value;

    /// <summary>Smaller.</summary>
    public static bool operator <(Fraction a, Fraction b) => a.Value < b.Value;

    /// <summary>Larger.</summary>
    public static bool operator >(Fraction a, Fraction b) => a.Value > b.Value;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Fraction a, Fraction b) => a.Value <= b.Value;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Fraction a, Fraction b) => a.Value >= b.Value;

    /// <inheritdoc/>
    public int CompareTo(Fraction other) => Value.CompareTo(other.Value);
}
