namespace Coulisse.Cards.Tests;

/// <summary>Jotted, shouted and abbreviated lines and steps in six languages by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall.</summary>
public sealed class TwentyFirstCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (156, 0),
        ["lines: food as written"] = (156, 3),
        ["lines: no more doubts than expected"] = (150, 1),
        ["steps: minutes"] = (90, 1),
        ["steps: temperatures"] = (90, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-21.jsonl", BlindSet.Typed);
}
