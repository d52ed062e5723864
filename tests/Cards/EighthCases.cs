namespace Coulisse.Cards.Tests;

/// <summary>Sixty whole cards of everyday kitchens by a fifth author who had seen neither the reader nor its pages, kept as written but for one field. Floors are what is reached and never fall; each miss is named in the report.</summary>
public sealed class EighthCases
{
    /// <summary>Most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (632, 0),
        ["cards: minutes of each step"] = (230, 0),
        ["cards: temperatures of each step"] = (230, 0),
        ["cards: yields"] = (49, 1),
        ["cards: no line a food that is none"] = (630, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-8.jsonl", BlindSet.Typed);
}
