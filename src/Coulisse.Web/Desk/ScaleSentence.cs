using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Web.Desk;

/// <summary>Reads the sentence above the manuscript: "53 plates", "2.4 kg", "500 g milk", "× 1.5", "tin 330 × 230 mm".</summary>
internal static partial class ScaleSentence
{
    /// <summary>What a person sees when it is not understood.</summary>
    public const string Hint = "Write 53 plates, 2.4 kg in all, 500 g milk at hand, × 1.5, or a tin such as 330 × 230 mm.";

    /// <returns>What to scale to; null when the words are not understood.</returns>
    public static ScaleTo? Read(string words)
    {
        string s = words.Trim().TrimEnd('.');
        if (Tin().Match(s) is { Success: true } tin)
        {
            return new ScaleTo.Tin([.. tin.Groups["n"].Captures.Select(c => Number(c.Value) * (tin.Groups["u"].Value == "cm" ? 10 : 1))]);
        }

        if (Times().Match(s) is { Success: true } times)
        {
            return new ScaleTo.Factor(Number(times.Groups["n"].Value));
        }

        if (Mass().Match(s) is { Success: true } mass)
        {
            double grams = Number(mass.Groups["n"].Value) * (mass.Groups["u"].Value.StartsWith("k", StringComparison.OrdinalIgnoreCase) ? 1000 : 1);
            string food = Tail().Replace(mass.Groups["food"].Value.Trim(), "");
            return food.Length == 0 ? new ScaleTo.Yield(grams) : new ScaleTo.Have(food, grams);
        }

        return Covers().Match(s) is { Success: true } covers ? new ScaleTo.Covers(Number(covers.Groups["n"].Value)) : null;
    }

    private static double Number(string text) => double.Parse(text.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?:a |one )?(?:tin |ring |mould |frame )?(?:of )?(?<n>\d{1,5}(?:[.,]\d+)?)(?:\s*(?:×|x|by)\s*(?<n>\d{1,5}(?:[.,]\d+)?)){0,2}\s*(?<u>mm|cm)(?: tin)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Tin();

    [GeneratedRegex(@"^(?:(?:×|x|times)\s*(?<n>\d{1,6}(?:[.,]\d+)?)|(?<n>\d{1,6}(?:[.,]\d+)?)\s*(?:×|x|times))$", RegexOptions.IgnoreCase)]
    private static partial Regex Times();

    [GeneratedRegex(@"^(?<n>\d{1,7}(?:[.,]\d+)?)\s*(?<u>kg|g|grams?)\b(?<food>.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Mass();

    [GeneratedRegex(@"^(?:for )?(?<n>\d{1,6}(?:[.,]\d+)?)(?:\s*(?:plates?|covers?|portions?|people|guests?|servings?|pieces?))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Covers();

    [GeneratedRegex(@"^of |^in all$|(?<!\s)\s*(?:at hand|in all)$", RegexOptions.IgnoreCase)]
    private static partial Regex Tail();
}
