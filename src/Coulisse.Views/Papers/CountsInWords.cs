using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;

namespace Coulisse.Views.Papers;

/// <summary>Numbers that a line counts in its words ("280 of them, from 8 bulbs of about 354 g") belong to the card's own amount: beside another weight they are scaled with it, or left out where no more than one is left.</summary>
internal static partial class CountsInWords
{
    /// <summary>What stands behind a food's name (grade, state, preparation, use), each piece led by a comma, for another amount.</summary>
    /// <param name="food">The line's food.</param>
    /// <param name="name">Its name as shown; what that holds already is not said again.</param>
    /// <param name="factor">This amount over the card's.</param>
    public static string Behind(FoodAmount food, string name, double factor)
        => Scaled(string.Concat(new[] { food.Grade, food.State, food.Preparation, food.Use }.Where(t => t is { Length: > 0 } && !name.Contains(t, StringComparison.OrdinalIgnoreCase)).Select(t => ", " + t)), factor);

    // Sizes ("1.2 mm thick", "discs of 60 mm", "about 354 g" a piece) are the same at any amount.
    private static string Scaled(string words, double factor)
    {
        if (Math.Abs(factor - 1) < 0.005)
        {
            return words;
        }

        string of = OfThem().Replace(words, m => About(m, factor) + " of them");
        string cut = CutIn().Replace(of, m => "in " + About(m, factor) + " " + m.Groups["what"].Value);
        return From().Replace(cut, m => Math.Round(Count(m, factor)) >= 2 ? ", from " + About(m, factor) + " " + m.Groups["what"].Value : "");
    }

    private static string About(Match m, double factor) => "about " + Math.Max(1, Math.Round(Count(m, factor))).ToString("#,0", CultureInfo.InvariantCulture);

    private static double Count(Match m, double factor) => double.TryParse(m.Groups["n"].Value.Replace(",", "", StringComparison.Ordinal), NumberStyles.None, CultureInfo.InvariantCulture, out double n) ? n * factor : 0;

    [GeneratedRegex(@"(?<![\d.,])(?<n>\d[\d,]{0,14}) of them", RegexOptions.ExplicitCapture)]
    private static partial Regex OfThem();

    [GeneratedRegex(@"\bin (?<n>\d[\d,]{0,14}) (?<what>(equal |even )?(discs|pieces|slices|wedges|cubes|strips|batons|bars|rounds|portions|balls)\b)", RegexOptions.ExplicitCapture)]
    private static partial Regex CutIn();

    [GeneratedRegex(@", from (?<n>\d[\d,]{0,14}) (?<what>(?!(g|kg|ml|mL|l|L|mm|cm|min|h)\b)\p{L}+[^,]{0,60})", RegexOptions.ExplicitCapture)]
    private static partial Regex From();
}
