namespace Coulisse.Cards.Words;

/// <summary>A few words that a text is asked for; most texts have none of them, which their first letters tell.</summary>
/// <param name="words">The words, each looked for on its own.</param>
internal sealed class WordList(params string[] words)
{
    private readonly Beginnings _first = new(words);

    /// <summary>True when any of them stands in the text.</summary>
    public bool In(string s) => _first.MayIn(s) && Places.HasAny(s, words);
}
