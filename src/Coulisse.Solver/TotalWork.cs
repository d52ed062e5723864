using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver;

/// <summary>Work against capacity over resources that stand in for one another: all shelves of all ovens together hold no more than they hold.</summary>
internal static class TotalWork
{
    /// <summary>For each group of resources that tasks may choose between: its capacity in all, and the least work that must be done on it.</summary>
    public static IEnumerable<(long Capacity, long Work)> Of(SchedulingProblem p)
    {
        int[] group = [.. Enumerable.Range(0, p.Resources.Length)];
        int Root(int r)
        {
            while (group[r] != r)
            {
                r = group[r];
            }

            return r;
        }

        foreach (Activity a in p.Activities.Where(a => a.Modes.Length > 1))
        {
            int[] used = [.. a.Modes.SelectMany(m => m.Demands).Select(d => d.Resource).Distinct()];
            foreach (int r in used.Skip(1))
            {
                group[Root(r)] = Root(used[0]);
            }
        }

        foreach (IGrouping<int, int> some in Enumerable.Range(0, p.Resources.Length).GroupBy(Root).Where(g => g.Count() > 1))
        {
            HashSet<int> inside = [.. some];
            long work = p.Activities.Where(a => !a.Optional).Sum(a => a.Modes.Min(m => (long)m.Duration * m.Demands.Where(d => inside.Contains(d.Resource)).Sum(d => d.Amount)));
            yield return (some.Sum(r => (long)p.Resources[r].Capacity), work);
        }
    }
}
