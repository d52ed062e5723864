using Coulisse.Cards;
using Coulisse.Formats.In;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>Pages that cost their square or glue their words: nested without end, raised figures, paragraphs of marked data.</summary>
public sealed class PageKindTests
{
    private static string Card(string text) => Assert.IsType<Parsed<CardText>.Ok>(Incoming.ToCard(text)).Value.Text.ReplaceLineEndings("\n");

    private static string Nested(int n, string tag = "div") => string.Concat(Enumerable.Repeat($"<{tag}>", n)) + "<li>5 g salt</li>" + string.Concat(Enumerable.Repeat($"</{tag}>", n));

    /// <summary>What a parser walks: the open elements at each opening tag.</summary>
    private static long Walked(string html)
    {
        (long all, int depth) = (0, 0);
        foreach (System.Text.RegularExpressions.Match m in System.Text.RegularExpressions.Regex.Matches(html, "<(/?)(div|span|table)[^>]*>"))
        {
            depth += m.Groups[1].Length == 0 ? 1 : -1;
            all += m.Groups[1].Length == 0 ? depth : 0;
        }

        return all;
    }

    [Theory]
    [InlineData("div")]
    [InlineData("span")]
    [InlineData("table")]
    public void Twice_the_nesting_is_walked_in_twice_the_steps(string tag)
    {
        Assert.InRange(Walked(PageDepth.Of(Nested(20_000, tag)).Html), 1, 2 * Walked(PageDepth.Of(Nested(10_000, tag)).Html));
        Assert.InRange((double)Walked(Nested(20_000, tag)) / Walked(Nested(10_000, tag)), 3.9, 4.1); // uncut, it is the square
    }

    [Fact]
    public void A_page_too_deep_keeps_its_words_and_says_so_and_a_deep_one_says_nothing()
    {
        string deep = Card(Nested(40_000));
        Assert.Contains("- 5 g salt", deep, StringComparison.Ordinal);
        Assert.Contains("Note: the page nests 39800 of its tags deeper than 200", deep, StringComparison.Ordinal);
        Assert.DoesNotContain("Note:", Card(Nested(150)), StringComparison.Ordinal);
        Assert.Equal(Nested(200), PageDepth.Of(Nested(200)).Html);
    }

    [Fact]
    public void Ends_left_out_comments_and_scripts_nest_nothing()
    {
        string items = "<ul>" + string.Concat(Enumerable.Range(1, 600).Select(i => $"<li>{i} g salt<p>fine")) + "</ul>";
        Assert.Equal((items, 0), PageDepth.Of(items));
        string odd = "<div title=\"a > b\"><!-- " + string.Concat(Enumerable.Repeat("<div>", 500)) + " --><script>" + string.Concat(Enumerable.Repeat("'<div>'", 500)) + "</script><br><li>5 g salt</div>";
        Assert.Equal((odd, 0), PageDepth.Of(odd));
    }

    [Fact]
    public void Many_neighbours_are_all_read_in_their_order()
    {
        string card = Card("<ul>" + string.Concat(Enumerable.Range(1, 3000).Select(i => $"<li>{i} g <b>salt</b></li>")) + "</ul>");
        Assert.Equal(Enumerable.Range(1, 3000).Select(i => $"- {i} g salt"), card.Split('\n').Where(l => l.StartsWith("- ", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_tag_of_thousands_of_attributes_is_its_name()
    {
        string many = "<div " + string.Join(' ', Enumerable.Range(0, 5000).Select(i => $"a{i}=1")) + "><li>5 g salt</li></div>";
        Assert.Equal("<div><li>5 g salt</li></div>", PageDepth.Of(many).Html);
    }

    [Theory]
    [InlineData("1 egg<sup>1</sup>", "1 egg¹")]
    [InlineData("1 egg<sup>12</sup>, beaten", "1 egg¹², beaten")]
    [InlineData("1<sup>1/2</sup> cups milk", "1 1/2 cups milk")]
    [InlineData("1<sup>1</sup>/<sub>2</sub> cups milk", "1 1/2 cups milk")]
    [InlineData("100 cm<sup>3</sup> milk", "100 cm³ milk")]
    [InlineData("the 1<sup>st</sup> egg", "the 1st egg")]
    [InlineData("2 g CO<sub>2</sub>", "2 g CO2")]
    public void Raised_figures_are_no_part_of_a_word(string item, string read) => Assert.Contains("- " + read + "\n", Card($"<ul><li>{item}</li><li>5 g salt</li></ul>"), StringComparison.Ordinal);

    [Theory]
    [InlineData("<span>2</span> <span>kg</span> <span>ripe plums</span>", "2 kg ripe plums")]
    [InlineData("\n <b>200</b>\n <i>g</i>\n <a href='x'>rye bread</a>, stale\n", "200 g rye bread, stale")]
    [InlineData("<b>B</b>rown sugar <span>5 g</span>", "Brown sugar 5 g")]
    public void White_space_alone_between_two_inline_elements_parts_their_words(string item, string read)
    {
        Assert.Contains("- " + read + "\n", Card($"<ul><li>{item}</li> <li>5 g salt</li></ul>"), StringComparison.Ordinal);
        Assert.Contains("- " + read + "\n", Card($"<div itemscope itemtype='https://schema.org/Recipe'><ul><li itemprop='recipeIngredient'>{item}</li></ul></div>"), StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_in_the_wrapping_of_a_list_are_steps_and_tips_are_remarks()
    {
        string card = Card("""{"@type":"Recipe","name":"Broth","recipeIngredient":["1 kg bones"],"recipeInstructions":{"@type":"ItemList","itemListElement":[{"@type":"ListItem","position":1,"item":{"@type":"HowToStep","text":"Boil 10 min."}},{"@type":"HowToStep","itemListElement":[{"@type":"HowToDirection","text":"Strain."},{"@type":"HowToTip","text":"Better a day old."}]},{"@type":"ListItem","item":"https://example.org/3","name":"Cool it."}]}}""");

        Assert.Contains("1. Boil 10 min.\n2. Strain.\n3. Cool it.\n", card, StringComparison.Ordinal);
        Assert.EndsWith("## Notes\n\nBetter a day old.\n\n", card, StringComparison.Ordinal);
    }

    [Fact]
    public void Paragraphs_of_marked_data_are_steps_of_their_own()
    {
        static string Marked(string method) => Card($"<div itemscope itemtype='https://schema.org/Recipe'><h1 itemprop='name'>Gel</h1><p itemprop='recipeIngredient'>200 g<br>quince</p><div itemprop='recipeInstructions'>{method}</div></div>");

        Assert.Contains("- 200 g quince\n", Marked("<p>Boil 5 min.</p><p>Add it.</p>"), StringComparison.Ordinal);
        Assert.Contains("1. Boil 5 min.\n2. Add it.\n", Marked("<p>Boil 5 min.</p><p>Add it.</p>"), StringComparison.Ordinal);
        Assert.Contains("1. Boil 5 min.\n2. Add it.\n", Marked("Boil 5 min.<br>Add it."), StringComparison.Ordinal);
        Assert.Contains("1. Boil 5 min. Well.\n2. Add it.\n", Marked("<ol><li><p>Boil 5 min.</p><p>Well.</p></li><li><span itemprop='text'>Add it.</span></li></ol>"), StringComparison.Ordinal);
        Assert.DoesNotContain("3. ", Marked("<ol><li><p>Boil 5 min.</p></li><li><span itemprop='text'>Add it.</span></li></ol>"), StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_of_a_cell_stay_in_their_row_and_those_of_a_page_stay_lines()
    {
        string table = Card("<table><tr><th>Dish</th><th>Ingredients</th><th>Method</th></tr><tr><td>Pancakes</td><td><ul><li>200 g flour</li><li>2 eggs</li></ul></td><td>Whisk.</td></tr><tr><td>Compote</td><td>300 g berries<br>50 g sugar</td><td>Simmer.</td></tr></table>");

        Assert.Contains("| Pancakes | 200 g flour<br>2 eggs | Whisk. |", table, StringComparison.Ordinal);
        Assert.Contains("| Compote | 300 g berries<br>50 g sugar | Simmer. |", table, StringComparison.Ordinal);
        Assert.DoesNotContain("<br>", Card("<table><tr><td><h2>Stew</h2><ul><li>200 g leeks</li><li>2 eggs</li></ul></td><td><p>Simmer.</p><p>Serve.</p></td></tr></table>"), StringComparison.Ordinal);
    }
}
