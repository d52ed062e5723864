using System.Collections.Immutable;

namespace Coulisse.Matter.Substance;

/// <summary>One model's water activity.</summary>
/// <param name="Model">Name of the model.</param>
/// <param name="Value">Water activity; null where the model does not hold.</param>
/// <param name="Range">Where it holds.</param>
public sealed record ActivityModel(string Model, double? Value, string Range);

/// <summary>Water activity as a band from several models, never as one number.</summary>
/// <param name="Low">Least of the models that hold.</param>
/// <param name="High">Greatest; a limit is judged against this one.</param>
/// <param name="Models">Each model's answer.</param>
public sealed record WaterActivity(double Low, double High, ImmutableArray<ActivityModel> Models)
{
    // Molar mass and Norrish constant: Chirife et al. 1980 for sugars (from memory), PMC2836749 Table 3 for polyols.
    private const double Water = 18.015;
    private static readonly (Func<Solution, double> Grams, double Molar, double K)[] Solutes =
    [
        (s => s.Sucrose, 342.3, -6.47), (s => s.Hexoses, 180.16, -2.25), (s => s.Lactose, 342.3, -10.2), (s => s.Maltose, 342.3, -4.54),
        (s => s.Glycerol, 92.09, -1.16), (s => s.Polyols, 182.17, -1.65), (s => s.Acid, 192.12, -6.17),
    ];

    /// <summary>Estimates the band.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No water.</exception>
    public static WaterActivity Of(Solution s)
    {
        ArgumentNullException.ThrowIfNull(s);
        if (s.Water is not > 0)
        {
            throw new ArgumentOutOfRangeException(nameof(s), s.Water, "A solution has water.");
        }

        ImmutableArray<ActivityModel> models =
        [
            new("Norrish, mixed", Norrish(s), "sugars and polyols from 0.99 to about 0.5"),
            new("Ross", Ross(s), "each solute alone in all the water; about 0.01 high at 0.88"),
            new("Raoult", Raoult(s), "ideal; above 0.95"),
            new("Grover", Grover(s), "E from 1.5 to 8"),
            new("Money and Born", MoneyBorn(s), "sugars alone, 0.99 to about 0.75"),
        ];
        double[] held = [.. models.Where(m => m.Value is not null && !(m.Model == "Raoult" && m.Value < 0.95)).Select(m => m.Value!.Value)];
        return new WaterActivity(held.Min(), held.Max(), models);
    }

    /// <summary>Norrish for the sugars and polyols together, times the salt's and the alcohol's own activity.</summary>
    public static double Norrish(Solution s)
    {
        ArgumentNullException.ThrowIfNull(s);
        double n = s.Water / Water;
        double total = n + Solutes.Sum(x => x.Grams(s) / x.Molar);
        double sum = Solutes.Sum(x => Math.Sqrt(-x.K) * (x.Grams(s) / x.Molar) / total);
        return n / total * Math.Exp(-sum * sum) * Salt(s) * Ethanol(s);
    }

    /// <summary>Ross: the product of each solute alone in all the water.</summary>
    public static double Ross(Solution s)
    {
        ArgumentNullException.ThrowIfNull(s);
        double n = s.Water / Water;
        double product = Salt(s) * Ethanol(s);
        foreach ((Func<Solution, double> grams, double molar, double k) in Solutes)
        {
            double m = grams(s) / molar;
            double x = m / (n + m);
            product *= (1 - x) * Math.Exp(k * x * x);
        }

        return product;
    }

    /// <summary>Raoult: mole fraction of water, salt as two ions.</summary>
    public static double Raoult(Solution s)
    {
        ArgumentNullException.ThrowIfNull(s);
        double n = s.Water / Water;
        return n / (n + Solutes.Sum(x => x.Grams(s) / x.Molar) + (2 * s.Salt / 58.44) + (s.Ethanol / 46.07));
    }

    /// <summary>Grover's equation (coefficients from memory); null outside E 1.5 to 8, where it strays above 1 or has no data.</summary>
    public static double? Grover(Solution s)
    {
        ArgumentNullException.ThrowIfNull(s);
        double e = (s.Sucrose + s.Lactose + s.Maltose + (1.3 * s.Hexoses) + (0.8 * s.Starch) + (1.3 * s.Protein) + (2.5 * s.Acid) + (2 * s.Polyols) + (4 * s.Glycerol) + (9 * s.Salt) + (8 * s.Ethanol)) / s.Water;
        return e is >= 1.5 and <= 8 ? 1.04 - (0.1 * e) + (0.0045 * e * e) : null;
    }

    /// <summary>Money and Born 1951, 1 / (1 + 0.27 n), n moles of sugar in 100 g of water (from memory; check value aw_mixA 0.8775); null where more than a twentieth of what is dissolved is no sugar, or above three moles.</summary>
    public static double? MoneyBorn(Solution s)
    {
        ArgumentNullException.ThrowIfNull(s);
        double sugars = s.Sucrose + s.Hexoses + s.Lactose + s.Maltose;
        double other = s.Glycerol + s.Polyols + s.Salt + s.Acid + s.Ethanol;
        double moles = ((s.Sucrose + s.Lactose + s.Maltose) / 342.3) + (s.Hexoses / 180.16);
        double n = moles / s.Water * 100;
        return sugars > 0 && other <= 0.05 * (sugars + other) && n <= 3 ? 1 / (1 + (0.27 * n)) : null;
    }

    // Sodium chloride, 0 to 6 mol/kg (from memory, fits 0.753 when saturated); beyond that it is saturated.
    private static double Salt(Solution s)
    {
        double m = Math.Min(6.15, s.Salt / 58.44 / (s.Water / 1000));
        return 1 - (0.03112 * m) - (0.001482 * m * m);
    }

    private static double Ethanol(Solution s) => 1 / (1 + (s.Ethanol / 46.07 / (s.Water / Water)));
}
