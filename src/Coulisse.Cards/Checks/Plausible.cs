using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>Figures no kitchen uses: read as printed, and asked.</summary>
/// <remarks>Limits are common practice without a source, set wide: an oven for baking 60 to 320 °C; salt up to 8 % of a part that is no cure or brine; agar 0.05 to 3 %, gelatine 0.1 to 5 % (12 in what is chewed), pectin to 8 %, xanthan and gellan to 2 %, in whatever holds water.</remarks>
internal static class Plausible
{
    private static readonly (string Word, double Least, double Most)[] Agents = [("agar", 0.05, 3), ("agar-agar", 0.05, 3), ("gelatine", 0.1, 5), ("gelatin", 0.1, 5), ("gélatine", 0.1, 5), ("pectin", 0, 8), ("pectine", 0, 8), ("xanthan", 0, 2), ("gellan", 0, 2)];
    private const double MostChewed = 12;
    private static readonly string[] Chewed = ["marshmallow", "marshmallows", "gummy", "gummies", "gum", "guimauve", "pastille", "pastilles", "jujube"];
    // Swollen in its own water, or mixed dry, to be weighed off later.
    private static readonly string[] Stocked = ["mass", "masse", "bloomed", "premix", "stabiliser", "stabilizer"];
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
        if (foods.Length < 2 || foods.Any(f => f.FromComponent is not null || (Weight(f) is null && f.Unit is not ("pinch" or null))) || !foods.Any(Wet))
        {
            yield break;
        }

        double total = foods.Sum(f => Weight(f) ?? 0);
        bool chewed = Places.HasAny(c.Name, Chewed);
        bool cures = Places.HasAny(c.Name, Salted) || c.Steps.Any(s => Places.HasAny(s.Text, Salted)) || foods.Any(f => Places.HasAny(f.Food, Salted));
        foreach (IngredientLine l in lines)
        {
            foreach (FoodAmount f in l.Foods)
            {
                double share = total > 0 && Weight(f) is { } g ? g / total * 100 : 0;
                bool salt = Places.HasAny(f.Food, "salt", "sel", "Salz", "sal", "sale") && !Places.HasAny(f.Food, "butter", "beurre", "cod", "pork");
                (string _, double least, double agent) = Agents.FirstOrDefault(a => Places.FindWord(f.Food, a.Word) >= 0);
                double most = salt && !cures ? 8 : agent <= 0 || Places.HasAny(c.Name, Stocked) ? double.MaxValue : chewed ? Math.Max(agent, MostChewed) : agent;
                if (share > most)
                {
                    yield return new Remark(l.Span.Line, "implausible", System.FormattableString.Invariant($"“{l.Text}” is {share:0.#} % of the {total:0} g of its part; more than {most:0.#} % is not usual."));
                }
                else if (share > 0 && share < least && foods.Count(o => Agents.Any(a => Places.FindWord(o.Food, a.Word) >= 0)) == 1)
                {
                    yield return new Remark(l.Span.Line, "implausible", System.FormattableString.Invariant($"“{l.Text}” is {share:0.##} % of the {total:0} g of its part; less than {least:0.##} % sets nothing."));
                }
            }
        }
    }

    // A leaf at its lightest, a spoon of salt at its coarsest, anything else by the spoon or cup at its heaviest: the share is never overstated.
    private const double Leaf = 1.7;
    private const double Coarse = 0.65;
    private const double Heavy = 1.2;
    private const double Egg = 65;

    private static double? Weight(FoodAmount f)
    {
        if (f.Grams is { } grams)
        {
            return grams;
        }

        if (f is not { Amount: { } a, Unit: { } u })
        {
            return null;
        }

        return u is "leaf" or "sheet" && Places.HasAny(f.Food, "gelatine", "gelatin", "gélatine") ? a * Leaf
            : Spoon(u) is { } ml ? a * ml * (Places.HasAny(f.Food, "salt", "sel", "Salz", "sal", "sale") ? Coarse : Heavy)
            : Volumes.Of(f) ?? (u == "piece" && f.FoodId is "egg" ? a * Egg : null);
    }

    private static double? Spoon(string unit) => unit switch { "tsp" => 5, "dsp" => 10, "tbsp" => 15, "cup" => 240, _ => null };

    private static bool Wet(FoodAmount f) => f.FoodId is not { } id || Matter.Foods.FoodTable.Default.Find(id) is not { Composition.Water: <= 20 };
}
