using System.Collections.Immutable;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Formulas.Targets;

/// <summary>A figure of a mixture that can be aimed at.</summary>
/// <param name="Name">As we call it ("fat", "freezing point").</param>
/// <param name="Unit">Unit of the figure.</param>
/// <param name="Close">How near is met: the last digit a kitchen can tell.</param>
/// <param name="Words">Words that mean it, longest first within the list of all.</param>
/// <param name="Of">From composition per 100 g; null when a part it needs is not held.</param>
public sealed record MixtureProperty(string Name, string Unit, double Close, ImmutableArray<string> Words, Func<Composition, double?> Of)
{
    /// <summary>Everything that can be aimed at.</summary>
    public static ImmutableArray<MixtureProperty> All { get; } =
    [
        new("freezing point", "°C", 0.02, ["freezing point", "freezes", "freeze", "freezing", "gefriert", "gefrierpunkt", "congelation", "congela"], c => Phase(c) is { } p ? Freezing.Point(p) : null),
        new("water activity", "", 0.001, ["water activity", "aw"], c => Phase(c) is { } p ? WaterActivity.Of(p).High : null),
        new("soluble solids", "%", 0.05, ["soluble solids", "brix", "refractometer"], c => Phase(c)?.SolubleSolidsPercent),
        new("salt in water", "%", 0.01, ["salt in water", "salt in its water", "brine strength", "water phase salt"], c => Phase(c)?.SaltInWaterPercent),
        new("saturates", "%", 0.05, ["saturated fat", "saturates"], c => c.Saturates),
        new("fat", "%", 0.05, ["fat", "fett", "matière grasse", "grasa", "grassi"], c => c.Fat),
        new("sugars", "%", 0.05, ["sugars", "sugar", "zucker", "sucres", "sucre", "azúcar", "zuccheri"], c => c.Sugars),
        new("salt", "%", 0.005, ["salt", "salz", "sel", "sal", "sale"], c => c.SodiumMilligrams * 2.5 / 1000),
        new("solids", "%", 0.05, ["dry matter", "total solids", "solids", "trockenmasse", "extrait sec"], c => c.Water is { } w ? 100 - w - (c.Alcohol ?? 0) : null),
        new("water", "%", 0.05, ["water", "wasser", "eau", "agua", "acqua"], c => c.Water),
        new("protein", "%", 0.05, ["protein", "eiweiß", "protéines", "proteína"], c => c.Protein),
        new("carbohydrate", "%", 0.05, ["carbohydrate", "carbohydrates"], c => c.Carbohydrate),
        new("fibre", "%", 0.05, ["fibre", "fiber"], c => c.Fibre),
        new("alcohol", "%", 0.05, ["alcohol by weight", "alcohol", "alkohol", "alcool"], c => c.Alcohol),
        new("energy", "kJ", 1, ["energy", "kj"], c => FoodEnergy.EuKilojoules(c)),
    ];

    /// <summary>Decimals worth showing: none finer than a kitchen can tell.</summary>
    public int Decimals => Math.Max(0, (int)Math.Floor(-Math.Log10(Close) + 1e-9));

    /// <summary>A property by its own name; null when there is none.</summary>
    public static MixtureProperty? Find(string name) => All.FirstOrDefault(p => p.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    // A mixture with hardly any water is no solution: its freezing and activity are not answered.
    private static Solution? Phase(Composition c) => c.Water > 5 ? Solution.Of(c, 100) : null;
}
