using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>Finds the names of all languages by their folded letters, as written and in their singular.</summary>
/// <remarks>
/// Holds no text: an entry is a number made of the folded letters and the place of the name in the table, and whoever meets the number folds that name again to be sure.
/// Sixteen thousand names are indexed at each start of a command, and most commands ask for twenty.
/// </remarks>
internal sealed class NameIndex
{
    // Names are short; a longer one takes an array.
    private const int Short = 64;

    private readonly ReferenceTable _table;
    private readonly int[] _first;
    private Entry[] _entries;
    private int _count;

    /// <summary>The index of a table.</summary>
    /// <param name="table">Table of foods.</param>
    /// <param name="columns">The column of each language; may be empty when there are no rows.</param>
    public NameIndex(ReferenceTable table, int[] columns)
    {
        _table = table;
        _entries = new Entry[(table.Rows.Count * 16) + 16];
        Span<char> room = stackalloc char[FoodName.Room(Short)];
        Span<char> other = stackalloc char[FoodName.Room(Short)];
        for (int row = 0; row < table.Rows.Count; row++)
        {
            NameCells names = new(table, row, columns[0]);
            for (int language = 0; language < columns.Length; language++)
            {
                // The languages stand side by side; a table that parts them is walked from its left at each.
                if (language > 0 && columns[language] == columns[language - 1] + 1)
                {
                    names.GoRight(table, row);
                }
                else if (language > 0)
                {
                    names = new NameCells(table, row, columns[language]);
                }

                while (names.Next())
                {
                    bool fits = names.Name.Length <= Short;
                    ReadOnlySpan<char> folded = FoodName.Fold(names.Name, fits ? room : new char[FoodName.Room(names.Name.Length)], out int hash, out bool plural);
                    Add(hash, names.Start, row, language, true);
                    if (!plural)
                    {
                        continue;
                    }

                    ReadOnlySpan<char> singular = FoodName.Singular(folded, folded.Length <= other.Length ? other : new char[folded.Length]);
                    if (singular.Length != folded.Length)
                    {
                        Add(NameHash.Of(singular), names.Start, row, language, false);
                    }
                }
            }
        }

        _first = Chained();
    }

    /// <summary>The entry of one language's own word: the first as written, else the first in the singular; -1 when there is none.</summary>
    /// <param name="key">Folded name.</param>
    /// <param name="hash">Its <see cref="NameHash"/>.</param>
    /// <param name="language">Place of the language.</param>
    public int Own(ReadOnlySpan<char> key, int hash, int language)
    {
        int best = -1;
        for (int at = First(hash); at >= 0; at = _entries[at].Next)
        {
            if (_entries[at].Hash == hash && _entries[at].Language == language && (best < 0 || _entries[at].Plain) && Same(at, key))
            {
                if (_entries[at].Plain)
                {
                    return at;
                }

                best = at;
            }
        }

        return best;
    }

    /// <summary>The best entry of any language when all that have the word mean the same food: of the language wanted, else English, else another, in each the word as written first; -1 when there is none.</summary>
    /// <param name="key">Folded name.</param>
    /// <param name="hash">Its <see cref="NameHash"/>.</param>
    /// <param name="wanted">Place of the language wanted; may be none of ours.</param>
    public int Any(ReadOnlySpan<char> key, int hash, int wanted)
    {
        int best = -1;
        int least = int.MaxValue;
        for (int at = First(hash); at >= 0; at = _entries[at].Next)
        {
            if (_entries[at].Hash != hash || !Same(at, key))
            {
                continue;
            }

            if (best >= 0 && _entries[at].Row != _entries[best].Row)
            {
                return -1;
            }

            int language = _entries[at].Language;
            int rank = ((language == wanted ? 0 : language == 0 ? 1 : 2) * 2) + (_entries[at].Plain ? 0 : 1);
            if (rank < least)
            {
                (best, least) = (at, rank);
            }
        }

        return best;
    }

    /// <summary>The row of an entry.</summary>
    public int Row(int entry) => _entries[entry].Row;

    /// <summary>The name of an entry as the table has it.</summary>
    public string Alias(int entry) => new(NameCells.At(_table.Text, _entries[entry].Start));

    private int First(int hash) => _first[hash & (_first.Length - 1)] - 1;

    private void Add(int hash, int start, int row, int language, bool plain)
    {
        if (_count == _entries.Length)
        {
            Entry[] more = new Entry[_count * 2];
            Array.Copy(_entries, more, _count);
            _entries = more;
        }

        ref Entry entry = ref _entries[_count++];
        entry.Hash = hash;
        entry.Start = start;
        entry.Row = row;
        entry.Kind = (language << 1) | (plain ? 1 : 0);
    }

    /// <summary>Chains the entries that share a slot, in the order of the table; gives the first of each slot and one more, 0 where there is none.</summary>
    private int[] Chained()
    {
        int[] first = new int[NameHash.Slots(_count)];
        for (int at = _count - 1; at >= 0; at--)
        {
            int slot = _entries[at].Hash & (first.Length - 1);
            _entries[at].Next = first[slot] - 1;
            first[slot] = at + 1;
        }

        return first;
    }

    private bool Same(int entry, ReadOnlySpan<char> key)
    {
        ReadOnlySpan<char> alias = NameCells.At(_table.Text, _entries[entry].Start);
        bool fits = alias.Length <= Short;
        ReadOnlySpan<char> folded = FoodName.Fold(alias, fits ? stackalloc char[FoodName.Room(Short)] : new char[FoodName.Room(alias.Length)]);
        if (_entries[entry].Plain)
        {
            return folded.SequenceEqual(key);
        }

        return FoodName.Singular(folded, folded.Length <= Short ? stackalloc char[Short] : new char[folded.Length]).SequenceEqual(key);
    }

    private struct Entry
    {
        public int Hash;
        public int Next;
        public int Start;
        public int Row;
        public int Kind;

        public readonly int Language => Kind >> 1;

        public readonly bool Plain => (Kind & 1) == 1;
    }
}
