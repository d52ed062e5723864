using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.In;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>What a page has around its recipe without saying so: a menu over the title, pieces of a row that only a style sets apart; each beside a near miss. Our own examples.</summary>
public sealed class PageEdgesTests
{
    [Theory]
    [InlineData("<div><ul><li>About</li><li>Rota</li><li>Suppliers</li></ul></div><h1>Curry</h1><ul><li>1 kg onions</li><li>80 g ginger</li></ul><ol><li>Fry 20 minutes.</li></ol>")]
    [InlineData("<ul><li><a href='/'>Accueil</a></li><li>Nos fournisseurs</li></ul><h1>Curry</h1><ul><li>1 kg onions</li><li>80 g ginger</li></ul><p>Fry 20 minutes.</p>")]
    public void A_list_of_words_over_the_title_is_the_menu_of_the_site(string page)
    {
        Dish d = Read($"<html><body>{page}</body></html>");

        Assert.Equal("Curry", d.Title);
        Assert.Equal(["1 kg onions", "80 g ginger"], Lines(d));
    }

    [Theory]
    [InlineData("<ul><li>200 g flour</li><li>100 g butter</li></ul><h1>Scones</h1><p>Bake 12 minutes.</p>", "200 g flour")]
    [InlineData("<ul><li>flour</li><li>butter</li></ul><h1>Scones</h1><p>Bake them.</p>", "flour")]
    [InlineData("<h1>Scones</h1><ul><li>flour</li><li>100 g butter</li></ul><p>Bake 12 minutes.</p>", "flour")]
    public void A_list_of_foods_stays_wherever_it_stands(string page, string line) => Assert.Contains(line, Card($"<html><body>{page}</body></html>"), StringComparison.Ordinal);

    [Theory]
    [InlineData("<span>Yield</span><span>9 biscuits</span><span>Hands-on</span><span>15 min</span>", "Yield  9 biscuits  Hands-on")]
    [InlineData("<span>Menu</span><span>Sign in</span><span>Cart (0)</span><span>Help</span>", "Menu  Sign in  Cart (0)  Help")]
    [InlineData("<span>M</span><span>elt the butter</span>", "Melt the butter")]
    [InlineData("<span>2</span><span>½ cups</span><span> flour</span>", "2½ cups flour")]
    [InlineData("<span>CO</span><span>2</span> siphon", "CO2 siphon")]
    [InlineData("<span>200</span><span>g flour</span>", "200g flour")]
    public void Pieces_set_apart_by_a_style_are_words_of_their_own_and_halves_are_one(string row, string words) => Assert.Contains(words, Card($"<html><body><h1>Biscuits</h1><div>{row}</div></body></html>"), StringComparison.Ordinal);

    private static string Card(string text) => Assert.IsType<Parsed<CardText>.Ok>(Incoming.ToCard(text)).Value.Text;

    private static Dish Read(string text) => Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(Card(text)))).Value;

    private static string[] Lines(Dish d) => [.. d.Components.SelectMany(c => c.Ingredients.SelectMany(l => l.Foods)).Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}"))];
}
