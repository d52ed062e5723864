namespace Coulisse.Matter.Quantities;

/// <summary>Heat capacity of a mass; apparent (with latent heat) where a phase changes. Never NaN.</summary>
/// <remarks>Unit: kJ/(kg·K). Range: 0 to 1000. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct SpecificHeat : IComparable<SpecificHeat>
{
    private SpecificHeat(double value) => KilojoulesPerKilogramKelvin = value;

    /// <summary>The value in kJ/(kg·K).</summary>
    public double KilojoulesPerKilogramKelvin { get; }

    /// <summary>Makes the value from kJ/(kg·K).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1000, or NaN.</exception>
    public static SpecificHeat FromKilojoulesPerKilogramKelvin(double value) => value is >= 0 and <= 1000
        ? new SpecificHeat(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A specific heat is 0 to 1000 kJ/(kg·K).");

    /// <summary>Scaled by a plain number.</summary>
    public static SpecificHeat operator *(SpecificHeat a, double factor) => FromKilojoulesPerKilogramKelvin(a.KilojoulesPerKilogramKelvin * factor);

    /// <summary>Divided by a plain number.</summary>
    public static SpecificHeat operator /(SpecificHeat a, double divisor) => FromKilojoulesPerKilogramKelvin(a.KilojoulesPerKilogramKelvin / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(SpecificHeat a, SpecificHeat b) => a.KilojoulesPerKilogramKelvin / b.KilojoulesPerKilogramKelvin;

    /// <summary>Smaller.</summary>
    public static bool operator <(SpecificHeat a, SpecificHeat b) => a.KilojoulesPerKilogramKelvin < b.KilojoulesPerKilogramKelvin;

    /// <summary>Larger.</summary>
    public static bool operator >(SpecificHeat a, SpecificHeat b) => a.KilojoulesPerKilogramKelvin > b.KilojoulesPerKilogramKelvin;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(SpecificHeat a, SpecificHeat b) => a.KilojoulesPerKilogramKelvin <= b.KilojoulesPerKilogramKelvin;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(SpecificHeat a, SpecificHeat b) => a.KilojoulesPerKilogramKelvin >= b.KilojoulesPerKilogramKelvin;

    /// <inheritdoc/>
    public int CompareTo(SpecificHeat other) => KilojoulesPerKilogramKelvin.CompareTo(other.KilojoulesPerKilogramKelvin);
}
