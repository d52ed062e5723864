namespace Coulisse.Cards.Reading;

/// <summary>"mezza bustina di lievito (8 g)", "1 ½ Dosen Tomaten (600 g)", "½ sachet of yeast (7 g)": a pack that is not taken whole, and a weight behind it. It may be what was taken or what one pack holds; the sizes in which the food is sold tell which, and where they do not it is asked. "½ (400 g) tin" says what one holds.</summary>
internal static class PartPacks
{
    private const double Slack = 0.02;

    // Sizes as shops sell them: common practice, no source.
    private static readonly double[] Tins = [400, 410, 425, 800, 850];
    private static readonly double[] Packs = [125, 250, 500, 1000];
    private static readonly double[] Leaveners = [10, 11, 15, 16, 17];
    private static readonly double[] Yeasts = [7, 8, 9, 11, 42];
    private static readonly double[] Sugars = [7.5, 8];

    private static readonly double[] Small = [.. Leaveners, .. Yeasts, .. Packs];

    /// <summary>What all that is taken weighs, where the figure tells that; null where it is what one holds. Which of the two is asked where the sizes do not say.</summary>
    public static double? All(Draft d, double grams, string lang)
    {
        if (d is not { Amount: { } n, AmountMax: null, EachInBracket: false } || n % 1 == 0)
        {
            return null;
        }

        double[] sizes = Sizes(d, lang);
        bool one = Sold(sizes, grams);
        bool all = Sold(sizes, grams / n);
        if (one == all)
        {
            d.EachOrAll ??= System.FormattableString.Invariant($"{grams} g");
        }

        return all && !one ? grams : null;
    }

    private static double[] Sizes(Draft d, string lang) => d.Unit?.Unit == "tin" ? Tins : FoodIds.Match(d.Food, lang)?.Id switch
    {
        "baking-powder" => Leaveners,
        "yeast-instant" or "yeast-dry" or "yeast-fresh" => Yeasts,
        "vanilla-sugar" => Sugars,
        null => Small,
        _ => Packs,
    };

    private static bool Sold(double[] sizes, double grams) => Array.Exists(sizes, s => Math.Abs(s - grams) <= s * Slack);
}
