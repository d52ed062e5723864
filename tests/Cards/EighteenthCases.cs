namespace Coulisse.Cards.Tests;

/// <summary>Everyday cards of letters, chats, books, pages and houses by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall.</summary>
public sealed class EighteenthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (461, 0),
        ["cards: minutes of each step"] = (200, 3),
        ["cards: temperatures of each step"] = (199, 0),
        ["cards: yields"] = (43, 0),
        ["cards: no more doubts than expected"] = (48, 0),
        ["cards: no line a food that is none"] = (443, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-18.jsonl", BlindSet.Typed);
}
