using System.Collections.Immutable;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Needs;

/// <summary>Where a price list keeps what: its row of heads, which may stand under a title, and its lines.</summary>
public sealed record PriceTable
{
    private const int Titles = 15; // rows above the heads: a name, an address, a date

    private readonly Dictionary<string, int> _columns = new(StringComparer.Ordinal);
    private readonly string _sizeUnit = "";

    private PriceTable(IReadOnlyList<(int Line, List<string> Cells)> lines, int at, PriceHeads heads)
    {
        (int Line, List<string> Cells) head = lines[at];
        (Line, Heads, Rows) = (head.Line, [.. head.Cells], lines.Skip(at + 1));
        for (int i = 0; i < head.Cells.Count; i++)
        {
            if (heads.Of(head.Cells[i]) is { Length: > 0 } key && _columns.TryAdd(key, i) && key == "size")
            {
                _sizeUnit = PriceHeads.UnitOf(head.Cells[i]);
            }
        }
    }

    /// <summary>Line of the heads.</summary>
    public int Line { get; }

    /// <summary>The heads as written.</summary>
    public ImmutableArray<string> Heads { get; }

    /// <summary>Lines under the heads.</summary>
    internal IEnumerable<(int Line, List<string> Cells)> Rows { get; }

    /// <summary>Whether a column says packs.</summary>
    internal bool Packed => _columns.ContainsKey("size");

    /// <summary>Finds the heads: the first row that names all that is needed, else the first row.</summary>
    public static PriceTable Find(IReadOnlyList<(int Line, List<string> Cells)> lines, PriceHeads heads)
    {
        ArgumentNullException.ThrowIfNull(lines);
        PriceTable At(int i) => new(lines, i, heads);
        return Enumerable.Range(0, Math.Min(Titles, lines.Count)).Select(At).FirstOrDefault(t => t.Missing.IsEmpty) ?? At(0);
    }

    /// <summary>What no column says, each with the remedy.</summary>
    public ImmutableArray<Problem> Missing => [.. Lacking().Select(k => new Problem("PRI001", Line, $"The price list has no column for {k}; its columns are {string.Join(", ", Heads.Select(c => $"“{c.Trim()}”"))}.", $"Name one of its columns {PriceHeads.Examples(k)}, or say once which column it is."))];

    /// <summary>Cell of a line by what its column means; empty for none.</summary>
    internal string Cell(List<string> cells, string key)
        => _columns.TryGetValue(key, out int i) ? (i < cells.Count ? cells[i].Trim() : "") : key == "unit" ? _sizeUnit : "";

    // A price of a kilogram, a litre or a piece needs no pack, nor does a price beside a unit.
    private IEnumerable<string> Lacking()
    {
        bool per = PriceHeads.PerOne.Any(o => _columns.ContainsKey(o.Key));
        return new[] { ("item", false), ("size", per || _columns.ContainsKey("unit")), ("price", per) }.Where(n => !n.Item2 && !_columns.ContainsKey(n.Item1)).Select(n => n.Item1);
    }
}
