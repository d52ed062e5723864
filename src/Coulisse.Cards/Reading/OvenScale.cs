using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Cards.Reading;

/// <summary>A figure of an oven or a hot food without its scale on a card that nowhere says which it uses: read as °C, and asked. A card in grams, or with one °C on it, leaves no question.</summary>
internal static class OvenScale
{
    private const double AskedWeight = 300;

    /// <summary>The questions of a dish, one for the first such figure.</summary>
    public static IEnumerable<Doubt> Of(Dish dish)
    {
        // Outside English no kitchen counts in Fahrenheit.
        if (dish.Language != "en")
        {
            yield break;
        }

        Step[] steps = [.. dish.Components.SelectMany(c => c.Steps)];
        bool told = steps.SelectMany(s => s.Temperatures).Any(t => t.Words.Length > 0 && !Bare(t.Words)) || dish.Notes.Concat(dish.Components.SelectMany(c => c.Notes)).Any(n => n.Text.Contains('°'));
        ImmutableArray<FoodAmount> foods = [.. dish.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods)];
        int metric = foods.Count(f => f.Unit is "g" or "kg" or "ml" or "l" or "dl" or "cl");
        int household = foods.Count(f => f.Unit is "cup" or "oz" or "lb" or "floz" or "stick" or "pint" or "quart");
        if (told || metric >= Math.Max(1, household))
        {
            yield break;
        }

        foreach (Step s in steps)
        {
            if (s.Temperatures.FirstOrDefault(t => !t.Inherited && Bare(t.Words) && (t.Of == TemperatureOf.Oven ? t.Celsius is >= 100 and <= 280 : t.Celsius is >= 90 and <= 230)) is { } t)
            {
                string figure = t.Celsius.ToString("0", CultureInfo.InvariantCulture);
                double other = Math.Round((t.Celsius - 32) * 5 / 9);
                yield return new Doubt(s.Span.Line, $"“{s.Text}”: {figure} of which scale?", [new Candidate($"{figure} °C", $"{figure} °C"), new Candidate($"{figure} °F", $"{figure} °F")], string.Create(CultureInfo.InvariantCulture, $"{figure} °C or {other:0} °C"), AskedWeight);
                yield break;
            }
        }
    }

    private static bool Bare(string words) => words.Length > 0 && words.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0;
}
