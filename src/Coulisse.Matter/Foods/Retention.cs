using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>What cooking leaves of minerals and of vitamins A and C, shares of 1.</summary>
/// <param name="Code">Row of the source.</param>
/// <param name="Calcium">Calcium.</param>
/// <param name="Iron">Iron.</param>
/// <param name="Potassium">Potassium.</param>
/// <param name="VitaminC">Vitamin C.</param>
/// <param name="VitaminA">Vitamin A, as retinol equivalents.</param>
/// <remarks>USDA retention factors, release 6 (2007): true retention, so of the whole amount and not per 100 g. Protein, fat, carbohydrate, fibre and vitamin D have no factor there.</remarks>
public sealed record Retention(string Code, double Calcium, double Iron, double Potassium, double VitaminC, double VitaminA)
{
    private static readonly Lazy<Dictionary<(string, string), Retention>> Table = new(() =>
    {
        ReferenceTable t = ReferenceTable.Load("foods/retention.tsv");
        double N(string[] r, string column) => ReferenceTable.Number(r[t.Column(column)])!.Value / 100;
        return t.Rows.ToDictionary(r => (r[0], r[1]), r => new Retention(r[2], N(r, "calcium"), N(r, "iron"), N(r, "potassium"), N(r, "vitc"), N(r, "vita")));
    });

    /// <summary>Factors of a class of food for a way of cooking; null when the source has none.</summary>
    /// <param name="foodClass">Class of the food.</param>
    /// <param name="way">"baked", "fried", "steamed", "simmered" (its water or juices are kept) or "drained".</param>
    public static Retention? Find(string foodClass, string way) => Table.Value.GetValueOrDefault((foodClass, way));
}
