using System.Collections.Frozen;

namespace Coulisse.Cards.Words;

/// <summary>Words of one class by their folded key; says from its first letters alone that none can begin there, as is so at most places.</summary>
/// <typeparam name="T">What a word becomes.</typeparam>
internal sealed class WordTable<T>
{
    private readonly FrozenDictionary<string, (string Lang, T Value)[]>.AlternateLookup<ReadOnlySpan<char>> _words;
    private readonly Beginnings _first;
    private readonly int _longest;

    public WordTable(FrozenDictionary<string, (string Lang, T Value)[]> words)
    {
        _words = words.GetAlternateLookup<ReadOnlySpan<char>>();
        Keys = words.Keys;
        _longest = words.Keys.Max(k => k.Length);
        _first = new Beginnings(words.Keys, folded: true);
    }

    /// <summary>The words by their keys.</summary>
    public IReadOnlyList<string> Keys { get; }

    /// <summary>All that the key may be; null when it is no word of the class.</summary>
    public (string Lang, T Value)[]? Find(ReadOnlySpan<char> key) => key.Length <= _longest && _words.TryGetValue(key, out (string Lang, T Value)[]? found) ? found : null;

    /// <summary>False only when no word of the class begins at a place.</summary>
    public bool MayBegin(string s, int at) => _first.May(s, at);
}
