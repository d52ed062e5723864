namespace Coulisse.Cards.Tests;

/// <summary>Everyday cards and lines of a shared drive, by an author who had seen neither the reader nor its pages, as written. The misses: waits without a figure (“leave to cool”), which the author does not list, and a letter that tells its yield in a sentence. Floors are what is reached and never fall.</summary>
public sealed class FifteenthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["lines: amount, unit and grams"] = (30, 0),
        ["lines: food as written"] = (30, 0),
        ["lines: no more doubts than expected"] = (30, 0),
        ["cards: component of each line"] = (391, 0),
        ["cards: minutes of each step"] = (199, 2),
        ["cards: temperatures of each step"] = (199, 0),
        ["cards: yields"] = (38, 1),
        ["cards: no more doubts than expected"] = (39, 1),
        ["cards: no line a food that is none"] = (385, 1),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-15.jsonl", BlindSet.Typed);
}
