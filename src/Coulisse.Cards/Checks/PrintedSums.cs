namespace Coulisse.Cards.Checks;

/// <summary>A printed total against the sum of its lines.</summary>
internal static class PrintedSums
{
    public static IEnumerable<Remark> Of(Dish dish)
    {
        foreach (Component c in dish.Components)
        {
            double sum = 0;
            bool whole = true;
            int foods = 0;
            foreach (IngredientLine l in c.Ingredients)
            {
                if (l.Kind == LineKind.Total && Printed(l.Text, dish.Language) is { } printed)
                {
                    // A line without grams leaves the sum open: then nothing can be said.
                    if (whole && foods > 1 && Math.Abs(sum - printed) > Math.Max(1, printed * 0.005))
                    {
                        yield return new Remark(l.Span.Line, "sum mismatch", System.FormattableString.Invariant($"“{l.Text}”: the lines above add up to {sum:0.##} g, the card prints {printed:0.##} g."));
                    }
                }
                else if (l.Kind == LineKind.Ingredient)
                {
                    foreach (FoodAmount f in l.Foods)
                    {
                        foods++;
                        sum += f.Grams ?? 0;
                        whole &= f.Grams is not null && f.GramsMax is null;
                    }
                }
            }
        }
    }

    private static double? Printed(string s, string lang)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1])))
            {
                return Reading.Amounts.At(s, i, lang) is { Unit: { Kind: "mass", Base: { } b } } m ? m.Number.Min * b : null;
            }
        }

        return null;
    }
}
