using Coulisse.Formats.Out;
using Coulisse.Views.Papers;

namespace Coulisse.Flows;

/// <summary>Order, cost and records of a bundle as one workbook, for whoever hands it out.</summary>
public static class KitchenTables
{
    /// <summary>The workbook; order and cost are in it when there are prices.</summary>
    public static Task<byte[]> XlsxAsync(PaperBundle bundle, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(bundle);
        return XlsxFile.WriteAsync(
        [
            .. bundle.Order is { } order ? KitchenGrids.Of(order) : [],
            .. bundle.Costing is { } costing ? KitchenGrids.Of(costing) : [],
            KitchenGrids.Record(bundle.Batches.Select(b => (bundle.TitleOf(b), b))),
        ], cancel);
    }
}
