namespace Coulisse.Matter.Quantities;

/// <summary>A difference of temperatures; may be negative. Never NaN.</summary>
/// <remarks>Unit: K (the same step as °C). Range: −3000 to 3000 K.</remarks>
public readonly record struct TemperatureDelta : IComparable<TemperatureDelta>
{
    private TemperatureDelta(double kelvin) => Kelvin = kelvin;

    /// <summary>The difference in kelvin.</summary>
    public double Kelvin { get; }

    /// <summary>Makes a difference from kelvin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside −3000 to 3000 K, or NaN.</exception>
    public static TemperatureDelta FromKelvin(double value) => value is >= -3000 and <= 3000
        ? new TemperatureDelta(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A temperature difference is -3000 to 3000 K.");

    /// <summary>Scaled by a plain number.</summary>
    public static TemperatureDelta operator *(TemperatureDelta d, double factor) => FromKelvin(d.Kelvin * factor);

    /// <summary>Smaller.</summary>
    public static bool operator <(TemperatureDelta a, TemperatureDelta b) => a.Kelvin < b.Kelvin;

    /// <summary>Larger.</summary>
    public static bool operator >(TemperatureDelta a, TemperatureDelta b) => a.Kelvin > b.Kelvin;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(TemperatureDelta a, TemperatureDelta b) => a.Kelvin <= b.Kelvin;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(TemperatureDelta a, TemperatureDelta b) => a.Kelvin >= b.Kelvin;

    /// <inheritdoc/>
    public int CompareTo(TemperatureDelta other) => Kelvin.CompareTo(other.Kelvin);
}
