using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;

namespace Coulisse.Gauge.Reading;

/// <summary>Lines, steps and cards with their right reading, one JSON object a line: how many are read so.</summary>
internal static class CaseFile
{
    /// <summary>gauge reading --cases FILE.</summary>
    public static int Run(string file, Func<string, Dish?> read)
    {
        if (!File.Exists(file))
        {
            Console.Error.WriteLine($"gauge reading: {file} is not there.");
            return 2;
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        Print(Of([.. Rows(file)], read));
        return 0;
    }

    /// <summary>The rows of a file.</summary>
    public static IEnumerable<JsonElement> Rows(string file) => File.ReadLines(file).Where(l => l.Length > 0).Select(l => JsonDocument.Parse(l).RootElement);

    /// <summary>All scores.</summary>
    public static List<Score> Of(JsonElement[] cases, Func<string, Dish?> read) => [.. Lines(cases), .. Steps(cases), .. CardCases.Run(cases.Where(c => Kind(c) == "card"), read)];

    /// <summary>Every miss by name, then the shares.</summary>
    public static void Print(List<Score> scores)
    {
        foreach (Score s in scores)
        {
            foreach (string miss in s.Misses)
            {
                Console.WriteLine($"  {s.Name}: {miss}");
            }
        }

        Console.WriteLine();
        foreach (Score s in scores)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{s.Name,-46} {s.Right,5} of {s.All,5}  {100.0 * s.Right / Math.Max(1, s.All),6:0.00} %"));
        }
    }

    /// <summary>Name of a case.</summary>
    public static string Id(JsonElement c) => c.GetProperty("id").GetString()!;

    private static string Kind(JsonElement c) => c.GetProperty("kind").GetString()!;

    private static IEnumerable<Score> Lines(JsonElement[] cases)
    {
        Score amounts = new("lines: amount, unit and grams");
        Score foods = new("lines: food as written");
        Score doubts = new("lines: no more doubts than expected");
        Score asked = new("lines: asked where a question is due");
        foreach (JsonElement c in cases.Where(c => Kind(c) == "line"))
        {
            string input = c.GetProperty("input").GetString()!;
            (IngredientLine line, ImmutableArray<Doubt> questions) = CardReader.ReadLineWithDoubts(input, c.GetProperty("lang").GetString()!);
            bool told = c.GetProperty("expect").TryGetProperty("doubts", out JsonElement d);
            int few = told && d.ValueKind == JsonValueKind.Number ? d.GetInt32() : 0;
            doubts.Add(questions.Length <= few, () => $"{Id(c)} “{input}”: {questions[0].Question}");
            if (few > 0)
            {
                asked.Add(!questions.IsEmpty, () => $"{Id(c)} “{input}”: nothing asked");
            }

            JsonElement[] want = [.. c.GetProperty("expect").GetProperty("foods").EnumerateArray()];
            FoodAmount[] got = line.Kind == LineKind.Ingredient ? [.. line.Foods] : [];
            if (want.Length == 0)
            {
                amounts.Add(got.Length == 0, () => $"{Id(c)} “{input}” is no food");
            }

            for (int i = 0; i < want.Length; i++)
            {
                FoodAmount? f = got.Length == want.Length ? got[i] : null;
                JsonElement w = want[i];
                amounts.Add(f is not null && Right(w, f), () => $"{Id(c)} “{input}” read {f?.Amount} to {f?.AmountMax} {f?.Unit}, {f?.Grams} g");
                foods.Add(string.Equals(Plain(w.GetProperty("food").GetString()!), Plain(f?.Food ?? ""), StringComparison.OrdinalIgnoreCase), () => $"{Id(c)} “{input}” is {w.GetProperty("food").GetString()}, read {f?.Food}");
            }
        }

        return [amounts, foods, doubts, asked];
    }

    private static IEnumerable<Score> Steps(JsonElement[] cases)
    {
        Score minutes = new("steps: minutes");
        Score degrees = new("steps: temperatures");
        foreach (JsonElement c in cases.Where(c => Kind(c) == "step"))
        {
            string input = c.GetProperty("input").GetString()!;
            Step step = CardReader.ReadStep(input, c.GetProperty("lang").GetString()!);
            JsonElement e = c.GetProperty("expect");
            // What a case leaves out it says nothing of.
            bool timed = e.TryGetProperty("times", out JsonElement times);
            bool heated = e.TryGetProperty("temperatures", out JsonElement heats);
            string want = string.Join(' ', (timed ? times.EnumerateArray() : default).Select(t => $"{Say(t.GetProperty("minutesMin"))}-{Say(t.GetProperty("minutesMax"))}"));
            string got = string.Join(' ', Times(step, c.GetProperty("lang").GetString()!));
            string wantC = string.Join(' ', (heated ? heats.EnumerateArray() : default).Select(t => Say(t.GetProperty("c"))).Where(t => t.Length > 0));
            string gotC = Degrees(Both(step, c.GetProperty("lang").GetString()!).SelectMany(w => w.Temperatures), wantC);
            if (timed)
            {
                minutes.Add(want == got, () => $"{Id(c)} “{input}” is {want}, read {got}");
            }

            if (heated)
            {
                degrees.Add(SameDegrees(wantC, gotC, input), () => $"{Id(c)} “{input}” is {wantC}, read {gotC}");
            }
        }

        return [minutes, degrees];
    }

    /// <summary>The minutes of a step and of its other way.</summary>
    public static IEnumerable<string> Times(Step step, string lang) => Both(step, lang).SelectMany(w => w.Times).Where(t => t.Kind != TimeKind.Limit).Select(t => FormattableString.Invariant($"{t.MinutesMin:0.##}-{t.MinutesMax:0.##}"));

    /// <summary>A step and the other way to do it, where it tells one: cases list the figures of both.</summary>
    public static IEnumerable<Step> Both(Step step, string lang) => CardReader.ReadOtherWay(step, lang) is { } other ? [step, other] : [step];

    /// <summary>Temperatures as compared: the fan figure of a setting told two ways counts only where the case names it.</summary>
    public static string Degrees(IEnumerable<StepTemperature> read, string want)
    {
        StepTemperature[] all = [.. read];
        string said = string.Join(' ', all.Select(t => FormattableString.Invariant($"{t.Celsius:0.##}")));
        return said == want ? said : string.Join(' ', all.Where((t, i) => !(t.Fan == true && i > 0 && all[i - 1].Fan != true && all[i - 1].Celsius - t.Celsius is >= 5 and <= 30)).Select(t => FormattableString.Invariant($"{t.Celsius:0.##}")));
    }

    /// <summary>The same heats; whoever turns Fahrenheit into whole degrees has rounded.</summary>
    public static bool SameDegrees(string want, string got, string text)
    {
        string[] told = want.Split(' ');
        string[] read = got.Split(' ');
        return want == got || text.Contains('F') && told.Length == read.Length && told.Zip(read).All(p => double.TryParse(p.First, CultureInfo.InvariantCulture, out double w) && double.TryParse(p.Second, CultureInfo.InvariantCulture, out double g) && Math.Abs(w - g) < 0.5 && w == Math.Round(w));
    }

    /// <summary>The figure of a field as compared; nothing where the case leaves it out.</summary>
    public static string Say(JsonElement e, string key) => e.TryGetProperty(key, out JsonElement value) ? Say(value) : "";

    /// <summary>The same amount; a pack told as "400 g tin" is right as one tin and as 400 g when the grams agree.</summary>
    private static bool Right(JsonElement w, FoodAmount f)
    {
        if (w.TryGetProperty("unit", out JsonElement share) && share.ValueKind == JsonValueKind.String && share.GetString() == "%")
        {
            // A share of the flour is kept as a share, and no amount.
            return Same(w, "amount", f.Percent);
        }

        bool amount = Same(w, "amount", f.Amount) && Same(w, "amountMax", f.AmountMax) && (!w.TryGetProperty("unit", out JsonElement unit) || Units(unit.GetString(), f.Unit));
        bool pack = w.TryGetProperty("packSize", out _) && f.Grams is not null && Same(w, "grams", f.Grams);
        bool each = !w.TryGetProperty("grams", out JsonElement g) || g.ValueKind != JsonValueKind.Number && f.Grams is null || Same(w, "grams", f.Grams);
        return pack || amount && each && Same(w, "gramsMax", f.GramsMax);
    }

    /// <summary>Units that say the same of an amount: our spelling of one, counted things, packs of no fixed size.</summary>
    private static bool Units(string? want, string? got) => want == got || want?.Replace(" ", "", StringComparison.Ordinal) == got || Alike.Any(set => set.Contains(want) && set.Contains(got));

    private static readonly string[][] Alike = [["piece", "slice", "rasher", "leaf", "sheet", "stalk", "stick", "ear", "loaf", "block"], ["pack", "packet", "tin", "carton", "pot", "tub", "jar", "punnet", "bottle", "glass"], ["knob", "nut", "thumb"], ["splash", "dash", "drizzle"]];

    private static string Plain(string s) => s.Replace('’', '\'');

    private static bool Same(JsonElement e, string key, double? got) => !e.TryGetProperty(key, out JsonElement n) || (n.ValueKind == JsonValueKind.Number ? got is { } g && Math.Abs(g - n.GetDouble()) <= 0.006 + 1e-4 * g : got is null);

    /// <summary>A figure as it is compared; empty for none.</summary>
    public static string Say(JsonElement e) => e.ValueKind == JsonValueKind.Number ? FormattableString.Invariant($"{e.GetDouble():0.##}") : "";
}
