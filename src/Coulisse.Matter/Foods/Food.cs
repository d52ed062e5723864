using System.Collections.Immutable;

namespace Coulisse.Matter.Foods;

/// <summary>A food of our table: names, figures and where they are from.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Name">English name to show.</param>
/// <param name="Source">The source row of its figures.</param>
/// <param name="Why">What is odd about the figures; empty when nothing is.</param>
/// <param name="Composition">What 100 g of the edible part holds.</param>
public sealed record Food(string Id, string Name, string Source, string Why, Composition Composition)
{
    private readonly FoodNameList _names = FoodNameList.None;

    /// <summary>Densities by measure and state ("cup", "cup packed", "tsp", "any"), g/mL.</summary>
    public ImmutableDictionary<string, Held> Densities { get; init; } = ImmutableDictionary<string, Held>.Empty;

    /// <summary>Edible grams of a counted unit ("piece", "large", "clove").</summary>
    public ImmutableDictionary<string, Held> Units { get; init; } = ImmutableDictionary<string, Held>.Empty;

    /// <summary>Edible share of the bought weight, percent; null when not held.</summary>
    public double? EdiblePercent { get; init; }

    /// <summary>Allergen codes it always carries.</summary>
    public ImmutableArray<string> Contains { get; init; } = [];

    /// <summary>Allergen codes that depend on brand or process: unknown until a specification is seen.</summary>
    public ImmutableArray<string> Depends { get; init; } = [];

    /// <summary>Class for what cooking leaves of its vitamins ("roots", "beef"); empty when the table of retention has none for it.</summary>
    public string Class { get; init; } = "";

    /// <summary>Sulphur dioxide the supplier states, mg in 1 kg; null when nobody has stated it.</summary>
    public double? SulphurDioxide { get; init; }

    /// <summary>False for a food of the house whose line says nothing of allergens: they are unknown then, never absent.</summary>
    public bool AllergensHeld { get; init; } = true;

    /// <summary>Names in one language, the usual one first.</summary>
    public ImmutableDictionary<string, ImmutableArray<string>> Names
    {
        get => _names.ByLanguage;
        init => _names = new FoodNameList(value);
    }

    /// <summary>Names that lie in the table until somebody asks for them.</summary>
    internal FoodNameList NamesInTable
    {
        init => _names = value;
    }

    /// <summary>True for liquids, syrups and soft fats, which fill a measure the same at every size.</summary>
    public bool Flows => Composition.Water > 40 || Composition.Fat > 75 || (Composition.Sugars > 35 && Composition.Water > 10);

    /// <summary>Density nearest the measure: same measure and state, then the same state elsewhere, then the measure plain, then any.</summary>
    /// <param name="unit">tsp, tbsp, cup, "fl oz" or another volume.</param>
    /// <param name="state">"packed", "sifted", "grated" …, or null.</param>
    public (string Key, Held Density)? DensityFor(string unit, string? state)
    {
        if (Densities.IsEmpty)
        {
            return null;
        }

        // Spoon weights are printed to the nearest half gram, so what packs alike at every size is better taken from the cup.
        string[] measures = Flows ? ["cup", "fl oz", "tbsp", "tsp"] : unit is "tsp" or "tbsp" ? [unit, unit == "tsp" ? "tbsp" : "tsp", "cup", "fl oz"] : unit == "cup" ? ["cup", "fl oz", "tbsp", "tsp"] : ["fl oz", "cup", "tbsp", "tsp"];
        if (state is not null)
        {
            foreach (string key in measures.Select(m => $"{m} {state}").Append(state))
            {
                if (Densities.TryGetValue(key, out Held? found))
                {
                    return (key, found);
                }
            }
        }

        foreach (string key in measures.Append("any"))
        {
            if (Densities.TryGetValue(key, out Held? found))
            {
                return (key, found);
            }
        }

        // Only a state that was not asked for is held: the lightest of them would be a guess, so the middle one is taken.
        string[] order = [.. Densities.OrderBy(d => d.Value.Value).ThenBy(d => d.Key, StringComparer.Ordinal).Select(d => d.Key)];
        string middle = order[order.Length / 2];
        return (middle, Densities[middle]);
    }
}

/// <summary>A held figure.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Assumed">True when it is common practice or from memory, false when the food's source row has it.</param>
public sealed record Held(double Value, bool Assumed);

/// <summary>A food found for a name.</summary>
/// <param name="Id">The food's id.</param>
/// <param name="Confidence">0 to 1.</param>
/// <param name="Alias">The name of ours that matched.</param>
public sealed record FoodMatch(string Id, double Confidence, string Alias);
