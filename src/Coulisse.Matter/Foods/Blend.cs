using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Matter.Foods;

/// <summary>Several foods weighed together, nothing lost: what 100 g of the whole holds.</summary>
/// <param name="Grams">Weight of all foods.</param>
/// <param name="Composition">Per 100 g. A part is null when a food that matters to it does not hold it.</param>
/// <param name="Lacking">For each part that is null, the foods that do not hold it.</param>
public sealed record Blend(double Grams, Composition Composition, ImmutableDictionary<string, ImmutableArray<string>> Lacking)
{
    // A food below this share of the whole cannot move a figure by more than it may be off anyway; its missing part counts as none.
    private const double Trifling = 0.005;

    // Sugars that are not held are at most the carbohydrate, saturates at most the fat: where all of that together is under this, g in 100 g, it counts as none.
    private const double TriflingPart = 0.25;

    /// <summary>Blends foods by weight. The order does not matter.</summary>
    /// <param name="foods">Name, grams and composition of each.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative weight, or no weight at all.</exception>
    public static Blend Of(IEnumerable<(string Name, double Grams, Composition Composition)> foods)
    {
        (string Name, double Grams, Composition C)[] all = [.. foods];
        double total = all.Sum(f => f.Grams);
        if (all.Any(f => f.Grams < 0) || total <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(foods), total, "A blend is of foods with weights, none of them negative, more than 0 g together.");
        }

        ImmutableDictionary<string, ImmutableArray<string>>.Builder lacking = ImmutableDictionary.CreateBuilder<string, ImmutableArray<string>>(StringComparer.Ordinal);

        double? Sum(string part, Func<Composition, double?> of, Func<Composition, double?>? most = null)
        {
            double sum = 0, lackingMost = 0;
            bool lacks = false;
            foreach ((string _, double grams, Composition c) in all)
            {
                if (of(c) is { } held)
                {
                    sum += grams * held;
                }
                else if (grams > Trifling * total)
                {
                    lacks = true;
                    lackingMost += grams * (most?.Invoke(c) ?? 100);
                }
            }

            if (lacks && (most is null || lackingMost >= TriflingPart * total))
            {
                lacking[part] = [.. all.Where(f => f.Grams > Trifling * total && of(f.C) is null).Select(w => w.Name).Distinct()];
                return null;
            }

            return sum / total;
        }

        double Loose(Func<Composition, double?> of)
        {
            double sum = 0;
            foreach ((string _, double grams, Composition c) in all)
            {
                sum += grams * (of(c) ?? 0);
            }

            return sum / total;
        }

        // Fibre that is not held stays inside the carbohydrate by difference, at most what sugars and starch leave of it, so the sum goes on; who states fibre must look.
        _ = Sum("fibre", c => c.Fibre ?? (c.Carbohydrate == 0 ? 0 : null), c => Math.Max(0, (c.Carbohydrate ?? 100) - (c.Sugars ?? 0) - (c.Starch ?? 0)));
        double? protein = Sum("protein", c => c.Protein);
        double? eu = Sum("protein", c => c.ProteinEu);
        Composition mixed = new()
        {
            Water = Sum("water", c => c.Water), Protein = protein, NitrogenFactor = protein > 0 && eu > 0 ? 6.25 * protein / eu : null, Fat = Sum("fat", c => c.Fat),
            Saturates = Sum("saturates", c => c.Saturates ?? (c.Fat == 0 ? 0 : null), c => c.Fat), Carbohydrate = Sum("carbohydrate", c => c.Carbohydrate),
            Sugars = Sum("sugars", c => c.Sugars ?? (c.Carbohydrate == 0 ? 0 : null), c => c.Carbohydrate), Sucrose = Loose(c => c.Sucrose), Glucose = Loose(c => c.Glucose), Fructose = Loose(c => c.Fructose),
            Lactose = Loose(c => c.Lactose), Maltose = Loose(c => c.Maltose), Starch = Loose(c => c.Starch), Fibre = Loose(c => c.Fibre), Polyols = Loose(c => c.Polyols),
            Alcohol = Loose(c => c.Alcohol), Acid = Loose(c => c.Acid), Ash = Sum("ash", c => c.Ash), SodiumMilligrams = Sum("sodium", c => c.SodiumMilligrams),
            PotassiumMilligrams = Sum("potassium", c => c.PotassiumMilligrams), CalciumMilligrams = Sum("calcium", c => c.CalciumMilligrams),
            IronMilligrams = Sum("iron", c => c.IronMilligrams), VitaminCMilligrams = Sum("vitamin C", c => c.VitaminCMilligrams),
            VitaminAMicrograms = Sum("vitamin A", c => c.VitaminAMicrograms), VitaminDMicrograms = Sum("vitamin D", c => c.VitaminDMicrograms),
            TransFat = Sum("trans fat", c => c.TransFat ?? (c.Fat == 0 ? 0 : null), c => c.Fat), CholesterolMilligrams = Sum("cholesterol", c => c.CholesterolMilligrams),
            AddedSugars = Sum("added sugars", c => c.AddedSugars ?? (c.Sugars == 0 ? 0 : null), c => c.Sugars ?? c.Carbohydrate),
        };
        return new Blend(total, mixed, lacking.ToImmutable());
    }

    /// <summary>The same food after water (and alcohol) has left it, weighed at the end.</summary>
    /// <param name="finalGrams">Weight at the end.</param>
    /// <param name="alcoholKept">Share of the alcohol that stays, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">More left than there was water, or the end is heavier than the start; the message says by how much.</exception>
    /// <remarks>Water by balance, not by factor: water out = weight lost − alcohol lost.</remarks>
    public Blend Reduced(double finalGrams, double alcoholKept = 1)
    {
        if (alcoholKept is not (>= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(alcoholKept), alcoholKept, "A share kept is 0 to 1.");
        }

        double factor = Grams / 100;
        double alcohol = (Composition.Alcohol ?? 0) * factor;
        double gone = alcohol * (1 - alcoholKept);
        double water = ((Composition.Water ?? 0) * factor) - (Grams - finalGrams - gone);
        if (finalGrams is not > 0 || finalGrams > Grams + 1e-9 || (finalGrams < Grams && Composition.Water is null) || water < -1e-9)
        {
            throw new ArgumentOutOfRangeException(nameof(finalGrams), finalGrams, string.Create(CultureInfo.InvariantCulture, $"From {Grams:0.#} g with {(Composition.Water ?? 0) * factor:0.#} g of water, the weight at the end is {Math.Max(0, Grams - ((Composition.Water ?? 0) * factor) - gone):0.#} to {Grams:0.#} g."));
        }

        Composition dry = Composition.Scaled(Grams / finalGrams);
        return this with { Grams = finalGrams, Composition = dry with { Water = Composition.Water is null ? null : Math.Max(0, water) / finalGrams * 100, Alcohol = alcohol * alcoholKept / finalGrams * 100 } };
    }
}
