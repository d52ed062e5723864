using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Whose spoons and cups: said, shown, placed, worded, or assumed and called so.</summary>
public sealed class MeasureSystemTests
{
    [Theory]
    [InlineData("# A\nAll measures are Australian.\n\n- 1 tbsp sugar", "au", true)]
    [InlineData("# A\n\n- 1 tbsp sugar\n\n## Notes\nA tablespoon is 20 ml.", "au", true)]
    [InlineData("# A\n\n- 1 cup (250 ml) milk\n- 2 eggs", "metric", true)]
    [InlineData("# A\n\n- 2 cups (480 ml) milk\n- 2 eggs", "us", true)]
    [InlineData("# A\n\n- 500 ml (2 1/2 cups) milk\n- 2 eggs", "jp", true)]
    [InlineData("# A\n\n- 1 tbsp (20 ml) oil\n- 1 cup (250 ml) milk", "au", true)]
    [InlineData("# A\n\n- 1 pint (568 ml) milk\n- 2 eggs", "uk", true)]
    [InlineData("# A\n\n- 1 cup all-purpose flour\n- 2 eggs", "us", false)]
    [InlineData("# A\n\n- 2 tbsp thickened cream\n- 2 eggs", "au", false)]
    [InlineData("# A\n\n- 1/2 pint double cream\n- 2 eggs", "uk", false)]
    [InlineData("# 卵焼き\n\n- 卵 3個\n- 砂糖 大さじ1", "jp", false)]
    [InlineData("# A\n\n- 1/3 cup (80 ml) milk\n- 2 eggs", "metric", false)]
    [InlineData("# A\n\n- 200 ml double cream\n- 2 eggs", "metric", false)]
    [InlineData("# Soup\n\n- 2 tbsp oil\n\n## Notes\nFrom a Melbourne-born cook (1988).", "au", false)]
    [InlineData("# Soup\n\n- 2 tbsp oil\n\n## Notes\nCook's notes, «Perth», winter.", "au", false)]
    [InlineData("# Soup\n\n- 2 tbsp oil\n\n## Notes\nPlates McPerth and Perth2 are names.", "metric", false)]
    [InlineData("# Roast turkey\n\n- 2 tbsp oil\n- 1 turkey", "metric", false)]
    public void Is_found_and_says_what_it_rests_on(string card, string system, bool settled)
    {
        MeasureSystem m = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(card))).Value.Measures;

        Assert.Equal((system, settled), (m.System, m.Settled));
        Assert.True(m.Because.Length > 8);
    }
}
