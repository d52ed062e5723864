namespace Coulisse.Matter.Reference;

/// <summary>Walks a text line by line as <see cref="TextReader.ReadLine"/> does, without cutting it.</summary>
internal ref struct TableLines(ReadOnlySpan<char> text)
{
    private readonly ReadOnlySpan<char> _text = text;
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

        int at = _next;
        int cells = 1;
        for (; at < text.Length; at++)
        {
            // Nearly all of a table lies above the breaks, so one look passes it.
            char c = text[at];
            if (c > '\r')
            {
                continue;
            }

            if (c == '\t')
            {
                cells++;
            }
            else if (c is '\n' or '\r')
            {
                break;
            }
        }

        (Start, End, Cells) = (_next, at, cells);
        _next = at + (at + 1 < text.Length && text[at] == '\r' && text[at + 1] == '\n' ? 2 : 1);
        return true;
    }
}
