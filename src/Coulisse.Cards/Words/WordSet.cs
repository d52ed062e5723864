namespace Coulisse.Cards.Words;

/// <summary>A few words, asked by a stretch of a text whether it is one of them.</summary>
internal sealed class WordSet
{
    private readonly SpanTable<string> _words;

    /// <param name="anyCase">Capital and small letters are the same.</param>
    /// <param name="words">The words; one may be told twice.</param>
    public WordSet(bool anyCase, params string[] words)
    {
        _words = new SpanTable<string>(anyCase);
        foreach (string w in words)
        {
            _words.At(w, w) = w;
        }
    }

    /// <summary>True for one of the words.</summary>
    public bool Contains(ReadOnlySpan<char> word) => _words.Contains(word);
}
