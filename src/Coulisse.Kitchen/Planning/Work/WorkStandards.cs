using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Planning.Work;

/// <summary>The table of work standards.</summary>
public static class WorkStandards
{
    private static readonly Lazy<FrozenDictionary<string, WorkStandard>> Held = new(() =>
        Read(ReferenceTable.Load("work/operations.tsv")).ToFrozenDictionary(s => s.Operation, StringComparer.Ordinal));

    /// <summary>All of them, by operation.</summary>
    public static ImmutableArray<WorkStandard> All => [.. Held.Value.Values.OrderBy(s => s.Operation, StringComparer.Ordinal)];

    /// <summary>The standard of an operation; null when none is held.</summary>
    /// <param name="operation">Operation's id.</param>
    public static WorkStandard? Find(string? operation) =>
        operation is not null && Held.Value.TryGetValue(operation, out WorkStandard? found) ? found : null;

    /// <summary>Standards from a table.</summary>
    /// <param name="table">The table.</param>
    /// <exception cref="FormatException">A cell is not what its column asks for; the message names the operation.</exception>
    public static ImmutableArray<WorkStandard> Read(ReferenceTable table) => [.. table.Rows.Select(r => Row(table, r))];

    private static WorkStandard Row(ReferenceTable table, string[] row)
    {
        string Cell(string column) => row[table.Column(column)];
        double Figure(string column) => ReferenceTable.Number(Cell(column))
            ?? throw new FormatException($"{table.Name}, {Cell("operation")}: {column} holds no figure.");
        Minutes Range(string column)
        {
            Minutes m = new(Figure(column), Figure(column + "_low"), Figure(column + "_high"));
            return m.Low >= 0 && m.Low <= m.Best && m.Best <= m.High
                ? m
                : throw new FormatException($"{table.Name}, {Cell("operation")}: {column} is not low, best, high in order from 0.");
        }

        return new WorkStandard
        {
            Operation = Cell("operation"),
            Unit = Cell("unit"),
            Fixed = Range("fixed"),
            Each = Range("each"),
            Grows = Named<Growth>(table, row, "grows"),
            Tending = Named<Tending>(table, row, "hands"),
            HandsShare = Figure("hands_share"),
            HandsEnds = Figure("hands_ends"),
            People = int.Parse(Cell("people"), CultureInfo.InvariantCulture),
            Loud = Cell("loud") == "yes",
            Kit = Cell("kit"),
            Wait = Range("wait"),
            Skill = int.Parse(Cell("skill"), CultureInfo.InvariantCulture),
            Source = Cell("source"),
        };
    }

    private static T Named<T>(ReferenceTable table, string[] row, string column)
        where T : struct, Enum =>
        Enum.TryParse(row[table.Column(column)], ignoreCase: true, out T value) && Enum.IsDefined(value)
            ? value
            : throw new FormatException($"{table.Name}, {row[0]}: {column} is one of {string.Join(", ", Enum.GetNames<T>())}.");
}
