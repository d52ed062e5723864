using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.In;

namespace Coulisse.Gauge.Reading;

/// <summary>Whole cards in every layout: does each line stand in its component?</summary>
internal static class CardCases
{
    public static Score Run(string data)
    {
        Score score = new("cards: component of each line");
        foreach (JsonElement c in ReadingGauge.Cases(data, "card"))
        {
            if (!c.GetProperty("expect").TryGetProperty("components", out JsonElement components))
            {
                continue;
            }

            Dish? dish = Incoming.ToCard(c.GetProperty("input").GetString()!).Match(t => CardReader.Read(t).Match<Dish?>(d => d, _ => null), _ => null);
            foreach (JsonElement component in components.EnumerateArray())
            {
                string name = component.GetProperty("name").GetString()!;
                foreach (JsonElement i in component.GetProperty("ingredients").EnumerateArray())
                {
                    (string food, double? amount) = i.ValueKind == JsonValueKind.Array ? (i[0].GetString()!, Number(i[1])) : (i.GetProperty("food").GetString()!, Number(i.GetProperty("amount")));
                    score.Add(dish?.Components.Any(k => Named(k.Name, name, dish) && k.Ingredients.SelectMany(l => l.Foods).Any(f => Alike(f.Food, food) && (amount is null || f.Amount == amount || f.Grams == amount))) == true, () => $"{c.GetProperty("id").GetString()} {name}: {amount} {food}");
                }
            }
        }

        return score;
    }

    private static double? Number(JsonElement e) => e.ValueKind == JsonValueKind.Number ? e.GetDouble() : null;

    private static bool Alike(string got, string want) => got.Contains(want, StringComparison.OrdinalIgnoreCase) || (got.Length > 2 && want.Contains(got, StringComparison.OrdinalIgnoreCase));

    private static bool Named(string got, string want, Dish dish) => got.Length == 0 ? want == "(main)" || dish.Title.Contains(want, StringComparison.OrdinalIgnoreCase)
        : got.Contains(want, StringComparison.OrdinalIgnoreCase) || want.Contains(got, StringComparison.OrdinalIgnoreCase);
}
