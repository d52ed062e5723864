namespace Coulisse.Cards.Tests;

/// <summary>Lines chosen for what is hard in them, steps, and seventy cards half of which are long, by a sixth author who had seen neither the reader nor its pages, kept as written but for one line whose reading named one food of two. Floors are what is reached and never fall; each miss is named in the report.</summary>
public sealed class NinthCases
{
    /// <summary>Most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (83, 1),
        ["lines: food as written"] = (81, 3),
        ["lines: no more doubts than expected"] = (74, 0),
        ["lines: asked where a question is due"] = (8, 0),
        ["steps: minutes"] = (37, 0),
        ["steps: temperatures"] = (35, 0),
        ["cards: component of each line"] = (500, 5),
        ["cards: minutes of each step"] = (200, 17),
        ["cards: temperatures of each step"] = (200, 13),
        ["cards: yields"] = (35, 0),
        ["cards: no more doubts than expected"] = (48, 0),
        ["cards: no line a food that is none"] = (500, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-9.jsonl", BlindSet.Typed);
}
