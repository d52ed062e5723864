namespace Coulisse.Matter.Quantities;

/// <summary>Thermal conductivity. Never NaN.</summary>
/// <remarks>Unit: W/(m·K). Range: 0 to 500. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Conductivity : IComparable<Conductivity>
{
    private Conductivity(double value) => WattsPerMetreKelvin = value;

    /// <summary>The value in W/(m·K).</summary>
    public double WattsPerMetreKelvin { get; }

    /// <summary>Makes the value from W/(m·K).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 500, or NaN.</exception>
    public static Conductivity FromWattsPerMetreKelvin(double value) => value is >= 0 and <= 500
        ? new Conductivity(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A conductivity is 0 to 500 W/(m·K).");

    /// <summary>Scaled by a plain number.</summary>
    public static Conductivity operator *(Conductivity a, double factor) => FromWattsPerMetreKelvin(a.WattsPerMetreKelvin * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Conductivity operator /(Conductivity a, double divisor) => FromWattsPerMetreKelvin(a.WattsPerMetreKelvin / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Conductivity a, Conductivity b) => a.WattsPerMetreKelvin / b.WattsPerMetreKelvin;

    /// <summary>Smaller.</summary>
    public static bool operator <(Conductivity a, Conductivity b) => a.WattsPerMetreKelvin < b.WattsPerMetreKelvin;

    /// <summary>Larger.</summary>
    public static bool operator >(Conductivity a, Conductivity b) => a.WattsPerMetreKelvin > b.WattsPerMetreKelvin;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Conductivity a, Conductivity b) => a.WattsPerMetreKelvin <= b.WattsPerMetreKelvin;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Conductivity a, Conductivity b) => a.WattsPerMetreKelvin >= b.WattsPerMetreKelvin;

    /// <inheritdoc/>
    public int CompareTo(Conductivity other) => WattsPerMetreKelvin.CompareTo(other.WattsPerMetreKelvin);
}
