using System.Collections.Concurrent;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>Names the food of our table that a cook's words mean, when that is sure: a wrong food is worse than none. Each wording is looked up once a card.</summary>
internal sealed class FoodIds(string lang)
{
    private const double Sure = 0.8;
    private const int LongestName = 60;
    private readonly ConcurrentDictionary<string, (string Name, FoodMatch? Match)> _known = new(StringComparer.Ordinal);

    /// <summary>The food a wording of this card surely means; null when none is sure. A name of many words is a sentence. The wording becomes the one kept of it, so that a food told often is held once.</summary>
    public FoodMatch? Of(ref string food)
    {
        if (food.Length is 0 or > LongestName)
        {
            return null;
        }

        if (!_known.TryGetValue(food, out (string Name, FoodMatch? Match) known))
        {
            known = _known.GetOrAdd(food, (food, Match(food, lang) is { Confidence: >= Sure } sure ? sure : null));
        }

        food = known.Name;
        return known.Match;
    }

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
}
