using System.Text.Json.Serialization;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Needs;

/// <summary>Why something is needed.</summary>
public enum NeedRole
{
    /// <summary>For what is served.</summary>
    Served,

    /// <summary>For a twin or what is begun before an audience.</summary>
    Twin,

    /// <summary>For a guest's diet, beside the recipes.</summary>
    Diet,

    /// <summary>A spare or something added by hand.</summary>
    Added,
}

/// <summary>Something that must be bought: for a dish, a twin, a spare or a guest's diet.</summary>
/// <param name="Food">Food as named.</param>
/// <param name="Grams">Grams ready to use; 0 for a need counted in pieces.</param>
/// <param name="For">What it is for, in words.</param>
public sealed record Need(string Food, double Grams, string For)
{
    /// <summary>Whole pieces, when a count decides and not weight.</summary>
    public int Pieces { get; init; }

    /// <summary>Share of the bought weight that is ready to use, when it is stated; null leaves it to the price list's note, else 1.</summary>
    public double? UsableShare { get; init; }

    /// <summary>Share the card's own two weights give ("365 g, from 415 g"): used when neither <see cref="UsableShare"/> nor the price list says one.</summary>
    public double? StatedShare { get; init; }

    /// <summary>Our food, when its name is known.</summary>
    public string? FoodId { get; init; }

    /// <summary>The row it was weighed with, the house's own where it has one; null when only the id is known.</summary>
    [JsonIgnore]
    public Food? Known { get; init; }

    /// <summary>The line as written: what is done to the food before it is weighed.</summary>
    public string As { get; init; } = "";

    /// <summary>Shapes cut from whole pieces ("280 discs of 60 mm"); null when weight alone counts.</summary>
    public CutNeed? Cut { get; init; }

    /// <summary>It begins with whole pieces of its own: nothing cut from the others will do, since it is cut before an audience.</summary>
    public bool FromWhole { get; init; }

    /// <summary>Dish; empty for what belongs to none.</summary>
    public string Dish { get; init; } = "";

    /// <summary>Component; empty for the dish as a whole.</summary>
    public string Component { get; init; } = "";

    /// <summary>Why it is needed.</summary>
    public NeedRole Role { get; init; } = NeedRole.Served;
}

/// <summary>Discs stamped from whole roots or bulbs.</summary>
/// <param name="Count">How many.</param>
/// <param name="Millimetres">Diameter.</param>
public readonly record struct CutNeed(double Count, double Millimetres);
