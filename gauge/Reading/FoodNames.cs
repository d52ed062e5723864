using Coulisse.Matter.Foods;

namespace Coulisse.Gauge.Reading;

/// <summary>Names as written against the food of our table they mean, looked over by hand: a wrong food counts twice, none counts once.</summary>
internal static class FoodNames
{
    private const double Sure = 0.8;

    public static void Run(string root)
    {
        (int all, int right, int none, int wrong) = (0, 0, 0, 0);
        foreach (string[] row in File.ReadLines(Path.Combine(root, "tests", "Cards", "food-ids.tsv")).Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split('\t')))
        {
            string got = FoodTable.Default.Match(row[1], row[0]) is { Confidence: >= Sure } m ? m.Id : "-";
            all++;
            right += got == row[2] ? 1 : 0;
            none += got != row[2] && got == "-" ? 1 : 0;
            wrong += got != row[2] && got != "-" ? 1 : 0;
            if (got != row[2])
            {
                Console.WriteLine($"  foods: {row[0]} “{row[1]}” is {row[2]}, read {got}");
            }
        }

        Console.WriteLine($"{"foods by their id",-46} {right,5} of {all,5}; {none} unnamed, {wrong} wrong; with a wrong one counted twice {100.0 * (all - none - 2 * wrong) / Math.Max(1, all):0.00} %");
    }
}
