using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>Names the food of our table that a cook's words mean, when that is sure: a wrong food is worse than none.</summary>
internal static class FoodIds
{
    private const double Sure = 0.8;

    /// <summary>The component with its foods named; each wording is looked up once a card.</summary>
    public static Component In(Component c, string lang, Dictionary<string, FoodMatch?> known) => c with
    {
        Ingredients = [.. c.Ingredients.Select(l => l with { Foods = [.. l.Foods.Select(f => One(f, lang, known))] })],
    };

    /// <summary>The food a wording means; null also for what is no wording: half a pair, a sign outside every alphabet.</summary>
    public static FoodMatch? Match(string name, string lang)
    {
        foreach (char c in name)
        {
            if (char.IsSurrogate(c) || c >= '\uFFFE')
            {
                return null;
            }
        }

        return FoodTable.Default.Match(name, lang);
    }

    private static FoodAmount One(FoodAmount f, string lang, Dictionary<string, FoodMatch?> known)
    {
        // A part of another component is no food, and a name of many words is a sentence.
        if (f.FromComponent is not null || f.Food.Length is 0 or > 60)
        {
            return f;
        }

        if (!known.TryGetValue(f.Food, out FoodMatch? match))
        {
            match = Match(f.Food, lang);
            known.Add(f.Food, match);
        }

        return match is { Confidence: >= Sure } ? f with { FoodId = match.Id, FoodConfidence = match.Confidence } : f;
    }
}
