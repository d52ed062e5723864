using Coulisse.Matter.Foods;

namespace Coulisse.Matter.Substance;

/// <summary>What a mixture is made of, as far as heat cares: mass fractions that sum to one.</summary>
/// <param name="Water">Water.</param>
/// <param name="Protein">Protein.</param>
/// <param name="Fat">Fat.</param>
/// <param name="Carbohydrate">Carbohydrate without fibre; acids and polyols are counted here.</param>
/// <param name="Fibre">Fibre.</param>
/// <param name="Ash">Ash.</param>
public sealed record ThermalParts(double Water, double Protein, double Fat, double Carbohydrate, double Fibre, double Ash)
{
    /// <summary>Fractions from grams in any scale.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A negative part, or nothing at all.</exception>
    public static ThermalParts FromGrams(double water, double protein, double fat, double carbohydrate, double fibre, double ash)
    {
        double sum = water + protein + fat + carbohydrate + fibre + ash;
        return sum is > 0 and < 1e12 && Math.Min(Math.Min(Math.Min(water, protein), Math.Min(fat, carbohydrate)), Math.Min(fibre, ash)) >= 0
            ? new ThermalParts(water / sum, protein / sum, fat / sum, carbohydrate / sum, fibre / sum, ash / sum)
            : throw new ArgumentOutOfRangeException(nameof(water), sum, "The parts of a mixture are zero or more and not all zero.");
    }

    /// <summary>Fractions of a food; null when its water, protein, fat or carbohydrate is not held, or it holds more than 5 % alcohol (outside the model).</summary>
    public static ThermalParts? Of(Composition food)
    {
        ArgumentNullException.ThrowIfNull(food);
        return food is { Water: { } w, Protein: { } p, Fat: { } f, Carbohydrate: { } c } && (food.Alcohol ?? 0) <= 5
            ? FromGrams(w + (food.Alcohol ?? 0), p, f, Math.Max(0, c) + (food.Acid ?? 0), food.Fibre ?? 0, food.Ash ?? 0)
            : null;
    }
}
