namespace Coulisse.Matter.Foods;

/// <summary>Energy of a composition by the factors of each law. Kilojoules and kilocalories are never turned into one another.</summary>
public static class FoodEnergy
{
    /// <summary>EU and UK, kJ per 100 g. Regulation (EU) 1169/2011 Annex XIV: carbohydrate 17, polyols 10, protein 17, fat 37, alcohol 29, organic acid 13, fibre 8.</summary>
    public static double? EuKilojoules(Composition c) => Sum(c.Carbohydrate - (c.Polyols ?? 0), 17, c.Polyols, 10, c.ProteinEu, 17, c.Fat, 37, c, 29, 13, 8);

    /// <summary>EU and UK, kcal per 100 g. Regulation (EU) 1169/2011 Annex XIV: 4, 2.4, 4, 9, 7, 3, 2.</summary>
    public static double? EuKilocalories(Composition c) => Sum(c.Carbohydrate - (c.Polyols ?? 0), 4, c.Polyols, 2.4, c.ProteinEu, 4, c.Fat, 9, c, 7, 3, 2);

    /// <summary>Australia and New Zealand, kJ per 100 g. Food Standards Code, Schedule 11 (factors from memory); protein by the food's own nitrogen factor; polyols, whose kind is not held, at 14, the largest.</summary>
    public static double? AnzKilojoules(Composition c) => Sum(c.Carbohydrate - (c.Polyols ?? 0), 17, c.Polyols, 14, c.Protein, 17, c.Fat, 37, c, 29, 13, 8);

    /// <summary>United States, kcal per 100 g: 4-4-9 on total carbohydrate, which holds fibre and acids, and 7 for alcohol. 21 CFR 101.9(c)(1)(i)(B) (from memory).</summary>
    public static double? UsKilocalories(Composition c) => (4 * c.ProteinEu) + (4 * TotalCarbohydrate(c)) + (9 * c.Fat) + (7 * (c.Alcohol ?? 0));

    /// <summary>By factors of the food itself, kcal per 100 g, alcohol at 6.93, as USDA's reference tables do.</summary>
    public static double Specific(double protein, double fat, double totalCarbohydrate, double alcohol, double perProtein, double perFat, double perCarbohydrate)
        => (protein * perProtein) + (fat * perFat) + (totalCarbohydrate * perCarbohydrate) + (alcohol * 6.93);

    /// <summary>Carbohydrate as US law counts it, with fibre and organic acids, g per 100 g.</summary>
    public static double? TotalCarbohydrate(Composition c) => c.Carbohydrate + (c.Fibre ?? 0) + (c.Acid ?? 0);

    private static double? Sum(double? carbohydrate, double perCarbohydrate, double? polyols, double perPolyols, double? protein, double perProtein, double? fat, double perFat, Composition c, double perAlcohol, double perAcid, double perFibre)
        => (carbohydrate * perCarbohydrate) + ((polyols ?? 0) * perPolyols) + (protein * perProtein) + (fat * perFat) + ((c.Alcohol ?? 0) * perAlcohol) + ((c.Acid ?? 0) * perAcid) + ((c.Fibre ?? 0) * perFibre);
}
