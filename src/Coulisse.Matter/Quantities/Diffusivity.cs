namespace Coulisse.Matter.Quantities;

/// <summary>Thermal diffusivity k/(ρ·c). Never NaN.</summary>
/// <remarks>Unit: m²/s. Range: 0 to 1e-3. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Diffusivity : IComparable<Diffusivity>
{
    private Diffusivity(double value) => SquareMetresPerSecond = value;

    /// <summary>The value in m²/s.</summary>
    public double SquareMetresPerSecond { get; }

    /// <summary>Makes the value from m²/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1e-3, or NaN.</exception>
    public static Diffusivity FromSquareMetresPerSecond(double value) => value is >= 0 and <= 1e-3
        ? new Diffusivity(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A diffusivity is 0 to 1e-3 m²/s.");

    /// <summary>Scaled by a plain number.</summary>
    public static Diffusivity operator *(Diffusivity a, double factor) => FromSquareMetresPerSecond(a.SquareMetresPerSecond * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Diffusivity operator /(Diffusivity a, double divisor) => FromSquareMetresPerSecond(a.SquareMetresPerSecond / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond / b.SquareMetresPerSecond;

    /// <summary>Smaller.</summary>
    public static bool operator <(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond < b.SquareMetresPerSecond;

    /// <summary>Larger.</summary>
    public static bool operator >(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond > b.SquareMetresPerSecond;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond <= b.SquareMetresPerSecond;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Diffusivity a, Diffusivity b) => a.SquareMetresPerSecond >= b.SquareMetresPerSecond;

    /// <inheritdoc/>
    public int CompareTo(Diffusivity other) => SquareMetresPerSecond.CompareTo(other.SquareMetresPerSecond);
}
