using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Gauge.Planning;

/// <summary>Checks a schedule against its problem step by step, without the engine's model: capacities, stocks, lags.</summary>
internal static class ScheduleCheck
{
    /// <summary>What is wrong, or null.</summary>
    public static string? Fault(SchedulingProblem p, EngineSchedule s)
    {
        int n = p.Activities.Length;
        int[] end = new int[n];
        for (int a = 0; a < n; a++)
        {
            if (s.Starts[a] < 0)
            {
                return $"{p.Activities[a].Name} is left out.";
            }

            end[a] = s.Starts[a] + p.Activities[a].Modes[s.Modes[a]].Duration;
            if (p.Activities[a].FixedStart is { } at && at != s.Starts[a])
            {
                return $"{p.Activities[a].Name} is moved from its fixed start.";
            }
        }

        foreach (Lag lag in p.Lags)
        {
            int apart = (lag.ToEdge == Edge.Start ? s.Starts[lag.To] : end[lag.To]) - (lag.FromEdge == Edge.Start ? s.Starts[lag.From] : end[lag.From]);
            if (apart < lag.Least || (!lag.Soft && apart > lag.Most))
            {
                return $"{p.Activities[lag.To].Name} is {apart} after {p.Activities[lag.From].Name}, which breaks their lag.";
            }
        }

        for (int r = 0; r < p.Resources.Length; r++)
        {
            int[] held = new int[end.Max() + 1];
            for (int a = 0; a < n; a++)
            {
                int amount = p.Activities[a].Modes[s.Modes[a]].Demands.Where(d => d.Resource == r).Sum(d => d.Amount);
                for (int t = s.Starts[a]; t < end[a]; t++)
                {
                    held[t] += amount;
                    if (held[t] > p.Resources[r].Capacity)
                    {
                        return $"{p.Resources[r].Name} is held beyond its capacity at {t}.";
                    }
                }
            }
        }

        for (int k = 0; k < p.Stocks.Length; k++)
        {
            int used = Enumerable.Range(0, n).Sum(a => p.Activities[a].Modes[s.Modes[a]].Uses.Where(u => u.Resource == k).Sum(u => u.Amount));
            if (used > p.Stocks[k].Amount)
            {
                return $"{p.Stocks[k].Name} is used beyond what there is.";
            }
        }

        return null;
    }
}
