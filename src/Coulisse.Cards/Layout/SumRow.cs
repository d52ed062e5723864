using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>The last row of a table under a name of its own ("Dough  227.5  4,550 g") that comes to all rows above it: what they make, and no food. Only where every row is weighed and no food is called so; a row called a total is one without this.</summary>
internal static class SumRow
{
    private const int FewestRows = 3;

    /// <summary>How far a printed sum may be rounded.</summary>
    private const double Rounding = 0.005;

    private static readonly WordList Mixtures = new("dough", "batter", "mix", "mixture", "mass", "paste", "Teig", "Masse", "Gesamtteig", "pâte", "appareil", "masse", "masa", "mezcla", "impasto", "massa", "composto", "生地", "合計");

    /// <summary>Place of the row; -1 when no row sums the others.</summary>
    /// <param name="weighed">Food and amount of each row, in order; rows without an amount name stages.</param>
    /// <param name="shares">A column of shares stands beside: such tables close with their sum, whatever they call it.</param>
    /// <param name="lang">Language code.</param>
    public static int Of(IReadOnlyList<(string Food, string Amount)> weighed, bool shares, string lang)
    {
        int last = weighed.Count - 1;
        while (last >= 0 && weighed[last].Amount.Length == 0)
        {
            last--;
        }

        if (last < FewestRows || Grams(weighed[last].Amount, lang) is not { } told)
        {
            return -1;
        }

        double sum = 0;
        int rows = 0;
        for (int i = 0; i < last; i++)
        {
            if (weighed[i].Amount.Length == 0)
            {
                continue;
            }

            if (Grams(weighed[i].Amount, lang) is not { } grams)
            {
                return -1;
            }

            sum += grams;
            rows++;
        }

        return rows >= FewestRows && Math.Abs(sum - told) <= told * Rounding && weighed[last].Food is { Length: > 0 } name && (shares || Mixtures.In(name)) && !TableUnits.Sums(name, lang) && FoodIds.Match(name, lang) is null ? last : -1;
    }

    /// <summary>A weight or a volume, or a bare figure where the table tells no unit; null for a count, a range and words.</summary>
    private static double? Grams(string amount, string lang) =>
        Amounts.At(amount, 0, lang) is { Number: { Max: null, InWords: false } n } m && m.End >= amount.TrimEnd().Length && m.Unit is null or { Kind: "mass" or "volume" } ? n.Min * (m.Unit?.Base ?? 1) : null;
}
