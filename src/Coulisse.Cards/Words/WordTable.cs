using System.Collections.Frozen;

namespace Coulisse.Cards.Words;

/// <summary>Words of one class by their folded key; says from the first letter alone that none can begin there, as is so at most places.</summary>
/// <typeparam name="T">What a word becomes.</typeparam>
internal sealed class WordTable<T>
{
    private readonly FrozenDictionary<string, (string Lang, T Value)[]>.AlternateLookup<ReadOnlySpan<char>> _words;
    private readonly bool[] _first = new bool[128];
    private readonly int _longest;

    public WordTable(FrozenDictionary<string, (string Lang, T Value)[]> words)
    {
        _words = words.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (string key in words.Keys)
        {
            _longest = Math.Max(_longest, key.Length);
            if (key.Length > 0 && key[0] < 128)
            {
                _first[key[0]] = true;
            }
        }
    }

    /// <summary>All that the key may be; null when it is no word of the class.</summary>
    public (string Lang, T Value)[]? Find(ReadOnlySpan<char> key) => key.Length <= _longest && _words.TryGetValue(key, out (string Lang, T Value)[]? found) ? found : null;

    /// <summary>False only when no word of the class begins with this letter. Letters outside ASCII and the stop, which no key keeps, may always.</summary>
    public bool MayBegin(char c) => c >= 128 || c == '.' || _first[char.ToLowerInvariant(c)];
}
