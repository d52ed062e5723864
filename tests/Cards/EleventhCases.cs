namespace Coulisse.Cards.Tests;

/// <summary>Lines, steps and whole cards in six languages, by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall. The one miss: “冷ます” behind the oven is read as a wait of untold length, which the author does not list.</summary>
public sealed class EleventhCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (61, 0),
        ["lines: food as written"] = (59, 0),
        ["lines: no more doubts than expected"] = (60, 0),
        ["steps: minutes"] = (29, 0),
        ["steps: temperatures"] = (29, 0),
        ["cards: component of each line"] = (155, 0),
        ["cards: minutes of each step"] = (57, 1),
        ["cards: temperatures of each step"] = (57, 0),
        ["cards: yields"] = (12, 0),
        ["cards: no more doubts than expected"] = (12, 0),
        ["cards: no line a food that is none"] = (155, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-11.jsonl", BlindSet.Typed);
}
