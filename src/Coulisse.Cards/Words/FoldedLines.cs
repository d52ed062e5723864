namespace Coulisse.Cards.Words;

/// <summary>The last few lines that were folded, found again by the string itself.</summary>
internal sealed class FoldedLines
{
    private const int Kept = 8;
    private const int Longest = 4000;
    private readonly (string? Line, string Folded)[] _kept = new (string?, string)[Kept];
    private int _next;

    /// <summary>The folded line.</summary>
    public string Of(string line)
    {
        foreach ((string? known, string folded) in _kept)
        {
            if (ReferenceEquals(known, line))
            {
                return folded;
            }
        }

        string found = Folding.Line(line.AsSpan());
        if (line.Length <= Longest)
        {
            _kept[_next] = (line, found);
            _next = (_next + 1) % Kept;
        }

        return found;
    }
}
