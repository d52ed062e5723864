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
        if (Option(args, "--fuzz") is { } count)
        {
            return long.TryParse(count, CultureInfo.InvariantCulture, out long n) && int.TryParse(Option(args, "--seed") ?? "1", CultureInfo.InvariantCulture, out int seed) ? Fuzz.FuzzGauge.Run(n, seed, Start.StartGauge.Root(), Beside(), args.Contains("--cards")) : Usage();
        }

        if (args.Contains("--speed"))
        {
            // Several rounds show the reader warm, as a bench that stays open has it; the least is told.
            ReadingSpeed.Texts(Option(args, "--kind"), int.TryParse(Option(args, "--rounds"), CultureInfo.InvariantCulture, out int rounds) && rounds > 0 ? rounds : 1);
            return 0;
        }

        if (Option(args, "--layout") is { } one && int.TryParse(one, CultureInfo.InvariantCulture, out int number))
        {
            Console.OutputEncoding = new UTF8Encoding(false);
            Console.WriteLine(LayoutMatrix.Card(number).Text);
            Console.WriteLine(LayoutMatrix.Wrong(number));
            return 0;
        }

        if (Option(args, "--layouts") is { } dresses && int.TryParse(dresses, CultureInfo.InvariantCulture, out int many))
        {
            Console.OutputEncoding = new UTF8Encoding(false);
            return LayoutGauge.Run(many, int.TryParse(Option(args, "--show"), CultureInfo.InvariantCulture, out int shown) ? shown : 20);
        }

        if (args.Contains("--line-dresses"))
        {
            Console.OutputEncoding = new UTF8Encoding(false);
            return LayoutGauge.Lines(int.TryParse(Option(args, "--show"), CultureInfo.InvariantCulture, out int lines) ? lines : 20);
        }

        if (Option(args, "--cases") is { } file)
        {
            return CaseFile.Run(file, Incoming);
        }

        if ((args.Length > 0 ? args[0] : Beside()) is not { } data || !Directory.Exists(Path.Combine(data, "reading")))
        {
            Console.Error.WriteLine("gauge reading: the outside data is not beside the repository; name its folder, or set COULISSE_SHARED.");
            return 2;
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        List<Score> scores = [Patterns(data), .. CaseFile.Of(Cases(data), Incoming), .. Labelled.Run(data)];
        CaseFile.Print(scores);
        FoodNames.Run(Start.StartGauge.Root());
        ReadingSpeed.Lines([.. Cases(data).Where(c => c.GetProperty("kind").GetString() == "line").Select(c => c.GetProperty("input").GetString()!)]);
        ReadingSpeed.Texts();
        return 0;
    }

    /// <summary>Any text that comes in, pages and recipe data too.</summary>
    private static Dish? Incoming(string text) => Formats.In.Incoming.ToCard(text).Match(t => CardReader.Read(t).Match<Dish?>(d => d, _ => null), _ => null);

    private static int Usage()
    {
        Console.Error.WriteLine("gauge reading [FOLDER] | --cases FILE | --layouts N [--show M] | --layout NUMBER | --line-dresses [--show M] | --fuzz N [--seed S] [--cards] | --speed [--kind WORD] [--rounds N]");
        return 2;
    }

    private static string? Option(string[] args, string name) => Array.IndexOf(args, name) is var i and >= 0 && i + 1 < args.Length ? args[i + 1] : null;

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

    /// <summary>The invented cases.</summary>
    private static JsonElement[] Cases(string data) => [.. new[] { "reading/cases.jsonl", "reading/cases-2.jsonl" }.SelectMany(f => CaseFile.Rows(Path.Combine(data, f)))];

    private static double? Number(string s) => double.TryParse(s, NumberStyles.Float, CultureInfo.InvariantCulture, out double n) ? n : null;
}
