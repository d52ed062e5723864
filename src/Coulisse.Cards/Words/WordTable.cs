namespace Coulisse.Cards.Words;

/// <summary>Words of one class by their folded key; says from its first letters alone that none can begin there, as is so at most places.</summary>
/// <typeparam name="T">What a word becomes.</typeparam>
internal sealed class WordTable<T>
    where T : class
{
    private readonly SpanTable<Meaning<T>?> _words = new();
    private readonly Beginnings _first = new([], folded: true);

    /// <summary>The words by their keys.</summary>
    public IEnumerable<string> Keys => _words.Keys;

    /// <summary>Adds what a word may be, behind all that it may be already.</summary>
    /// <param name="key">The word's key.</param>
    /// <param name="word">The word itself, which is often its own key.</param>
    /// <param name="lang">Its language.</param>
    /// <param name="value">What it becomes.</param>
    public void Add(ReadOnlySpan<char> key, string word, string lang, T value)
    {
        ref Meaning<T>? place = ref _words.At(key, word);
        Meaning<T> meaning = new(lang, value);
        if (place is null)
        {
            place = meaning;
            _first.Add(key);
            return;
        }

        Meaning<T> last = place;
        while (last.Next is { } next)
        {
            last = next;
        }

        last.Next = meaning;
    }

    /// <summary>The first thing that the key may be; null when it is no word of the class.</summary>
    public Meaning<T>? Find(ReadOnlySpan<char> key) => _words.TryGetValue(key, out Meaning<T>? found) ? found : null;

    /// <summary>False only when no word of the class begins at a place.</summary>
    public bool MayBegin(string s, int at) => _first.May(s, at);
}

/// <summary>What a word may be in one language, and what else it may be.</summary>
/// <typeparam name="T">What a word becomes.</typeparam>
/// <param name="lang">The language; a star for all.</param>
/// <param name="value">What the word becomes.</param>
internal sealed class Meaning<T>(string lang, T value)
    where T : class
{
    /// <summary>The language; a star for all.</summary>
    public string Lang { get; } = lang;

    /// <summary>What the word becomes.</summary>
    public T Value { get; } = value;

    /// <summary>What else it may be, in the order of the table.</summary>
    public Meaning<T>? Next { get; set; }
}
