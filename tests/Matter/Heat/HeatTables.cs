using System.Globalization;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Outside figures committed beside the tests, each file with its source on its first line.</summary>
internal static class HeatTables
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string name)
    {
        string[] lines = [.. File.ReadLines(Path.Combine(SharedData.Repository, "tests", "Matter", "Heat", "data", name + ".tsv")).Where(l => l.Length > 0 && !l.StartsWith('#'))];
        string[] head = lines[0].Split('\t');
        return [.. lines.Skip(1).Select(l =>
        {
            string[] cells = l.Split('\t');
            return (IReadOnlyDictionary<string, string>)head.Select((h, i) => (h, i)).ToDictionary(x => x.h, x => x.i < cells.Length ? cells[x.i] : "");
        })];
    }

    /// <summary>The figure in a cell; NaN for none.</summary>
    public static double N(this IReadOnlyDictionary<string, string> row, string column)
        => double.TryParse(row[column], NumberStyles.Float, CultureInfo.InvariantCulture, out double v) ? v : double.NaN;

    /// <summary>Share of pairs within a part of the outside figure, printed with its extremes.</summary>
    public static double Share(string what, IReadOnlyList<(double Printed, double Ours)> pairs, double part = 0.05)
    {
        double share = pairs.Count(p => Math.Abs(p.Ours - p.Printed) <= (part * p.Printed) + 1e-9) / (double)pairs.Count;
        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {pairs.Count} rows, {100 * share:0} % within {100 * part:0} %, ours/printed {pairs.Min(p => p.Ours / p.Printed):0.00} to {pairs.Max(p => p.Ours / p.Printed):0.00}"));
        return share;
    }
}
