using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>"Divide into 10 pieces", "cut 5 × 4", "roll into 16 balls": how many come of the whole, against how many the card says it makes; and whether what they weigh is there at all.</summary>
internal static class DividedInto
{
    private const double MostOver = 1.05;
    private static readonly string[] Verbs = ["divide", "divided", "cut", "portion", "shape", "form", "roll", "scale", "slice", "split", "pipe", "scoop"];
    private static readonly string[] Nouns = ["pieces", "piece", "balls", "rolls", "buns", "rounds", "squares", "bars", "slices", "portions", "patties", "cookies", "discs", "wedges", "triangles", "dumplings", "loaves", "fingers", "rectangles", "sticks", "parts"];
    // What is divided is the whole, not one of its foods.
    private static readonly string[] Wholes = ["it", "dough", "batter", "mixture", "mix", "cake", "slab", "bread", "tart", "pie", "log", "sheet", "tray", "brownies", "bars", "block", "all"];
    // What is made in these is cut up by who eats it.
    private static readonly string[] Holders = ["loaf", "tin", "cake", "tart", "jar", "plate", "plates", "tray", "mould", "glass", "bottle", "terrine", "pie", "frame"];
    private static readonly string[] Weights = ["g", "kg"];

    public static IEnumerable<Remark> Of(Dish dish)
    {
        if (dish.Language != "en")
        {
            yield break;
        }

        foreach (CardYield y in dish.Yields)
        {
            if (Said(y, dish.Components, dish) is { } remark)
            {
                yield return remark;
            }
        }

        foreach (Component c in dish.Components)
        {
            foreach (CardYield y in c.Makes)
            {
                if (Said(y, [c], dish) is { } remark)
                {
                    yield return remark;
                }
            }
        }
    }

    private static Remark? Said(CardYield y, IReadOnlyCollection<Component> parts, Dish dish)
    {
        double? whole = Whole(parts, dish);
        if (Weights.Contains(y.Unit))
        {
            double grams = y.Amount * (y.Unit == "kg" ? 1000 : 1);
            return whole is { } have && grams > have * MostOver ? new Remark(y.Span.Line, "yield mismatch", System.FormattableString.Invariant($"“{y.Text}” is {grams:0} g; the lines give {have:0} g.")) : null;
        }

        if (y.AmountMax is not null || y.Amount < 2 || y.Unit is "ml" or "l")
        {
            return null;
        }

        if ((y.EachGrams ?? Each(y.Text, dish.Language)) is { } each && whole is { } there && y.Amount * each > there * MostOver)
        {
            return new Remark(y.Span.Line, "yield mismatch", System.FormattableString.Invariant($"“{y.Text}”: {y.Amount:0.##} of {each:0.##} g are {y.Amount * each:0} g; the lines give {there:0} g."));
        }

        HashSet<string> listed = new(parts.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).SelectMany(f => f.Food.Split(' ')), StringComparer.OrdinalIgnoreCase);
        List<(double Count, double? Each, Step Step)> told = [];
        foreach (Step s in parts.SelectMany(c => c.Steps))
        {
            foreach ((double n, double? of) in Counts(s.Text, dish.Language, listed))
            {
                told.Add((n, of, s));
            }
        }

        if (told.Count == 0)
        {
            return null;
        }

        // Two halves, then six of each; two of each a guest; 24 halves for 12 sandwiches. More slices than guests are seconds.
        (double count, double? weight, Step step) = told[^1];
        bool counted = !Holders.Contains(y.Unit) && (y.Unit != "portions" || count < y.Amount);
        if (counted && !Reaches(told, y.Amount))
        {
            return new Remark(step.Span.Line, "yield mismatch", System.FormattableString.Invariant($"The card says {y.Amount:0.##} {y.Unit}, this step makes {count:0.##}: “{step.Text}”."));
        }

        return weight is { } g && whole is { } had && count * g > had * MostOver
            ? new Remark(step.Span.Line, "yield mismatch", System.FormattableString.Invariant($"{count:0.##} of {g:0.##} g are {count * g:0} g; the lines give {had:0} g: “{step.Text}”.")) : null;
    }

    /// <summary>A count the steps make, or the product of two, is the yield or a multiple either way.</summary>
    private static bool Reaches(List<(double Count, double? Each, Step Step)> told, double amount)
    {
        for (int i = 0; i < told.Count; i++)
        {
            if (Fits(told[i].Count))
            {
                return true;
            }

            for (int j = i + 1; j < told.Count; j++)
            {
                if (Fits(told[i].Count * told[j].Count))
                {
                    return true;
                }
            }
        }

        return false;

        bool Fits(double n) => Multiple(n, amount) || Multiple(amount, n);
    }

    private static bool Multiple(double a, double b) => b > 1 && a >= b && Math.Abs((a / b) - Math.Round(a / b)) < 1e-9;

    /// <summary>Weight of all lines; null when one has none, or when the steps take up water no line holds.</summary>
    private static double? Whole(IReadOnlyCollection<Component> parts, Dish dish)
    {
        double sum = 0;
        foreach (IngredientLine l in parts.SelectMany(c => c.Ingredients).Where(l => l.Kind == LineKind.Ingredient))
        {
            foreach (FoodAmount f in l.Foods)
            {
                if ((f.GramsMax ?? f.Grams ?? Volumes.Of(f)) is not { } g || f.FromComponent is not null || f.Use is not null)
                {
                    return null;
                }

                sum += g;
            }
        }

        bool wetted = parts.SelectMany(c => c.Steps).Any(s => Places.HasAny(s.Text, "water", "soak", "boil", "stock", "brine", "egg", "milk")) && !parts.SelectMany(c => c.Ingredients).Any(l => Places.HasAny(l.Text, "water", "milk", "stock", "eggs", "egg"));
        return sum > 0 && !wetted && dish.Variants.IsEmpty ? sum : null;
    }

    /// <summary>"12 buns of 150 g".</summary>
    private static double? Each(string text, string lang)
    {
        int of = text.IndexOf(" of ", StringComparison.OrdinalIgnoreCase);
        return of > 0 && of + 4 < text.Length && char.IsAsciiDigit(text[of + 4]) && Amounts.At(text, of + 4, lang) is { Unit: { Kind: "mass", Base: { } b }, Number.Max: null } m ? m.Number.Min * b : null;
    }

    /// <summary>Where the first verb of dividing stands; -1 without one.</summary>
    private static int First(string sentence)
    {
        int first = -1;
        foreach (string verb in Verbs)
        {
            int at = Places.FindWord(sentence, verb);
            first = at >= 0 && (first < 0 || at < first) ? at : first;
        }

        return first;
    }

    private static IEnumerable<(double Count, double? Each)> Counts(string text, string lang, HashSet<string> listed)
    {
        foreach (string sentence in text.Split(['.', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (First(sentence) is not (>= 0 and var at) || Places.HasAny(sentence, "each", "per", "at a time", "first", "batches", "about", "cm", "mm"))
            {
                continue;
            }

            int from = Places.WordEnd(sentence, at);
            for (int i = from; i < sentence.Length; i++)
            {
                if (!char.IsAsciiDigit(sentence[i]) || char.IsLetterOrDigit(sentence[i - 1]) || Numbers.Single(sentence, i, lang) is not { } n || n.Min != Math.Round(n.Min))
                {
                    continue;
                }

                if (One(sentence, from, i, n, lang, listed) is { } found)
                {
                    yield return found;
                }

                break;
            }
        }
    }

    private static (double Count, double? Each)? One(string s, int from, int at, Numeral n, string lang, HashSet<string> listed)
    {
        // Between verb and figure stands the whole or nothing: "the dough into", "into", "".
        string[] between = s[from..at].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        if (!between.All(w => w is "the" or "into" or "in" or "to" or "out" or "up" or "then" || (Wholes.Contains(w, StringComparer.OrdinalIgnoreCase) && !listed.Contains(w))))
        {
            return null;
        }

        int i = Places.Skip(s, n.End);
        if (i < s.Length && s[i] is '×' or 'x' && Numbers.Single(s, Places.Skip(s, i + 1), lang) is { } rows)
        {
            int behind = Places.Skip(s, rows.End);
            bool bare = behind >= s.Length || Nouns.Any(w => Places.WordAt(s, behind, w)) || s[behind] is ',' or ')';
            return bare ? (n.Min * rows.Min, null) : null;
        }

        int equal = Places.WordAt(s, i, "equal") ? Places.Skip(s, i + 5) : Places.WordAt(s, i, "even") ? Places.Skip(s, i + 4) : i;
        if (n.Min < 2 || Nouns.FirstOrDefault(w => Places.WordAt(s, equal, w)) is not { } noun)
        {
            return null;
        }

        int of = Places.Skip(s, equal + noun.Length);
        double? weight = (Places.WordAt(s, of, "of") || (of < s.Length && s[of] is ',' or '(' or 'à' or '@')) && Amounts.At(s, Places.Skip(s, of + (s[of] == 'o' ? 2 : 1)), lang) is { Unit: { Kind: "mass", Base: { } b } } m ? m.Number.Min * b : null;
        return (n.Min, weight);
    }
}
