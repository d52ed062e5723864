namespace Coulisse.Cards.Tests;

/// <summary>A third set in six languages, written before its writer had looked at the reader's rules and kept as written. Floors are what is reached and never fall; each miss is named in the report.</summary>
public sealed class ThirdCases
{
    /// <summary>Most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (70, 1),
        ["lines: food as written"] = (70, 2),
        ["lines: no more doubts than expected"] = (59, 1),
        ["steps: minutes"] = (15, 0),
        ["steps: temperatures"] = (15, 0),
        ["cards: component of each line"] = (83, 0),
        ["cards: minutes of each step"] = (26, 0),
        ["cards: temperatures of each step"] = (26, 0),
        ["cards: yields"] = (8, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-3.jsonl");
}
