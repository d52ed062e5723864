using Coulisse.Flows;
using Coulisse.Views.Papers;
using Coulisse.Web.House;
using NodaTime;

namespace Coulisse.Web.Sheets;

/// <summary>What the papers of a planned occasion are printed from: with order and cost when this kitchen keeps prices.</summary>
internal sealed class PaperBundles(KitchenBook book, TimeProvider clock)
{
    /// <summary>The bundle as of now.</summary>
    public async Task<PaperBundle> OfAsync(PlannedOccasion planned, CancellationToken cancel)
        => PrintFlow.Bundle(planned, LocalDateTime.FromDateTime(clock.GetLocalNow().DateTime), new PrintWish { Prices = await book.PricesAsync(cancel, planned.Occasion.Sheet.Currency), Terms = await book.TermsAsync(cancel) });
}
