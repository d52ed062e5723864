using System.Text.Json;
using Coulisse.Cards.Reading;
using Coulisse.Tests;

namespace Coulisse.Cards.Tests;

/// <summary>Lines, steps and cards in six languages with their right reading, written by one who had not seen the reader: invented, and kept here. Floors are what is reached; each miss is named in the report, and the gauge scores more of it.</summary>
public sealed class OwnCases
{
    private const double Amounts = 0.96;
    private const double Minutes = 0.99;
    private const double Degrees = 1;

    private static JsonElement[] Cases(string kind) => [.. File.ReadLines(Path.Combine(SharedData.Repository, "tests/Cards/cases.jsonl")).Select(l => JsonDocument.Parse(l).RootElement).Where(e => e.GetProperty("kind").GetString() == kind)];

    [Fact]
    public void Amounts_reach_their_floor_and_no_line_without_a_question_raises_one()
    {
        List<string> misses = [];
        int all = 0;
        foreach (JsonElement c in Cases("line"))
        {
            string input = c.GetProperty("input").GetString()!;
            (IngredientLine line, System.Collections.Immutable.ImmutableArray<Doubt> doubts) = CardReader.ReadLineWithDoubts(input, c.GetProperty("lang").GetString()!);
            JsonElement[] want = [.. c.GetProperty("expect").GetProperty("foods").EnumerateArray()];
            FoodAmount[] got = line.Kind == LineKind.Ingredient ? [.. line.Foods] : [];
            all += Math.Max(1, want.Length);
            if (want.Length != got.Length)
            {
                misses.AddRange(Enumerable.Repeat(input, Math.Max(1, want.Length)));
                continue;
            }

            misses.AddRange(want.Where((w, i) => !Same(w, "amount", got[i].Amount) && !(w.TryGetProperty("packSize", out _) && Same(w, "grams", got[i].Grams))).Select(_ => input));
            Assert.True(doubts.IsEmpty || c.GetProperty("expect").GetProperty("doubts").GetInt32() > 0, $"{input}: {(doubts.IsEmpty ? "" : doubts[0].Question)}");
        }

        Assert.True(all > 300 && misses.Count <= (1 - Amounts) * all, $"{misses.Count} of {all}:\n{string.Join('\n', misses)}");
    }

    [Fact]
    public void Minutes_and_degrees_of_steps_reach_their_floor()
    {
        JsonElement[] cases = Cases("step");
        List<string> minutes = [];
        List<string> degrees = [];
        foreach (JsonElement c in cases)
        {
            string input = c.GetProperty("input").GetString()!;
            Step step = CardReader.ReadStep(input, c.GetProperty("lang").GetString()!);
            JsonElement e = c.GetProperty("expect");
            string want = string.Join(" ", e.GetProperty("times").EnumerateArray().Select(t => $"{Say(t.GetProperty("minutesMin"))}-{Say(t.GetProperty("minutesMax"))}"));
            string got = string.Join(" ", step.Times.Where(t => t.Kind != TimeKind.Limit).Select(t => FormattableString.Invariant($"{t.MinutesMin:0.##}-{t.MinutesMax:0.##}")));
            minutes.AddRange(want == got ? [] : [$"{input} is {want}, read {got}"]);
            string wantC = string.Join(" ", e.GetProperty("temperatures").EnumerateArray().Select(t => Say(t.GetProperty("c"))).Where(t => t.Length > 0));
            string gotC = string.Join(" ", step.Temperatures.Select(t => FormattableString.Invariant($"{t.Celsius:0.##}")));
            degrees.AddRange(wantC == gotC ? [] : [$"{input} is {wantC}, read {gotC}"]);
        }

        Assert.True(cases.Length > 150 && minutes.Count <= (1 - Minutes) * cases.Length + 0.5 && degrees.Count <= (1 - Degrees) * cases.Length, string.Join('\n', minutes.Concat(degrees)));
    }

    private static string Say(JsonElement e) => e.ValueKind == JsonValueKind.Number ? FormattableString.Invariant($"{e.GetDouble():0.##}") : "";

    private static bool Same(JsonElement e, string key, double? got) => e.GetProperty(key) is { ValueKind: JsonValueKind.Number } n ? got is { } g && Math.Abs(g - n.GetDouble()) <= 0.006 + 1e-4 * g : got is null;
}
