using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>Walks the names in a cell of the table, parted by semicolons; an empty one is none.</summary>
internal ref struct NameCells
{
    private readonly ReadOnlySpan<char> _text;
    private int _end;
    private int _next;

    /// <summary>The names of a row in a column.</summary>
    public NameCells(ReferenceTable table, int row, int column)
    {
        _text = table.Text;
        _next = table.Place(row, column, out _end);
    }

    /// <summary>Goes to the names of the same row in the column to the right.</summary>
    public void GoRight(ReferenceTable table, int row) => _next = table.PlaceRightOf(row, ref _end);

    /// <summary>Where the name begins in the text of the table.</summary>
    public int Start { get; private set; }

    /// <summary>The name.</summary>
    public ReadOnlySpan<char> Name { get; private set; }

    /// <summary>Goes to the next name; false behind the last.</summary>
    public bool Next()
    {
        while (_next < _end)
        {
            ReadOnlySpan<char> rest = _text[_next.._end];
            int length = rest.IndexOf(';');
            length = length < 0 ? rest.Length : length;
            Start = _next;
            Name = rest[..length];
            _next += length + 1;
            if (length > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The name that begins at a place <see cref="Next"/> stood on.</summary>
    public static ReadOnlySpan<char> At(ReadOnlySpan<char> text, int start)
    {
        int end = start;
        while (end < text.Length && text[end] is not (';' or '\t' or '\n' or '\r'))
        {
            end++;
        }

        return text[start..end];
    }
}
