using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>"Eier   40" on a card for 40 whose other lines all tell their unit: who writes "60 g" beside salt would have written it beside the eggs, so the figure counts. Where a list leaves its units out, or the figure has nothing to do with what is made, it stays grams and is asked.</summary>
internal static class CountedAmong
{
    private const int FewestTold = 4;
    private const double MostEggs = 200;

    /// <summary>The dish with such figures counted, and their questions taken back.</summary>
    public static Dish Settle(Dish dish, List<Doubt> doubts)
    {
        HashSet<int> bare = [.. doubts.Where(d => d.Question.EndsWith(BareGrams.Question, StringComparison.Ordinal)).Select(d => d.Line)];
        if (bare.Count == 0)
        {
            return dish;
        }

        int told = dish.Components.Sum(c => c.Ingredients.Count(l => !bare.Contains(l.Span.Line) && l.Foods.Any(f => f.Amount is not null && f.Unit is not (null or "piece"))));
        if (told < FewestTold || bare.Count * 3 > told)
        {
            return dish;
        }

        double[] makes = [.. dish.Yields.Where(y => y.Unit is not ("g" or "kg" or "ml" or "l")).Select(y => y.Amount)];
        HashSet<int> counted = [];
        foreach (IngredientLine l in dish.Components.SelectMany(c => c.Ingredients))
        {
            if (bare.Contains(l.Span.Line) && l.Foods is [{ Unit: "g", Amount: { } n } food] && Counts(food.Food, n, makes, dish.Language))
            {
                counted.Add(l.Span.Line);
            }
        }

        if (counted.Count == 0)
        {
            return dish;
        }

        doubts.RemoveAll(d => counted.Contains(d.Line) && d.Question.EndsWith(BareGrams.Question, StringComparison.Ordinal));
        return dish with { Components = [.. dish.Components.Select(c => c with { Ingredients = [.. c.Ingredients.Select(l => counted.Contains(l.Span.Line) ? l with { Foods = [l.Foods[0] with { Unit = "piece", Grams = null }] } : l)] })] };
    }

    /// <summary>Eggs in their shell, or a food that may be counted and comes in as many as there are guests or pieces made, half, twice or three times as many.</summary>
    private static bool Counts(string name, double n, double[] makes, string lang)
    {
        FoodMatch? match = FoodIds.Match(name, lang);
        if (NeverCounted.Is(match) || NeverCounted.Poured(name, lang))
        {
            return false;
        }

        bool egg = match is not null && FoodTable.Default.Find(match.Id) is { } food && food.Units.ContainsKey("large") && food.Class == "egg";
        return egg && n <= MostEggs || Array.Exists(makes, of => of > 1 && (n == of || n * 2 == of || n == of * 2 || n == of * 3));
    }
}
