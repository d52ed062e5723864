namespace Coulisse.Cards.Words;

/// <summary>What words stand for, asked by a stretch of a text without making a string of it. Filled once, then only read.</summary>
/// <remarks>
/// A class of ours is translated ahead of time for whatever it holds; the dictionaries of the framework are not for values and tuples, and each of their methods
/// would be translated again at every start. A word is told by its length and five of its letters, which is enough for tables of words.
/// </remarks>
/// <typeparam name="T">What a word stands for.</typeparam>
/// <param name="anyCase">Capital and small letters are the same.</param>
/// <param name="ofText">The words are those of a text, which may be made to be alike: they are told by all their letters, at twice the cost.</param>
internal sealed class SpanTable<T>(bool anyCase = false, bool ofText = false)
{
    private const int Fewest = 16;
    private const int Large = 2048;
    private int[] _heads = new int[Fewest];
    private Entry[] _entries = new Entry[Fewest];
    private int _count;
    private ulong _lengths;

    /// <summary>How many words there are.</summary>
    public int Count => _count;

    /// <summary>The words in the order they came.</summary>
    public IEnumerable<string> Keys
    {
        get
        {
            for (int i = 0; i < _count; i++)
            {
                yield return _entries[i].Key;
            }
        }
    }

    /// <summary>What a word stands for; false when it is not here.</summary>
    public bool TryGetValue(ReadOnlySpan<char> key, out T value)
    {
        int at = Find(key, Hash(key));
        value = at < 0 ? default! : _entries[at].Value;
        return at >= 0;
    }

    /// <summary>True when the word is here.</summary>
    public bool Contains(ReadOnlySpan<char> key) => Find(key, Hash(key)) >= 0;

    /// <summary>The place of what a word stands for, for a word that is here or, with nothing in it yet, for a new one.</summary>
    /// <remarks>In "At(word) = value" the word is here before the value is worked out: a value that asks the table is worked out before.</remarks>
    /// <param name="key">The word.</param>
    /// <param name="same">A string that may be the very word: it is kept rather than made again.</param>
    public ref T At(ReadOnlySpan<char> key, string? same = null)
    {
        uint hash = Hash(key);
        int at = Find(key, hash);
        if (at < 0)
        {
            if (_count == _entries.Length)
            {
                Grow();
            }

            at = _count++;
            ref Entry entry = ref _entries[at];
            entry.Key = same is not null && key.SequenceEqual(same) ? same : key.ToString();
            entry.Hash = hash;
            Link(at);
            _lengths |= Length(key.Length);
        }

        return ref _entries[at].Value;
    }

    private int Find(ReadOnlySpan<char> key, uint hash)
    {
        if ((_lengths & Length(key.Length)) == 0)
        {
            return -1;
        }

        Entry[] entries = _entries;
        for (int at = _heads[hash & (uint)(_heads.Length - 1)] - 1; at >= 0; at = entries[at].Next - 1)
        {
            ref Entry entry = ref entries[at];
            if (entry.Hash == hash && (anyCase ? key.Equals(entry.Key, StringComparison.OrdinalIgnoreCase) : key.SequenceEqual(entry.Key)))
            {
                return at;
            }
        }

        return -1;
    }

    private void Link(int at)
    {
        ref Entry entry = ref _entries[at];
        ref int head = ref _heads[entry.Hash & (uint)(_heads.Length - 1)];
        entry.Next = head;
        head = at + 1;
    }

    private void Grow()
    {
        // No generic call of the framework: it would be translated anew for what each table holds.
        Entry[] more = new Entry[_count < Large ? _count * 2 : _count + _count / 2];
        Array.Copy(_entries, more, _count);
        _entries = more;
        if (_heads.Length >= more.Length)
        {
            return;
        }

        _heads = new int[_heads.Length * 2];
        for (int i = 0; i < _count; i++)
        {
            Link(i);
        }
    }

    // Words of 63 letters and more share a bit.
    private static ulong Length(int length) => 1UL << Math.Min(length, 63);

    private uint Hash(ReadOnlySpan<char> key)
    {
        int n = key.Length;
        if (ofText)
        {
            return unchecked((uint)string.GetHashCode(key, anyCase ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal));
        }

        unchecked
        {
            if (n < 2)
            {
                return n == 0 ? 0 : Letter(key[0]) * 0x9E3779B1;
            }

            uint hash = (uint)n * 0x85EBCA6B + Letter(key[0]) * 0x9E3779B1 + Letter(key[1]) * 0xC2B2AE35 + Letter(key[n / 2]) * 0x27D4EB2F + Letter(key[n - 2]) * 0x165667B1 + Letter(key[n - 1]) * 0xB5297A4D;
            return hash ^ (hash >> 15);
        }
    }

    // No letter beyond ASCII is the capital of one within it: what the case of the others is, is left to the comparison.
    private uint Letter(char c) => anyCase && c >= 128 ? 128U : c | 0x20U;

    private struct Entry
    {
        public string Key;
        public T Value;
        public uint Hash;
        public int Next;
    }
}
