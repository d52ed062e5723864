namespace Coulisse.Matter.Quantities;

/// <summary>Heating or electrical power. Never NaN.</summary>
/// <remarks>Unit: W. Range: 0 to 1e7. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Power : IComparable<Power>
{
    private Power(double value) => Watts = value;

    /// <summary>The value in W.</summary>
    public double Watts { get; }

    /// <summary>Makes the value from W.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1e7, or NaN.</exception>
    public static Power FromWatts(double value) => value is >= 0 and <= 1e7
        ? new Power(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A power is 0 to 1e7 W.");

    /// <summary>Makes a power from kilowatts.</summary>
    public static Power FromKilowatts(double value) => FromWatts(value * 1000);

    /// <summary>The value in kilowatts.</summary>
    public double Kilowatts => Watts / 1000;

    /// <summary>Sum.</summary>
    public static Power operator +(Power a, Power b) => FromWatts(a.Watts + b.Watts);

    /// <summary>Difference; refused when it leaves the range.</summary>
    public static Power operator -(Power a, Power b) => FromWatts(a.Watts - b.Watts);

    /// <summary>Scaled by a plain number.</summary>
    public static Power operator *(Power a, double factor) => FromWatts(a.Watts * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Power operator /(Power a, double divisor) => FromWatts(a.Watts / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Power a, Power b) => a.Watts / b.Watts;

    /// <summary>Smaller.</summary>
    public static bool operator <(Power a, Power b) => a.Watts < b.Watts;

    /// <summary>Larger.</summary>
    public static bool operator >(Power a, Power b) => a.Watts > b.Watts;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Power a, Power b) => a.Watts <= b.Watts;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Power a, Power b) => a.Watts >= b.Watts;

    /// <summary>Energy delivered over a time.</summary>
    public static Energy operator *(Power p, NodaTime.Duration t) => Energy.FromKilojoules(p.Watts * t.TotalSeconds / 1000);

    /// <inheritdoc/>
    public int CompareTo(Power other) => Watts.CompareTo(other.Watts);
}
