using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Measures;

/// <summary>A word of quantity with its planning value and range.</summary>
/// <param name="Word">heaped, scant, pinch, knob …</param>
/// <param name="Kind">"factor" on a level measure, "grams" or "ml".</param>
/// <param name="Plan">Planning value.</param>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
/// <param name="Source">Where the figures are from.</param>
public sealed record QuantityWord(string Word, string Kind, double Plan, double Low, double High, string Source)
{
    private static readonly Lazy<Dictionary<string, QuantityWord>> All = new(() => ReferenceTable.Load("measures/words.tsv").Rows
        .ToDictionary(r => r[0], r => new QuantityWord(r[0], r[1], N(r[2]), N(r[3]), N(r[4]), r[5]), StringComparer.Ordinal));

    /// <summary>The word's figures; null when we know none.</summary>
    public static QuantityWord? Find(string word) => All.Value.GetValueOrDefault(word);

    private static double N(string cell) => ReferenceTable.Number(cell)!.Value;
}
