using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Shapes;

/// <summary>The best-known packings as shipped: ratios and places, each read once.</summary>
internal static class RingTable
{
    private static readonly Lazy<double[]> Ring = new(() => Ratios("shapes/circles-in-circle.tsv"));
    private static readonly Lazy<double[]> Square = new(() => Ratios("shapes/circles-in-square.tsv"));
    private static readonly Lazy<Dictionary<int, ImmutableArray<DrawnPoint>>> Held = new(() => ReadPlaces("shapes/circles-in-circle-places.tsv"));
    private static readonly Lazy<Dictionary<int, ImmutableArray<DrawnPoint>>> HeldInSquare = new(() => ReadPlaces("shapes/circles-in-square-places.tsv"));

    /// <summary>Ring radius over round radius for N rounds; index N, index 0 unused.</summary>
    public static double[] InRing => Ring.Value;

    /// <summary>Square side over round radius for N rounds; index N.</summary>
    public static double[] InSquare => Square.Value;

    /// <summary>Places of N rounds of radius 1 round (0, 0); null where none are held.</summary>
    public static ImmutableArray<DrawnPoint>? Places(int n) => Held.Value.TryGetValue(n, out ImmutableArray<DrawnPoint> p) ? p : null;

    /// <summary>Places of N rounds of radius 1 in a square round (0, 0); null where none are held.</summary>
    public static ImmutableArray<DrawnPoint>? SquarePlaces(int n) => HeldInSquare.Value.TryGetValue(n, out ImmutableArray<DrawnPoint> p) ? p : null;

    private static double[] Ratios(string name)
    {
        ReferenceTable table = ReferenceTable.Load(name);
        int n = table.Column("n");
        int ratio = table.Column("ratio");
        double[] all = new double[table.Rows.Count + 1];
        foreach (string[] row in table.Rows)
        {
            all[int.Parse(row[n], CultureInfo.InvariantCulture)] = double.Parse(row[ratio], CultureInfo.InvariantCulture);
        }

        return all;
    }

    private static Dictionary<int, ImmutableArray<DrawnPoint>> ReadPlaces(string name)
    {
        ReferenceTable table = ReferenceTable.Load(name);
        int n = table.Column("n");
        int x = table.Column("x");
        int y = table.Column("y");
        return table.Rows
            .GroupBy(r => int.Parse(r[n], CultureInfo.InvariantCulture))
            .ToDictionary(g => g.Key, g => g.Select(r => new DrawnPoint(double.Parse(r[x], CultureInfo.InvariantCulture), double.Parse(r[y], CultureInfo.InvariantCulture))).ToImmutableArray());
    }
}
