using System.Globalization;

namespace Coulisse.Gauge.Planning;

/// <summary>Sums up what one way of solving did on a set.</summary>
internal sealed class Tally(string name)
{
    private readonly List<double> _above = [];
    private readonly List<double> _gap = [];
    private int _count;
    private int _settled;
    private int _settledInTwo;
    private int _atBest;
    private int _nothing;
    private double _seconds;

    public const string Head = "| way | instances | settled in 2 s | settled | at or below best known | mean above, % | mean own gap of the rest, % | nothing | seconds | bugs |\n|---|---|---|---|---|---|---|---|---|---|";

    public List<string> Bugs { get; } = [];

    public void Add(Solved s, Known? known)
    {
        _count++;
        _seconds += s.Seconds;
        _settled += s.Settled ? 1 : 0;
        _settledInTwo += s.Settled && s.Seconds <= 2 ? 1 : 0;
        _nothing += s.What == "nothing" ? 1 : 0;
        if (s.What == "infeasible" && known is { Upper: not null })
        {
            Bugs.Add($"{s.Instance}: called infeasible, a schedule of {known.Upper} is known.");
        }

        if (s.What == "schedule")
        {
            Schedule(s, known);
        }
    }

    public string Row() => string.Create(CultureInfo.InvariantCulture,
        $"| {name} | {_count} | {_settledInTwo} | {_settled} | {_atBest} | {(_above.Count > 0 ? 100 * _above.Average() : 0):0.00} | {(_gap.Count > 0 ? 100 * _gap.Average() : 0):0.0} | {_nothing} | {_seconds:0} | {Bugs.Count} |");

    private void Schedule(Solved s, Known? known)
    {
        if (s.Fault.Length > 0)
        {
            Bugs.Add($"{s.Instance}: {s.Fault}");
        }

        if (known?.Status == "infeasible" || (known?.Lower is { } low && s.Value < low))
        {
            Bugs.Add($"{s.Instance}: {s.Value} is better than the proven bound {known!.Lower}.");
        }

        if (known?.Upper is { } up)
        {
            _above.Add(((double)s.Value / up) - 1);
            _atBest += s.Value <= up ? 1 : 0;
            if (s.Bound > up)
            {
                Bugs.Add($"{s.Instance}: bound {s.Bound} is above the known value {up}.");
            }
        }

        if (!s.Settled)
        {
            _gap.Add(s.Value > 0 ? (double)(s.Value - Math.Max(0, s.Bound)) / s.Value : 0);
        }
    }
}
