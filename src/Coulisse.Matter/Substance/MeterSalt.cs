using System.Collections.Immutable;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Substance;

/// <summary>A salt whose saturated solution checks a water activity meter.</summary>
/// <param name="Salt">Name.</param>
/// <param name="A">Coefficient, percent.</param>
/// <param name="B">Coefficient, kelvin.</param>
/// <remarks>RH = A·exp(B/T) (`data/measures/meter-salts.tsv`), 5 to 25 °C. Check: sodium chloride 75.3 % at 25 °C (Greenspan 1977).</remarks>
public sealed record MeterSalt(string Salt, double A, double B)
{
    private static readonly Lazy<ImmutableArray<MeterSalt>> Held = new(() => [.. ReferenceTable.Load("measures/meter-salts.tsv").Rows.Select(r => new MeterSalt(r[0], ReferenceTable.Number(r[1])!.Value, ReferenceTable.Number(r[2])!.Value))]);

    /// <summary>All that are held.</summary>
    public static ImmutableArray<MeterSalt> All => Held.Value;

    /// <summary>Water activity over it, 0 to 1.</summary>
    /// <param name="celsius">Temperature, 0 to 40 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 40 °C.</exception>
    public double Activity(double celsius) => celsius is >= 0 and <= 40
        ? A * Math.Exp(B / (celsius + 273.15)) / 100
        : throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "A meter is checked at 0 to 40 °C.");

    /// <summary>The one nearest to what will be measured, of those a kitchen may have about: no lithium, no magnesium nitrate.</summary>
    /// <param name="activity">Water activity expected.</param>
    public static MeterSalt Nearest(double activity) => All.Where(s => s.Salt is "sodium chloride" or "potassium chloride" or "magnesium chloride").MinBy(s => Math.Abs(s.Activity(20) - activity))!;
}
