using Coulisse.Matter.Foods;

namespace Coulisse.Matter.Substance;

/// <summary>The water of a mixture and what is dissolved in it, grams of each.</summary>
public sealed record Solution
{
    /// <summary>Water.</summary>
    public required double Water { get; init; }

    /// <summary>Sucrose, and sugars whose kind is not held: they are taken as the one that binds least water (cautious).</summary>
    public double Sucrose { get; init; }

    /// <summary>Glucose and fructose.</summary>
    public double Hexoses { get; init; }

    /// <summary>Lactose.</summary>
    public double Lactose { get; init; }

    /// <summary>Maltose.</summary>
    public double Maltose { get; init; }

    /// <summary>Glycerol.</summary>
    public double Glycerol { get; init; }

    /// <summary>Polyols, taken as sorbitol.</summary>
    public double Polyols { get; init; }

    /// <summary>Sodium chloride.</summary>
    public double Salt { get; init; }

    /// <summary>Ethanol.</summary>
    public double Ethanol { get; init; }

    /// <summary>Organic acids.</summary>
    public double Acid { get; init; }

    /// <summary>Starch and gums; not dissolved, but they bind water in one of the models.</summary>
    public double Starch { get; init; }

    /// <summary>Protein; likewise.</summary>
    public double Protein { get; init; }

    /// <summary>Milk solids without fat, whose salts lower the freezing point.</summary>
    public double MilkSolids { get; init; }

    /// <summary>The water phase of a food or a blend.</summary>
    /// <param name="c">Composition per 100 g.</param>
    /// <param name="grams">How much of it.</param>
    /// <returns>Null when water or sugars are not held.</returns>
    /// <remarks>Sodium is counted as salt, but for what milk brings of its own (0.49 g sodium in 100 g milk solids: whole milk of SR28, 43 mg in 8.7 g).</remarks>
    public static Solution? Of(Composition c, double grams)
    {
        ArgumentNullException.ThrowIfNull(c);
        if (c.Water is not { } water || c.Sugars is not { } sugars)
        {
            return null;
        }

        double k = grams / 100;
        double hexoses = (c.Glucose ?? 0) + (c.Fructose ?? 0);
        double lactose = c.Lactose ?? 0;
        double maltose = c.Maltose ?? 0;
        double milk = lactose / 0.545;
        double sodium = Math.Max(0, ((c.SodiumMilligrams ?? 0) / 1000) - (milk * 0.0049));
        return new Solution
        {
            Water = water * k, Hexoses = hexoses * k, Lactose = lactose * k, Maltose = maltose * k, Sucrose = Math.Max(0, sugars - hexoses - lactose - maltose) * k,
            Polyols = (c.Polyols ?? 0) * k, Salt = sodium * 58.44 / 22.99 * k, Ethanol = (c.Alcohol ?? 0) * k, Acid = (c.Acid ?? 0) * k,
            Starch = Math.Max(0, (c.Carbohydrate ?? 0) - sugars - (c.Polyols ?? 0)) * k, Protein = (c.Protein ?? 0) * k, MilkSolids = milk * k,
        };
    }

    /// <summary>Grams of everything dissolved.</summary>
    public double Dissolved => Sucrose + Hexoses + Lactose + Maltose + Glycerol + Polyols + Salt + Acid;

    /// <summary>Soluble solids of the water phase, g per 100 g of water and what is dissolved in it. A refractometer reads about this as Brix.</summary>
    public double SolubleSolidsPercent => 100 * Dissolved / (Water + Dissolved + Ethanol);

    /// <summary>Sugars alone, g per 100 g of the water phase.</summary>
    public double Brix => 100 * (Sucrose + Hexoses + Lactose + Maltose) / (Water + Dissolved + Ethanol);

    /// <summary>Salt in water and salt together, percent.</summary>
    public double SaltInWaterPercent => Water + Salt > 0 ? 100 * Salt / (Water + Salt) : 0;
}
