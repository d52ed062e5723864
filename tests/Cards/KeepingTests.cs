namespace Coulisse.Cards.Tests;

/// <summary>How long a thing keeps, told in a sentence beside the lists: each place with its own time. Readings as a cook gives them: common practice, no source.</summary>
public sealed class KeepingTests
{
    private static string Kept(string sentence) => string.Join(" | ", Told.Read($"# Jam\n\n- 500 g plums\n- 300 g sugar\n\n1. Boil 20 min.\n\n{sentence}\n").Components
        .SelectMany(c => c.Keeps).Select(k => FormattableString.Invariant($"{(k.Where.Length > 0 ? k.Where : "?")} {k.Hours}")));

    [Theory]
    [InlineData("Keeps 4 days in the fridge or 2 months frozen.", "fridge 96 | freezer 1440")]
    [InlineData("Keeps: fridge 4 days / freezer 2 months.", "fridge 96 | freezer 1440")]
    [InlineData("Keeps 5 days at 3 °C.", "fridge 120")]
    [InlineData("Keeps 2 weeks.", "? 336")]
    [InlineData("Ready after 2 weeks, keeps 6 months.", "? 4320")]
    [InlineData("Keeps 3 days in the walk-in.", "fridge 72")]
    [InlineData("Keeps airtight 10 days.", "airtight 240")]
    public void Each_place_has_its_own_time(string sentence, string want) => Assert.Equal(want, Kept(sentence));
}
