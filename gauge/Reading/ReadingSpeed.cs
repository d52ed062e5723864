using System.Diagnostics;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.In;

namespace Coulisse.Gauge.Reading;

/// <summary>How fast lines and texts of the most that is read (5 MB) are, by the kind of text: no kind may be slow because another is fast.</summary>
internal static class ReadingSpeed
{
    private static readonly string[] Foods = ["flour", "leeks", "brown butter", "rye flour", "egg yolk", "sea salt", "caster sugar", "whole milk", "vanilla pod", "hazelnuts"];
    private static readonly string[] States = ["sifted", "diced", "soft", "warm", "cut in two", "finely sliced"];

    /// <summary>Each kind of text once, or those whose name holds a word, several times.</summary>
    public static void Texts(string? only = null, int rounds = 1)
    {
        Load();
        Pages(only, rounds);
        foreach ((string name, Func<string> text) in Kinds().Where(k => only is null || k.Name.Contains(only, StringComparison.Ordinal)))
        {
            Timed(name, text(), rounds);
        }
    }

    /// <summary>Pages that nest without end: twice the depth may cost twice, and never four times.</summary>
    private static void Pages(string? only, int rounds)
    {
        foreach (int deep in (ReadOnlySpan<int>)[10_000, 20_000, 40_000])
        {
            string name = string.Create(CultureInfo.InvariantCulture, $"a page nested {deep:#,0} deep, seconds");
            if (only is not null && !name.Contains(only, StringComparison.Ordinal))
            {
                continue;
            }

            string page = string.Concat(Enumerable.Repeat("<div>", deep)) + "<li>5 g salt</li>" + string.Concat(Enumerable.Repeat("</div>", deep));
            TimeSpan least = TimeSpan.MaxValue;
            for (int r = 0; r < rounds; r++)
            {
                TimeSpan start = Cpu();
                GC.KeepAlive(Incoming.ToCard(page));
                least = Least(least, Cpu() - start);
            }

            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-52} {least.TotalSeconds,6:0.00}  (of the processor)"));
        }
    }

    /// <summary>Ingredient lines a second on one core, of the lines given.</summary>
    public static void Lines(string[] lines)
    {
        const int Tries = 6;
        int rounds = 20_000 / lines.Length;
        double most = 0;
        for (int t = 0; t < Tries; t++)
        {
            TimeSpan start = Cpu();
            for (int r = 0; r < rounds; r++)
            {
                Array.ForEach(lines, l => CardReader.ReadLine(l, "en"));
            }

            most = Math.Max(most, rounds * lines.Length / (Cpu() - start).TotalSeconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"lines a second",-46} {most,12:0}  (processor time, the fastest of {Tries})"));
    }

    /// <summary>How much slower than its fastest a fixed piece of work runs on average, by the clock: what others on the machine cost. Processor time suffers less, but two cores that share one suffer too.</summary>
    private static void Load()
    {
        const int Tries = 300;
        (double least, double sum) = (double.MaxValue, 0);
        for (int t = 0; t < Tries; t++)
        {
            long start = Stopwatch.GetTimestamp();
            ulong x = 88172645463325252;
            for (int i = 0; i < 400_000; i++)
            {
                x ^= x << 13;
                x ^= x >> 7;
                x ^= x << 17;
            }

            GC.KeepAlive(x);
            double seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
            (least, sum) = (Math.Min(least, seconds), sum + seconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"load: a fixed loop takes on average, of its fastest",-52} {sum / Tries / least,6:0.0} times"));
    }

    private static IEnumerable<(string Name, Func<string> Text)> Kinds()
    {
        yield return ("5 MB of plain prose lines", () => Filled("# A\n\n", i => $"The dough rests while the cook tidies the bench and thinks about line {i} of the evening service.\n"));
        yield return ("5 MB of prose in long paragraphs", () => Filled("# A\n\n", i => $"The dough rests while the cook tidies the bench and thinks about line {i} of the evening service.{(i % 9 == 8 ? "\n\n" : " ")}"));
        yield return ("5 MB of equal step lines, no title", () => Filled("", _ => "Sweat 20 g of leeks in 20 g butter for 3 min.\n"));
        yield return ("5 MB of differing step lines, no title", () => Filled("", i => $"Sweat {i % 700 + 1} g of {Foods[i % Foods.Length]} in {i % 90 + 1} g butter for {i % 50 + 1} min.\n"));
        yield return ("5 MB of step lines, none of which comes again", () => Filled("", i => $"Sweat {i % 700 + 1} g of {Foods[i % Foods.Length]} in {i % 90 + 1} g butter for {i % 50 + 1} min, for table {i + 1}.\n"));
        yield return ("5 MB of numbered steps", () => Filled("# A\n\n", i => $"{i + 1}. Sweat {i % 300 + 1} g of leeks in {i % 90 + 1} g butter for {i % 50 + 1} min, then roast at {150 + i % 60} °C until golden.\n"));
        yield return ("5 MB of ingredient lines", () => Filled("# A\n\n", i => $"- {i % 900 + 1} g {Foods[i % Foods.Length]}, {States[i * 7 % States.Length]}\n"));
        yield return ("5 MB of short lines in one list", () => Filled("# A\n", _ => "- 1 g salt\n"));
        yield return ("5 MB of short components", () => Filled("", i => $"## Part {i}\n- {i % 900} g flour, sifted\n- 2 eggs\n\n1. Mix {i} min, bake at 180°C.\n\n"));
        yield return ("5 MB of components headed “For the …”", () => Filled("# A\n\n", i => $"## For the {Foods[i % Foods.Length]} {i}\n- {i % 900} g flour, sifted\n- 2 eggs\n\n1. Mix {i % 60} min, bake at 180°C.\n\n"));
        yield return ("5 MB of French lines", () => Filled("# Tarte\n\n## Ingrédients\n", i => $"- {i % 900 + 1} g de beurre doux, coupé en dés\n"));
        yield return ("1 MB in one line", () => "# A\n" + string.Concat(Enumerable.Repeat("Boil 20 g quince (in a pan) 5 min at 90°C. ", 24_000)));
        yield return ("5 MB of brackets", () => new string('(', CardText.MostCharacters));
    }

    private static string Filled(string head, Func<int, string> line)
    {
        System.Text.StringBuilder b = new(head, CardText.MostCharacters);
        for (int i = 0; line(i) is { } next && b.Length + next.Length <= CardText.MostCharacters; i++)
        {
            b.Append(next);
        }

        return b.ToString();
    }

    private static void Timed(string name, string text, int rounds)
    {
        (TimeSpan clock, TimeSpan processor) = (TimeSpan.MaxValue, TimeSpan.MaxValue);
        (long allocated, TimeSpan collector) = (0, TimeSpan.Zero);
        for (int r = 0; r < rounds; r++)
        {
            GC.Collect();
            (long bytes, TimeSpan paused) = (GC.GetTotalAllocatedBytes(), GC.GetTotalPauseDuration());
            long start = Stopwatch.GetTimestamp();
            TimeSpan cpu = Cpu();
            Dish? dish = CardReader.Read(new CardText(text)).Match<Dish?>(d => d, _ => null);
            (clock, processor) = (Least(clock, Stopwatch.GetElapsedTime(start)), Least(processor, Cpu() - cpu));
            (allocated, collector) = (GC.GetTotalAllocatedBytes() - bytes, GC.GetTotalPauseDuration() - paused);
            GC.KeepAlive(dish);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name + ", seconds",-52} {clock.TotalSeconds,6:0.00}  (processor time {processor.TotalSeconds:0.00}; {allocated / 1_000_000} MB allocated, collector {collector.TotalSeconds:0.00} s by the clock)"));
    }

    private static TimeSpan Least(TimeSpan a, TimeSpan b) => a < b ? a : b;

    private static TimeSpan Cpu() => Process.GetCurrentProcess().TotalProcessorTime;
}
