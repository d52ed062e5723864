namespace Coulisse.Cards.Tests;

/// <summary>A fifth set in six languages, by another who had seen neither the reader nor its pages, kept as written. Floors are what is reached and never fall; each miss is named in the report.</summary>
public sealed class FifthCases
{
    /// <summary>Most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (94, 2),
        ["lines: food as written"] = (90, 2),
        ["lines: no more doubts than expected"] = (90, 0),
        ["lines: asked where a question is due"] = (1, 0),
        ["steps: minutes"] = (35, 0),
        ["steps: temperatures"] = (32, 0),
        ["cards: component of each line"] = (242, 0),
        ["cards: minutes of each step"] = (85, 0),
        ["cards: temperatures of each step"] = (81, 0),
        ["cards: yields"] = (21, 1),
        ["cards: no more doubts than expected"] = (15, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-5.jsonl", BlindSet.Typed);
}
