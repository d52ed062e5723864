using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>What longest waits tie together: activities none of which can be put down for good before the others.</summary>
/// <remarks>
/// A longest wait is an arc back in time, so what it holds together is a strongly connected part of the network of lags (Tarjan 1972).
/// Such a part is laid as a whole (Neumann and Zhan 1995; from memory); between the parts only least waits are left, which an order of parts keeps by itself.
/// </remarks>
internal sealed class LagUnits
{
    private readonly List<int>[] _after;
    private readonly int[] _number;
    private readonly int[] _low;
    private readonly Stack<int> _open = new();
    private readonly bool[] _isOpen;
    private readonly ImmutableArray<ImmutableArray<int>>.Builder _units = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
    private int _next = 1;

    private LagUnits(int count, IEnumerable<Lag> lags, bool firm)
    {
        _after = [.. Enumerable.Range(0, count).Select(_ => new List<int>())];
        (_number, _low, _isOpen) = (new int[count], new int[count], new bool[count]);
        foreach (Lag lag in lags)
        {
            _after[lag.From].Add(lag.To);
            if (lag.Most is not null && (firm || !lag.Soft))
            {
                _after[lag.To].Add(lag.From);
            }
        }
    }

    /// <summary>The units, each activity in one of them; most are single.</summary>
    /// <param name="count">How many activities.</param>
    /// <param name="lags">Lags between them.</param>
    /// <param name="firm">Longest waits that may be overrun tie as well.</param>
    public static ImmutableArray<ImmutableArray<int>> Of(int count, IEnumerable<Lag> lags, bool firm = false)
    {
        LagUnits made = new(count, lags, firm);
        for (int a = 0; a < count; a++)
        {
            if (made._number[a] == 0)
            {
                made.Visit(a);
            }
        }

        return made._units.ToImmutable();
    }

    /// <summary>The units of a schedule: of what is there only.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="lags">Lags between those present.</param>
    /// <param name="firm">Longest waits that may be overrun tie as well.</param>
    public static ImmutableArray<ImmutableArray<int>> Present(EngineSchedule schedule, IEnumerable<Lag> lags, bool firm = false)
        => [.. Of(schedule.Starts.Length, lags, firm).Select(u => u.Where(a => schedule.Starts[a] >= 0).ToImmutableArray()).Where(u => !u.IsEmpty)];

    /// <summary>For each activity the number of its unit.</summary>
    /// <param name="count">How many activities.</param>
    /// <param name="lags">Lags between them.</param>
    /// <param name="firm">Longest waits that may be overrun tie as well.</param>
    public static int[] Numbers(int count, IEnumerable<Lag> lags, bool firm = false)
    {
        int[] unit = new int[count];
        foreach ((int u, ImmutableArray<int> members) in Of(count, lags, firm).Index())
        {
            foreach (int a in members)
            {
                unit[a] = u;
            }
        }

        return unit;
    }

    private void Visit(int a)
    {
        _number[a] = _low[a] = _next++;
        _open.Push(a);
        _isOpen[a] = true;
        foreach (int b in _after[a])
        {
            if (_number[b] == 0)
            {
                Visit(b);
                _low[a] = Math.Min(_low[a], _low[b]);
            }
            else if (_isOpen[b])
            {
                _low[a] = Math.Min(_low[a], _number[b]);
            }
        }

        if (_low[a] == _number[a])
        {
            List<int> unit = [];
            int b;
            do
            {
                b = _open.Pop();
                _isOpen[b] = false;
                unit.Add(b);
            }
            while (b != a);
            _units.Add([.. unit.Order()]);
        }
    }
}
