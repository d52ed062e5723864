using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Gauge.Planning.Reading;

/// <summary>PSPLIB files .sm and .mm (Kolisch and Sprecher 1996): blocks with a heading, jobs from 1, first and last are dummies.</summary>
internal static class ProGenReader
{
    public static SchedulingProblem Read(string name, string text)
    {
        string[] lines = [.. text.ReplaceLineEndings("\n").Split('\n')];
        int jobs = (int)Headed(name, lines, "jobs (incl. supersource/sink )");
        int renewable = (int)Headed(name, lines, "- renewable");
        int stocks = (int)Headed(name, lines, "- nonrenewable");
        if (jobs < 2)
        {
            throw new InvalidDataException($"{name}: a file has at least its two dummy jobs.");
        }

        int[][] successors = new int[jobs][];
        int[] modes = new int[jobs];
        int at = Block(name, lines, "PRECEDENCE RELATIONS") + 2;
        for (int j = 0; j < jobs; j++)
        {
            int[] cells = Numbers(name, lines, at + j);
            if (cells.Length < 3 || cells[0] != j + 1 || cells.Length != 3 + cells[2])
            {
                throw new InvalidDataException($"{name}, line {at + j + 1}: expected job {j + 1}, its modes, its number of successors and as many successors.");
            }

            (modes[j], successors[j]) = (cells[1], cells[3..]);
        }

        Activity[] activities = new Activity[jobs];
        at = Block(name, lines, "REQUESTS/DURATIONS") + 3;
        for (int j = 0; j < jobs; j++)
        {
            List<Mode> read = [];
            for (int m = 0; m < modes[j]; m++, at++)
            {
                int[] cells = Numbers(name, lines, at);
                int lead = m == 0 ? 3 : 2;
                if (cells.Length != lead + renewable + stocks)
                {
                    throw new InvalidDataException($"{name}, line {at + 1}: expected {lead + renewable + stocks} numbers, found {cells.Length}.");
                }

                read.Add(new Mode(cells[lead - 1], [.. Demands(cells.AsSpan(lead, renewable))]) { Uses = [.. Demands(cells.AsSpan(lead + renewable, stocks))] });
            }

            activities[j] = new Activity("job " + (j + 1).ToString(CultureInfo.InvariantCulture), [.. read]);
        }

        int[] capacities = Numbers(name, lines, Block(name, lines, "RESOURCEAVAILABILITIES") + 2);
        if (capacities.Length != renewable + stocks)
        {
            throw new InvalidDataException($"{name}: expected {renewable + stocks} capacities, found {capacities.Length}.");
        }

        return new SchedulingProblem
        {
            Name = name,
            Horizon = activities.Sum(a => a.Modes.Max(m => m.Duration)),
            Activities = [.. activities],
            Lags = [.. successors.SelectMany((s, j) => s.Select(to => Lag.After(j, Checked(name, to, jobs))))],
            Resources = [.. capacities.Take(renewable).Select((c, i) => new Resource("R" + (i + 1).ToString(CultureInfo.InvariantCulture), c))],
            Stocks = [.. capacities.Skip(renewable).Select((c, i) => new Stock("N" + (i + 1).ToString(CultureInfo.InvariantCulture), c))],
        };
    }

    private static int Checked(string name, int job, int jobs)
        => job >= 1 && job <= jobs ? job - 1 : throw new InvalidDataException($"{name}: there is no job {job} to come after.");

    private static ImmutableArray<Demand> Demands(ReadOnlySpan<int> amounts)
    {
        List<Demand> demands = [];
        for (int r = 0; r < amounts.Length; r++)
        {
            if (amounts[r] > 0)
            {
                demands.Add(new Demand(r, amounts[r]));
            }
        }

        return [.. demands];
    }

    private static double Headed(string name, string[] lines, string heading)
    {
        string? line = lines.FirstOrDefault(l => l.TrimStart().StartsWith(heading, StringComparison.Ordinal));
        string? number = line?.Split(':') is [_, var after, ..] ? after.Split(' ', StringSplitOptions.RemoveEmptyEntries).FirstOrDefault() : null;
        return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : throw new InvalidDataException($"{name}: no number beside \"{heading}\".");
    }

    private static int Block(string name, string[] lines, string heading)
    {
        int at = Array.FindIndex(lines, l => l.StartsWith(heading, StringComparison.Ordinal));
        return at >= 0 ? at : throw new InvalidDataException($"{name}: there is no block \"{heading}\".");
    }

    private static int[] Numbers(string name, string[] lines, int at)
    {
        if (at >= lines.Length)
        {
            throw new InvalidDataException($"{name}: ends before line {at + 1}, which is still needed.");
        }

        string[] cells = lines[at].Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        return [.. cells.Select(c => int.TryParse(c, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int v) ? v : throw new InvalidDataException($"{name}, line {at + 1}: \"{c}\" is no whole number."))];
    }
}
