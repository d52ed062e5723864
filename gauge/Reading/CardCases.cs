using System.Text.Json;
using Coulisse.Cards;

namespace Coulisse.Gauge.Reading;

/// <summary>Whole cards in every layout: does each line stand in its component, has each step its figures, are yields read, and are no more questions asked than a careful reader would?</summary>
internal static class CardCases
{
    /// <param name="cases">Cases of kind card.</param>
    /// <param name="read">Reads a card as it came in; null for what it refuses.</param>
    public static List<Score> Run(IEnumerable<JsonElement> cases, Func<string, Dish?> read)
    {
        (Score lines, Score minutes, Score degrees) = (new("cards: component of each line"), new("cards: minutes of each step"), new("cards: temperatures of each step"));
        (Score yields, Score doubts, Score foods) = (new("cards: yields"), new("cards: no more doubts than expected"), new("cards: no line a food that is none"));
        foreach (JsonElement c in cases)
        {
            Dish? dish = read(c.GetProperty("input").GetString()!);
            JsonElement e = c.GetProperty("expect");
            foreach (JsonElement component in Array(e, "components"))
            {
                Lines(lines, dish, CaseFile.Id(c), component);
            }

            if (dish is not null && Array(e, "components").Any())
            {
                Beyond(foods, dish, CaseFile.Id(c), e);
            }

            Step[] all = dish is null ? [] : [.. dish.Components.SelectMany(k => k.Steps)];
            foreach ((Step? found, JsonElement[] told) in Together([.. Array(e, "steps").Where(s => s.ValueKind == JsonValueKind.Object && s.TryGetProperty("starts", out _))], all))
            {
                Figures(minutes, degrees, found, dish?.Language ?? "en", CaseFile.Id(c), told);
            }

            foreach (JsonElement y in Array(e, "yields").Where(y => y.ValueKind == JsonValueKind.Object && y.GetProperty("amount").ValueKind == JsonValueKind.Number))
            {
                double want = y.GetProperty("amount").GetDouble();
                yields.Add(dish is not null && dish.Yields.Concat(dish.Components.SelectMany(k => k.Makes)).Any(m => Math.Abs(m.Amount - want) < 0.01), () => $"{CaseFile.Id(c)} {y} read {string.Join(", ", dish?.Yields.Select(m => m.Text) ?? [])}");
            }

            if (e.TryGetProperty("doubts", out JsonElement few) && few.ValueKind == JsonValueKind.Number)
            {
                doubts.Add(dish is not null && dish.Doubts.Length <= few.GetInt32(), () => $"{CaseFile.Id(c)} {few.GetInt32()} expected: {string.Join(" / ", dish?.Doubts.Select(d => d.Question) ?? [])}");
            }
        }

        return [lines, minutes, degrees, yields, doubts, foods];
    }

    private static void Lines(Score score, Dish? dish, string id, JsonElement component)
    {
        // A component the case does not name may be any.
        string name = component.TryGetProperty("name", out JsonElement named) && named.ValueKind == JsonValueKind.String ? named.GetString()! : "";
        foreach (JsonElement i in component.GetProperty("ingredients").EnumerateArray())
        {
            (string food, double? amount) = i.ValueKind == JsonValueKind.Array ? (i[0].GetString()!, Number(i[1])) : (i.GetProperty("food").GetString()!, i.TryGetProperty("amount", out JsonElement stated) ? Number(stated) : null);
            score.Add(dish?.Components.Any(k => Named(k.Name, name, dish) && k.Ingredients.SelectMany(l => l.Foods).Any(f => Alike(f.Food, food) && (amount is null || Same(f.Amount, amount) || Same(f.Grams, amount)))) == true,
                () => $"{id} {name}: {amount} {food}, read {string.Join(" | ", dish?.Components.Where(k => k.Ingredients.SelectMany(l => l.Foods).Any(f => Alike(f.Food, food))).Select(k => $"{k.Name}: {k.Ingredients.SelectMany(l => l.Foods).Where(f => Alike(f.Food, food)).Select(f => $"{f.Amount} {f.Unit} {f.Food}").First()}") ?? [])}");
        }
    }

    /// <summary>What was read as a food and stands in no component of the case: a title, a yield, a head of a form.</summary>
    private static void Beyond(Score score, Dish dish, string id, JsonElement expected)
    {
        string[] foods = [.. Array(expected, "components").SelectMany(k => k.GetProperty("ingredients").EnumerateArray()).Select(i => i.ValueKind == JsonValueKind.Array ? i[0].GetString()! : i.GetProperty("food").GetString()!)];
        foreach (IngredientLine line in dish.Components.SelectMany(k => k.Ingredients))
        {
            score.Add(line.Foods.IsEmpty || line.Foods.Any(f => foods.Any(w => Alike(f.Food, w) || Plain(w).Contains(Plain(f.Food), StringComparison.OrdinalIgnoreCase))), () => $"{id} “{line.Text}” read {string.Join(", ", line.Foods.Select(f => $"{f.Amount} {f.Unit} {f.Food}"))}");
        }
    }

    /// <summary>Each step of the card with what the case tells of it: a case may tell sentence by sentence what stands on one line and is one step.</summary>
    private static List<(Step? Found, JsonElement[] Told)> Together(JsonElement[] steps, Step[] all)
    {
        List<(Step? Found, JsonElement[] Told)> groups = [];
        foreach (JsonElement step in steps)
        {
            // The step that begins so, before one that says it on the way. A case quotes its source, where a page writes "&deg;" for a degree.
            string starts = Plain(System.Net.WebUtility.HtmlDecode(step.GetProperty("starts").GetString()!));
            Step? found = System.Array.Find(all, s => s.Text.StartsWith(starts, StringComparison.OrdinalIgnoreCase)) ?? System.Array.Find(all, s => s.Text.Contains(starts, StringComparison.OrdinalIgnoreCase));
            if (found is not null && groups.Count > 0 && ReferenceEquals(groups[^1].Found, found))
            {
                groups[^1] = (found, [.. groups[^1].Told, step]);
            }
            else
            {
                groups.Add((found, [step]));
            }
        }

        return groups;
    }

    private static void Figures(Score minutes, Score degrees, Step? read, string lang, string id, JsonElement[] told)
    {
        JsonElement[] heats = [.. told.SelectMany(s => Array(s, "temperatures"))];
        string want = string.Join(' ', told.SelectMany(s => Array(s, "times")).Select(t => $"{CaseFile.Say(t, "minutesMin")}-{CaseFile.Say(t, "minutesMax")}"));
        string got = string.Join(' ', read is null ? ["no such step"] : CaseFile.Times(read, lang));
        string wantC = string.Join(' ', heats.Select(t => CaseFile.Say(t, "c")).Where(t => t.Length > 0));
        bool inherited = heats.Any(t => t.TryGetProperty("inherited", out _));
        string gotC = read is null ? "no such step" : CaseFile.Degrees(CaseFile.Both(read, lang).SelectMany(w => w.Temperatures).Where(t => inherited || !t.Inherited), wantC);
        foreach (JsonElement step in told)
        {
            string text = read?.Text ?? step.GetProperty("starts").GetString()!;
            if (step.TryGetProperty("times", out _))
            {
                minutes.Add(want == got, () => $"{id} “{text}” is {want}, read {got}");
            }

            if (step.TryGetProperty("temperatures", out _))
            {
                degrees.Add(CaseFile.SameDegrees(wantC, gotC, text), () => $"{id} “{text}” is {wantC}, read {gotC}");
            }
        }
    }

    private static IEnumerable<JsonElement> Array(JsonElement e, string key) => e.TryGetProperty(key, out JsonElement a) && a.ValueKind == JsonValueKind.Array ? a.EnumerateArray() : [];

    private static string Plain(string s) => s.Trim().Replace("℃", "°C", StringComparison.Ordinal).Replace('〜', '~').Replace('’', '\'').Replace('–', '-');

    private static double? Number(JsonElement e) => e.ValueKind == JsonValueKind.Number ? e.GetDouble() : null;

    /// <summary>One name within the other; a typographic apostrophe is one.</summary>
    private static bool Alike(string got, string want)
    {
        (got, want) = (Plain(got), Plain(want));
        return got.Contains(want, StringComparison.OrdinalIgnoreCase) || (got.Length > 2 && want.Contains(got, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Two thirds are as good told in three places.</summary>
    private static bool Same(double? got, double? want) => got is { } g && want is { } w && Math.Abs(g - w) <= 0.001 + 1e-4 * g;

    private static string One(string s) => string.Join(' ', Plain(s).Replace('—', '-').Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static bool Named(string got, string want, Dish dish) => want.Length == 0 ? true : got.Length == 0 ? want == "(main)" || One(dish.Title).Contains(One(want), StringComparison.OrdinalIgnoreCase)
        : One(got).Contains(One(want), StringComparison.OrdinalIgnoreCase) || got.Contains(want, StringComparison.OrdinalIgnoreCase) || want.Contains(got, StringComparison.OrdinalIgnoreCase);
}
