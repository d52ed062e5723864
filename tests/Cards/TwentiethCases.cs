namespace Coulisse.Cards.Tests;

/// <summary>Pasted and homely cards, pages, chats, sheets and mails, by an author who had seen neither the reader nor its pages, as written. Floors are what is reached and never fall; most of the foods that "are none" are foods the author left out.</summary>
public sealed class TwentiethCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["cards: component of each line"] = (269, 0),
        ["cards: minutes of each step"] = (78, 0),
        ["cards: temperatures of each step"] = (13, 0),
        ["cards: yields"] = (36, 0),
        ["cards: no line a food that is none"] = (298, 28),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-20.jsonl", BlindSet.Typed);
}
