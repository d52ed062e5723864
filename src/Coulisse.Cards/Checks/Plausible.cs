using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>Figures no kitchen uses: read as printed, and asked.</summary>
/// <remarks>Limits are common practice without a source, set wide: an oven for baking 60 to 320 °C; salt up to 8 % of a part that is no cure or brine; agar 3 %, gelatine 8 %, pectin 8 %, xanthan 2 %.</remarks>
internal static class Plausible
{
    private static readonly (string Word, double Most)[] Agents = [("agar", 3), ("gelatine", 8), ("gelatin", 8), ("gélatine", 8), ("Gelatine", 8), ("pectin", 8), ("pectine", 8), ("xanthan", 2), ("gellan", 2)];
    private static readonly string[] Salted = ["cure", "curing", "brine", "salted", "crust", "saler", "saumure", "gros sel", "pökeln", "salmuera", "salamoia", "seasoning", "rub", "stock", "rinse"];

    public static IEnumerable<Remark> Of(Dish dish)
    {
        foreach (Component c in dish.Components)
        {
            foreach (Step s in c.Steps)
            {
                foreach (StepTemperature t in s.Temperatures)
                {
                    bool baked = s.Operations.Contains("bake") || s.Operations.Contains("roast");
                    bool cold = baked && t.Celsius is > 0 and < 50 && t.Of is TemperatureOf.Oven or TemperatureOf.Food && BakedAt(s.Text, t.Words);
                    if (cold || (t is { Of: TemperatureOf.Oven, Celsius: > 320 } && !Places.HasAny(dish.Title, "pizza")))
                    {
                        yield return new Remark(s.Span.Line, "implausible", System.FormattableString.Invariant($"An oven at {t.Celsius:0.#} °C; ovens bake at 60 to 320 °C: “{s.Text}”."));
                    }
                }
            }

            foreach (Remark r in Shares(c))
            {
                yield return r;
            }
        }
    }

    private static bool BakedAt(string text, string words)
    {
        int at = words.Length > 0 ? text.IndexOf(words, StringComparison.Ordinal) : -1;
        string before = at > 0 ? text[Math.Max(0, at - 24)..at].ToLowerInvariant().TrimEnd() : "";
        return before.EndsWith("bake at", StringComparison.Ordinal) || before.EndsWith("roast at", StringComparison.Ordinal) || before.EndsWith("oven at", StringComparison.Ordinal) || before.EndsWith("oven to", StringComparison.Ordinal) || before.EndsWith("cuire à", StringComparison.Ordinal) || before.EndsWith("backen bei", StringComparison.Ordinal) || before.EndsWith("hornear a", StringComparison.Ordinal) || before.EndsWith("cuocere a", StringComparison.Ordinal);
    }

    /// <summary>Salt and setting agents against the weight of the part; silent when anything in it has no weight.</summary>
    private static IEnumerable<Remark> Shares(Component c)
    {
        if (!c.Steps.Any(s => Places.HasAny(s.Text, Salted)) && !Places.HasAny(c.Name, Salted))
        {
            foreach (IngredientLine l in c.Ingredients.Where(l => l.Kind == LineKind.Ingredient))
            {
                // Salt and raising agents by the cup are spoons misread, unless something is cured or boiled in them.
                foreach (FoodAmount f in l.Foods.Where(f => f is { Unit: "cup", Amount: >= 0.12, Grams: null } && Places.HasAny(f.Food, "salt", "baking powder", "baking soda", "bicarbonate") && !Places.HasAny(f.Food, Salted)))
                {
                    yield return new Remark(l.Span.Line, "implausible", System.FormattableString.Invariant($"“{l.Text}”: {f.Amount:0.##} cup of {f.Food}; a spoon is usual."));
                }
            }
        }

        IEnumerable<IngredientLine> lines = c.Ingredients.Where(l => l.Kind == LineKind.Ingredient);
        FoodAmount[] foods = [.. lines.SelectMany(l => l.Foods)];
        if (foods.Length < 3 || foods.Any(f => f.Grams is null && f.Unit is not ("pinch" or null) && f.Unit is not ("ml" or "l" or "dl" or "cl")))
        {
            yield break;
        }

        double total = foods.Sum(f => f.Grams ?? Millilitres(f));
        bool cures = Places.HasAny(c.Name, Salted) || c.Steps.Any(s => Places.HasAny(s.Text, Salted)) || foods.Any(f => Places.HasAny(f.Food, Salted));
        foreach (IngredientLine l in lines)
        {
            foreach (FoodAmount f in l.Foods)
            {
                double share = total > 0 && f.Grams is { } g ? g / total * 100 : 0;
                bool salt = Places.HasAny(f.Food, "salt", "sel", "Salz", "sal", "sale") && !Places.HasAny(f.Food, "butter", "beurre", "cod", "pork");
                double most = salt && !cures ? 8 : Agents.FirstOrDefault(a => Places.FindWord(f.Food, a.Word) >= 0) is { Most: > 0 } agent ? agent.Most : double.MaxValue;
                if (share > most)
                {
                    yield return new Remark(l.Span.Line, "implausible", System.FormattableString.Invariant($"“{l.Text}” is {share:0.#} % of the {total:0} g of its part; more than {most:0.#} % is not usual."));
                }
            }
        }
    }

    private static double Millilitres(FoodAmount f) => f.Amount is { } a && f.Unit is { } u && Lexicon.Unit(u, "en") is { Kind: "volume", Base: { } b } ? a * b : 0;
}
