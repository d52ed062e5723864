using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Measures;

/// <summary>Spoons, cups and pints by the country of the card.</summary>
public static class Household
{
    private static readonly Lazy<ImmutableDictionary<(string System, string Unit), (double Ml, string Source)>> Units = new(() =>
    {
        ReferenceTable t = ReferenceTable.Load("measures/household.tsv");
        return t.Rows.ToImmutableDictionary(r => (r[0], r[1]), r => (ReferenceTable.Number(r[2])!.Value, r[3]));
    });

    private static readonly Lazy<ImmutableDictionary<string, string>> Places = new(() => ReferenceTable.Load("measures/places.tsv").Rows.ToImmutableDictionary(r => r[0], r => r[1], StringComparer.Ordinal));

    /// <summary>The size systems: au, nz, uk, us, jp, metric.</summary>
    public static ImmutableArray<string> Systems { get; } = ["au", "nz", "uk", "us", "jp", "metric"];

    /// <summary>Volume of one unit in a system, with its source; null when that system has no such unit.</summary>
    /// <param name="unit">ml, cl, dl, l, tsp, dsp, tbsp, cup, floz, gill, pint, quart, gallon, go.</param>
    /// <param name="system">One of <see cref="Systems"/>.</param>
    public static (Volume Size, string Source)? SizeOf(string unit, string system) => unit switch
    {
        "ml" => (Volume.FromMillilitres(1), "SI"),
        "cl" => (Volume.FromMillilitres(10), "SI"),
        "dl" => (Volume.FromMillilitres(100), "SI"),
        "l" => (Volume.FromMillilitres(1000), "SI"),
        _ => Units.Value.TryGetValue((system, unit), out (double Ml, string Source) found) ? (Volume.FromMillilitres(found.Ml), found.Source) : null,
    };

    /// <summary>Grams of one unit of mass; null for a unit that is none.</summary>
    /// <remarks>Ounce and pound: international agreement of 1959, exact.</remarks>
    public static Mass? MassOf(string unit) => unit switch
    {
        "g" => Mass.FromGrams(1),
        "kg" => Mass.FromGrams(1000),
        "mg" => Mass.FromGrams(0.001),
        "oz" => Mass.FromGrams(28.349523125),
        "lb" => Mass.FromGrams(453.59237),
        _ => null,
    };

    /// <summary>The system a place name points to ("hobart": au); null when the word is no place we know.</summary>
    public static string? SystemOfPlace(string word) => Places.Value.GetValueOrDefault(word.ToLowerInvariant());
}
