using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Matter.Measures;

namespace Coulisse.Kitchen.Formulas;

/// <summary>Whose spoons and cups a card means, and how sure that is.</summary>
/// <param name="System">au, nz, uk, us, jp or metric.</param>
/// <param name="Settled">True when the card or the caller says so; false when it was inferred or assumed.</param>
/// <param name="Because">What it rests on, in words.</param>
internal sealed partial record CardMeasures(string System, bool Settled, string Because)
{
    private static readonly string[] American = ["all-purpose", "all purpose", "stick of butter", "sticks of butter", "heavy cream", "confectioners"];

    public static CardMeasures Of(Dish dish, string? given)
    {
        if (given is not null)
        {
            return Household.Systems.Contains(given)
                ? new CardMeasures(given, true, $"measures {given}, as asked")
                : throw new ArgumentOutOfRangeException(nameof(given), given, "Measures are au, nz, uk, us, jp or metric.");
        }

        ImmutableArray<string> sentences = [dish.Title, .. dish.Notes.Select(n => n.Text), .. dish.Components.SelectMany(c => c.Notes).Select(n => n.Text), .. dish.Unread.Select(u => u.Text)];
        foreach (string s in sentences)
        {
            if (SpoonInMillilitres().Match(s) is { Success: true } ml)
            {
                string system = ml.Groups["ml"].Value switch { "20" => "au", _ => "metric" };
                return new CardMeasures(system, true, $"the card says a tablespoon is {ml.Groups["ml"].Value} mL");
            }

            if (MeasuresAre().Match(s) is { Success: true } named && Household.SystemOfPlace(named.Groups["place"].Value) is { } said)
            {
                return new CardMeasures(said, true, $"the card says “{named.Value}”");
            }
        }

        foreach (string s in sentences)
        {
            // Only a word written with a capital can be a place: "turkey" on a card is a bird.
            foreach (Match word in Capitalised().Matches(s))
            {
                if (Household.SystemOfPlace(word.Value) is { } place)
                {
                    return new CardMeasures(place, false, $"“{word.Value}” in the text");
                }
            }
        }

        if (dish.Language == "ja")
        {
            return new CardMeasures("jp", false, "a Japanese card");
        }

        string lines = string.Join('\n', dish.Components.SelectMany(c => c.Ingredients).Select(i => i.Text)).ToLowerInvariant();
        return American.Any(a => lines.Contains(a, StringComparison.Ordinal))
            ? new CardMeasures("us", false, "American words in the list")
            : new CardMeasures("metric", false, "no country is named, so metric spoons and cups are assumed");
    }

    /// <summary>Systems worth asking about beside the one taken: those that hold another size of a unit the card uses.</summary>
    public ImmutableArray<string> Others => System switch
    {
        "au" => ["metric"],
        "metric" or "uk" or "nz" => ["au", "us"],
        "us" => ["metric"],
        _ => ["metric"],
    };

    /// <summary>The words for a system's spoon ("Australian tablespoon, 20 mL").</summary>
    public static string SpoonOf(string system) => string.Create(CultureInfo.InvariantCulture, $"{Adjective(system)} tablespoon, {Household.SizeOf("tbsp", system)!.Value.Size.Millilitres:0.#} mL, and cup, {Household.SizeOf("cup", system)!.Value.Size.Millilitres:0.#} mL");

    /// <summary>The sentence that, written into the card, settles it.</summary>
    public static string Plain(string system) => $"Measures are {Adjective(system)}.";

    private static string Adjective(string system) => system switch
    {
        "au" => "Australian",
        "nz" => "New Zealand",
        "uk" => "British",
        "us" => "American",
        "jp" => "Japanese",
        _ => "metric",
    };

    [GeneratedRegex(@"\b(?:tablespoons?|tbsp)\b[^.\d]{0,20}\b(?<ml>15|20)\s?ml\b", RegexOptions.IgnoreCase | RegexOptions.NonBacktracking)]
    private static partial Regex SpoonInMillilitres();

    [GeneratedRegex(@"\b(?:tablespoons|spoons|cups|measures) are (?:all |New )?(?<place>\w+)", RegexOptions.IgnoreCase | RegexOptions.NonBacktracking)]
    private static partial Regex MeasuresAre();

    [GeneratedRegex(@"\b\p{Lu}\w+\b", RegexOptions.NonBacktracking)]
    private static partial Regex Capitalised();
}
