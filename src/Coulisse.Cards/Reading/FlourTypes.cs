namespace Coulisse.Cards.Reading;

/// <summary>The bare figure behind a flour: a type where a country tells types so ("Mehl 550", "farine 65"), an amount everywhere else ("Bread flour 500", "Farina 00 300").</summary>
internal static class FlourTypes
{
    // Types by ash: France (45 to 170); German and Austrian ones lie among the usual amounts, so that there a figure stays a type. Knowledge of the trade.
    private static readonly double[] French = [45, 55, 65, 80, 110, 130, 150, 170];
    private static readonly string[] English = ["flour"];
    private static readonly string[] Italian = ["farina"];
    private static readonly string[] Spanish = ["harina"];
    private static readonly string[] Farine = ["farine"];

    /// <summary>True when the figure behind a flour can be no type in the language of the card.</summary>
    /// <param name="food">The food before the figure.</param>
    /// <param name="figure">The figure.</param>
    /// <param name="lang">Language code.</param>
    public static bool None(string food, double figure, string lang)
    {
        string[] words = lang switch { "en" => English, "it" => Italian, "es" => Spanish, "fr" => Farine, _ => [] };
        // "Flour type 500", "grade", "No": the word says that the figure is one.
        return Words.Places.HasAny(food, words) && !Words.Places.HasAny(food, "type", "tipo", "grade", "size", "No", "step", "part", "bloom") && !(lang == "fr" && Array.IndexOf(French, figure) >= 0);
    }

    /// <summary>The food without the type that stands behind its name: "Farina 00", "farine T65".</summary>
    public static ReadOnlySpan<char> Bare(string food)
    {
        int last = food.LastIndexOf(' ');
        ReadOnlySpan<char> type = food.AsSpan(last + 1);
        bool told = last > 0 && (type is "0" or "00" or "000" or "0000" || type.Length is 3 or 4 && type[0] is 'T' or 'W' && type[1..].IndexOfAnyExceptInRange('0', '9') < 0);
        return told ? food.AsSpan(0, last) : food;
    }
}
