namespace Coulisse.Cards.Tests;

/// <summary>Cards of restaurants, canteens and families in many hands, by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall. The misses: “a good pinch” is a large pinch here and a pinch to the author; “leave to cool” is read as a wait of untold length, which the author does not list.</summary>
public sealed class TwelfthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (26, 1),
        ["lines: food as written"] = (25, 0),
        ["lines: no more doubts than expected"] = (24, 0),
        ["steps: minutes"] = (15, 0),
        ["steps: temperatures"] = (15, 0),
        ["cards: component of each line"] = (444, 0),
        ["cards: minutes of each step"] = (149, 1),
        ["cards: temperatures of each step"] = (149, 0),
        ["cards: yields"] = (33, 0),
        ["cards: no more doubts than expected"] = (33, 0),
        ["cards: no line a food that is none"] = (442, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-12.jsonl", BlindSet.Typed);
}
