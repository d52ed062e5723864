using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>Finds the names of one language by the key of their forms (<see cref="FoodForms"/>); a form that two foods share names neither.</summary>
internal sealed class FormIndex
{
    // Names are short; a longer one takes an array.
    private const int Short = 64;
    private const int Several = -1;

    private readonly ReferenceTable _table;
    private readonly string _language;

    // The first entry of each slot and one more; 0 where there is none.
    private readonly int[] _first;
    private Entry[] _entries;
    private int _count;

    /// <summary>The index of a language.</summary>
    /// <param name="table">Table of foods.</param>
    /// <param name="column">The language's column.</param>
    /// <param name="language">Its code.</param>
    public FormIndex(ReferenceTable table, int column, string language)
    {
        (_table, _language) = (table, language);
        _first = new int[NameHash.Slots(table.Rows.Count * 2)];
        _entries = new Entry[(table.Rows.Count * 2) + 16];
        Span<char> room = stackalloc char[2 * FoodName.Room(Short)];
        for (int row = 0; row < table.Rows.Count; row++)
        {
            NameCells names = new(table, row, column);
            while (names.Next())
            {
                ReadOnlySpan<char> key = Key(names.Name, names.Name.Length <= Short ? room : new char[2 * FoodName.Room(names.Name.Length)]);
                int hash = NameHash.Of(key);
                int at = Find(key, hash);
                if (at < 0)
                {
                    Add(hash, names.Start, row);
                }
                else
                {
                    // The last name of a food stands for its form.
                    _entries[at].Row = _entries[at].Row == row ? row : Several;
                    _entries[at].Start = names.Start;
                }
            }
        }
    }

    /// <summary>The food whose name has a form; -1 when there is none, or more than one.</summary>
    /// <param name="folded">Folded name.</param>
    /// <param name="start">Where the food's name begins in the text of the table.</param>
    public int Row(ReadOnlySpan<char> folded, out int start)
    {
        ReadOnlySpan<char> key = FoodForms.Key(folded, _language, folded.Length <= Short ? stackalloc char[Short] : new char[folded.Length]);
        int at = Find(key, NameHash.Of(key));
        start = at < 0 ? -1 : _entries[at].Start;
        return at < 0 ? -1 : _entries[at].Row;
    }

    private int Find(ReadOnlySpan<char> key, int hash)
    {
        int at = _first[hash & (_first.Length - 1)] - 1;
        while (at >= 0 && !(_entries[at].Hash == hash && Same(at, key)))
        {
            at = _entries[at].Next;
        }

        return at;
    }

    private void Add(int hash, int start, int row)
    {
        if (_count == _entries.Length)
        {
            Entry[] more = new Entry[_count * 2];
            Array.Copy(_entries, more, _count);
            _entries = more;
        }

        ref int first = ref _first[hash & (_first.Length - 1)];
        _entries[_count] = new Entry { Hash = hash, Next = first - 1, Start = start, Row = row };
        first = ++_count;
    }

    private bool Same(int entry, ReadOnlySpan<char> key)
    {
        ReadOnlySpan<char> alias = NameCells.At(_table.Text, _entries[entry].Start);
        return Key(alias, alias.Length <= Short ? stackalloc char[2 * FoodName.Room(Short)] : new char[2 * FoodName.Room(alias.Length)]).SequenceEqual(key);
    }

    /// <summary>The key of a name as written: folded in the first half of the room, its form in the second.</summary>
    private ReadOnlySpan<char> Key(ReadOnlySpan<char> alias, Span<char> room)
    {
        ReadOnlySpan<char> folded = FoodName.Fold(alias, room);
        Span<char> half = room[(room.Length / 2)..];
        return FoodForms.Key(folded, _language, folded.Length <= half.Length ? half : new char[folded.Length]);
    }

    private struct Entry
    {
        public int Hash;
        public int Next;
        public int Start;
        public int Row;
    }
}
