namespace Coulisse.Cards.Tests;

/// <summary>Cards as they come in from elsewhere, in six languages, by an author who had seen neither the reader nor its pages, as written: Word and PDF text, chats, notes of the night, sheets. Pages and recipe data of the same set come in by another door (gauge). Floors are what is reached and never fall.</summary>
public sealed class TwentyFifthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (232, 4),
        ["cards: minutes of each step"] = (110, 4),
        ["cards: temperatures of each step"] = (110, 1),
        ["cards: yields"] = (29, 0),
        ["cards: no more doubts than expected"] = (30, 0),
        ["cards: no line a food that is none"] = (232, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-25.jsonl", BlindSet.Typed);
}
