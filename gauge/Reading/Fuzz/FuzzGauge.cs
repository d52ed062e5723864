using System.Diagnostics;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;
using Coulisse.Formats.In;
using NodaTime;

namespace Coulisse.Gauge.Reading.Fuzz;

/// <summary>Spoiled real texts by the million: no reader may throw, take long, or lose a word. Every fault is printed with the seed and the input that shows it.</summary>
internal static class FuzzGauge
{
    private const int MostShown = 40;
    private const int ShownOfAKind = 3;
    private const int Seldom = 8;
    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(250);
    private static readonly string[] Languages = ["en", "fr", "de", "es", "it", "ja"];
    private static readonly string[] Kinds = ["line", "step", "card", "page", "data", "sheet", "bytes"];

    /// <summary>gauge reading --fuzz N --seed S; with --cards only whole cards, every one looked through for lost words, written and read again.</summary>
    public static int Run(long count, int seed, string root, string? data, bool cards = false)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        RealTexts texts = new(root, data);
        Random random = new(seed);
        long[] tried = new long[Kinds.Length];
        long[] took = new long[Kinds.Length];
        Dictionary<string, int> faults = [];
        (long kept, long written) = (0, 0);
        for (long i = 0; i < count; i++)
        {
            int kind = cards ? 2 : Kind(random);
            byte[] file = kind == 6 ? Mutation.Bytes(texts.Files[random.Next(texts.Files.Length)], random) : [];
            string text = kind == 6 ? "" : Text(kind, texts, random);
            string lang = Languages[random.Next(Languages.Length)];
            long start = Stopwatch.GetTimestamp();
            Dish? dish = null;
            try
            {
                dish = Read(kind, text, file, lang, out text);
            }
            catch (Exception e)
            {
                Fault(faults, $"{Kinds[kind]}: {e.GetType().Name} {Where(e)}", $"seed {seed}, input {i}, {lang}: {e.Message}", text, file);
            }

            long ticks = Stopwatch.GetTimestamp() - start;
            if (Stopwatch.GetElapsedTime(0, ticks) > Longest && Again(kind, text, file, lang) > Longest)
            {
                Fault(faults, $"{Kinds[kind]}: slow", $"seed {seed}, input {i}, {lang}: {Stopwatch.GetElapsedTime(0, ticks).TotalMilliseconds:0} ms", text, file);
            }

            tried[kind]++;
            took[kind] += ticks;
            if (dish is not null && (cards || i % Seldom == 0))
            {
                kept++;
                if (Kept.Missing(text, dish) is { } lost)
                {
                    Fault(faults, $"{Kinds[kind]}: lost", $"seed {seed}, input {i}: {lost}", text, file);
                }
            }

            if (dish is not null && (cards || i % (Seldom * 4) == 0))
            {
                written++;
                string once = CardWriter.Write(dish);
                if (once.Length < CardText.MostCharacters && CardReader.Read(new CardText(once)) is Parsed<Dish>.Ok { Value: var again } && CardWriter.Write(again) is var twice && CardReader.Read(new CardText(twice)) is Parsed<Dish>.Ok { Value: var third } && CardWriter.Write(third) != twice)
                {
                    Fault(faults, $"{Kinds[kind]}: the writer does not settle", $"seed {seed}, input {i}", text + "\n-- twice --\n" + twice + "\n-- then --\n" + CardWriter.Write(third), []);
                }
            }
        }

        string by = string.Join(", ", Kinds.Select((k, i) => string.Create(CultureInfo.InvariantCulture, $"{k} {tried[i]} ({1e6 * Stopwatch.GetElapsedTime(0, took[i]).TotalSeconds / Math.Max(1, tried[i]):0} µs)")));
        Console.WriteLine($"{count} inputs, seed {seed}: {by}; {kept} cards looked through for lost words, {written} written and read again; {faults.Values.Sum()} faults of {faults.Count} kinds");
        foreach ((string what, int n) in faults.OrderByDescending(f => f.Value))
        {
            Console.WriteLine($"  {n} × {what}");
        }

        return faults.Count == 0 ? 0 : 1;
    }

    private static int Kind(Random random) => random.Next(20) switch { < 8 => 0, < 12 => 1, < 15 => 2, 15 => 3, 16 => 4, 17 => 5, _ => 6 };

    private static string Text(int kind, RealTexts t, Random random)
    {
        (string[] from, int longest) = kind switch { 0 => (t.Lines, 200), 1 => (t.Steps, 400), 2 => (t.Cards, 900), 3 => (t.Pages, 1500), 4 => (t.Json, 100_000), _ => (t.Sheets, 1200) };
        return Mutation.Of(from[random.Next(from.Length)], random, longest);
    }

    /// <summary>Reads as the command line would; the dish of a card, and the card text it was read from.</summary>
    private static Dish? Read(int kind, string text, byte[] file, string lang, out string card)
    {
        card = text;
        switch (kind)
        {
            case 0:
                _ = CardReader.ReadLineWithDoubts(text, lang);
                _ = CardReader.Why(text, lang);
                return null;
            case 1:
                _ = CardReader.ReadStep(text, lang);
                return null;
            case 5:
                _ = OccasionReader.Read(text, new LocalDate(2026, 1, 1));
                return null;
            case 6 when TextBytes.Read(file) is Parsed<string>.Ok { Value: var decoded }:
                card = text = decoded;
                break;
            case 6:
                return null;
        }

        if (Incoming.ToCard(text) is not Parsed<CardText>.Ok { Value: var incoming })
        {
            return null;
        }

        card = incoming.Text;
        return CardReader.Read(incoming).Match<Dish?>(d => d, _ => null);
    }

    /// <summary>The shortest of three more readings: another's work on the machine is no fault of the reader.</summary>
    private static TimeSpan Again(int kind, string text, byte[] file, string lang) => Enumerable.Range(0, 3).Min(round =>
    {
        long start = Stopwatch.GetTimestamp();
        Read(kind, text, file, lang, out string card);
        return Stopwatch.GetElapsedTime(start);
    });

    private static string Where(Exception e) => e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Coulisse", StringComparison.Ordinal))?.Trim() ?? "";

    private static void Fault(Dictionary<string, int> faults, string what, string where, string text, byte[] file)
    {
        int n = faults[what] = faults.GetValueOrDefault(what) + 1;
        if (n <= (what.Contains("writer", StringComparison.Ordinal) ? MostShown : ShownOfAKind) && faults.Count <= MostShown)
        {
            Console.WriteLine($"{what}\n  {where}\n  {(file.Length > 0 ? Convert.ToHexString(file) : text)}");
        }
    }
}
