namespace Coulisse.Cards.Tests;

/// <summary>Fifty-five whole cards, each another kind of paper, by one who had seen neither the reader nor its pages, kept as written. Floors are what is reached and never fall; each miss is named in the report.</summary>
public sealed class SixthCases
{
    /// <summary>Most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (380, 18),
        ["cards: minutes of each step"] = (110, 14),
        ["cards: temperatures of each step"] = (100, 11),
        ["cards: yields"] = (20, 11),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-6.jsonl", BlindSet.Typed);
}
