namespace Coulisse.Matter.Quantities;

/// <summary>A temperature: a point on the scale, so two of them cannot be added. Never NaN.</summary>
/// <remarks>Unit: °C. Range: −273.15 to 2000 °C. <c>default</c> is 0 °C.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(double celsius) => Celsius = celsius;

    /// <summary>Degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>Kelvin.</summary>
    public double Kelvin => Celsius + 273.15;

    /// <summary>Degrees Fahrenheit.</summary>
    public double Fahrenheit => Celsius * 9 / 5 + 32;

    /// <summary>Makes a temperature from degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below absolute zero, above 2000 °C, or NaN.</exception>
    public static Temperature FromCelsius(double value) => value is >= -273.15 and <= 2000
        ? new Temperature(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A temperature is -273.15 to 2000 °C.");

    /// <summary>Makes a temperature from degrees Fahrenheit: (F − 32) · 5/9, exact by definition.</summary>
    public static Temperature FromFahrenheit(double value) => FromCelsius((value - 32) * 5 / 9);

    /// <summary>A point moved by a difference.</summary>
    public static Temperature operator +(Temperature t, TemperatureDelta d) => FromCelsius(t.Celsius + d.Kelvin);

    /// <summary>A point moved down by a difference.</summary>
    public static Temperature operator -(Temperature t, TemperatureDelta d) => FromCelsius(t.Celsius - d.Kelvin);

    /// <summary>The difference of two points.</summary>
    public static TemperatureDelta operator -(Temperature a, Temperature b) => TemperatureDelta.FromKelvin(a.Celsius - b.Celsius);

    /// <summary>Colder.</summary>
    public static bool operator <(Temperature a, Temperature b) => a.Celsius < b.Celsius;

    /// <summary>Hotter.</summary>
    public static bool operator >(Temperature a, Temperature b) => a.Celsius > b.Celsius;

    /// <summary>Colder or equal.</summary>
    public static bool operator <=(Temperature a, Temperature b) => a.Celsius <= b.Celsius;

    /// <summary>Hotter or equal.</summary>
    public static bool operator >=(Temperature a, Temperature b) => a.Celsius >= b.Celsius;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);
}
