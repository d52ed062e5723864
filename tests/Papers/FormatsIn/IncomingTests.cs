using System.Text;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.In;
using Coulisse.Tests;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>What comes in as a page, as data or in an odd encoding becomes card text. Our own examples, and two invented cases laid beside the repository.</summary>
public sealed class IncomingTests
{
    private static string Card(string text) => Assert.IsType<Parsed<CardText>.Ok>(Incoming.ToCard(text)).Value.Text.ReplaceLineEndings("\n");

    private static Dish Dish(string text) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(Card(text)))).Value;

    private static Problem Refused(string text) => Assert.IsType<Parsed<CardText>.Failed>(Incoming.ToCard(text)).Problems[0];

    [Fact]
    public void Recipe_data_of_the_shared_cases_keeps_every_line_in_its_component()
    {
        foreach (JsonElement c in new[] { "data/reading/cases.jsonl", "data/reading/cases-2.jsonl" }.SelectMany(f => File.ReadLines(SharedData.Path(f))).Select(l => JsonDocument.Parse(l).RootElement))
        {
            if (c.GetProperty("kind").GetString() != "card" || c.GetProperty("input").GetString() is not ['{', ..] input)
            {
                continue;
            }

            Dish dish = Dish(input);
            foreach (JsonElement component in c.GetProperty("expect").GetProperty("components").EnumerateArray())
            {
                Component got = Assert.Single(dish.Components, k => k.Name == component.GetProperty("name").GetString());
                Assert.Equal(component.GetProperty("ingredients").GetArrayLength(), got.Ingredients.Length);
            }
        }
    }

    [Fact]
    public void Half_a_character_in_recipe_data_is_marked_and_one_written_as_an_escape_is_refused()
    {
        Assert.Contains("200 g quin\uFFFDce", Card("{\"@type\":\"Recipe\",\"name\":\"A\",\"recipeIngredient\":[\"200 g quin\uD83Cce\"]}"), StringComparison.Ordinal);
        Assert.Equal("CRD004", Refused("{\"@type\":\"Recipe\",\"name\":\"A\",\"recipeIngredient\":[\"200 g quin\\uD83Cce\"]}").Code);
    }

    [Fact]
    public void Sections_inside_sections_and_a_graph_are_followed()
    {
        Dish d = Dish("""{"@graph":[{"@type":"WebPage","name":"x"},{"@type":["Recipe"],"name":"Quince gel","recipeYield":["4","4 glasses"],"recipeIngredient":["Gel:","200 g quince","2 g agar"],"recipeInstructions":{"@type":"ItemList","itemListElement":[{"@type":"HowToSection","name":"Gel","itemListElement":{"@type":"HowToSection","name":"Gel","itemListElement":[{"@type":"HowToStep","text":"Boil at 98&deg;C &amp; set 2 h."}]}}]}}]}""");

        Assert.Equal("Quince gel", d.Title);
        Assert.Equal("Boil at 98°C & set 2 h.", Assert.Single(Assert.Single(d.Components).Steps).Text);
        Assert.Equal(4, d.Yields[0].Amount);
    }

    [Theory]
    [InlineData("PT1H5M", 65.0)]
    [InlineData("P1D", 1440.0)]
    [InlineData("an hour", null)]
    [InlineData("P9999999999D", null)]
    public void Durations_follow_ISO_8601(string iso, double? minutes) => Assert.Equal(minutes is { } m ? $"Cooking: {m} min." : null, Card($$"""{"@type":"Recipe","name":"A","cookTime":"{{iso}}","recipeIngredient":["1 g salt"]}""").Split('\n').FirstOrDefault(l => l.StartsWith("Cooking", StringComparison.Ordinal)));

    [Fact]
    public void A_list_inside_an_item_is_the_list_of_that_part_and_a_flat_list_is_one()
    {
        Dish nested = Dish("<ul><li>Ragù<ul><li>1 kg rabbit</li><li>200 ml wine</li></ul></li><li>White sauce<ul><li>1 l milk</li><li>80 g flour</li></ul></li></ul><p>Simmer 90 min.</p>");
        Dish flat = Dish("<ul><li>1 kg rabbit</li><li>200 ml wine</li></ul><ul><li>1 l milk</li></ul><p>Simmer 90 min.</p>");

        Assert.Equal(["Ragù 2", "White sauce 2"], nested.Components.Select(c => $"{c.Name} {c.Ingredients.Length}"));
        Assert.Equal(3, Assert.Single(flat.Components).Ingredients.Length);
    }

    [Fact]
    public void Data_in_a_page_wins_over_its_words_and_scripts_never_speak()
    {
        string page = Card("<html><head><title>T</title><script>alert('200 g poison')</script><script type=\"application/ld+json\">{\"@type\":\"Recipe\",\"name\":\"Gel\",\"recipeIngredient\":[\"200 g quince\"]}</script></head><body><p>menu</p></body></html>");

        Assert.Contains("- 200 g quince", page, StringComparison.Ordinal);
        Assert.DoesNotContain("poison", page, StringComparison.Ordinal);
        Assert.DoesNotContain("menu", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Microdata_is_read()
    {
        Dish d = Dish("<div itemscope itemtype=\"https://schema.org/Recipe\"><h1 itemprop=\"name\">Gel</h1><ul><li itemprop=\"recipeIngredient\">200 g quince</li></ul><div itemprop=\"recipeInstructions\"><ol><li>Boil 20 min.</li></ol></div></div>");

        Assert.Equal("quince", d.Components[0].Ingredients[0].Foods[0].Food);
        Assert.Equal(20, d.Components.SelectMany(c => c.Steps).Single().Times[0].MinutesMin);
    }

    [Fact]
    public void Plain_lists_of_a_page_are_read_and_its_menu_is_not()
    {
        string card = Card("<html><body><nav><ul><li>100 g home</li></ul></nav><h1>Gel</h1><h2>Base</h2><ul><li>200 g <b>quince</b><li>2 g agar</ul><ol><li>Boil <script>x</script>20 min.</li></ol><table><tr><td>a</td><td></td><td>b</td></tr></table></body></html>");

        Assert.Contains("# Gel\n", card, StringComparison.Ordinal);
        Assert.Contains("- 200 g quince\n- 2 g agar\n", card, StringComparison.Ordinal);
        Assert.Contains("1. Boil 20 min.\n", card, StringComparison.Ordinal);
        Assert.Contains("| a | | b |", card.Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("home", card, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<h2>Velouté</h2><p><strong>Base</strong></p><ul><li>800 g de potimarron</li></ul><p><b>Garniture</b> :</p>\n<ul><li>30 g de graines</li></ul><ol><li>Cuire 25 min.</li></ol>", "Base", "Garniture")]
    [InlineData("<div><h2>Baccalà</h2><p><b>Polenta</b><br>\n250 g di farina<br>\n10 g di sale</p>\n<p><b>Finitura</b><br>\n1 mazzetto di prezzemolo<br>\npepe nero q.b.</p><p><b>Procedimento</b></p><ol><li>Cuocere 45 minuti.</li></ol></div>", "Polenta", "Finitura")]
    public void Bold_words_alone_over_a_list_of_a_page_head_a_part(string page, params string[] parts)
    {
        Dish d = Dish(page);

        Assert.Equal(parts, d.Components.Where(c => !c.Ingredients.IsEmpty).Select(c => c.Name));
        Assert.NotEqual("Untitled", d.Title);
    }

    [Theory]
    [InlineData("<h1>Gel</h1><p><b>Stir well.</b></p><ul><li>200 g quince</li></ul>")]
    [InlineData("<h1>Gel</h1><p><b>Chill</b> the bowl.</p><ul><li>200 g <b>quince</b></li></ul>")]
    [InlineData("<h1>Gel</h1><p><b>A friend of mine</b></p><p>swears by it.</p><ul><li>200 g quince</li></ul>")]
    public void Bold_words_in_a_sentence_or_over_prose_head_nothing(string page) => Assert.DoesNotContain("**", Card(page), StringComparison.Ordinal);

    [Fact]
    public void A_card_with_a_few_tags_in_it_stays_a_card() => Assert.Equal("# A\n<b>200 g</b> quince", Card("# A\n<b>200 g</b> quince"));

    [Fact]
    public void Wrong_JSON_says_where_and_deep_JSON_is_refused_not_followed()
    {
        Assert.Equal(("CRD004", 2), (Refused("{\"@type\":\"Recipe\",\n nonsense}").Code, Refused("{\"@type\":\"Recipe\",\n nonsense}").Line));
        Assert.Equal("CRD004", Refused(new string('[', 100_000)).Code);
        Assert.Equal("CRD005", Refused("{\"@type\":\"WebPage\"}").Code);
    }

    [Fact]
    public void Deep_pages_are_read_without_end_of_stack() =>
        Assert.Contains("200 g quince", Card("<html><body>" + string.Concat(Enumerable.Repeat("<div>", 20_000)) + "<li>200 g quince"), StringComparison.Ordinal);

    public static TheoryData<string, byte[]> Encodings => new()
    {
        { "UTF-8 with mark", [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes("Crème brûlée, 200 g crème, ½ citron")] },
        { "UTF-8", Encoding.UTF8.GetBytes("Crème brûlée, 200 g crème, ½ citron") },
        { "UTF-16 with mark", [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes("Crème brûlée, 200 g crème, ½ citron")] },
        { "UTF-16, high byte first, with mark", [.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes("Crème brûlée, 200 g crème, ½ citron")] },
        { "UTF-16", Encoding.Unicode.GetBytes("Crème brûlée, 200 g crème, ½ citron") },
        { "UTF-16, high byte first", Encoding.BigEndianUnicode.GetBytes("Crème brûlée, 200 g crème, ½ citron") },
        { "Latin-1", Encoding.Latin1.GetBytes("Crème brûlée, 200 g crème, ½ citron") },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Every_encoding_gives_the_same_text(string name, byte[] bytes) =>
        Assert.Equal(("Crème brûlée, 200 g crème, ½ citron", name), (Assert.IsType<Parsed<string>.Ok>(TextBytes.Read(bytes)).Value, name));

    [Fact]
    public void A_picture_is_no_text_and_one_stray_control_character_is_no_picture()
    {
        Assert.Equal("CRD003", Assert.IsType<Parsed<string>.Failed>(TextBytes.Read([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 0x0D, 0x49, 0x48, 0x44, 0x52, 0, 0, 0, 1])).Problems[0].Code);
        Assert.IsType<Parsed<string>.Ok>(TextBytes.Read([.. Encoding.UTF8.GetBytes("# Quince gel\n\u0001\n- 200 g quince and some more words")]));
    }
}
