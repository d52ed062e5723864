namespace Coulisse.Cards.Tests;

/// <summary>Cards of a bakery, a fish house, a canteen, a caterer and a village club, transcribed by an author who had seen neither the reader nor its pages, as written. The misses: “a good pinch” is a large pinch here; “aguacates maduros” keeps its state in its name; “minced” of a line a column broke is an item. Floors are what is reached and never fall.</summary>
public sealed class ThirteenthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (36, 1),
        ["lines: food as written"] = (35, 1),
        ["lines: no more doubts than expected"] = (36, 0),
        ["steps: minutes"] = (14, 0),
        ["steps: temperatures"] = (14, 0),
        ["cards: component of each line"] = (450, 0),
        ["cards: minutes of each step"] = (168, 0),
        ["cards: temperatures of each step"] = (168, 0),
        ["cards: yields"] = (35, 0),
        ["cards: no more doubts than expected"] = (37, 0),
        ["cards: no line a food that is none"] = (445, 1),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-13.jsonl", BlindSet.Typed);
}
