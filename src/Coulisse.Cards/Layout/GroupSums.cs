using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Layout;

/// <summary>
/// Rows of a table that name a part and print what it weighs ("Sponge | 800 g" over "Flour | 500 g" and "Water | 300 g"): each is the sum of the rows under it, down to the next of its kind, and so the whole table goes up.
/// Read as foods they would count everything twice. One such row alone may be chance, as 500 g of milk over 250 g of cream and 250 g of sugar.
/// </summary>
internal static class GroupSums
{
    private const double Near = 0.005;
    private const int FewestGroups = 2;

    /// <summary>Places of these rows; empty when the rows do not go up so.</summary>
    /// <param name="rows">Name and amount of each row.</param>
    /// <param name="lang">The language of the card.</param>
    public static HashSet<int> Of(List<(string Food, string Amount)> rows, string lang)
    {
        HashSet<int> heads = [];
        int strange = 0;
        bool longer = false;
        for (int i = 0; i < rows.Count;)
        {
            if (Grams(rows[i].Amount, lang) is not { } whole || whole <= 0)
            {
                return [];
            }

            double sum = 0;
            int to = i + 1;
            while (to < rows.Count && sum < whole * (1 - Near))
            {
                sum += Grams(rows[to].Amount, lang) ?? 0;
                to++;
            }

            if (Math.Abs(sum - whole) > whole * Near)
            {
                return [];
            }

            while (to < rows.Count && Grams(rows[to].Amount, lang) is null)
            {
                to++;
            }

            heads.Add(i);
            strange += FoodIds.Match(rows[i].Food, lang) is null ? 1 : 0;
            longer |= to - i > 2;
            i = to;
        }

        return heads.Count >= FewestGroups && longer && strange * 2 > heads.Count ? heads : [];
    }

    private static double? Grams(string amount, string lang) => amount.Length > 0 && Amounts.At(amount, 0, lang) is { Unit: { Kind: "mass" or "volume", Base: { } b } } m ? m.Number.Min * b : null;
}
