using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Kit is not held beyond its number; kit with one set point holds one; a set point lies in its range.</summary>
/// <remarks>Kit with several shelves is counted by <see cref="ShelfRule"/>.</remarks>
internal static class KitRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (IGrouping<string, (string Code, PlannedTask Task)> held in plan.Tasks.SelectMany(t => t.Kit.Select(k => (k, t))).GroupBy(x => x.k))
        {
            PlannedTask[] tasks = [.. held.Select(h => h.Task)];
            SheetKit? kit = occasion.Kit.FirstOrDefault(k => k.Code == held.Key);
            if (kit is null)
            {
                yield return new("kit-unknown", [.. tasks.Select(t => t.Id)], tasks.Length, "tasks", $"{held.Key} is not in the kit of the occasion.", held.Key);
                continue;
            }

            foreach (PlannedTask a in tasks)
            {
                double off = a.Celsius is { } c ? Math.Max(c - (kit.CelsiusMax ?? c), (kit.CelsiusMin ?? c) - c) : 0;
                if (off > 0 && kit.CelsiusMin != kit.CelsiusMax)
                {
                    yield return new("set-point-out-of-range", [a.Id], off, "K", $"{a.Id} asks of {kit.Code} a temperature it does not reach.", kit.Code);
                }

                // Counted at each start: the most that are held at once is always reached at one.
                PlannedTask[] now = [.. tasks.Where(b => b.Within is null && b.Start <= a.Start && a.Start < b.End)];
                if (a.Within is null && kit.Shelves is null or 1 && now.Length > kit.Number && now.MaxBy(b => b.Start)!.Start == a.Start && now.Last(b => b.Start == a.Start) == a)
                {
                    yield return new("kit-twice", [.. now.Select(b => b.Id)], now.Length - kit.Number, "pieces", $"{kit.Code} is held by {string.Join(", ", now.Select(b => b.Id))} at once.", kit.Code);
                }

                foreach (PlannedTask b in tasks.Where(b => string.CompareOrdinal(a.Id, b.Id) < 0 && kit.Number == 1 && a.Celsius is { } x && b.Celsius is { } y && Math.Abs(x - y) > 0.05 && !Overlap.Related(a, b)))
                {
                    double both = Overlap.Minutes(a.Start, a.End, b.Start, b.End);
                    if (both > 0)
                    {
                        yield return new("two-set-points", [a.Id, b.Id], both, "min", $"{kit.Code} cannot hold the set points of {a.Id} and {b.Id} at once.", kit.Code);
                    }
                }
            }
        }
    }
}
