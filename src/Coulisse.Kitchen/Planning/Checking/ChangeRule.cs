using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Between two set points kit has time to get from one to the other.</summary>
/// <remarks>
/// Rates that the sheet states as measured are taken as they are. Else the bound is what no kit beats, so that every fault is one in any kitchen: a bath by its own power and litres without any loss;
/// an oven or dehydrator 20 K a minute up, and 10 K a minute down with the door open (assumed, common practice, no source). A bath going down may be refilled and is not judged.
/// </remarks>
internal static class ChangeRule
{
    private const double WaterKilojoulesPerLitreKelvin = 4.18;
    private const double OvenUp = 20;
    private const double OvenDown = 10;

    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (SheetKit kit in occasion.Kit.Where(k => k.Number == 1 && k.Type is "oven" or "bath" or "dehydrator"))
        {
            PlannedTask[] uses = [.. plan.Tasks.Where(t => t.Celsius is not null && t.Kind is not TaskKind.Preheat and not TaskKind.Moment && t.Kit.Contains(kit.Code)).OrderBy(t => t.Start)];
            for (int i = 1; i < uses.Length; i++)
            {
                // The use that ends last of those begun before; overlaps are told by another rule.
                PlannedTask before = uses[..i].MaxBy(t => t.End)!;
                double least = Least(kit, uses[i].Celsius!.Value - before.Celsius!.Value);
                double gap = Overlap.Between(before.End, uses[i].Start);
                if (before.End <= uses[i].Start && gap < least - 0.01)
                {
                    yield return new("set-point-change-too-short", [before.Id, uses[i].Id], least - gap, "min", $"{kit.Code} cannot be at the set point of {uses[i].Id} so soon after {before.Id}.", kit.Code);
                }
            }
        }
    }

    private static double Least(SheetKit kit, double kelvin) => kit.Type switch
    {
        // what this kitchen has measured is known better than any bound
        not "bath" when kelvin > 0 && kit.RisePerMinute is { } up => kelvin / up,
        not "bath" when kelvin < 0 && kit.FallPerMinute is { } down => -kelvin / down,
        "bath" when kelvin > 0.05 && kit.RisePerMinute is { } up => kelvin / up,
        "bath" when kelvin > 0.05 && kit is { Kilowatts: > 0, Litres: > 0 } => kelvin * kit.Litres.Value * WaterKilojoulesPerLitreKelvin / kit.Kilowatts.Value / 60,
        "bath" => 0,
        _ => kelvin > 0 ? kelvin / OvenUp : -kelvin / OvenDown,
    };
}
