namespace Coulisse.Matter.Quantities;

/// <summary>A figure with its honest range and where it came from.</summary>
/// <typeparam name="T">A quantity.</typeparam>
/// <param name="Best">Best estimate.</param>
/// <param name="Low">Low end of the stated range (equal to <paramref name="Best"/> for an exact figure).</param>
/// <param name="High">High end of the stated range.</param>
/// <param name="Origin">Where it came from.</param>
/// <remarks>Which end is cautious depends on the question, so the asker picks it and says so.</remarks>
public sealed record Estimate<T>(T Best, T Low, T High, Origin Origin)
    where T : struct, IComparable<T>
{
    /// <summary>A figure taken as exact.</summary>
    public static Estimate<T> Exact(T value, Origin origin) => new(value, value, value, origin);

    /// <summary>True when low, best and high are in order.</summary>
    public bool IsOrdered => Low.CompareTo(Best) <= 0 && Best.CompareTo(High) <= 0;

    /// <summary>The same estimate carried through a rising function.</summary>
    public Estimate<TOut> Map<TOut>(Func<T, TOut> rising, Origin origin)
        where TOut : struct, IComparable<TOut>
        => new(rising(Best), rising(Low), rising(High), origin);
}
