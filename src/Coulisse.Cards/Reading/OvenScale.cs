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

        if (Metric(dish))
        {
            yield break;
        }

        if (Told(dish))
        {
            if (Signed(dish) is { } open)
            {
                yield return open;
            }

            yield break;
        }

        foreach (Step s in dish.Components.SelectMany(c => c.Steps))
        {
            if (s.Temperatures.FirstOrDefault(t => !t.Inherited && Bare(t.Words) && (t.Of == TemperatureOf.Oven ? t.Celsius is >= 100 and <= 280 : t.Celsius is >= 90 and <= 230)) is { } t)
            {
                // The figure as it is printed, not what it was read as: "350" was taken for degrees Fahrenheit.
                string figure = t.Words;
                double printed = double.Parse(figure, CultureInfo.InvariantCulture);
                double fahrenheit = Math.Round((printed - 32) * 5 / 9);
                string lead = Lead(s.Text, figure);
                Candidate celsius = new($"{figure} °C", $"{lead}{figure} °C");
                Candidate other = new($"{figure} °F", $"{lead}{figure} °F");
                bool taken = Math.Abs(printed - t.Celsius) < 1;
                yield return new Doubt(s.Span.Line, $"“{s.Text}”: {figure} of which scale?", taken ? [celsius, other] : [other, celsius], string.Create(CultureInfo.InvariantCulture, $"{printed:0} °C or {fahrenheit:0} °C"), AskedWeight) { Asked = lead + figure };
                yield break;
            }
        }
    }

    /// <summary>"Bake at 250°" on a card of cups that tells no scale anywhere: the sign alone says none, and either oven bakes so.</summary>
    private static Doubt? Signed(Dish dish)
    {
        if (!Household(dish) || Scales.Lettered(dish, 'F') || Scales.Lettered(dish, 'C'))
        {
            return null;
        }

        foreach (Step s in dish.Components.SelectMany(c => c.Steps))
        {
            foreach (StepTemperature t in s.Temperatures)
            {
                if (!t.Inherited && t is { Of: TemperatureOf.Oven, Celsius: >= 200 and <= 290 } && t.Words.EndsWith('°') && !Scales.TakenForFahrenheit(t))
                {
                    return Scales.Ask(s, t);
                }
            }
        }

        return null;
    }

    private static bool Household(Dish dish) => dish.Components.Any(c => c.Ingredients.Any(l => l.Foods.Any(f => f.Unit is "cup" or "oz" or "lb" or "floz" or "stick")));

    /// <summary>True when the scale is told somewhere.</summary>
    private static bool Told(Dish dish)
    {
        bool noted = dish.Notes.Any(Scaled);
        foreach (Component c in dish.Components)
        {
            noted = noted || c.Notes.Any(Scaled);
            foreach (Step s in noted ? [] : c.Steps)
            {
                foreach (StepTemperature t in s.Temperatures)
                {
                    noted |= t.Words.Length > 0 && !Bare(t.Words);
                }
            }
        }

        return noted;
    }

    private static bool Scaled(Note note) => note.Text.Contains('°');

    /// <summary>True when the card weighs and measures in metric units at least as often as in others.</summary>
    public static bool Metric(Dish dish)
    {
        (int metric, int household) = (0, 0);
        foreach (Component c in dish.Components)
        {
            foreach (IngredientLine line in c.Ingredients)
            {
                foreach (FoodAmount f in line.Foods)
                {
                    metric += f.Unit is "g" or "kg" or "ml" or "l" or "dl" or "cl" ? 1 : 0;
                    household += f.Unit is "cup" or "oz" or "lb" or "floz" or "stick" or "pint" or "quart" ? 1 : 0;
                }
            }
        }

        return metric >= Math.Max(1, household);
    }

    /// <summary>The word that leads to the figure, so that "180 g … bake at 180" has one place.</summary>
    private static string Lead(string text, string figure)
    {
        foreach (string lead in (ReadOnlySpan<string>)["at ", "to ", "oven ", "fan ", "@ ", "@", "a ", "the "])
        {
            int at = text.IndexOf(lead + figure, StringComparison.Ordinal);
            if (at >= 0 && (at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (at + lead.Length + figure.Length == text.Length || !char.IsLetterOrDigit(text[at + lead.Length + figure.Length])))
            {
                return lead;
            }
        }

        return "";
    }

    private static bool Bare(string words) => words.Length > 0 && words.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0;
}
