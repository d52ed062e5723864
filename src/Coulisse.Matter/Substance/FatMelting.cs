using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Substance;

/// <summary>How much of a fat is solid, and the heat that melting it takes.</summary>
/// <param name="Fat">Name of the curve.</param>
/// <param name="Heat">kJ per kg of solid fat.</param>
/// <remarks>Curves from memory of published ones (data/measures/fat-melting.tsv); straight lines between 5 °C steps; all solid below 0 °C as at 0 °C, all liquid above 40 °C.</remarks>
public sealed record FatMelting(string Fat, double Heat)
{
    private static readonly Lazy<Dictionary<string, FatMelting>> ByFood = new(() =>
    {
        ReferenceTable t = ReferenceTable.Load("measures/fat-melting.tsv");
        return t.Rows.SelectMany(r => r[t.Column("foods")].Split(' ').Select(id => (id, Curve: new FatMelting(r[0], ReferenceTable.Number(r[t.Column("heat")])!.Value) { Steps = [.. Enumerable.Range(0, 9).Select(i => ReferenceTable.Number(r[t.Column("s0") + i])!.Value / 100)] })))
            .ToDictionary(x => x.id, x => x.Curve, StringComparer.Ordinal);
    });

    private double[] Steps { get; init; } = [];

    /// <summary>The curve of a food's fat; null when none is held, and then its melting is left out.</summary>
    public static FatMelting? Of(string foodId) => ByFood.Value.GetValueOrDefault(foodId);

    /// <summary>Share of the fat that is solid, 0 to 1.</summary>
    public double Solid(double celsius)
    {
        double at = Math.Clamp(celsius / 5, 0, Steps.Length - 1);
        int i = Math.Min((int)at, Steps.Length - 2);
        return Steps[i] + ((at - i) * (Steps[i + 1] - Steps[i]));
    }
}
