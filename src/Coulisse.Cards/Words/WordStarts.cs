namespace Coulisse.Cards.Words;

/// <summary>The first letters of every word of a sentence, told once for the many lists it is asked for.</summary>
internal sealed class WordStarts
{
    /// <summary>A longer text is no sentence: it is walked each time rather than kept.</summary>
    public const int Longest = 4096;

    /// <summary>Marks from here on stand for a word whose first three letters are not all plain; what is below is their code.</summary>
    public const int Unsure = 0x8000;

    /// <summary>Marks from here on are characters beyond ASCII, each of which may begin a word.</summary>
    public const int Other = 0x10000;

    [ThreadStatic]
    private static WordStarts? _recent;
    private string _text = "";
    private int[] _marks = new int[64];
    private int _count;

    /// <summary>The marks of a sentence's words, in order.</summary>
    /// <param name="s">The sentence, of <see cref="Longest"/> characters at most.</param>
    public static ReadOnlySpan<int> Of(string s)
    {
        WordStarts recent = _recent ??= new WordStarts();
        if (!ReferenceEquals(recent._text, s))
        {
            recent.Read(s);
        }

        return recent._marks.AsSpan(0, recent._count);
    }

    /// <summary>The mark of a word wherever it begins in a text, and of the same word with a capital where that is another.</summary>
    public static (int Mark, int Capital) MarksOf(string word)
    {
        if (word[0] >= 128)
        {
            return (Other | word[0], Other | char.ToUpperInvariant(word[0]));
        }

        int code = Beginnings.Code(word, 0, folded: false, out int sure);
        int mark = sure == Beginnings.Letters ? code : Unsure | Beginnings.Small(word[0]);
        return (mark, mark);
    }

    private void Read(string s)
    {
        _text = s;
        _count = 0;
        bool inside = false;
        for (int i = 0; i < s.Length; i++)
        {
            char c = s[i];
            if (c >= 128)
            {
                Add(Other | c);
                inside = false;
                continue;
            }

            if (!inside)
            {
                int code = Beginnings.Code(s, i, folded: false, out int sure);
                Add(sure == Beginnings.Letters ? code : Unsure | Beginnings.Small(c));
            }

            inside = char.IsAsciiLetterOrDigit(c);
        }
    }

    private void Add(int mark)
    {
        if (_count == _marks.Length)
        {
            Array.Resize(ref _marks, _count * 2);
        }

        _marks[_count++] = mark;
    }
}
