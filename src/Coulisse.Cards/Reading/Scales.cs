using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Figures of heat without their scale on a card that counts in Fahrenheit: taken for Fahrenheit like its oven, and asked where that cannot be. The middle of a food over 100 °C is never °C in silence.</summary>
/// <remarks>Ranges in which a figure can be Fahrenheit are common practice without a source: the middle of a food 100 to 212, an oven 200 to 550, a food 68 to 400.</remarks>
internal static class Scales
{
    /// <summary>A wrong middle is a safety matter: asked before figures of weight.</summary>
    private const double AskedWeight = 400;

    /// <summary>The card with such figures read by its scale.</summary>
    public static Dish Of(Dish dish, List<Doubt> doubts, List<Remark> remarks)
    {
        if (!dish.Components.Any(c => c.Steps.Any(s => s.Temperatures.Any(t => !t.Inherited && (Unscaled(t) || Hot(t) || Inferred(t))))))
        {
            return dish;
        }

        bool english = dish.Language == "en";
        if (english && StoneOvens.Metric(dish))
        {
            dish = StoneOvens.Of(dish, doubts);
        }

        bool fahrenheit = english && (Told(dish, TakenForFahrenheit) || Noted(dish, 'F'));
        bool celsius = Told(dish, t => Letter(t) == 'C') || Noted(dish, 'C');
        Doubt? asked = null;
        dish = dish with { Components = [.. dish.Components.Select(c => c with { Steps = Settled(c.Steps, fahrenheit, celsius, english, ref asked) })] };
        foreach (Step s in dish.Components.SelectMany(c => c.Steps))
        {
            if (s.Temperatures.FirstOrDefault(t => Hot(t) && Letter(t) == 'C') is { } t)
            {
                remarks.Add(new Remark(s.Span.Line, "implausible", string.Create(CultureInfo.InvariantCulture, $"{t.Celsius:0.#} °C in the middle; a food that holds water stays under 100 °C there, and {t.Celsius:0.#} °F is {Heat.OfFahrenheit(t.Celsius):0.#} °C: “{s.Text}”.")));
            }
        }

        if (asked is not null)
        {
            doubts.Add(asked);
        }

        return dish;
    }

    /// <summary>One step alone: what its own figures settle.</summary>
    public static Step Of(Step step, string lang)
    {
        bool fahrenheit = lang == "en" && step.Temperatures.Any(TakenForFahrenheit);
        Doubt? asked = null;
        return step.Temperatures.Any(t => Unscaled(t)) ? Settled([step], fahrenheit, step.Temperatures.Any(t => Letter(t) == 'C'), lang == "en", ref asked)[0] : step;
    }

    private static ImmutableArray<Step> Settled(ImmutableArray<Step> steps, bool fahrenheit, bool celsius, bool english, ref Doubt? asked)
    {
        Dictionary<double, double> ovens = [];
        ImmutableArray<Step>.Builder settled = ImmutableArray.CreateBuilder<Step>(steps.Length);
        foreach (Step s in steps)
        {
            ImmutableArray<StepTemperature>.Builder heats = ImmutableArray.CreateBuilder<StepTemperature>(s.Temperatures.Length);
            foreach (StepTemperature t in s.Temperatures)
            {
                heats.Add(Settled(s, t, fahrenheit, celsius, english, ovens, ref asked));
            }

            settled.Add(s with { Temperatures = heats.MoveToImmutable() });
        }

        return settled.MoveToImmutable();
    }

    private static StepTemperature Settled(Step s, StepTemperature t, bool fahrenheit, bool celsius, bool english, Dictionary<double, double> ovens, ref Doubt? asked)
    {
        if (t.Inherited)
        {
            return ovens.TryGetValue(t.Celsius, out double set) ? t with { Celsius = set } : t;
        }

        if (!Unscaled(t) || s.Temperatures.Any(o => o.Of == t.Of && !ReferenceEquals(o, t) && TakenForFahrenheit(o) && Math.Abs(o.Celsius - t.Celsius) < 8))
        {
            // "350 °F (180)": the other scale of the same heat.
            return t;
        }

        bool hot = Hot(t);
        bool can = t.Of switch { TemperatureOf.Core => t.Celsius is >= 100 and <= 212, TemperatureOf.Oven => t.Celsius is >= 200 and <= 550, _ => t.Celsius is >= 68 and <= 400 };
        if (english && can && (hot || fahrenheit && !celsius))
        {
            if (hot && !(fahrenheit && !celsius))
            {
                asked ??= Ask(s, t);
            }

            if (t.Of == TemperatureOf.Oven)
            {
                ovens[t.Celsius] = Heat.OfFahrenheit(t.Celsius);
            }

            return t with { Celsius = Heat.OfFahrenheit(t.Celsius), CelsiusMax = t.CelsiusMax is { } most ? Heat.OfFahrenheit(most) : null };
        }

        // Cold and lukewarm figures below that are left: 4 and 20 are °C everywhere.
        asked ??= hot || fahrenheit && !celsius && (t.Of is TemperatureOf.Core || t.Of is TemperatureOf.Oven && t.Celsius >= 100 || t.Celsius >= 32) ? Ask(s, t) : null;
        return t;
    }

    /// <summary>True for a figure without a scale that was taken for Fahrenheit by its size alone.</summary>
    public static bool Inferred(StepTemperature t) => TakenForFahrenheit(t) && Letter(t) == ' ';

    /// <summary>The question which scale a figure is of.</summary>
    public static Doubt Ask(Step s, StepTemperature t)
    {
        string figure = t.Celsius.ToString("0.#", CultureInfo.InvariantCulture);
        string other = Heat.OfFahrenheit(t.Celsius).ToString("0.#", CultureInfo.InvariantCulture);
        return new Doubt(s.Span.Line, $"“{s.Text}”: {figure} of which scale?", [new Candidate($"{figure} °F", $"{figure} °F"), new Candidate($"{figure} °C", $"{figure} °C")], $"{figure} °C or {other} °C", AskedWeight) { Asked = t.Words };
    }

    private static bool Told(Dish dish, Func<StepTemperature, bool> what) => dish.Components.Any(c => c.Steps.Any(s => s.Temperatures.Any(what)));

    /// <summary>True where a letter somewhere tells Fahrenheit.</summary>
    public static bool Lettered(Dish dish, char scale) => Told(dish, t => Letter(t) == scale) || Noted(dish, scale);

    private static bool Noted(Dish dish, char scale) => dish.Notes.Concat(dish.Components.SelectMany(c => c.Notes)).Any(n => n.Text.Contains('°', StringComparison.Ordinal) && (n.Text.Contains("°" + scale, StringComparison.Ordinal) || n.Text.Contains("° " + scale, StringComparison.Ordinal)));

    /// <summary>The middle of a food over 100 °C.</summary>
    private static bool Hot(StepTemperature t) => t.Of == TemperatureOf.Core && t.Celsius > 100;

    /// <summary>True for a figure, bare or in "degrees", that was read as °C because nothing said otherwise.</summary>
    private static bool Unscaled(StepTemperature t) => t is { Words.Length: > 0, Inherited: false } && char.IsAsciiDigit(t.Words[0]) && Letter(t) == ' ' && !TakenForFahrenheit(t);

    /// <summary>True for a figure that was turned into °C.</summary>
    public static bool TakenForFahrenheit(StepTemperature t) => t.Words.Length > 0 && char.IsAsciiDigit(t.Words[0]) && (Letter(t) == 'F' || Letter(t) == ' ' && Numbers.Single(t.Words, 0, "en") is { } n && Math.Abs(n.Min - t.Celsius) > 0.5);

    /// <summary>The scale its own words tell; C where both are told. The f of a fan is none.</summary>
    private static char Letter(StepTemperature t) => Tells(t.Words, 'C', "elsius", "entigr", "entígr") ? 'C' : Tells(t.Words, 'F', "ahrenheit") ? 'F' : ' ';

    private static bool Tells(string words, char scale, params ReadOnlySpan<string> goesOn)
    {
        for (int i = 0; i < words.Length; i++)
        {
            if (char.ToUpperInvariant(words[i]) == scale && (i == 0 || !char.IsLetter(words[i - 1])))
            {
                bool told = i + 1 == words.Length || !char.IsLetter(words[i + 1]);
                foreach (string w in goesOn)
                {
                    told |= words.AsSpan(i + 1).StartsWith(w, StringComparison.OrdinalIgnoreCase);
                }

                if (told)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
