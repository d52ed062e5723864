using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Bake on the stone at 300° for 8 min, finish at 200°" on a card that weighs in grams and nowhere says Fahrenheit: no kitchen oven but a stone's is so hot, and a stone's is. Read as °C, and asked once.</summary>
/// <remarks>Taken for Fahrenheit, the 200° beside it would become 93 °C. That such ovens bake at 300 to 500 °C is common practice, no source.</remarks>
internal static class StoneOvens
{
    private static readonly WordList Stones = new("pizza", "pizzas", "pizzetta", "focaccia", "pinsa", "flatbread", "flatbreads", "naan", "tandoor", "stone", "baking steel", "wood oven", "wood-fired", "hearth", "deck oven", "Josper");

    /// <summary>True for a card of grams that nowhere tells Fahrenheit.</summary>
    public static bool Metric(Dish dish) => OvenScale.Metric(dish) && !Scales.Lettered(dish, 'F');

    /// <summary>The card with the figures of such ovens in °C.</summary>
    public static Dish Of(Dish dish, List<Doubt> doubts)
    {
        bool titled = Stones.In(dish.Title);

        // A figure that only a kitchen oven in Fahrenheit has, of a card or a step without a stone, speaks for all of it.
        if (dish.Components.Any(c => c.Steps.Any(s => s.Temperatures.Any(t => Scales.Inferred(t) && !(titled || Stones.In(s.Text))))))
        {
            return dish;
        }

        Doubt? asked = null;
        dish = dish with { Components = [.. dish.Components.Select(c => c with { Steps = [.. c.Steps.Select(s => s.Temperatures.Any(Scales.Inferred) ? Back(s, ref asked) : s)] })] };
        if (asked is not null)
        {
            doubts.Add(asked);
        }

        return dish;
    }

    private static Step Back(Step s, ref Doubt? asked)
    {
        ImmutableArray<StepTemperature>.Builder heats = ImmutableArray.CreateBuilder<StepTemperature>(s.Temperatures.Length);
        foreach (StepTemperature t in s.Temperatures)
        {
            StepTemperature read = Scales.Inferred(t) ? t with { Celsius = Printed(t.Celsius), CelsiusMax = t.CelsiusMax is { } most ? Printed(most) : null } : t;
            asked ??= Scales.Inferred(t) ? Scales.Ask(s, read) : null;
            heats.Add(read);
        }

        return s with { Temperatures = heats.MoveToImmutable() };
    }

    private static double Printed(double celsius) => Math.Round(celsius * 9 / 5 + 32);
}
