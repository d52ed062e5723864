using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Substance;

/// <summary>Sugar in water: density, boiling point, stages, dilution, with altitude.</summary>
public static class Syrup
{
    private static readonly Lazy<(double Brix, double? Density, double? Rise)[]> Table = new(() =>
        [.. ReferenceTable.Load("measures/sugar-solutions.tsv").Rows.Select(r => (ReferenceTable.Number(r[0])!.Value, ReferenceTable.Number(r[1]), ReferenceTable.Number(r[2]))).OrderBy(r => r.Item1)]);

    private static readonly Lazy<(string Stage, double Low, double High)[]> Stages = new(() =>
        [.. ReferenceTable.Load("measures/sugar-stages.tsv").Rows.Select(r => (r[0], ReferenceTable.Number(r[1])!.Value, ReferenceTable.Number(r[2])!.Value))]);

    /// <summary>Density at 20 °C, g/mL, 0 to 80 Brix; null outside.</summary>
    public static double? Density(double brix) => Interpolate(brix, r => r.Density);

    /// <summary>Boiling point at a height above the sea, °C; null above 82 Brix.</summary>
    /// <remarks>Water boils about 1 °C lower for each 300 m (common practice, to 3,000 m).</remarks>
    public static double? BoilingPoint(double brix, double metres = 0) => Interpolate(brix, r => r.Rise) + 100 - (metres / 300);

    /// <summary>Brix that boils at a temperature; null outside the table.</summary>
    public static double? BrixBoilingAt(double celsius, double metres = 0)
    {
        double low = 0, high = 82;
        if (BoilingPoint(low, metres) > celsius || BoilingPoint(high, metres) < celsius)
        {
            return null;
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (BoilingPoint(middle, metres) < celsius)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }

    /// <summary>Stage of boiled sugar at a temperature read at a height; null between and outside the stages.</summary>
    public static string? Stage(double celsius, double metres = 0)
    {
        double sea = celsius + (metres / 300);
        return Stages.Value.Where(s => sea >= s.Low && sea <= s.High).Select(s => s.Stage).LastOrDefault();
    }

    /// <summary>Grams to stir into a syrup to reach another Brix. m₂ = m₁ (B₁ − B)/(B − B₂).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The wanted Brix does not lie between the two.</exception>
    public static double Dilution(double grams, double brix, double wanted, double other = 0) => (wanted - other) * (brix - wanted) > 0
        ? grams * (brix - wanted) / (wanted - other)
        : throw new ArgumentOutOfRangeException(nameof(wanted), wanted, "The wanted Brix lies between the two that are mixed.");

    /// <summary>Grams left when a mixture is reduced to a share of solids. M = M₀ S₀/S.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The wanted share is not above the present one, or not up to 100.</exception>
    public static double Reduced(double grams, double solids, double wanted) => solids > 0 && wanted > solids && wanted <= 100
        ? grams * solids / wanted
        : throw new ArgumentOutOfRangeException(nameof(wanted), wanted, "Reducing raises the share of solids, to 100 % at most.");

    /// <summary>Overrun, percent, from densities of mix and foam.</summary>
    public static double OverrunPercent(double mix, double foam) => mix > 0 && foam > 0 ? ((mix / foam) - 1) * 100 : throw new ArgumentOutOfRangeException(nameof(foam), foam, "Densities are above 0.");

    private static double? Interpolate(double brix, Func<(double Brix, double? Density, double? Rise), double?> of)
    {
        (double Brix, double Value)[] points = [.. Table.Value.Where(r => of(r) is not null).Select(r => (r.Brix, of(r)!.Value))];
        if (!(brix >= points[0].Brix && brix <= points[^1].Brix))
        {
            return null;
        }

        int i = Math.Max(1, Array.FindIndex(points, p => p.Brix >= brix));
        (double b0, double v0) = points[i - 1];
        (double b1, double v1) = points[i];
        return v0 + ((v1 - v0) * (brix - b0) / (b1 - b0));
    }
}
