using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Heat;

/// <summary>An organism in a food as our table holds it: best and hardest resistance and the range in which it was measured.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Best">Resistance as the source gives it.</param>
/// <param name="Hardest">The highest D that is credible for the food.</param>
/// <param name="Floor">No kill is credited below it.</param>
/// <param name="Ceiling">Above it the rate stays that of it.</param>
/// <param name="Opened">How far the source was opened: table, abstract or memory.</param>
public sealed record Organism(string Id, HeatResistance Best, HeatResistance Hardest, Temperature Floor, Temperature Ceiling, string Opened)
{
    private static readonly Lazy<ImmutableArray<Organism>> Shipped = new(Load);

    /// <summary>The come-up counts toward the reduction; not for the lines of legal tables, which are of dwell at the temperature.</summary>
    public bool ComeUpCounts => Id is not ("salmonella-meat-legal" or "salmonella-chicken");

    /// <summary>All organisms of the table.</summary>
    public static ImmutableArray<Organism> All => Shipped.Value;

    /// <summary>Those whose id or name begins with a word ("salmonella", "listeria-egg"); empty when none does.</summary>
    public static ImmutableArray<Organism> Named(string word)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(word);
        ImmutableArray<Organism> exact = [.. All.Where(o => string.Equals(o.Id, word, StringComparison.OrdinalIgnoreCase))];
        return exact.IsEmpty ? [.. All.Where(o => o.Id.StartsWith(word, StringComparison.OrdinalIgnoreCase) || o.Best.Organism.StartsWith(word, StringComparison.OrdinalIgnoreCase))] : exact;
    }

    /// <summary>Log reduction of a history, best and cautious; nothing below the floor, no more than the ceiling's rate above it.</summary>
    /// <param name="best">History at the slowest point, best estimate.</param>
    /// <param name="cautious">History at the slowest point, cautious case.</param>
    public (double Best, double Cautious) Log10(ImmutableArray<(double Minute, Temperature At)> best, ImmutableArray<(double Minute, Temperature At)> cautious)
        => (Lethality.Log10(Best, best, Floor, Ceiling), Lethality.Log10(Hardest, cautious, Floor, Ceiling));

    private static ImmutableArray<Organism> Load()
    {
        ReferenceTable table = ReferenceTable.Load("heat/organisms.tsv");
        return [.. table.Rows.Select(row =>
        {
            string Cell(string column) => row[table.Column(column)];
            double N(string column) => ReferenceTable.Number(Cell(column)) ?? throw new FormatException($"{table.Name}: {column} is empty.");
            HeatResistance best = new(Cell("organism"), Cell("matrix"), Temperature.FromCelsius(N("at")), N("d"), N("z"), Cell("source"));
            return new Organism(Cell("id"), best, best with { Minutes = N("dmost") }, Temperature.FromCelsius(N("least")), Temperature.FromCelsius(N("most")), Cell("opened"));
        })];
    }
}
