namespace Coulisse.Cards.Tests;

/// <summary>Ingredient lines in six languages by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall.</summary>
public sealed class TwentySecondCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (224, 3),
        ["lines: food as written"] = (215, 18),
        ["lines: no more doubts than expected"] = (210, 3),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-22.jsonl");
}
