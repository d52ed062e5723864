using Coulisse.Matter.Foods;
using Coulisse.Tests;

namespace Coulisse.Cards.Tests;

/// <summary>Which food of our table a name means: a wrong one is worse than none, so wrong ones have a ceiling of their own.</summary>
public sealed class FoodIdTests
{
    [Fact]
    public void Few_names_are_left_without_their_food_and_hardly_any_gets_another()
    {
        (string Name, string Want, string Got)[] rows = [.. File.ReadLines(Path.Combine(SharedData.Repository, "tests/Cards/food-ids.tsv")).Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split('\t'))
            .Select(r => (r[1], r[2], FoodTable.Default.Match(r[1], r[0]) is { Confidence: >= 0.8 } m ? m.Id : "-"))];
        string[] wrong = [.. rows.Where(r => r.Got != r.Want && r.Got != "-").Select(r => $"{r.Name}: {r.Got}, not {r.Want}")];
        string[] none = [.. rows.Where(r => r.Got != r.Want && r.Got == "-").Select(r => r.Name)];

        Assert.True(rows.Length > 450 && wrong.Length <= rows.Length / 100 && none.Length <= rows.Length / 20, string.Join('\n', wrong.Concat(none)));
    }

    /// <summary>The commonest foods in five languages, 1,400 names as cards write them: plurals, with the words of a cook, and names near a food that must not be taken for it.</summary>
    [Fact]
    public void The_commonest_foods_are_known_in_every_form_and_none_for_another()
    {
        (string Name, string Want, string Got)[] rows = [.. File.ReadLines(Path.Combine(SharedData.Repository, "tests/Cards/common-foods.tsv")).Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split('\t'))
            .Select(r => ($"{r[0]} {r[1]}", r[2], FoodTable.Default.Match(r[1], r[0]) is { Confidence: >= 0.8 } m ? m.Id : "-"))];

        Assert.True(rows.Length > 1350);
        Assert.Empty(rows.Where(r => r.Got != r.Want && r.Got != "-").Select(r => $"{r.Name}: {r.Got}, not {r.Want}"));
        string[] none = [.. rows.Where(r => r.Got != r.Want && r.Got == "-").Select(r => r.Name)];
        Assert.True(none.Length <= rows.Length / 50, string.Join('\n', none));
    }

    [Theory]
    [InlineData("dried figs", "fig")]
    [InlineData("pork belly", "beef-belly")]
    [InlineData("dried apricots", "apricot")]
    public void A_word_that_changes_the_food_is_not_let_go(string name, string never) => Assert.NotEqual(never, FoodTable.Default.Match(name, "en")?.Id);
}
