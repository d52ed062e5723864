namespace Coulisse.Cards.Words;

/// <summary>A few words that a text is asked for; most texts have none of them, which their first letters tell.</summary>
/// <param name="words">The words, each looked for on its own.</param>
internal sealed class WordList(params string[] words)
{
    private readonly Beginnings _first = new(words);
    private readonly Marks[] _marks = MarksOf(words);

    /// <summary>A word of the list.</summary>
    /// <param name="k">Which, from 0.</param>
    public string this[int k] => words[k];

    /// <summary>True when any of them stands in the text.</summary>
    public bool In(string s)
    {
        for (int k = Next(s, 0); k >= 0; k = Next(s, k + 1))
        {
            if (Places.FindWord(s, words[k]) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The next word of the list that may stand in the text, as far as first letters tell; -1 when none of the others does.</summary>
    /// <param name="s">The text.</param>
    /// <param name="from">Place in the list to look on from.</param>
    public int Next(string s, int from)
    {
        if (from == 0 && !_first.MayIn(s) || from >= words.Length)
        {
            return -1;
        }

        if (s.Length > WordStarts.Longest)
        {
            return from;
        }

        ReadOnlySpan<int> starts = WordStarts.Of(s);
        for (int k = from; k < words.Length; k++)
        {
            (int mark, int capital) = _marks[k];
            if (starts.IndexOf(mark) >= 0 || capital != mark && starts.IndexOf(capital) >= 0)
            {
                return k;
            }
        }

        return -1;
    }

    private static Marks[] MarksOf(string[] words)
    {
        Marks[] marks = new Marks[words.Length];
        for (int k = 0; k < words.Length; k++)
        {
            (int mark, int capital) = WordStarts.MarksOf(words[k]);
            marks[k] = new Marks(mark, capital);
        }

        return marks;
    }

    private readonly record struct Marks(int Mark, int Capital);
}
