namespace Coulisse.Kitchen.Planning.Model;

/// <summary>First and last starts drawn together along lags and windows; of people and kit they know nothing.</summary>
/// <param name="windows">Windows and lengths of the activities.</param>
/// <param name="stands">True for what does not move any more: its first and its last start are the same.</param>
/// <param name="lengths">Shortest and longest length of an activity as far as it is known.</param>
internal sealed class LagBounds(StepWindows windows, Func<int, bool> stands, Func<int, (int Short, int Long)> lengths)
{
    /// <summary>Draws the starts together until nothing moves; false as soon as somebody has none left.</summary>
    /// <param name="lags">Lags that bind.</param>
    /// <param name="firm">Longest waits that may be overrun bind as well.</param>
    /// <param name="low">First start of each activity, raised here.</param>
    /// <param name="high">Last start of each activity, lowered here.</param>
    public bool Narrow(ReadOnlySpan<Lag> lags, bool firm, int[] low, int[] high)
    {
        bool moved = true;
        while (moved)
        {
            moved = false;
            foreach (Lag lag in lags)
            {
                // Of lengths that hang on the way the one that binds least.
                (int fromShort, int fromLong) = lag.FromEdge == Edge.End ? lengths(lag.From) : default;
                (int toShort, int toLong) = lag.ToEdge == Edge.End ? lengths(lag.To) : default;
                moved |= Raise(lag.To, low[lag.From] + fromShort + lag.Least - toLong, low) | Lower(lag.From, high[lag.To] + toLong - lag.Least - fromShort, high);
                if (lag.Most is { } most && (firm || !lag.Soft))
                {
                    moved |= Raise(lag.From, low[lag.To] + toShort - most - fromLong, low) | Lower(lag.To, high[lag.From] + fromLong + most - toShort, high);
                }

                if (low[lag.From] > high[lag.From] || low[lag.To] > high[lag.To])
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool Raise(int a, int to, int[] low)
    {
        bool moves = to > low[a] && !stands(a);
        low[a] = moves ? windows.Later(a, to) : low[a];
        return moves;
    }

    private bool Lower(int a, int to, int[] high)
    {
        bool moves = to < high[a] && !stands(a);
        high[a] = moves ? windows.Sooner(a, to) : high[a];
        return moves;
    }
}
