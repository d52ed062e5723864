namespace Coulisse.Cards.Tests;

/// <summary>Seventy cards by an author who had seen neither the reader nor its pages, about structure alone: how fifty hands head their parts. The misses: amounts inside a sentence (“The joint - pork loin, rind scored, 2.5 kg - rub it …”), counts of foods nobody knows in running text, and waits without a figure (“cool”), which the author does not list. Floors are what is reached and never fall.</summary>
public sealed class FourteenthCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (654, 8),
        ["cards: minutes of each step"] = (240, 5),
        ["cards: temperatures of each step"] = (240, 2),
        ["cards: yields"] = (60, 1),
        ["cards: no more doubts than expected"] = (56, 0),
        ["cards: no line a food that is none"] = (640, 1),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-14.jsonl", BlindSet.Typed);
}
