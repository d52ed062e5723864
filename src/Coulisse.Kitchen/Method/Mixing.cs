using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Method;

/// <summary>The mixture a component's lines make when all of them are put together.</summary>
/// <remarks>Constituents are summed from the food table; a food without a row, a line taken from another component and a constituent that is not held go to the unknown part, never to zero.</remarks>
public static class Mixing
{
    /// <summary>Sum over the lines that have grams.</summary>
    public static Mixture Of(WeighedComponent component)
    {
        ArgumentNullException.ThrowIfNull(component);
        double grams = 0;
        double unknown = 0;
        double[] sums = new double[8];
        double alcohol = 0;
        List<string> unheld = [];
        foreach (WeighedLine line in component.Lines)
        {
            if (line.Grade == WeightGrade.Unknown)
            {
                // "pepper to taste": no weight, so it is named but cannot be counted.
                if (line.Food.Use is null)
                {
                    unheld.Add(line.Food.Food);
                }

                continue;
            }

            grams += line.Grams;
            Composition? c = line.Food.FromComponent is null ? LineComposition.Of(line) : null;
            if (c is not { Water: not null, Protein: not null, Fat: not null, Carbohydrate: not null })
            {
                unknown += line.Grams;
                unheld.Add(line.Food.Food);
                continue;
            }

            double k = line.Grams / 100;
            double?[] parts = [c.Water, c.Protein, c.Fat, Math.Max(0, c.Carbohydrate.Value) + (c.Acid ?? 0), c.Sugars, c.Fibre, c.Ash, c.SodiumMilligrams];
            for (int i = 0; i < parts.Length; i++)
            {
                sums[i] += (parts[i] ?? 0) * k;
            }

            alcohol += (c.Alcohol ?? 0) * k;
        }

        return new Mixture
        {
            Grams = grams, Water = sums[0], Protein = sums[1], Fat = sums[2], Carbohydrate = sums[3], Sugars = sums[4], Fibre = sums[5], Ash = sums[6],
            Alcohol = alcohol, SodiumMilligrams = sums[7], UnknownGrams = unknown, Unknown = [.. unheld],
        };
    }

    /// <summary>The same where parts taken from other components are known by what they are once made; as by the lines alone where none is taken or the whole is not known.</summary>
    public static Mixture Of(WeighedComponent component, MixedComponent mixed)
    {
        ArgumentNullException.ThrowIfNull(component);
        ArgumentNullException.ThrowIfNull(mixed);
        if (mixed.Composition is not { Water: { } water, Protein: { } protein, Fat: { } fat, Carbohydrate: { } carbohydrate } c || component.Lines.All(l => l.Food.FromComponent is null))
        {
            return Of(component);
        }

        double k = mixed.Grams / 100;
        return new Mixture
        {
            Grams = mixed.Grams, Water = water * k, Protein = protein * k, Fat = fat * k, Carbohydrate = (Math.Max(0, carbohydrate) + (c.Acid ?? 0)) * k, Sugars = (c.Sugars ?? 0) * k, Fibre = (c.Fibre ?? 0) * k, Ash = (c.Ash ?? 0) * k,
            Alcohol = (c.Alcohol ?? 0) * k, SodiumMilligrams = (c.SodiumMilligrams ?? 0) * k, Unknown = [.. component.Lines.Where(l => l.Grade == WeightGrade.Unknown && l.Food.Use is null).Select(l => l.Food.Food)],
        };
    }

    /// <summary>Fractions for the heat model; null when a food is not known, nothing has a weight, or alcohol is more than a twentieth.</summary>
    public static ThermalParts? Parts(Mixture mixture)
    {
        ArgumentNullException.ThrowIfNull(mixture);
        return mixture is { Unknown.IsEmpty: true, Grams: > 0, Water: { } w, Protein: { } p, Fat: { } f, Carbohydrate: { } c } && (mixture.Alcohol ?? 0) <= mixture.Grams / 20
            ? ThermalParts.FromGrams(w + (mixture.Alcohol ?? 0), p, f, c, mixture.Fibre ?? 0, mixture.Ash ?? 0)
            : null;
    }
}
