using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards.Words;
using Coulisse.Matter.Measures;

namespace Coulisse.Cards.Reading;

/// <summary>Finds whose spoons and cups a card means: by what it says, by what it shows ("1 cup (250 ml)"), by a place, by words only one country uses.</summary>
internal static partial class Measures
{
    private const int MostLines = 600;
    private const int MostSentence = 4000;
    private static readonly string[] American = ["all-purpose", "all purpose", "stick of butter", "sticks of butter", "stick butter", "sticks butter", "stick unsalted", "sticks unsalted", "heavy cream", "confectioners", "half-and-half", "powdered sugar", "kosher salt", "cilantro"];
    private static readonly string[] Australian = ["thickened cream", "capsicum", "fan-forced", "copha", "tasty cheese", "eschalot"];
    private static readonly string[] British = ["double cream", "single cream", "strong white flour", "plain flour", "caster sugar", "gas mark"];

    /// <summary>The system of a dish.</summary>
    public static MeasureSystem Of(Dish dish)
    {
        List<string> sentences = [.. new[] { dish.Title }.Concat(dish.Notes.Concat(dish.Components.SelectMany(c => c.Notes)).Concat(dish.Unread).Take(MostLines).Select(n => n.Text)).Select(s => s.Length > MostSentence ? s[..MostSentence] : s)];
        FoodAmount[] foods = [.. dish.Components.SelectMany(c => c.Ingredients).Take(MostLines).SelectMany(l => l.Foods)];
        return Said(sentences) ?? Shown(foods) ?? Named(sentences) ?? (dish.Language == "ja" ? new MeasureSystem("jp", false, "a Japanese card") : Worded(dish, foods)) ?? MeasureSystem.Assumed;
    }

    private static MeasureSystem? Said(List<string> sentences)
    {
        foreach (string s in sentences)
        {
            if (s.Contains("ml", StringComparison.OrdinalIgnoreCase) && (s.Contains("tbsp", StringComparison.OrdinalIgnoreCase) || s.Contains("tablespoon", StringComparison.OrdinalIgnoreCase)) && SpoonInMillilitres().Match(s) is { Success: true } ml)
            {
                return new MeasureSystem(ml.Groups["ml"].Value == "20" ? "au" : "metric", true, $"the card says a tablespoon is {ml.Groups["ml"].Value} mL");
            }

            if (s.Contains(" are ", StringComparison.OrdinalIgnoreCase) && MeasuresAre().Match(s) is { Success: true } named && Household.SystemOfPlace(named.Groups["place"].Value) is { } said)
            {
                return new MeasureSystem(said, true, $"the card says “{named.Value}”");
            }
        }

        return null;
    }

    /// <summary>A household measure told in millilitres beside it, where rounding leaves no choice.</summary>
    private static MeasureSystem? Shown(FoodAmount[] foods)
    {
        MeasureSystem? cup = null;
        foreach (FoodAmount f in foods)
        {
            (double Household, double Millilitres, string Unit)? pair = (f.Unit, f.SecondMeasure) switch
            {
                ("cup" or "tbsp" or "pint", { } s) when s.EndsWith(" ml", StringComparison.Ordinal) && double.TryParse(s[..^3], NumberStyles.Float, CultureInfo.InvariantCulture, out double ml) => (f.Amount ?? 0, ml, f.Unit!),
                ("ml", { } s) when s.IndexOf(' ') is var sp and > 0 && s[(sp + 1)..] is "cup" or "tbsp" or "pint" && double.TryParse(s[..s.IndexOf(' ')], NumberStyles.Float, CultureInfo.InvariantCulture, out double n) => (n, f.Amount ?? 0, s[(s.IndexOf(' ') + 1)..]),
                _ => null,
            };
            // A third of a cup is printed as 80 ml in every country: only halves and wholes tell.
            if (pair is not ({ } count, { } volume, { } unit) || count < 0.5)
            {
                continue;
            }

            double one = volume / count;
            string? system = unit switch
            {
                "tbsp" => Math.Abs(one - 20) < 0.6 ? "au" : null,
                "pint" => Math.Abs(one - 568) < 8 ? "uk" : Math.Abs(one - 473) < 8 ? "us" : null,
                _ => Math.Abs(one - 250) < 3 ? "metric" : Math.Abs(one - 240) < 4 ? "us" : Math.Abs(one - 200) < 3 ? "jp" : null,
            };
            MeasureSystem? found = system is null ? null : new MeasureSystem(system, true, string.Create(CultureInfo.InvariantCulture, $"the card shows {count:0.##} {unit} as {volume:0.#} mL"));
            if (found is not null && unit != "cup")
            {
                return found;
            }

            cup ??= found;
        }

        return cup;
    }

    private static MeasureSystem? Named(List<string> sentences)
    {
        foreach (string s in sentences)
        {
            // Only a word written with a capital can be a place: "turkey" on a card is a bird.
            foreach (string word in Capitals.In(s))
            {
                if (Household.SystemOfPlace(word) is { } place)
                {
                    return new MeasureSystem(place, false, $"“{word}” in the text");
                }
            }
        }

        return null;
    }

    private static MeasureSystem? Worded(Dish dish, FoodAmount[] foods)
    {
        if (dish.Language != "en")
        {
            return null;
        }

        string lines = string.Join('\n', dish.Components.SelectMany(c => c.Ingredients).Take(MostLines).Select(i => i.Text));
        string steps = string.Join('\n', dish.Components.SelectMany(c => c.Steps).Take(MostLines).Select(s => s.Text));
        bool Has(string[] words) => words.Any(w => lines.Contains(w, StringComparison.OrdinalIgnoreCase) || steps.Contains(w, StringComparison.OrdinalIgnoreCase));

        if (American.Any(w => lines.Contains(w, StringComparison.OrdinalIgnoreCase)))
        {
            return new MeasureSystem("us", false, "American words in the list");
        }

        // The other countries' words settle only what differs there: the Australian spoon, the British pint.
        return foods.Any(f => f.Unit is "tbsp" or "cup") && Has(Australian) ? new MeasureSystem("au", false, "Australian words on the card")
            : foods.Any(f => f.Unit is "pint" or "floz" or "gill" or "quart") && Has(British) ? new MeasureSystem("uk", false, "British words on the card")
            : null;
    }

    [GeneratedRegex(@"\b(?:tablespoons?|tbsp)\b[^.\d]{0,20}\b(?<ml>15|20)\s?ml\b", RegexOptions.IgnoreCase)]
    private static partial Regex SpoonInMillilitres();

    [GeneratedRegex(@"\b(?:tablespoons|spoons|cups|measures) are (?:all |New )?(?<place>\w+)", RegexOptions.IgnoreCase)]
    private static partial Regex MeasuresAre();
}
