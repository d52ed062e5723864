namespace Coulisse.Cards.Checks;

/// <summary>"75g/3oz", "30 g (1 oz)": small weights as British books print them, an ounce told as 25 or 30 g. Common practice, no source.</summary>
internal static class PrintedOunces
{
    private const double Ounce = 28.349523125;
    private const double MostOunces = 6;

    /// <summary>True when two weights, both in grams, are one amount told that way, whichever was the ounces.</summary>
    public static bool Agree(double one, double other) => Rounded(one, other) || Rounded(other, one);

    private static bool Rounded(double grams, double other) =>
        other / Ounce is var ounces and > 0 and <= MostOunces && grams % 5 == 0 && grams / ounces is >= 24.9 and <= 30.1;
}
