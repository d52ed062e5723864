namespace Coulisse.Cards.Tests;

/// <summary>Everyday lines, steps and whole cards in six languages, by a seventh author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall; each miss is named in the report.</summary>
public sealed class TenthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (128, 1),
        ["lines: food as written"] = (123, 3),
        ["lines: no more doubts than expected"] = (120, 0),
        ["lines: asked where a question is due"] = (11, 0),
        ["steps: minutes"] = (56, 0),
        ["steps: temperatures"] = (60, 0),
        ["cards: component of each line"] = (316, 0),
        ["cards: minutes of each step"] = (128, 0),
        ["cards: temperatures of each step"] = (124, 0),
        ["cards: yields"] = (23, 0),
        ["cards: no more doubts than expected"] = (24, 0),
        ["cards: no line a food that is none"] = (312, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-10.jsonl", BlindSet.Typed);
}
