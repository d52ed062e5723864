using System.Globalization;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Gauge.Planning;

/// <summary>Sums up what one way of solving did on a set.</summary>
internal sealed class Tally(string name)
{
    private readonly List<double> _above = [];
    private readonly List<double> _gap = [];

    public string Name { get; } = name;

    public int Settled { get; private set; }

    public int SettledInTwo { get; private set; }

    public int AtBest { get; private set; }

    public int Nothing { get; private set; }

    public double Seconds { get; private set; }

    public List<string> Bugs { get; } = [];

    public string Add(SchedulingProblem problem, EngineOutcome outcome, Known? known)
    {
        Seconds += outcome.Seconds;
        switch (outcome)
        {
            case EngineInfeasible:
                Settle(outcome);
                if (known is { Upper: not null })
                {
                    Bugs.Add($"{problem.Name}: called infeasible, a schedule of {known.Upper} is known.");
                }

                return "infeasible";
            case EngineSchedule s:
                return Schedule(problem, s, known);
            default:
                Nothing++;
                return "nothing";
        }
    }

    public string Row(int count) => string.Create(CultureInfo.InvariantCulture,
        $"| {Name} | {count} | {SettledInTwo} | {Settled} | {AtBest} | {(_above.Count > 0 ? 100 * _above.Average() : 0):0.00} | {(_gap.Count > 0 ? 100 * _gap.Average() : 0):0.0} | {Nothing} | {Seconds:0} | {Bugs.Count} |");

    private string Schedule(SchedulingProblem problem, EngineSchedule s, Known? known)
    {
        LevelResult level = s.Levels[0];
        if (ScheduleCheck.Fault(problem, s) is { } fault)
        {
            Bugs.Add($"{problem.Name}: {fault}");
        }

        if (known?.Status == "infeasible" || (known?.Lower is { } low && level.Value < low))
        {
            Bugs.Add($"{problem.Name}: {level.Value} is better than the proven bound {known!.Lower}.");
        }

        if (known?.Upper is { } up)
        {
            _above.Add(((double)level.Value / up) - 1);
            AtBest += level.Value <= up ? 1 : 0;
            if (level.Bound > up)
            {
                Bugs.Add($"{problem.Name}: bound {level.Bound} is above the known value {up}.");
            }
        }

        if (s.Proven)
        {
            Settle(s);
            return level.Value.ToString(CultureInfo.InvariantCulture) + " proven";
        }

        _gap.Add(level.Value > 0 ? (double)(level.Value - Math.Max(0, level.Bound)) / level.Value : 0);
        return string.Create(CultureInfo.InvariantCulture, $"{level.Value} (bound {level.Bound})");
    }

    private void Settle(EngineOutcome outcome)
    {
        Settled++;
        SettledInTwo += outcome.Seconds <= 2 ? 1 : 0;
    }
}
