using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Names between the lines of a list, labels over a step, tables of times, lines a narrow page broke: kinds a ninth blind set showed, each beside what looks like it. Readings as a cook gives them: common practice, no source.</summary>
public sealed class RowKindTests
{
    [Fact]
    public void A_block_that_opens_with_a_bare_name_may_have_more_of_them()
    {
        Assert.Equal(["Reduction: 150 ml Madeira", "Reduction: 80 g shallots", "Filling mix: 800 g chicken livers", "Filling mix: 6 piece eggs"], Lines(Read("Livers\n\nReduction\n150 ml Madeira\n80 g shallots\nFilling mix\n800 g chicken livers\n6 eggs\n\nBake it.\n")));
        Assert.Equal(["Marinade - wed: 6 l red wine", "Marinade - wed: 2 kg onions", "Cheeks - thurs: 14 kg beef cheeks", "Cheeks - thurs: 500 ml rapeseed oil"], Lines(Read("Banquet. 40 covers.\n\nMarinade - wed\n6 litres red wine\n2 kg onions\nCheeks - thurs\n14 kg beef cheeks\n500 ml rapeseed oil\n")));
        Assert.Equal(["crab mix: 500 g white meat", "crab mix: 15 g chives", "avo puree: 4 piece ripe avocados", "avo puree: 60 g yoghurt"], Lines(Read("crab dish\n8 covers\n\ncrab mix\n500g white meat\n15g chives\navo puree\n4 ripe avocados\n60g yoghurt\n\n- avo: blend 2 min, pass, bag\n")));
        Assert.Equal(["鴨の下味: 12 g 塩", "煮汁: 600 ml だし", "煮汁: 50 ml 酒"], Lines(Read("鴨ロースの煮おろし\n\n鴨の下味\n塩 12g\n煮汁\nだし 600ml\n酒 50ml\n\n① 煮汁を沸かす。\n")));
    }

    [Theory]
    [InlineData("salt")]
    [InlineData("Olive oil")]
    [InlineData("Vegetable oil for frying")]
    [InlineData("freshly ground pepper")]
    public void A_food_without_an_amount_between_amounts_is_no_name(string bare) => Assert.All(Read($"Leeks\n\nSauce\n200 g cream\n20 g butter\n{bare}\n30 g mustard\n10 g vinegar\n").Components, c => Assert.Equal("Sauce", c.Name));

    [Fact]
    public void The_first_bullet_heads_when_a_later_one_surely_does_were_it_a_food()
    {
        Assert.Equal(["Masa quebrada: 250 g harina", "Masa quebrada: 125 g mantequilla", "Relleno: 500 g calabaza", "Relleno: 3 piece huevos"], Lines(Read("* Masa quebrada\n* 250 g de harina\n* 125 g de mantequilla\n* Relleno\n* 500 g de calabaza\n* 3 huevos\n* Hornear 35-40 min a 170 ºC.\n")));
        Assert.Equal(3, Lines(Read("- Salt\n- 250 g flour\n- 125 g butter\n")).Length);
    }

    [Fact]
    public void The_word_for_the_method_on_a_bullet_divides()
    {
        Dish d = Read("- Hay cream\n- 15 g meadow hay\n- 700 g whipping cream\n- Method\n- Toast the hay 10 minutes at 160°C.\n- Blend for 2 minutes.\n");

        Assert.Equal(2, Lines(d).Length);
        Assert.Equal(2, Steps(d).Length);
    }

    [Fact]
    public void A_label_in_bold_stands_over_its_step()
    {
        Dish d = Read("# Scallops\n\n### Curry oil\n* 400 ml grapeseed oil\n* 25 g curry powder\n\n1. **Oil**\n   Warm the oil with the powder to 70°C, infuse 2 hours, strain.\n2. **Chill**\n   Chill 1 hour.\n");

        Assert.Equal(2, Steps(d).Length);
        Assert.Equal(120, d.Components[0].Steps[0].Times[0].MinutesMin);
        Assert.Equal(70, d.Components[0].Steps[0].Temperatures[0].Celsius);
    }

    [Fact]
    public void A_table_of_times_weighs_nothing_and_one_of_weights_does()
    {
        Assert.Equal(["Oil: 400 ml oil"], Lines(Read("# Scallops\n\n| Component | Make | Keeps |\n|---|---|---|\n| Curry oil | 2 days ahead | 3 weeks |\n| Raisins | 1 day ahead | 2 weeks |\n\n### Oil\n* 400 ml oil\n")));
        Assert.Equal(2, Lines(Read("# Dough\n\n| Ingredient | Amount |\n|---|---|\n| Flour | 500 g |\n| Water | 300 g |\n")).Length);
    }

    [Fact]
    public void Sentences_a_narrow_page_broke_are_whole_again()
    {
        Dish d = Read("Cured duck\n\nDuck\n8 duck breasts, about 200 g\neach\n90 g coarse salt\n600 g sour cherries, stoned\nand halved\n\nMethod\nRub the breasts with the salt and juni-\nper, leave for 40 minutes, rinse and dry.\nLayer with the fat, bake at 160°C for 2 hours\n15 minutes, press and chill 12 hours.\n");

        Assert.Equal(["Duck: 8 piece duck breasts", "Duck: 90 g coarse salt", "Duck: 600 g sour cherries"], Lines(d));
        Assert.Equal([40, 135, 720], d.Components[0].Steps.SelectMany(s => s.Times).Select(t => t.MinutesMin!.Value));
    }

    [Fact]
    public void A_time_in_front_is_no_count_of_anything()
    {
        Assert.Equal(2, Steps(Read("- Teig\n- 300 g Mehl\n- 250 g Butter\n- 45 Min. bei 175 °C backen.\n- Zwei Tage durchziehen lassen.\n")).Length);
        Assert.Single(Lines(Read("Steaks\n\n6 minute steaks\n")));
    }
}
