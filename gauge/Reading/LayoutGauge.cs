using System.Globalization;

namespace Coulisse.Gauge.Reading;

/// <summary>The share of the dresses of cards and of lines that is read whole, by each choice of a dress.</summary>
internal static class LayoutGauge
{
    /// <summary>Reads so many dresses of cards, spread over all, and prints the share that is wrong by each choice and some of the wrong ones.</summary>
    public static int Run(int many, int shown) =>
        Print(string.Create(CultureInfo.InvariantCulture, $"dresses of two dishes read whole ({LayoutMatrix.Count} there are)"), LayoutMatrix.Drawn(many), LayoutMatrix.Wrong, n => LayoutMatrix.Card(n).Dress, shown);

    /// <summary>Reads all dresses of lines.</summary>
    public static int Lines(int shown) =>
        Print("dresses of lines read whole", [.. Enumerable.Range(0, LineMatrix.Count)], LineMatrix.Wrong, n => LineMatrix.Line(n).Dress, shown);

    private static int Print(string what, int[] numbers, Func<int, string> read, Func<int, string[]> dress, int shown)
    {
        Dictionary<string, (int All, int Wrong)> by = [];
        List<(int Number, string Why)> wrong = [];
        string[] why = new string[numbers.Length];
        Parallel.For(0, numbers.Length, i => why[i] = read(numbers[i]));
        for (int i = 0; i < numbers.Length; i++)
        {
            foreach (string choice in dress(numbers[i]))
            {
                (int all, int bad) = by.GetValueOrDefault(choice);
                by[choice] = (all + 1, bad + (why[i].Length > 0 ? 1 : 0));
            }

            if (why[i].Length > 0)
            {
                wrong.Add((numbers[i], why[i]));
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"layouts: {numbers.Length - wrong.Count} of {numbers.Length} {what}"));
        foreach ((string choice, (int all, int bad)) in by.OrderByDescending(b => (double)b.Value.Wrong / b.Value.All))
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {choice,-28} {bad,6} of {all,6} wrong  {100.0 * bad / all,6:0.0} %"));
        }

        foreach ((int number, string reason) in wrong.Take(shown))
        {
            Console.WriteLine($"  {number}: {string.Join("; ", dress(number))}: {reason}");
        }

        return 0;
    }
}
