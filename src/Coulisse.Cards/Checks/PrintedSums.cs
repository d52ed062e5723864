namespace Coulisse.Cards.Checks;

/// <summary>A printed total against the sum of its lines.</summary>
internal static class PrintedSums
{
    public static IEnumerable<Remark> Of(Dish dish)
    {
        foreach (IngredientLine l in dish.Components.SelectMany(c => c.Ingredients))
        {
            if (Sum([l]) is { } of && Promised(l.Text, dish.Language) is { } said && Math.Abs(of - said) > Math.Max(1, said * 0.005))
            {
                yield return new Remark(l.Span.Line, "sum mismatch", System.FormattableString.Invariant($"“{l.Text}”: that is {of:0.##} g, the line prints {said:0.##} g."));
            }
        }

        double? all = Sum(dish.Components.SelectMany(c => c.Ingredients));
        foreach (Component c in dish.Components)
        {
            double part = 0;
            bool whole = true;
            int foods = 0;
            foreach (IngredientLine l in c.Ingredients)
            {
                if (l.Kind == LineKind.Total && (Printed(l.Text, dish.Language) ?? BareTotals.Printed(l, c.Ingredients, dish.Language)) is { } printed)
                {
                    // A total may be of the whole dish ("total dough" under the last stage): the sum it is nearer to is the one it claims.
                    double sum = all is { } every && Math.Abs(every - printed) < Math.Abs(part - printed) ? every : part;
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
                        part += f.Grams ?? 0;
                        whole &= f.Grams is not null && f.GramsMax is null;
                    }
                }
            }
        }
    }

    private static double? Sum(IEnumerable<IngredientLine> lines)
    {
        double sum = 0;
        foreach (FoodAmount f in lines.Where(l => l.Kind == LineKind.Ingredient).SelectMany(l => l.Foods))
        {
            if (f.Grams is not { } g || f.GramsMax is not null)
            {
                return null;
            }

            sum += g;
        }

        return sum;
    }

    /// <summary>"40 g + 10 g butter, that is 60 g".</summary>
    private static double? Promised(string s, string lang)
    {
        foreach (string word in (ReadOnlySpan<string>)["that is", "in all", "altogether", "together", "makes", "soit", "insgesamt", "zusammen", "en total", "in tutto"])
        {
            if (s.Contains('+') && Words.Places.FindWord(s, word) is var at and > 2)
            {
                return Printed(s[(at + word.Length)..], lang);
            }
        }

        return null;
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
