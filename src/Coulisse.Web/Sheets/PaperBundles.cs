using Coulisse.Flows;
using Coulisse.Views.Papers;
using Coulisse.Web.House;
using NodaTime;

namespace Coulisse.Web.Sheets;

/// <summary>What the papers of a planned occasion are printed from: with order and cost when this kitchen keeps prices.</summary>
internal sealed class PaperBundles(KitchenBook book, StepWords words, TimeProvider clock)
{
    /// <summary>The bundle as of now.</summary>
    /// <param name="occasion">Key of the kept occasion.</param>
    /// <param name="planned">It, planned.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<PaperBundle> OfAsync(string occasion, PlannedOccasion planned, CancellationToken cancel)
        => PrintFlow.Bundle(planned, LocalDateTime.FromDateTime(clock.GetLocalNow().DateTime), new PrintWish { Prices = await book.PricesAsync(cancel, planned.Occasion.Sheet.Currency), Terms = await book.TermsAsync(planned.Occasion.Site, cancel), Translations = await words.OfOccasionAsync(occasion, planned.Occasion, cancel) });
}
