namespace Coulisse.Cards.Tests;

/// <summary>Sixty cards of professional kitchens in many layouts, by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall.</summary>
public sealed class SeventeenthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (670, 0),
        ["cards: minutes of each step"] = (263, 4),
        ["cards: temperatures of each step"] = (263, 3),
        ["cards: yields"] = (42, 6),
        ["cards: no more doubts than expected"] = (46, 1),
        ["cards: no line a food that is none"] = (675, 6),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-17.jsonl", BlindSet.Typed);
}
