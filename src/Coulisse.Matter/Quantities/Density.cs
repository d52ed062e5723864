namespace Coulisse.Matter.Quantities;

/// <summary>Mass of a volume, bulk density where the food has air between its pieces. Never NaN.</summary>
/// <remarks>Unit: g/mL. Range: 0 to 25. <c>default</c> is 0. Equality is exact; compare computed values with a tolerance.</remarks>
public readonly record struct Density : IComparable<Density>
{
    private Density(double value) => GramsPerMillilitre = value;

    /// <summary>The value in g/mL.</summary>
    public double GramsPerMillilitre { get; }

    /// <summary>Makes the value from g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 25, or NaN.</exception>
    public static Density FromGramsPerMillilitre(double value) => value is >= 0 and <= 25
        ? new Density(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A density is 0 to 25 g/mL.");

    /// <summary>Scaled by a plain number.</summary>
    public static Density operator *(Density a, double factor) => FromGramsPerMillilitre(a.GramsPerMillilitre * factor);

    /// <summary>Divided by a plain number.</summary>
    public static Density operator /(Density a, double divisor) => FromGramsPerMillilitre(a.GramsPerMillilitre / divisor);

    /// <summary>Ratio of two, a plain number.</summary>
    public static double operator /(Density a, Density b) => a.GramsPerMillilitre / b.GramsPerMillilitre;

    /// <summary>Smaller.</summary>
    public static bool operator <(Density a, Density b) => a.GramsPerMillilitre < b.GramsPerMillilitre;

    /// <summary>Larger.</summary>
    public static bool operator >(Density a, Density b) => a.GramsPerMillilitre > b.GramsPerMillilitre;

    /// <summary>Smaller or equal.</summary>
    public static bool operator <=(Density a, Density b) => a.GramsPerMillilitre <= b.GramsPerMillilitre;

    /// <summary>Larger or equal.</summary>
    public static bool operator >=(Density a, Density b) => a.GramsPerMillilitre >= b.GramsPerMillilitre;

    /// <inheritdoc/>
    public int CompareTo(Density other) => GramsPerMillilitre.CompareTo(other.GramsPerMillilitre);
}
