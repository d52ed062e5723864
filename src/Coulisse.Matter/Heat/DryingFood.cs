using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Heat;

/// <summary>How water moves in a food that dries in thin layers, as published.</summary>
/// <param name="Food">Food and form.</param>
/// <param name="Slow">Least D reported, m²/s.</param>
/// <param name="Fast">Greatest.</param>
/// <param name="Coolest">Coolest air of the trials.</param>
/// <param name="Hottest">Hottest.</param>
/// <param name="Thinnest">Thinnest layer they were measured at; null when the abstract does not say.</param>
/// <param name="Thickest">Thickest.</param>
/// <param name="Source">Source.</param>
public sealed record DryingFood(string Food, double Slow, double Fast, Temperature Coolest, Temperature Hottest, Length? Thinnest, Length? Thickest, string Source)
{
    private static readonly Lazy<ImmutableArray<DryingFood>> Shipped = new(() =>
    {
        ReferenceTable t = ReferenceTable.Load("heat/drying.tsv");
        return [.. t.Rows.Select(row =>
        {
            double? Maybe(string column) => ReferenceTable.Number(row[t.Column(column)]);
            double N(string column) => Maybe(column) ?? throw new FormatException($"{t.Name}: {column} is empty.");
            return new DryingFood(row[t.Column("food")], N("slow"), N("fast"), Temperature.FromCelsius(N("coolest")), Temperature.FromCelsius(N("hottest")), Maybe("thinnest") is { } a ? Length.FromMillimetres(a) : null, Maybe("thickest") is { } b ? Length.FromMillimetres(b) : null, row[t.Column("source")]);
        })];
    });

    /// <summary>All that are held.</summary>
    public static ImmutableArray<DryingFood> All => Shipped.Value;

    /// <summary>By a word; null when none is held.</summary>
    public static DryingFood? Find(string word) => All.FirstOrDefault(f => f.Food.Contains(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>Why a wanted layer or air is outside what was measured; null when it is inside.</summary>
    public string? Outside(Temperature air, Length layer)
        => air < Coolest || air > Hottest ? FormattableString.Invariant($"Outside the model: {Food} was dried at {Coolest.Celsius:0} to {Hottest.Celsius:0} °C.")
            : Thinnest is { } a && layer < a || Thickest is { } b && layer > b ? FormattableString.Invariant($"Outside the model: {Food} was measured {Thinnest?.Millimetres:0.#} to {Thickest?.Millimetres:0.#} mm thick.") : null;
}
