namespace Coulisse.Matter.Foods;

/// <summary>A set of folded words that is asked for a piece of a text without cutting it out, cheap to make.</summary>
internal sealed class WordSet
{
    private string?[] _slots;
    private int _count;

    /// <summary>An empty set.</summary>
    public WordSet() => _slots = new string?[64];

    /// <summary>The set of some words.</summary>
    /// <param name="words">Words.</param>
    public WordSet(string[] words)
        : this()
    {
        foreach (string word in words)
        {
            Add(word);
        }
    }

    /// <summary>Adds a word; once is enough.</summary>
    public void Add(string word)
    {
        int at = Find(word);
        if (_slots[at] is not null)
        {
            return;
        }

        _slots[at] = word;
        _count++;
        if (_count * 2 > _slots.Length)
        {
            string?[] old = _slots;
            _slots = new string?[old.Length * 2];
            foreach (string? moved in old)
            {
                if (moved is not null)
                {
                    _slots[Find(moved)] = moved;
                }
            }
        }
    }

    /// <summary>True when it holds a word.</summary>
    public bool Contains(ReadOnlySpan<char> word) => _slots[Find(word)] is not null;

    /// <summary>The slot of a word, or the empty one it would go to.</summary>
    private int Find(ReadOnlySpan<char> word)
    {
        int at = NameHash.Of(word) & (_slots.Length - 1);
        while (_slots[at] is { } other && !word.SequenceEqual(other))
        {
            at = (at + 1) & (_slots.Length - 1);
        }

        return at;
    }
}
