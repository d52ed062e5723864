using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety.Rules;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Safety;

/// <summary>Lays the rules over a dish.</summary>
/// <remarks>One file a rule. What no rule finds is not thereby safe.</remarks>
public static class SafetyReview
{
    private static readonly ImmutableArray<Func<WeighedDish, PracticeCode, bool, IEnumerable<Finding>>> Rules =
    [
        HotHoldingRule.Judge, ColdHoldingRule.Judge, ReheatingRule.Judge, LowTemperatureRule.Judge, RawEggRule.Judge, EggInBathRule.Judge, RawFishRule.Judge, ShellfishRule.Judge, SealedFishRule.Judge, RiceRule.Judge, OilRule.Judge, SealedRule.Judge, OldestPartRule.Judge,
        CoolingStagesRule.Judge, CoreEquivalentRule.Judge, SproutRule.Judge, AmbientJarRule.Judge, RawMilkRule.Judge, RawMeatRule.Judge, RoomKeptRule.Judge, ChilledLifeRule.Judge, GuestsAtRiskRule.Judge, BagInWaterRule.Judge, OpenedRule.Judge, ProbeRule.Judge,
    ];

    /// <summary>What is judged, for the foot of every verdict.</summary>
    public const string Judged = "core limits in baths (from the fridge and from frozen) and between bounds in ovens, bags that float or overlap, probes in the wrong place, hot and cold holding, reheating, low-temperature baths, raw egg and egg in bags, raw fish and bivalves, rice, vegetables under oil, sealed packs, oldest part, cooling stages, core equivalents of poultry and minced meat, sprouts, closed jars, acid and water activity, days in the cold, raw milk and meat, roe and oysters once opened, guests at risk";

    /// <summary>Findings, gravest first, with the control points that go with them.</summary>
    /// <param name="dish">The dish.</param>
    /// <param name="code">Code of practice: au, nz, uk, eu, us.</param>
    /// <param name="vulnerableGuests">Pregnant, very young, old or ill guests eat it: raw egg, fish and bivalves are then a stop.</param>
    /// <exception cref="ArgumentException">Another code.</exception>
    public static Findings Review(WeighedDish dish, string code, bool vulnerableGuests = false)
    {
        ArgumentNullException.ThrowIfNull(dish);
        PracticeCode practice = PracticeCode.Find(code) ?? throw new ArgumentException($"\"{code}\" is no code of practice known here; use au, nz, uk, eu or us.", nameof(code));
        ImmutableArray<CoreHeld> judged = [.. dish.Components.SelectMany(c => CoreHeldRule.Judge(c))];
        return new Findings(
            code,
            [.. judged.Select(j => j.Finding).OfType<Finding>().Concat(Rules.SelectMany(rule => rule(dish, practice, vulnerableGuests))).OrderByDescending(f => f.Severity).ThenBy(f => f.Line).Select(Printed)],
            [.. judged.Select(j => j.ControlPoint).Concat(ControlPoints.Draft(dish, practice)).OrderBy(p => p.Line)])
        {
            Again = [.. judged.Select(j => j.Again).OfType<JudgedAgain>()],
        };
    }

    // Figures below zero as the house prints them, on papers and terminal alike.
    private static Finding Printed(Finding f) => f with { What = TrueMinus.In(f.What), Value = TrueMinus.In(f.Value), Limit = TrueMinus.In(f.Limit), Margin = TrueMinus.In(f.Margin), Remedy = TrueMinus.In(f.Remedy) };
}
