namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>Single runs of a plan under chance. A run has the same draws whatever buffer is tried, so that differences are the buffer's own.</summary>
internal sealed class Runs
{
    /// <summary>Quantiles are read from a table of this many steps: ten thousand runs of a hundred tasks ask for a million.</summary>
    private const int Steps = 1024;

    private readonly Dispatch _dispatch;
    private readonly double[] _quantiles;
    private readonly int[] _first;
    private readonly int[] _before;
    private readonly double[] _wait;
    private readonly int[][] _after;
    private readonly double[] _planned;
    private readonly double[] _start;
    private readonly double[] _end;
    private readonly double[] _drawn;
    private readonly int[] _because;
    private readonly double[] _startThen;
    private readonly double[] _endThen;
    private readonly bool[] _asked;
    private readonly ulong _seed;
    private int _over;
    private int _last = -1;

    public Runs(Dispatch dispatch, Spread[] spreads, int seed)
    {
        _dispatch = dispatch;
        int n = dispatch.Tasks.Length;
        (_start, _end, _because, _drawn) = (new double[n], new double[n], new int[n], new double[n]);
        (_startThen, _endThen, _asked) = (new double[n], new double[n], new bool[n]);
        _planned = [.. dispatch.Tasks.Select(t => Checking.Overlap.Between(t.Start, t.End))];
        _quantiles = [.. spreads.SelectMany(s => Enumerable.Range(0, Steps + 1).Select(i => s.Quantile((double)i / Steps)))];
        // All waits in one row: who waits for a start is told by a position below zero.
        _first = new int[n + 1];
        for (int i = 0; i < n; i++)
        {
            _first[i + 1] = _first[i] + dispatch.Waits[i].Length;
        }

        _before = [.. dispatch.Waits.SelectMany(w => w.Select(x => x.Start ? ~x.Before : x.Before))];
        _wait = [.. dispatch.Waits.SelectMany(w => w.Select(x => x.Wait))];
        List<int>[] after = [.. Enumerable.Range(0, n).Select(_ => new List<int>())];
        for (int i = 0; i < n; i++)
        {
            foreach ((int before, _, _) in dispatch.Waits[i])
            {
                after[before].Add(i);
            }
        }

        _after = [.. after.Select(a => a.Distinct().ToArray())];
        _seed = (ulong)(uint)seed << 32;
    }

    public string Id(int task) => _dispatch.Tasks[task].Id;

    /// <summary>Minutes by which the worst of what must be ready is late; 0 or less when all is in time.</summary>
    /// <param name="run">Number of the run.</param>
    public double Run(int run)
    {
        double worst = double.NegativeInfinity;
        // Mixed twice, so that two runs do not walk the same counter one step apart.
        ulong state = Mixed(Mixed(unchecked(_seed + (ulong)(uint)run)));
        _over = 0;
        for (int i = 0; i < _start.Length; i++)
        {
            double begin = _dispatch.Release[i];
            int because = -1;
            for (int w = _first[i]; w < _first[i + 1]; w++)
            {
                int before = _before[w];
                double ready = (before < 0 ? _start[~before] : _end[before]) + _wait[w];
                if (ready > begin + 1e-9)
                {
                    (begin, because) = (ready, before < 0 ? ~before : before);
                }
            }

            _start[i] = begin;
            _drawn[i] = Drawn(i, ref state);
            _end[i] = begin + _drawn[i];
            _because[i] = because;
            double late = _end[i] - _dispatch.Due[i];
            _over += late >= 1e-9 ? 1 : 0;
            if (late > worst)
            {
                worst = late;
                _last = i;
            }
        }

        return double.IsNegativeInfinity(worst) ? 0 : worst < 1e-9 ? Math.Min(0, worst) : worst;
    }

    /// <summary>True when a buffer before a task would have saved the run just made. Only what the buffer moves is reckoned again.</summary>
    /// <param name="buffered">Task before which the buffer stands.</param>
    /// <param name="buffer">Its minutes.</param>
    public bool Saved(int buffered, double buffer)
    {
        Array.Copy(_start, _startThen, _start.Length);
        Array.Copy(_end, _endThen, _end.Length);
        int over = _over;
        int last = buffered;
        _asked[buffered] = true;
        for (int i = buffered; i <= last; i++)
        {
            if (!_asked[i])
            {
                continue;
            }

            _asked[i] = false;
            double begin = _dispatch.Release[i];
            double less = i == buffered ? buffer : 0;
            for (int w = _first[i]; w < _first[i + 1]; w++)
            {
                int before = _before[w];
                begin = Math.Max(begin, (before < 0 ? _startThen[~before] : _endThen[before]) + _wait[w] - less);
            }

            if (_startThen[i] - begin <= 1e-9)
            {
                continue;
            }

            over -= _endThen[i] - _dispatch.Due[i] >= 1e-9 && begin + _drawn[i] - _dispatch.Due[i] < 1e-9 ? 1 : 0;
            (_startThen[i], _endThen[i]) = (begin, begin + _drawn[i]);
            foreach (int next in _after[i])
            {
                _asked[next] = true;
                last = Math.Max(last, next);
            }
        }

        return over == 0;
    }

    /// <summary>Adds the overruns along the chain that made the last run late.</summary>
    public void Blame(double[] share, int[] binding)
    {
        for (int i = _last; i >= 0; i = _because[i])
        {
            share[i] += Math.Max(0, _end[i] - _start[i] - _planned[i]);
            binding[i]++;
        }
    }

    private double Drawn(int task, ref ulong state)
    {
        state = unchecked(state + 0x9E3779B97F4A7C15UL);
        double at = (Mixed(state) >> 11) * (1.0 / (1UL << 53)) * Steps;
        int below = (int)at;
        int cell = (task * (Steps + 1)) + below;
        return _quantiles[cell] + ((at - below) * (_quantiles[cell + 1] - _quantiles[cell]));
    }

    /// <summary>The mixer of SplitMix64 (Steele, Lea, Flood 2014): a counter put through it is a stream of draws, so any run can be drawn alone.</summary>
    private static ulong Mixed(ulong z)
    {
        unchecked
        {
            z += 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
