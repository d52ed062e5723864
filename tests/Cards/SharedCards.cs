using System.Text.Json;
using Coulisse.Cards.Reading;
using Coulisse.Tests;

namespace Coulisse.Cards.Tests;

/// <summary>Invented whole cards in every layout with their right reading, laid beside the repository: each line must stand in its component.</summary>
public sealed class SharedCards
{
    [Fact]
    public void Lines_stand_in_their_component()
    {
        (int lines, int placed) = (0, 0);
        List<string> failures = [];
        foreach (JsonElement c in new[] { "data/reading/cases.jsonl", "data/reading/cases-2.jsonl" }.SelectMany(f => File.ReadLines(SharedData.Path(f))).Select(l => JsonDocument.Parse(l).RootElement))
        {
            string input = c.GetProperty("input").GetString()!;
            if (c.GetProperty("kind").GetString() != "card" || input[0] == '{' || !c.GetProperty("expect").TryGetProperty("components", out JsonElement components))
            {
                continue;
            }

            Dish dish = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(input))).Value;
            List<string> missing = [];
            foreach (JsonElement component in components.EnumerateArray())
            {
                string name = component.GetProperty("name").GetString()!;
                foreach (JsonElement i in component.GetProperty("ingredients").EnumerateArray())
                {
                    (string food, double? amount) = i.ValueKind == JsonValueKind.Array ? (i[0].GetString()!, Number(i[1])) : (i.GetProperty("food").GetString()!, Number(i.GetProperty("amount")));
                    lines++;
                    bool found = dish.Components.Any(k => Named(k.Name, name, dish) && k.Ingredients.SelectMany(l => l.Foods).Any(f => Alike(f.Food, food) && (amount is null || f.Amount == amount || f.Grams == amount)));
                    placed += found ? 1 : 0;
                    if (!found)
                    {
                        missing.Add($"{name}/{food} {amount}");
                    }
                }
            }

            if (missing.Count > 0)
            {
                failures.Add($"{c.GetProperty("id").GetString()}: {string.Join("; ", missing)} not in {string.Join(" | ", dish.Components.Select(k => $"{k.Name}: {string.Join(", ", k.Ingredients.SelectMany(l => l.Foods).Select(f => $"{f.Amount} {f.Food}"))}"))}");
            }
        }

        string report = $"component of each line {placed}/{lines}\n{string.Join("\n", failures)}";
        TestContext.Current.TestOutputHelper?.WriteLine(report);
        Assert.True(placed >= Floors.LineComponent * lines, report);
    }

    private static double? Number(JsonElement e) => e.ValueKind == JsonValueKind.Number ? e.GetDouble() : null;

    private static bool Alike(string got, string want) => got.Contains(want, StringComparison.OrdinalIgnoreCase) || want.Contains(got, StringComparison.OrdinalIgnoreCase) && got.Length > 2;

    private static bool Named(string got, string want, Dish dish) => got.Length == 0 ? want == "(main)" || dish.Title.Contains(want, StringComparison.OrdinalIgnoreCase)
        : got.Contains(want, StringComparison.OrdinalIgnoreCase) || want.Contains(got, StringComparison.OrdinalIgnoreCase);
}
