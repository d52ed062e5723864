namespace Coulisse.Matter.Quantities;

/// <summary>An amount of heat or food energy. Never NaN.</summary>
/// <remarks>Unit: kJ. Range: 0 to 1e10. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Energy : IComparable<Energy>
{
    private Energy(double value) => Kilojoules = value;

    /// <summary>The value in kJ.</summary>
    public double Kilojoules { get; }

    /// <summary>Makes the value from kJ.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1e10, or NaN.</exception>
    public static Energy FromKilojoules(double value) => value is >= 0 and <= 1e10
        ? new Energy(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "An energy is 0 to 1e10 kJ.");

    /// <summary>Sum.</summary>
    public static Energy operator +(Energy a, Energy b) => FromKilojoules(a.Kilojoules + b.Kilojoules);

    /// <summary>Difference; refused when it leaves the range.</summary>
    public static Energy operator -(Energy a, Energy b) => FromKilojoules(a.Kilojoules - b.Kilojoules);

    /// <summary>Scaled by a plain number.</summary>
    public static Energy operator *(Energy a, double factor) => FromKilojoules(a.Kilojoules * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Energy operator /(Energy a, double divisor) => FromKilojoules(a.Kilojoules / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Energy a, Energy b) => a.Kilojoules / b.Kilojoules;

    /// <summary>Smaller.</summary>
    public static bool operator <(Energy a, Energy b) => a.Kilojoules < b.Kilojoules;

    /// <summary>Larger.</summary>
    public static bool operator >(Energy a, Energy b) => a.Kilojoules > b.Kilojoules;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Energy a, Energy b) => a.Kilojoules <= b.Kilojoules;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Energy a, Energy b) => a.Kilojoules >= b.Kilojoules;

    /// <summary>Time a power needs to deliver this energy.</summary>
    public static NodaTime.Duration operator /(Energy e, Power p) => NodaTime.Duration.FromSeconds(e.Kilojoules * 1000 / p.Watts);

    /// <inheritdoc/>
    public int CompareTo(Energy other) => Kilojoules.CompareTo(other.Kilojoules);
}
