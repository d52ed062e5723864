using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Matter.Reference;

/// <summary>One of our own tables: tab-separated text with a head that names its source. A table without its head is refused.</summary>
/// <remarks>
/// Head lines start with <c># Title:</c>, <c># Source:</c>, <c># Licence:</c>, <c># Opened:</c>, <c># Units:</c>; more may follow.
/// Then one line of column names, then rows. No quoting; an empty cell means "not held", never zero.
/// </remarks>
public sealed class ReferenceTable
{
    private static readonly string[] RequiredHead = ["Title", "Source", "Licence", "Opened", "Units"];
    private readonly Dictionary<string, int> _columns;

    private ReferenceTable(string name, ImmutableDictionary<string, string> head, ImmutableArray<string> columns, List<string[]> rows)
    {
        Name = name;
        Head = head;
        Columns = columns;
        Rows = rows;
        _columns = columns.Select((c, i) => (c, i)).ToDictionary(x => x.c, x => x.i, StringComparer.Ordinal);
    }

    /// <summary>Path under data/, for example <c>measures/units.tsv</c>.</summary>
    public string Name { get; }

    /// <summary>The head's entries by key.</summary>
    public ImmutableDictionary<string, string> Head { get; }

    /// <summary>Column names in order.</summary>
    public ImmutableArray<string> Columns { get; }

    /// <summary>Cells by row, each row as long as <see cref="Columns"/>.</summary>
    public IReadOnlyList<string[]> Rows { get; }

    /// <summary>Loads a table that ships inside this assembly.</summary>
    /// <param name="name">Path under data/ with forward slashes.</param>
    /// <exception cref="FormatException">The table is malformed; the message names file, line and what would be right.</exception>
    public static ReferenceTable Load(string name)
    {
        using Stream stream = typeof(ReferenceTable).Assembly.GetManifestResourceStream(name)
            ?? typeof(ReferenceTable).Assembly.GetManifestResourceStream(name.Replace('/', '\\'))
            ?? throw new FormatException($"There is no table {name} in data/.");
        using StreamReader reader = new(stream);
        return Read(name, reader);
    }

    /// <summary>Names of all tables that ship inside this assembly.</summary>
    public static IEnumerable<string> Names => typeof(ReferenceTable).Assembly.GetManifestResourceNames()
        .Where(n => n.EndsWith(".tsv", StringComparison.Ordinal))
        .Select(n => n.Replace('\\', '/'))
        .Order(StringComparer.Ordinal);

    /// <summary>Reads a table from text.</summary>
    /// <exception cref="FormatException">The head is incomplete or a row has another number of cells than the head line.</exception>
    public static ReferenceTable Read(string name, TextReader reader)
    {
        ImmutableDictionary<string, string>.Builder head = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        ImmutableArray<string> columns = default;
        List<string[]> rows = [];
        int lineNumber = 0;
        while (reader.ReadLine() is { } line)
        {
            lineNumber++;
            if (columns.IsDefault && line.StartsWith('#'))
            {
                int colon = line.IndexOf(':', StringComparison.Ordinal);
                if (colon > 1)
                {
                    head[line[1..colon].Trim()] = line[(colon + 1)..].Trim();
                }
            }
            else if (columns.IsDefault)
            {
                foreach (string key in RequiredHead)
                {
                    if (!head.TryGetValue(key, out string? value) || value.Length == 0)
                    {
                        throw new FormatException($"{name}: the head lacks \"# {key}:\". Every table says where its figures are from.");
                    }
                }

                columns = [.. line.Split('\t')];
            }
            else if (line.Length > 0)
            {
                string[] cells = line.Split('\t');
                if (cells.Length != columns.Length)
                {
                    throw new FormatException($"{name}, line {lineNumber.ToString(CultureInfo.InvariantCulture)}: {cells.Length.ToString(CultureInfo.InvariantCulture)} cells where the column line has {columns.Length.ToString(CultureInfo.InvariantCulture)}.");
                }

                rows.Add(cells);
            }
        }

        return columns.IsDefault
            ? throw new FormatException($"{name}: no column line.")
            : new ReferenceTable(name, head.ToImmutable(), columns, rows);
    }

    /// <summary>Position of a column.</summary>
    /// <exception cref="FormatException">There is no such column.</exception>
    public int Column(string name) => _columns.TryGetValue(name, out int i)
        ? i
        : throw new FormatException($"{Name}: there is no column {name}.");

    /// <summary>A cell as a number; null when it is empty.</summary>
    /// <exception cref="FormatException">The cell is neither empty nor a number.</exception>
    public static double? Number(string cell) => cell.Length == 0
        ? null
        : double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? value
            : throw new FormatException($"\"{cell}\" is not a number.");
}
