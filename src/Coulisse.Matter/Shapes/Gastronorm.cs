using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Shapes;

/// <summary>A gastronorm size (EN 631-1) by its fraction: outside length and width.</summary>
/// <param name="Name">"1/1", "1/2" ….</param>
/// <param name="Along">Outside length.</param>
/// <param name="Across">Outside width.</param>
/// <param name="Litres">One maker's litres to the rim by nominal depth in mm; only those held.</param>
public sealed record Gastronorm(string Name, Length Along, Length Across, ImmutableSortedDictionary<int, double> Litres)
{
    private static readonly Lazy<ImmutableArray<Gastronorm>> Held = new(Read);

    /// <summary>All sizes.</summary>
    public static ImmutableArray<Gastronorm> All => Held.Value;

    /// <summary>A size by name; "GN 1/1", "gn1/1" and "1/1" all do.</summary>
    /// <param name="name">The name.</param>
    public static Gastronorm? Find(string name)
    {
        string bare = name.Replace("GN", "", StringComparison.OrdinalIgnoreCase).Replace(" ", "", StringComparison.Ordinal);
        return All.FirstOrDefault(g => g.Name == bare);
    }

    /// <summary>The container as a straight box by its outside measures; real ones taper and hold less, see <see cref="Litres"/>.</summary>
    /// <param name="depth">Nominal depth.</param>
    public BoxMould Box(Length depth) => new(Along, Across, depth);

    private static ImmutableArray<Gastronorm> Read()
    {
        ReferenceTable table = ReferenceTable.Load("shapes/gastronorm.tsv");
        int[] depths = [20, 40, 65, 100, 150, 200];
        return [.. table.Rows.Select(r => new Gastronorm(
            r[table.Column("size")],
            Length.FromMillimetres(ReferenceTable.Number(r[table.Column("along")]) ?? 0),
            Length.FromMillimetres(ReferenceTable.Number(r[table.Column("across")]) ?? 0),
            depths
                .Select(d => (d, Litres: ReferenceTable.Number(r[table.Column("l" + d.ToString(CultureInfo.InvariantCulture))])))
                .Where(x => x.Litres is not null)
                .ToImmutableSortedDictionary(x => x.d, x => x.Litres!.Value)))];
    }
}
