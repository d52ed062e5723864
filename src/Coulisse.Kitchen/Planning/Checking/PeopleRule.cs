using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Nobody is in two places, works outside their hours, or through a meal.</summary>
internal static class PeopleRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (IGrouping<string, (string Name, PlannedTask Task)> hands in plan.Tasks.SelectMany(t => t.People.Select(p => (p, t))).GroupBy(x => x.p))
        {
            PlannedTask[] tasks = [.. hands.Select(h => h.Task)];
            Person? person = occasion.People.FirstOrDefault(p => p.Name == hands.Key);
            if (person is null)
            {
                yield return new("person-unknown", [.. tasks.Select(t => t.Id)], tasks.Length, "tasks", $"{hands.Key} is not among the hands of the occasion.", hands.Key);
                continue;
            }

            for (int i = 0; i < tasks.Length; i++)
            {
                PlannedTask a = tasks[i];
                foreach (PlannedTask b in tasks.Skip(i + 1).Where(b => !Overlap.Related(a, b)))
                {
                    double both = Overlap.Minutes(a.Start, a.End, b.Start, b.End);
                    if (both > 0)
                    {
                        yield return new("person-twice", [a.Id, b.Id], both, "min", $"{person.Name} is booked on {a.Id} and {b.Id} at once.", person.Name);
                    }
                }

                double outside = Overlap.Between(a.Start, a.End) - person.Hours.Sum(h => Overlap.Minutes(a.Start, a.End, h.Start, h.End));
                if (outside > 1e-6)
                {
                    yield return new("person-outside-hours", [a.Id], outside, "min", $"{person.Name} is not there for all of {a.Id}.", person.Name);
                }

                foreach (SheetWindow meal in occasion.Meals.Where(_ => a.Kind != TaskKind.Meal))
                {
                    double eaten = Overlap.Minutes(a.Start, a.End, meal.Start, meal.End);
                    if (eaten > 0)
                    {
                        yield return new("person-at-meal", [a.Id], eaten, "min", $"{a.Id} falls into the meal of {person.Name}.", person.Name);
                    }
                }
            }
        }
    }
}
