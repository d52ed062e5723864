using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Checks a plan against its occasion, rule by rule, knowing nothing of how the plan was made.</summary>
public static class PlanValidator
{
    /// <summary>Every fault of the rules listed in docs/science/validator.md; that page also says what is not yet checked.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="batches">One for each dish, in order: with them what waits in the cold is counted too.</param>
    public static ImmutableArray<PlanFault> Check(Occasion occasion, Plan plan, ImmutableArray<Batch> batches = default) =>
    [
        .. PeopleRule.Check(occasion, plan),
        .. KitRule.Check(occasion, plan),
        .. ShelfRule.Check(occasion, plan),
        .. CircuitRule.Check(occasion, plan),
        .. MomentRule.Check(plan),
        .. RunSheetRule.Check(plan),
        .. SlotRule.Check(occasion, plan),
        .. FormRule.Check(occasion, plan),
        .. SkillRule.Check(occasion, plan),
        .. PlaceRule.Check(occasion, plan),
        .. CarryRule.Check(occasion, plan),
        .. WindowRule.Check(occasion, plan),
        .. ChangeRule.Check(occasion, plan),
        .. CoverRule.Check(occasion, plan),
        .. OrderRule.Check(occasion, plan),
        .. WaitRule.Check(occasion, plan),
        .. KeepingRule.Check(occasion, plan),
        .. WashRule.Check(occasion, plan),
        .. PanRule.Check(occasion, plan),
        .. EditRule.Check(plan),
        .. batches.IsDefaultOrEmpty ? [] : ColdRule.Check(occasion, batches, plan),
    ];
}
