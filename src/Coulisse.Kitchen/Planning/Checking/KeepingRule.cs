using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Nothing stands longer than its card lets it keep: batches until they are eaten, twins until they come in.</summary>
/// <remarks>Keeping of quality ("softens within half an hour") is sought, not demanded, and is no fault here.</remarks>
internal static class KeepingRule
{
    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        LocalDateTime eaten = plan.SlotEnd;
        foreach (CardStep[] steps in CardStep.ByComponent(occasion, plan).Where(s => s.Length > 0))
        {
            CardStep last = steps.LastOrDefault(s => !OrderRule.Beside(s.Step)) ?? steps[^1];
            foreach (PlannedTask made in last.Whole.Where(t => t.End <= eaten))
            {
                foreach (PlanFault fault in Over(steps[0].Component, made.End, eaten, [made.Id], made.Id, ""))
                {
                    yield return fault;
                }
            }
        }

        foreach (Twin twin in plan.Twins)
        {
            Component? component = occasion.Dishes.Select(d => CardStep.Find(d.Dish, twin.Component)).FirstOrDefault(c => c is not null);
            if (component is not null)
            {
                string where = twin.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);
                foreach (PlanFault fault in Over(component, twin.ReadyBy, plan.SlotStart.PlusSeconds(twin.CueSecond), [.. twin.MadeBy is { } id ? new[] { id } : []], "twin " + where, "twin-"))
                {
                    yield return fault;
                }
            }
        }
    }

    private static IEnumerable<PlanFault> Over(Component component, LocalDateTime from, LocalDateTime to, System.Collections.Immutable.ImmutableArray<string> tasks, string where, string code)
    {
        Keeping[] limits = [.. component.Keeps.Where(k => !k.Quality)];
        if (limits.Any(k => k.SameDay) && from.Date != to.Date)
        {
            yield return new(code + "not-same-day", tasks, Period.Between(from.Date, to.Date, PeriodUnits.Days).Days, "days", $"{component.Name} must be served the day it is made; it is made on {from.Date.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}.", where);
        }
        else if (limits.Where(k => !k.SameDay).Min(k => k.Hours) is { } hours && Overlap.Between(from, to) - (60 * hours) is > 1e-6 and var over)
        {
            yield return new(code + "kept-too-long", tasks, over, "min", $"{component.Name} stands longer than its card lets it keep.", where);
        }
    }
}
