namespace Coulisse.Matter.Reference;

/// <summary>Walks a text line by line as <see cref="TextReader.ReadLine"/> does, without cutting it.</summary>
internal ref struct TableLines(ReadOnlySpan<char> table)
{
    private readonly ReadOnlySpan<char> _text = table;
    private int _next;

    /// <summary>Where the line begins.</summary>
    public int Start { get; private set; }

    /// <summary>Behind its last character, before its line break.</summary>
    public int End { get; private set; }

    /// <summary>Cells in the line: its tabs and one more.</summary>
    public int Cells { get; private set; }

    /// <summary>The line.</summary>
    public readonly ReadOnlySpan<char> Line => _text[Start..End];

    /// <summary>Goes to the next line; false behind the last.</summary>
    public bool Next()
    {
        ReadOnlySpan<char> text = _text;
        if (_next >= text.Length)
        {
            return false;
        }

        ReadOnlySpan<char> rest = text[_next..];
        int length = rest.IndexOfAny('\n', '\r');
        int at = _next + (length < 0 ? rest.Length : length);
        (Start, End, Cells) = (_next, at, 1 + text[_next..at].Count('\t'));
        _next = at + (at + 1 < text.Length && text[at] == '\r' && text[at + 1] == '\n' ? 2 : 1);
        return true;
    }
}
