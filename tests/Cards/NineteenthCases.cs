namespace Coulisse.Cards.Tests;

/// <summary>Cards of working kitchens by an author who had seen neither the reader nor its pages, as written but for two heats of an incomplete expectation. Floors are what is reached and never fall; the foods that "are none" are foods the author left out.</summary>
public sealed class NineteenthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (393, 0),
        ["cards: minutes of each step"] = (117, 0),
        ["cards: temperatures of each step"] = (38, 0),
        ["cards: yields"] = (39, 0),
        ["cards: no line a food that is none"] = (408, 14),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-19.jsonl", BlindSet.Typed);
}
