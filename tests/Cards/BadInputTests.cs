using System.Text;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Bad input is bounded and clear, and nothing of it is lost: what was not understood stands as written.</summary>
public sealed class BadInputTests
{
    /// <summary>Every text of the dish that came from the card.</summary>
    private static string All(Dish d) => string.Join('\n', new[] { d.Title }.Concat(d.Notes.Select(n => n.Text)).Concat(d.Unread.Select(u => u.Text)).Concat(d.Variants.SelectMany(v => v.Ingredients).Select(l => l.Text))
        .Concat(d.Components.SelectMany(c => new[] { c.Name }.Concat(c.Ingredients.SelectMany(l => new[] { l.Text, l.Group ?? "" })).Concat(c.Steps.Select(s => s.Text)).Concat(c.Notes.Select(n => n.Text)))));

    [Fact]
    public void Control_characters_are_blanks_and_the_words_around_them_stay()
    {
        Dish d = Read("# Gel\u0007\n\n- 200\u0001g\u0002quince\u001B[0m\n- 2 g agar\u0085\n\n1. Boil\u000Bquince and agar 2\u0003min.\n");

        Assert.Equal(200, d.Components[0].Ingredients[0].Foods[0].Grams);
        Assert.Equal(2, d.Components[0].Steps[0].Times[0].MinutesMin);
        Assert.Contains("quince", All(d), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_a_megabyte_is_read_in_stretches_and_every_word_of_it_is_kept()
    {
        StringBuilder b = new("# A\n\n## Part\n- 20 g quince\n\n1. ");
        for (int i = 0; i < 60_000; i++)
        {
            b.Append("word").Append(i).Append(i % 9 == 8 ? ". " : " ");
        }

        Dish d = Read(b.ToString());
        HashSet<string> kept = [.. All(d).Split([' ', '.', '\n'], StringSplitOptions.RemoveEmptyEntries)];

        Assert.Contains(d.Remarks, r => r.Kind == "long line");
        Assert.Empty(Enumerable.Range(0, 60_000).Where(i => !kept.Contains($"word{i}")));
    }

    [Fact]
    public void Lists_in_lists_ten_thousand_deep_keep_every_line()
    {
        string card = "# A\n\n" + string.Concat(Enumerable.Range(0, 3000).Select(i => new string(' ', i % 1200) + $"- {i + 1} g food{i}\n"));
        Dish d = Read(card);

        Assert.Equal(3000, d.Components.Sum(c => c.Ingredients.Sum(l => l.Foods.Length)));
        Assert.Equal(Enumerable.Range(1, 3000).Sum(), d.Components.Sum(c => c.Ingredients.Sum(l => l.Foods.Sum(f => f.Grams))));
    }

    [Fact]
    public void A_cell_of_nothing_but_strokes_stops_nobody() =>
        Assert.Contains("Goose fat", All(Read("| **Goose** | )| |\n| |\n| Goose fat | 7s３alt00 Methodg | melted |\n\n| \n** | \n")), StringComparison.Ordinal);

    [Theory]
    [InlineData("((((((((((")]
    [InlineData("200 g (((quince")]
    [InlineData("200 g quince)))) (ripe")]
    [InlineData("½½½½ g ¼¼")]
    [InlineData("99999999999999999999999999 g salt")]
    [InlineData("1/0 cup sugar")]
    [InlineData("- - - - 5 g agar - -")]
    [InlineData("\uD800\uDC00 \uD800 5 g")]
    [InlineData("20 g 20 g 20 g 20 g")]
    public void A_line_nobody_can_read_stays_as_written(string line)
    {
        string written = new([.. line.Where(char.IsLetterOrDigit)]);
        string kept = All(Read($"# A\n\n## Part\n- 3 g salt\n- {line}\n- 4 g sugar\n\n1. Mix.\n"));

        Assert.Contains(written, new string([.. kept.Where(char.IsLetterOrDigit)]), StringComparison.Ordinal);
    }

    /// <summary>Growth, not clock: four times the text may take at most six times the memory asked for, whatever shape it has.</summary>
    [Theory]
    [InlineData("- 20 g quince, peeled (ripe) or pear\n")]
    [InlineData("1. Boil 20 min at 90 °C until soft, then chill overnight.\n")]
    [InlineData("## Part\n- 20 g quince\n\n1. Boil it.\n\n")]
    [InlineData("(")]
    [InlineData("a b ")]
    [InlineData("20 ")]
    [InlineData("and 2 g x ")]
    [InlineData("| a | 20 g | b |\n")]
    [InlineData("<b>[a](b)&amp;")]
    [InlineData("大さじ1 砂糖 ")]
    public void Work_grows_with_length_and_no_faster(string piece)
    {
        long Asked(int times)
        {
            string text = "# A\n\n" + string.Concat(Enumerable.Repeat(piece, times));
            _ = Read(text);
            long before = GC.GetAllocatedBytesForCurrentThread();
            _ = Read(text);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        int n = 24_000 / piece.Length;
        long small = Asked(n);
        long large = Asked(4 * n);

        Assert.True(large < 6 * small, $"{small} bytes for {n}, {large} for four times as many");
    }
}
