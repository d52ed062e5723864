using System.Globalization;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>"1 cup (300 g) icing sugar": a weight beside a cup or a volume that the food cannot have, however it is packed.</summary>
internal static class MeasuredWeights
{
    // Cups of the countries that have one, from the Japanese to the metric: data/measures/household.tsv.
    private const double SmallestCup = 200;
    private const double LargestCup = 250;
    private const double UsualCup = 240;

    // Heaping and pressing move a cup by a third at most; whole leaves lie far looser than chopped ones and are pressed flat, so the light side is wide, and both are for them. Common practice, no source.
    private const double Heaviest = 1.6;
    private const double HeaviestLeaves = 5;
    private const double Leafy = 0.3;
    private const double Lightest = 0.35;

    /// <summary>What the measure usually weighs and how it is told; null when the two agree or nothing sure is known of the food.</summary>
    public static (double Grams, string Measure)? Clash(Draft d, string lang)
    {
        if (d is not { Unit: { Kind: "cup" or "volume" } unit, Amount: > 0 and { } n, AmountMax: null, Second: { } second, Grams: { } told, GramsMax: null, PackGrams: null, Bought: null, Known: { } known } || second.EndsWith("each", StringComparison.Ordinal)
            || unit.Base is null && (unit.Unit != "cup" || lang != "en") || FoodTable.Default.Find(known.Id) is not { } food)
        {
            return null;
        }

        double[] held = [.. food.Densities.Values.Where(h => !h.Assumed).Select(h => h.Value)];
        if (held.Length == 0)
        {
            return null;
        }

        (double least, double most, double usual) = unit.Base is { } ml ? (ml, ml, ml) : (SmallestCup, LargestCup, UsualCup);
        return told > n * most * held.Max() * (held.Max() < Leafy ? HeaviestLeaves : Heaviest) || told < n * least * held.Min() * Lightest
            ? (n * usual * (food.DensityFor("cup", null)?.Density.Value ?? held.Average()), $"{n.ToString("0.####", CultureInfo.InvariantCulture)} {unit.Unit}")
            : null;
    }
}
