namespace Coulisse.Kitchen.Planning.Risk;

/// <summary>Single runs of a plan under chance. A run has the same draws whatever buffer is tried, so that differences are the buffer's own.</summary>
internal sealed class Runs
{
    /// <summary>Quantiles are read from a table of this many steps: ten thousand runs of a hundred tasks ask for a million.</summary>
    private const int Steps = 1024;

    private readonly Dispatch _dispatch;
    private readonly double[][] _quantiles;
    private readonly double[] _planned;
    private readonly double[] _start;
    private readonly double[] _end;
    private readonly int[] _because;
    private readonly ulong _seed;
    private int _last = -1;

    public Runs(Dispatch dispatch, Spread[] spreads, int seed)
    {
        _dispatch = dispatch;
        int n = dispatch.Tasks.Length;
        (_start, _end, _because) = (new double[n], new double[n], new int[n]);
        _planned = [.. dispatch.Tasks.Select(t => Checking.Overlap.Between(t.Start, t.End))];
        _quantiles = [.. spreads.Select(s => Enumerable.Range(0, Steps + 1).Select(i => s.Quantile((double)i / Steps)).ToArray())];
        _seed = (ulong)(uint)seed << 32;
    }

    public string Id(int task) => _dispatch.Tasks[task].Id;

    /// <summary>Minutes by which the worst of what must be ready is late; 0 or less when all is in time.</summary>
    /// <param name="run">Number of the run.</param>
    /// <param name="buffered">Task before which a buffer stands, or -1.</param>
    /// <param name="buffer">Its minutes.</param>
    public double Run(int run, int buffered, double buffer)
    {
        double worst = double.NegativeInfinity;
        // Mixed twice, so that two runs do not walk the same counter one step apart.
        ulong state = Mixed(Mixed(unchecked(_seed + (ulong)(uint)run)));
        for (int i = 0; i < _start.Length; i++)
        {
            double begin = _dispatch.Release[i];
            int because = -1;
            foreach ((int before, bool fromStart, double wait) in _dispatch.Waits[i])
            {
                double ready = (fromStart ? _start[before] : _end[before]) + wait - (i == buffered ? buffer : 0);
                if (ready > begin + 1e-9)
                {
                    (begin, because) = (ready, before);
                }
            }

            _start[i] = begin;
            _end[i] = begin + Drawn(i, ref state);
            _because[i] = because;
            if (_end[i] - _dispatch.Due[i] > worst)
            {
                worst = _end[i] - _dispatch.Due[i];
                _last = i;
            }
        }

        return double.IsNegativeInfinity(worst) ? 0 : worst < 1e-9 ? Math.Min(0, worst) : worst;
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
        double[] table = _quantiles[task];
        return table[below] + ((at - below) * (table[below + 1] - table[below]));
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
