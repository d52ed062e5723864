using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;

namespace Coulisse.Matter.Reference;

/// <summary>One of our own tables: tab-separated text with a head that names its source. A table without its head is refused.</summary>
/// <remarks>
/// Head lines start with <c># Title:</c>, <c># Source:</c>, <c># Licence:</c>, <c># Opened:</c>, <c># Units:</c>; more may follow.
/// Then one line of column names, then rows. No quoting; an empty cell means "not held", never zero.
/// </remarks>
public sealed class ReferenceTable
{
    private readonly string[] _columns;
    private readonly TableHead _head;
    private readonly TableRows _rows;
    private ImmutableDictionary<string, string>? _entries;

    private ReferenceTable(string name, TableHead head, string[] columns, TableRows rows)
    {
        Name = name;
        _head = head;
        _columns = columns;
        _rows = rows;
        for (int i = 1; i < columns.Length; i++)
        {
            if (Array.IndexOf(columns, columns[i], 0, i) >= 0)
            {
                throw new ArgumentException($"An item with the same key has already been added. Key: {columns[i]}");
            }
        }
    }

    /// <summary>Path under data/, for example <c>measures/units.tsv</c>.</summary>
    public string Name { get; }

    /// <summary>The head's entries by key.</summary>
    public ImmutableDictionary<string, string> Head => _entries ??= _head.ToDictionary();

    /// <summary>Column names in order.</summary>
    public ImmutableArray<string> Columns => ImmutableCollectionsMarshal.AsImmutableArray(_columns);

    /// <summary>Cells by row, each row as long as <see cref="Columns"/>; cut anew each time a row is asked for.</summary>
    public IReadOnlyList<string[]> Rows => _rows;

    /// <summary>The whole text, for those who look at cells without cutting them.</summary>
    internal ReadOnlySpan<char> Text => _rows.Text;

    /// <summary>Where a cell begins in <see cref="Text"/>, and where it ends.</summary>
    internal int Place(int row, int column, out int end) => _rows.Place(row, column, out end);

    /// <summary>Where the cell right of another begins in <see cref="Text"/>; its end takes the place of the other's.</summary>
    internal int PlaceRightOf(int row, ref int end) => _rows.PlaceRightOf(row, ref end);

    /// <summary>A cell, not cut out of the text.</summary>
    internal ReadOnlySpan<char> Cell(int row, int column)
    {
        int start = _rows.Place(row, column, out int end);
        return _rows.Text[start..end];
    }

    /// <summary>Loads a table that ships inside this assembly.</summary>
    /// <param name="name">Path under data/ with forward slashes.</param>
    /// <exception cref="FormatException">The table is malformed; the message names file, line and what would be right.</exception>
    public static ReferenceTable Load(string name)
    {
        using Stream stream = typeof(ReferenceTable).Assembly.GetManifestResourceStream(name)
            ?? typeof(ReferenceTable).Assembly.GetManifestResourceStream(name.Replace('/', '\\'))
            ?? throw new FormatException($"There is no table {name} in data/.");
        char[] text = TableText.Decode(stream, out int length);
        return Read(name, text, length);
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
        char[] text = reader.ReadToEnd().ToCharArray();
        return Read(name, text, text.Length);
    }

    private static ReferenceTable Read(string name, char[] text, int length)
    {
        TableHead head = new();
        string[]? columns = null;
        TableRows rows = new(text);
        TableLines lines = new(text.AsSpan(0, length));
        for (int number = 1; lines.Next(); number++)
        {
            if (columns is not null)
            {
                if (lines.End == lines.Start)
                {
                    continue;
                }

                if (lines.Cells != columns.Length)
                {
                    throw new FormatException($"{name}, line {number.ToString(CultureInfo.InvariantCulture)}: {lines.Cells.ToString(CultureInfo.InvariantCulture)} cells where the column line has {columns.Length.ToString(CultureInfo.InvariantCulture)}.");
                }

                rows.Add(lines.Start, lines.End);
            }
            else if (lines.Line is ['#', ..])
            {
                head.Take(lines.Line);
            }
            else if (head.Lacks() is { } key)
            {
                throw new FormatException($"{name}: the head lacks \"# {key}:\". Every table says where its figures are from.");
            }
            else
            {
                columns = new string(lines.Line).Split('\t');
            }
        }

        return columns is null
            ? throw new FormatException($"{name}: no column line.")
            : new ReferenceTable(name, head, columns, rows);
    }

    /// <summary>Position of a column.</summary>
    /// <exception cref="FormatException">There is no such column.</exception>
    public int Column(string name) => Array.IndexOf(_columns, name) is >= 0 and int at
        ? at
        : throw new FormatException($"{Name}: there is no column {name}.");

    /// <summary>A cell as a number; null when it is empty.</summary>
    /// <exception cref="FormatException">The cell is neither empty nor a number.</exception>
    public static double? Number(string cell) => cell.Length == 0
        ? null
        : double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? value
            : throw new FormatException($"\"{cell}\" is not a number.");
}
