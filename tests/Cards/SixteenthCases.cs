namespace Coulisse.Cards.Tests;

/// <summary>Lines and steps in six languages by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall.</summary>
public sealed class SixteenthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (241, 1),
        ["lines: food as written"] = (234, 1),
        ["lines: no more doubts than expected"] = (230, 5),
        ["steps: minutes"] = (149, 0),
        ["steps: temperatures"] = (138, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-16.jsonl", BlindSet.Typed);
}
