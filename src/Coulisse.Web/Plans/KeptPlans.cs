using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Web.House;

namespace Coulisse.Web.Plans;

/// <summary>A kept plan together with everything it was made from, read again: what papers and pages of an occasion are drawn from.</summary>
internal sealed class KeptPlans(KitchenStore store, OccasionShelf shelf, KitchenBook book)
{
    /// <summary>The plan with its occasion, batches and findings; null when there is no such plan or its occasion no longer reads.</summary>
    public async Task<(KeptPlan Kept, PlannedOccasion Planned)?> OpenAsync(string id, CancellationToken cancel)
    {
        if (await store.PlanAsync(id, cancel) is not { } kept
            || await shelf.OpenAsync(kept, cancel) is not Parsed<KeptOccasion>.Ok(var occasion)
            || OccasionBatches.Make(occasion.Occasion) is not Parsed<System.Collections.Immutable.ImmutableArray<Batch>>.Ok(var batches))
        {
            return null;
        }

        string code = await book.CodeAsync(cancel);
        Plan plan = TravelJson.Read<Plan>(kept.Json);
        return (kept, PlanFlow.Of(occasion.Occasion, batches, plan, code));
    }
}
