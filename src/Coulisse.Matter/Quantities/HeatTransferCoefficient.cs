namespace Coulisse.Matter.Quantities;

/// <summary>Surface heat transfer coefficient h. Never NaN.</summary>
/// <remarks>Unit: W/(m²·K). Range: 0 to 1e6. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct HeatTransferCoefficient : IComparable<HeatTransferCoefficient>
{
    private HeatTransferCoefficient(double value) => WattsPerSquareMetreKelvin = value;

    /// <summary>The value in W/(m²·K).</summary>
    public double WattsPerSquareMetreKelvin { get; }

    /// <summary>Makes the value from W/(m²·K).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1e6, or NaN.</exception>
    public static HeatTransferCoefficient FromWattsPerSquareMetreKelvin(double value) => value is >= 0 and <= 1e6
        ? new HeatTransferCoefficient(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A heat transfer coefficient is 0 to 1e6 W/(m²·K).");

    /// <summary>Scaled by a plain number.</summary>
    public static HeatTransferCoefficient operator *(HeatTransferCoefficient a, double factor) => FromWattsPerSquareMetreKelvin(a.WattsPerSquareMetreKelvin * factor);

    /// <summary>Divided by a plain number.</summary>
    public static HeatTransferCoefficient operator /(HeatTransferCoefficient a, double divisor) => FromWattsPerSquareMetreKelvin(a.WattsPerSquareMetreKelvin / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(HeatTransferCoefficient a, HeatTransferCoefficient b) => a.WattsPerSquareMetreKelvin / b.WattsPerSquareMetreKelvin;

    /// <summary>Smaller.</summary>
    public static bool operator <(HeatTransferCoefficient a, HeatTransferCoefficient b) => a.WattsPerSquareMetreKelvin < b.WattsPerSquareMetreKelvin;

    /// <summary>Larger.</summary>
    public static bool operator >(HeatTransferCoefficient a, HeatTransferCoefficient b) => a.WattsPerSquareMetreKelvin > b.WattsPerSquareMetreKelvin;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(HeatTransferCoefficient a, HeatTransferCoefficient b) => a.WattsPerSquareMetreKelvin <= b.WattsPerSquareMetreKelvin;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(HeatTransferCoefficient a, HeatTransferCoefficient b) => a.WattsPerSquareMetreKelvin >= b.WattsPerSquareMetreKelvin;

    /// <inheritdoc/>
    public int CompareTo(HeatTransferCoefficient other) => WattsPerSquareMetreKelvin.CompareTo(other.WattsPerSquareMetreKelvin);
}
