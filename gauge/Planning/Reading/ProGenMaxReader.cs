using System.Globalization;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Gauge.Planning.Reading;

/// <summary>ProGen/max files .sch: lags from start to start in square brackets; a negative one is a longest wait written backwards.</summary>
internal static class ProGenMaxReader
{
    public static SchedulingProblem Read(string name, string text)
    {
        string[] lines = [.. text.ReplaceLineEndings("\n").Split('\n').Where(l => !string.IsNullOrWhiteSpace(l))];
        int[] head = Numbers(name, lines, 0);
        int n = head[0] + 2;
        int resources = head.Length > 1 ? head[1] : throw new InvalidDataException($"{name}: the first line tells activities and resources.");
        if (lines.Length < 2 + (2 * n))
        {
            throw new InvalidDataException($"{name}: {head[0]} activities need {2 + (2 * n)} lines, found {lines.Length}.");
        }

        List<Lag> lags = [];
        int[] reach = new int[n];
        for (int a = 0; a < n; a++)
        {
            int[] cells = Numbers(name, lines, 1 + a);
            int count = cells.Length > 2 ? cells[2] : -1;
            if (cells[0] != a || cells.Length != 3 + (2 * count))
            {
                throw new InvalidDataException($"{name}, activity {a}: expected its number, modes, number of successors, the successors and as many lags.");
            }

            for (int s = 0; s < count; s++)
            {
                int to = cells[3 + s];
                int lag = cells[3 + count + s];
                if (to < 0 || to >= n)
                {
                    throw new InvalidDataException($"{name}, activity {a}: there is no activity {to}.");
                }

                lags.Add(Lag.StartToStart(a, to, lag));
                reach[a] = Math.Max(reach[a], lag);
            }
        }

        Activity[] activities = new Activity[n];
        for (int a = 0; a < n; a++)
        {
            int[] cells = Numbers(name, lines, 1 + n + a);
            if (cells.Length != 3 + resources || cells[0] != a)
            {
                throw new InvalidDataException($"{name}, activity {a}: expected its number, mode, duration and {resources} amounts.");
            }

            Demand[] demands = [.. cells.Skip(3).Select((amount, r) => new Demand(r, amount)).Where(d => d.Amount > 0)];
            // Everything is measured from the start of the source, also the longest waits.
            activities[a] = new Activity("activity " + a.ToString(CultureInfo.InvariantCulture), [new Mode(cells[2], [.. demands])]) { FixedStart = a == 0 ? 0 : null };
            reach[a] = Math.Max(reach[a], cells[2]);
        }

        int[] capacities = Numbers(name, lines, 1 + (2 * n));
        if (capacities.Length < resources)
        {
            throw new InvalidDataException($"{name}: expected {resources} capacities, found {capacities.Length}.");
        }

        return new SchedulingProblem
        {
            Name = name,
            Horizon = reach.Sum(),
            Activities = [.. activities],
            Lags = [.. lags],
            Resources = [.. capacities.Take(resources).Select((c, i) => new Resource("R" + (i + 1).ToString(CultureInfo.InvariantCulture), c))],
            // The sets measure the start of the sink, which no lag need place after every end.
            Goals = [new Goal("makespan", "steps", [new Term(TermKind.Start, n - 1, 1)])],
        };
    }

    private static int[] Numbers(string name, string[] lines, int at)
    {
        string[] cells = lines[at].Split([' ', '\t', '[', ']'], StringSplitOptions.RemoveEmptyEntries);
        return cells.Length > 0
            ? [.. cells.Select(c => int.TryParse(c, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int v) ? v : throw new InvalidDataException($"{name}: \"{c}\" is no whole number."))]
            : throw new InvalidDataException($"{name}: an empty line where numbers are needed.");
    }
}
