using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Checks;

/// <summary>A total without a unit under weights without one ("Total 1700" under flour 1000, water 650, salt 20): both are in what the sheet weighs in.</summary>
internal static class BareTotals
{
    private const double Fewest = 40;

    /// <summary>What the line prints, in grams, where its figure and those above tell no unit; null for any other.</summary>
    public static double? Printed(IngredientLine total, IEnumerable<IngredientLine> above, string lang)
    {
        if (Figure(total.Text, lang) is not { } printed || printed < Fewest)
        {
            return null;
        }

        foreach (IngredientLine line in above)
        {
            if (line.Kind == LineKind.Ingredient && Figure(line.Text, lang) is null)
            {
                return null;
            }
        }

        return printed;
    }

    /// <summary>The only figure of a line, no unit on it.</summary>
    private static double? Figure(string s, string lang)
    {
        int at = s.AsSpan().IndexOfAnyInRange('0', '9');
        return at >= 0 && (at == 0 || !char.IsLetterOrDigit(s[at - 1])) && Amounts.At(s, at, lang) is { Unit: null, Number: { Max: null, InWords: false } n } m && s.AsSpan(m.End).IndexOfAnyInRange('0', '9') < 0 && s.AsSpan(m.End).IndexOfAny("%°") < 0 ? n.Min : null;
    }
}
