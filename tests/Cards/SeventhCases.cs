namespace Coulisse.Cards.Tests;

/// <summary>A hundred and fifty-five lines, steps and cards of ordinary kinds, by one who had seen neither the reader nor its pages, kept as written. Floors are what is reached and never fall; each miss is named in the report.</summary>
public sealed class SeventhCases
{
    /// <summary>Most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (60, 1),
        ["lines: food as written"] = (55, 0),
        ["lines: no more doubts than expected"] = (60, 0),
        ["steps: minutes"] = (48, 0),
        ["steps: temperatures"] = (48, 0),
        ["cards: component of each line"] = (380, 8),
        ["cards: minutes of each step"] = (160, 4),
        ["cards: temperatures of each step"] = (160, 4),
        ["cards: yields"] = (30, 1),
        ["cards: no more doubts than expected"] = (40, 1),
        ["cards: no line a food that is none"] = (390, 1),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-7.jsonl", BlindSet.Typed);
}
