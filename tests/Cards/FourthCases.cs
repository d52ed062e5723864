namespace Coulisse.Cards.Tests;

/// <summary>A fourth set in six languages, by one who had seen neither the reader nor its pages, kept as written. Floors are what is reached and never fall; each miss is named in the report.</summary>
public sealed class FourthCases
{
    /// <summary>Most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (99, 0),
        ["lines: food as written"] = (92, 0),
        ["lines: no more doubts than expected"] = (91, 0),
        ["lines: asked where a question is due"] = (2, 0),
        ["steps: minutes"] = (35, 0),
        ["steps: temperatures"] = (31, 0),
        ["cards: component of each line"] = (150, 0),
        ["cards: minutes of each step"] = (80, 0),
        ["cards: temperatures of each step"] = (70, 0),
        ["cards: yields"] = (10, 0),
        ["cards: no more doubts than expected"] = (18, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-4.jsonl", BlindSet.Typed);
}
