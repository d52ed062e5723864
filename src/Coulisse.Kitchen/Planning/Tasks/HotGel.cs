using Coulisse.Cards;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>What is boiled with agar must be poured while it is hot: it sets as it cools, far above the cold, and no second blending brings it back.</summary>
/// <remarks>Agar sets between about 32 and 43 °C (its gelling range in JECFA's specification, FAO monographs 1); gellan and carrageenan are taken alike. Gelatine sets in the cold and may wait.</remarks>
internal static class HotGel
{
    /// <summary>Minutes a small pan may stand off the heat before it is poured. Common practice, no source.</summary>
    public const int Minutes = 10;

    /// <summary>Why, in words.</summary>
    public const string Because = "poured while it is hot: it sets as it cools";

    private static readonly string[] Agents = ["agar", "gellan", "carrageenan", "kappa", "iota"];

    /// <summary>True when a step leaves a part that holds such an agent boiled and not yet poured.</summary>
    public static bool Left(Component component, Step step)
        => component.Ingredients.SelectMany(l => l.Foods).Any(f => Agents.Any(a => f.Food.Contains(a, StringComparison.OrdinalIgnoreCase)))
            && new[] { "boil", "simmer" }.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase))
            && !new[] { "pour", "mould", "set aside", "fridge", "chill", "leave it to set" }.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase));
}
