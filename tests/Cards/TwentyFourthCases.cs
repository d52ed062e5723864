namespace Coulisse.Cards.Tests;

/// <summary>Whole cards in six languages, from one part to six, by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall.</summary>
public sealed class TwentyFourthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (510, 3),
        ["cards: minutes of each step"] = (163, 5),
        ["cards: temperatures of each step"] = (146, 1),
        ["cards: yields"] = (36, 1),
        ["cards: no more doubts than expected"] = (48, 5),
        ["cards: no line a food that is none"] = (498, 2),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-24.jsonl");
}
