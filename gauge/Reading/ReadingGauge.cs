using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;

namespace Coulisse.Gauge.Reading;

/// <summary>How well and how fast cards are read, against the outside sets laid beside the repository: every miss is printed by name.</summary>
internal static class ReadingGauge
{
    /// <summary>gauge reading [FOLDER]: the folder that holds reading/ and measures/.</summary>
    public static int Run(string[] args)
    {
        if ((args.Length > 0 ? args[0] : Beside()) is not { } data || !Directory.Exists(Path.Combine(data, "reading")))
        {
            Console.Error.WriteLine("gauge reading: the outside data is not beside the repository; name its folder, or set COULISSE_SHARED.");
            return 2;
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        List<Score> scores = [Patterns(data), .. LineCases(data), .. StepCases(data), CardCases.Run(data), .. Labelled.Run(data)];
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

        Speed(data);
        return 0;
    }

    private static string? Beside()
    {
        if (Environment.GetEnvironmentVariable("COULISSE_SHARED") is { Length: > 0 } named)
        {
            return Path.Combine(named, "data");
        }

        for (DirectoryInfo? d = new(AppContext.BaseDirectory); d is not null; d = d.Parent)
        {
            if (Directory.Exists(Path.Combine(d.FullName, "shared", "data", "reading")))
            {
                return Path.Combine(d.FullName, "shared", "data");
            }
        }

        return null;
    }

    /// <summary>Rows: n, line, amount_min, amount_max, unit, food, preparation, note. A row without amounts and food is no single ingredient.</summary>
    private static Score Patterns(string data)
    {
        Score score = new("line patterns: amount and unit");
        foreach (string row in File.ReadLines(Path.Combine(data, "measures/line-patterns.tsv")).Where(l => l.Length > 0 && l[0] != '#').Skip(1))
        {
            string[] c = row.Split('\t');
            if (c.Length < 6 || (c[2].Length == 0 && c[3].Length == 0))
            {
                continue;
            }

            IngredientLine line = CardReader.ReadLine(c[1], CardReader.LanguageOf(c[1]));
            FoodAmount? f = line.Foods.Length > 0 ? line.Foods[0] : null;
            double? min = Number(c[2]);
            double? max = Number(c[3]);
            score.Add(f is not null && PatternRow.Agrees(line.Foods, min, max, c[4]), () => $"{c[0]} “{c[1]}” is {c[2]} to {c[3]} {c[4]}, read {f?.Amount} to {f?.AmountMax} {f?.Unit}");
        }

        return score;
    }

    private static IEnumerable<Score> LineCases(string data)
    {
        Score amounts = new("lines: amount, unit and grams");
        Score foods = new("lines: food as written");
        Score doubts = new("lines: without a doubt");
        foreach (JsonElement c in Cases(data, "line"))
        {
            string input = c.GetProperty("input").GetString()!;
            (IngredientLine line, System.Collections.Immutable.ImmutableArray<Doubt> asked) = CardReader.ReadLineWithDoubts(input, c.GetProperty("lang").GetString()!);
            doubts.Add(asked.IsEmpty, () => $"“{input}”: {asked[0].Question}");
            JsonElement[] want = [.. c.GetProperty("expect").GetProperty("foods").EnumerateArray()];
            FoodAmount[] got = line.Kind == LineKind.Ingredient ? [.. line.Foods] : [];
            if (want.Length == 0)
            {
                amounts.Add(got.Length == 0, () => $"“{input}” is no food");
            }

            for (int i = 0; i < want.Length; i++)
            {
                FoodAmount? f = got.Length == want.Length ? got[i] : null;
                JsonElement w = want[i];
                amounts.Add(f is not null && Same(w, "amount", f.Amount) && Same(w, "amountMax", f.AmountMax) && w.GetProperty("unit").GetString() == f.Unit && Same(w, "grams", f.Grams) && Same(w, "gramsMax", f.GramsMax), () => $"“{input}” read {f?.Amount} to {f?.AmountMax} {f?.Unit}, {f?.Grams} g");
                foods.Add(string.Equals(w.GetProperty("food").GetString(), f?.Food, StringComparison.OrdinalIgnoreCase), () => $"“{input}” is {w.GetProperty("food").GetString()}, read {f?.Food}");
            }
        }

        return [amounts, foods, doubts];
    }

    private static IEnumerable<Score> StepCases(string data)
    {
        Score minutes = new("steps: minutes");
        Score degrees = new("steps: temperatures");
        foreach (JsonElement c in Cases(data, "step"))
        {
            string input = c.GetProperty("input").GetString()!;
            Step step = CardReader.ReadStep(input, c.GetProperty("lang").GetString()!);
            JsonElement e = c.GetProperty("expect");
            string want = string.Join(' ', e.GetProperty("times").EnumerateArray().Select(t => $"{Say(t.GetProperty("minutesMin"))}-{Say(t.GetProperty("minutesMax"))}"));
            string got = string.Join(' ', step.Times.Where(t => t.Kind != TimeKind.Limit).Select(t => FormattableString.Invariant($"{t.MinutesMin:0.##}-{t.MinutesMax:0.##}")));
            string wantC = string.Join(' ', e.GetProperty("temperatures").EnumerateArray().Select(t => Say(t.GetProperty("c"))).Where(t => t.Length > 0));
            string gotC = string.Join(' ', step.Temperatures.Select(t => FormattableString.Invariant($"{t.Celsius:0.##}")));
            minutes.Add(want == got, () => $"“{input}” is {want}, read {got}");
            degrees.Add(wantC == gotC, () => $"“{input}” is {wantC}, read {gotC}");
        }

        return [minutes, degrees];
    }

    private static void Speed(string data)
    {
        string[] lines = [.. Cases(data, "line").Select(c => c.GetProperty("input").GetString()!)];
        int rounds = 20_000 / lines.Length;
        Array.ForEach(lines, l => CardReader.ReadLine(l, "en"));
        TimeSpan start = Cpu();
        for (int r = 0; r < rounds; r++)
        {
            Array.ForEach(lines, l => CardReader.ReadLine(l, "en"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"lines a second",-46} {rounds * lines.Length / (Cpu() - start).TotalSeconds,12:0}  (processor time)"));
        string card = string.Concat(Enumerable.Range(0, 60_000).Select(i => $"## Part {i}\n- {i % 900} g flour, sifted\n- 2 eggs\n\n1. Mix {i} min, bake at 180°C.\n\n"));
        card = card[..Math.Min(card.Length, CardText.MostCharacters)];
        Timed("5 MB, 52,000 components, seconds", card);
        Timed("1 MB in one line, seconds", "# A\n" + string.Concat(Enumerable.Repeat("Boil 20 g quince (in a pan) 5 min at 90°C. ", 24_000)));
        Timed("5 MB of short lines in one list, seconds", "# A\n" + string.Concat(Enumerable.Repeat("- 1 g salt\n", 470_000)));
        Timed("5 MB of brackets, seconds", new string('(', CardText.MostCharacters));
    }

    private static void Timed(string name, string text)
    {
        long start = Stopwatch.GetTimestamp();
        TimeSpan cpu = Cpu();
        _ = CardReader.Read(new CardText(text));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-46} {Stopwatch.GetElapsedTime(start).TotalSeconds,12:0.00}  (processor time {(Cpu() - cpu).TotalSeconds:0.00})"));
    }

    private static TimeSpan Cpu() => Process.GetCurrentProcess().TotalProcessorTime;

    /// <summary>The cases of one kind.</summary>
    internal static IEnumerable<JsonElement> Cases(string data, string kind) => new[] { "reading/cases.jsonl", "reading/cases-2.jsonl" }
        .SelectMany(f => File.ReadLines(Path.Combine(data, f))).Select(l => JsonDocument.Parse(l).RootElement).Where(e => e.GetProperty("kind").GetString() == kind);

    private static double? Number(string s) => double.TryParse(s, NumberStyles.Float, CultureInfo.InvariantCulture, out double n) ? n : null;

    private static bool Same(JsonElement e, string key, double? got) => e.GetProperty(key) is { ValueKind: JsonValueKind.Number } n ? got is { } g && Math.Abs(g - n.GetDouble()) <= 0.006 + 1e-4 * g : got is null;

    private static string Say(JsonElement e) => e.ValueKind == JsonValueKind.Number ? FormattableString.Invariant($"{e.GetDouble():0.##}") : "";
}
