using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Sel nitrité 18 g/kg" among foods that have their weights: how much it is depends on what the kilograms are of, and that is asked with what each answer comes to.</summary>
internal static class KiloBases
{
    private const double AskedWeight = 300;

    /// <summary>One question for each such line whose base the card does not name.</summary>
    public static IEnumerable<Doubt> Of(Dish dish)
    {
        foreach (Component c in dish.Components)
        {
            foreach (IngredientLine line in c.Ingredients)
            {
                if (line.Foods is not [{ Percent: not null } food])
                {
                    continue;
                }

                if (KiloRates.In(line.Text, dish.Language) is { } rate)
                {
                    if (!Named(food.PercentOf, c))
                    {
                        yield return Ask(line, rate, c.Ingredients, "");
                    }
                }
                else if (RatedLists.Line(line, c, dish.Language) is { } told)
                {
                    // The list is of a part of its own: what it goes on stands in another.
                    IngredientLine[] others = [.. dish.Components.SelectMany(o => o.Ingredients)];
                    if (food.PercentOf is not { } of || others.SelectMany(l => l.Foods).Count(f => f.Percent is null && f.Food.Contains(of, StringComparison.OrdinalIgnoreCase)) != 1)
                    {
                        yield return Ask(line, told, others, ", in all");
                    }
                }
            }
        }
    }

    private static bool Named(string? of, Component c) => of is { Length: > 0 } && c.Ingredients.SelectMany(l => l.Foods).Any(f => f.Percent is null && f.Food.Contains(of, StringComparison.OrdinalIgnoreCase));

    private static Doubt Ask(IngredientLine line, KiloRates.Rate rate, IReadOnlyCollection<IngredientLine> list, string whole)
    {
        FoodAmount[] weighed = [.. list.SelectMany(l => l.Foods).Where(f => f.Grams > 0)];
        double all = weighed.Sum(f => f.Grams ?? 0);
        FoodAmount? heaviest = weighed.MaxBy(f => f.Grams);
        bool together = Places.Skip(line.Text, rate.AmountEnd) >= rate.Joint;
        string asked = together ? line.Text[rate.From..rate.End] : line.Text[rate.From..];
        string food = (together ? "" : " " + line.Foods[0].Food) + whole;
        string Of(double grams) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(rate.Grams * grams / 1000, 2):0.##} g");
        List<Candidate> ways = [];
        if (heaviest is { Grams: { } most })
        {
            ways.Add(new Candidate($"{Of(all)}, of all that is weighed here", Of(all) + food));
            if (weighed.Length > 1)
            {
                ways.Add(new Candidate($"{Of(most)}, of the {heaviest.Food} alone", Of(most) + food));
            }
        }
        else
        {
            ways.Add(new Candidate($"{Of(1000)}, of one kilogram", Of(1000) + food));
        }

        ways.Add(new Candidate("another amount", "… g" + food));
        return new Doubt(line.Span.Line, $"“{line.Text}”: so much to each {rate.Base}. Of what?", [.. ways], $"no amount or {(all > 0 ? Of(all) : "the right one")}", AskedWeight) { Asked = asked };
    }
}
