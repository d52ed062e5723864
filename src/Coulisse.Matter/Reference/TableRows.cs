using System.Collections;

namespace Coulisse.Matter.Reference;

/// <summary>The rows of a table as places in its text: a row's cells are cut when it is asked for.</summary>
/// <remarks>The table of foods has 66,000 cells and a card needs some hundred of them; the rest stay uncut.</remarks>
internal sealed class TableRows(char[] text) : IReadOnlyList<string[]>
{
    private int[] _starts = new int[64];
    private int[] _ends = new int[64];

    /// <inheritdoc/>
    public int Count { get; private set; }

    /// <summary>The text the rows lie in.</summary>
    public ReadOnlySpan<char> Text => text;

    /// <inheritdoc/>
    public string[] this[int index] => new string(Line(index)).Split('\t');

    /// <summary>Takes the row between two places of the text.</summary>
    public void Add(int start, int end)
    {
        if (Count == _starts.Length)
        {
            (_starts, _ends) = (Doubled(_starts), Doubled(_ends));
        }

        _starts[Count] = start;
        _ends[Count++] = end;
    }

    /// <summary>Where a cell begins in the text, and where it ends.</summary>
    /// <param name="row">Row.</param>
    /// <param name="column">Column; every row was counted to have it.</param>
    /// <param name="end">Behind its last character.</param>
    public int Place(int row, int column, out int end)
    {
        ReadOnlySpan<char> line = Line(row);
        int start = 0;
        for (int skip = column; skip > 0; skip--)
        {
            start += line[start..].IndexOf('\t') + 1;
        }

        int length = line[start..].IndexOf('\t');
        end = length < 0 ? _ends[row] : _starts[row] + start + length;
        return _starts[row] + start;
    }

    /// <summary>Where the cell right of another begins in the text, and where it ends.</summary>
    /// <param name="row">Row.</param>
    /// <param name="end">Behind the last character of the cell to the left, then of this one.</param>
    public int PlaceRightOf(int row, ref int end)
    {
        int start = end + 1;
        int length = text.AsSpan(start, _ends[row] - start).IndexOf('\t');
        end = length < 0 ? _ends[row] : start + length;
        return start;
    }

    /// <inheritdoc/>
    public IEnumerator<string[]> GetEnumerator()
    {
        for (int i = 0; i < Count; i++)
        {
            yield return this[i];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static int[] Doubled(int[] places)
    {
        int[] more = new int[places.Length * 2];
        Array.Copy(places, more, places.Length);
        return more;
    }

    private ReadOnlySpan<char> Line(int row)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)row, (uint)Count, nameof(row));
        return text.AsSpan(_starts[row], _ends[row] - _starts[row]);
    }
}
