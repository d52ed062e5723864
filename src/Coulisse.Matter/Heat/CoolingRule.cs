using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Heat;

/// <summary>The cooling stages of one code of practice.</summary>
/// <param name="Code">au, nz, uk, eu, us.</param>
/// <param name="First">First stage.</param>
/// <param name="Second">Second stage; null when there is one only.</param>
/// <param name="Law">True when it is law, false for guidance.</param>
/// <param name="Source">Source.</param>
public sealed record CoolingRule(string Code, CoolingStage First, CoolingStage? Second, bool Law, string Source)
{
    private static readonly Lazy<ImmutableArray<CoolingRule>> Shipped = new(Load);

    /// <summary>The rule of a code.</summary>
    /// <exception cref="ArgumentException">An unknown code.</exception>
    public static CoolingRule Of(string code) => Shipped.Value.FirstOrDefault(r => r.Code == code)
        ?? throw new ArgumentException($"\"{code}\" is no code of practice known here; use au, nz, uk, eu or us.", nameof(code));

    /// <summary>The stages with the hours a history took for each; null hours when the history ends before the stage does.</summary>
    /// <param name="history">Minute and temperature of the slowest point, minutes rising.</param>
    public ImmutableArray<(CoolingStage Stage, double? Hours, bool Kept)> Judge(ImmutableArray<(double Minute, Temperature At)> history)
    {
        List<(CoolingStage, double?, bool)> judged = [];
        foreach (CoolingStage stage in Second is { } second ? [First, second] : new[] { First })
        {
            double? from = Passes(history, stage.From);
            double? to = Passes(history, stage.To);
            double? hours = from is { } a && to is { } b ? (b - a) / 60 : null;
            judged.Add((stage, hours, hours <= stage.Hours + 1e-9));
        }

        return [.. judged];
    }

    // The last time it is above the mark counts: food that warms again has not passed it.
    private static double? Passes(ImmutableArray<(double Minute, Temperature At)> history, Temperature mark)
    {
        if (history.IsEmpty || history[^1].At > mark)
        {
            return null;
        }

        for (int i = history.Length - 1; i > 0; i--)
        {
            (double m0, Temperature t0) = history[i - 1];
            (double m1, Temperature t1) = history[i];
            if (t0 > mark)
            {
                return m0 + ((m1 - m0) * (t0.Celsius - mark.Celsius) / (t0.Celsius - t1.Celsius));
            }
        }

        return history[0].Minute;
    }

    private static ImmutableArray<CoolingRule> Load()
    {
        ReferenceTable table = ReferenceTable.Load("heat/cooling-rules.tsv");
        return [.. table.Rows.Select(row =>
        {
            string Cell(string column) => row[table.Column(column)];
            CoolingStage? Stage(string n) => ReferenceTable.Number(Cell("from" + n)) is { } from && ReferenceTable.Number(Cell("to" + n)) is { } to && ReferenceTable.Number(Cell("hours" + n)) is { } hours
                ? new CoolingStage(Temperature.FromCelsius(from), Temperature.FromCelsius(to), hours)
                : null;
            return new CoolingRule(Cell("code"), Stage("1") ?? throw new FormatException($"{table.Name}: {Cell("code")} has no first stage."), Stage("2"), Cell("law") == "yes", Cell("source"));
        })];
    }
}

/// <summary>One stage: from one temperature to another within hours.</summary>
/// <param name="From">Counting begins here.</param>
/// <param name="To">And ends here.</param>
/// <param name="Hours">Limit.</param>
public sealed record CoolingStage(Temperature From, Temperature To, double Hours);
