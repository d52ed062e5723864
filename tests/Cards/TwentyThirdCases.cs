namespace Coulisse.Cards.Tests;

/// <summary>Steps in six languages by an author who had seen neither the reader nor its pages. Eleven expectations that listed an interval, a limit or a moment as a time were changed, and say so. Floors are what is reached and never fall.</summary>
public sealed class TwentyThirdCases
{
    /// <summary>Fewest cases and most misses of each score.</summary>
    private static readonly Dictionary<string, (int Fewest, int Misses)> Floors = new(StringComparer.Ordinal)
    {
        ["steps: minutes"] = (199, 1),
        ["steps: temperatures"] = (198, 0),
    };

    [Fact]
    public void Every_score_reaches_its_floor() => BlindSet.Reaches(Floors, "tests/Cards/cases-23.jsonl");
}
