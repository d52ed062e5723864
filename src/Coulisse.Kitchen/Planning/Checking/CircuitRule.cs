using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>At no start of a task does a circuit carry more than its limit, with all kit in use at rated power.</summary>
internal static class CircuitRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (SheetCircuit circuit in occasion.Circuits)
        {
            HashSet<string> reported = [];
            foreach (PlannedTask at in plan.Tasks.Where(t => t.Kit.Any(circuit.Kit.Contains)))
            {
                PlannedTask[] now = [.. plan.Tasks.Where(t => t.Start <= at.Start && at.Start < t.End && t.Kit.Any(circuit.Kit.Contains))];
                double load = now.SelectMany(t => t.Kit).Distinct().Where(k => circuit.Kit.Contains(k))
                    .Sum(k => occasion.Kit.FirstOrDefault(x => x.Code == k)?.Kilowatts ?? 0);
                if (load > circuit.LimitKilowatts + 1e-9 && reported.Add(string.Join(' ', now.Select(t => t.Id))))
                {
                    yield return new("circuit-overloaded", [.. now.Select(t => t.Id)], load - circuit.LimitKilowatts, "kW", $"{circuit.Code} would carry more than its limit.", circuit.Code);
                }
            }
        }
    }
}
