using System.Collections.Concurrent;

namespace Coulisse.Cards.Reading;

/// <summary>What was read of a long card before, by its words. A card whose lines do not come again is not made to keep them: after a while nothing is kept or looked for.</summary>
/// <typeparam name="T">What the words were read as.</typeparam>
internal sealed class ReadBefore<T>
    where T : class
{
    private const int Trial = 4_096;
    private const int FewestOf = 8;
    private readonly ConcurrentDictionary<string, T> _known = new(StringComparer.Ordinal);
    private int _asked;
    private int _found;
    private volatile bool _idle;

    /// <summary>True while what is read is kept.</summary>
    public bool Keeps => !_idle;

    /// <summary>What the words were read as; null when they were not, or when keeping them was given up.</summary>
    public T? Of(string words)
    {
        if (_idle)
        {
            return null;
        }

        T? known = _known.GetValueOrDefault(words);
        // Two cores may count at once and lose one: the count only says whether keeping is worth its cost.
        _asked++;
        _found += known is null ? 0 : 1;
        if (_asked > Trial && _found < _asked / FewestOf)
        {
            _idle = true;
            _known.Clear();
        }

        return known;
    }

    /// <summary>Keeps what the words were read as.</summary>
    public void Keep(string words, T read)
    {
        if (!_idle)
        {
            _ = _known.TryAdd(words, read);
        }
    }
}
