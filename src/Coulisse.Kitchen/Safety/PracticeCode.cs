using System.Collections.Immutable;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Safety;

/// <summary>The figures of one code of practice that the rules ask for.</summary>
/// <param name="Code">au, nz, uk, eu, us.</param>
/// <param name="Hot">Hot food is held at this or above, °C.</param>
/// <param name="Cold">Cold food is held at this or below, °C.</param>
/// <param name="SealedDays">Days a food sealed without air may be kept chilled, without a further hurdle.</param>
/// <param name="FishCelsius">Freezer for fish eaten raw, °C.</param>
/// <param name="FishHours">Hours at it.</param>
/// <param name="Reheat">Reheated to at least, °C.</param>
/// <param name="Holding">Source of hot and cold.</param>
/// <param name="Packing">Source of the days.</param>
/// <param name="Parasites">Source of the freezing.</param>
/// <param name="LifeDays">Days that food ready to eat keeps chilled without a barrier.</param>
/// <param name="OutHours">Hours out of the cold in all.</param>
/// <param name="Chilled">Source of the days chilled.</param>
/// <param name="Time">Source of the hours out.</param>
internal sealed record PracticeCode(string Code, double Hot, double Cold, double SealedDays, double FishCelsius, double FishHours, double Reheat, string Holding, string Packing, string Parasites, double LifeDays, double OutHours, string Chilled, string Time)
{
    private static readonly Lazy<ImmutableDictionary<string, PracticeCode>> Shipped = new(Load);

    public static PracticeCode? Find(string code) => Shipped.Value.GetValueOrDefault(code);

    private static ImmutableDictionary<string, PracticeCode> Load()
    {
        ReferenceTable table = ReferenceTable.Load("heat/codes.tsv");
        return table.Rows.Select(row =>
        {
            string Cell(string column) => row[table.Column(column)];
            double N(string column) => ReferenceTable.Number(Cell(column)) ?? throw new FormatException($"{table.Name}: {column} is empty.");
            return new PracticeCode(Cell("code"), N("hot"), N("cold"), N("days"), N("fish"), N("frozen"), N("reheat"), Cell("holding"), Cell("packing"), Cell("parasites"), N("life"), N("out"), Cell("chilled"), Cell("time"));
        }).ToImmutableDictionary(c => c.Code, StringComparer.Ordinal);
    }
}
