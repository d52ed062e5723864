using Coulisse.Cards.Writing;
using Coulisse.Gauge.Reading.Fuzz;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>A card written, read and written again is the same text from then on, however spoiled it was; no word of it is lost on the way. Each example is the least of its kind.</summary>
public sealed class SettleKindTests
{
    [Theory]
    // several short remarks over a list without a name
    [InlineData("# Supper\n\nAutumn\n\nHouse style\n\nOld menu\n\n- 5 g salt\n- 4 g oil")]
    [InlineData("pot\nWinter\nFor Anna\nBook two\n0 g\n")]
    [InlineData("Tart\nLemon\nSpring\nPine\nsalt 5 g")]
    [InlineData("soup\nSage>\nSorrel\nSalt\n2.")]
    // work in a list that has no steps of its own
    [InlineData("# Soup\n\n- 4 bulbs\n\nstock:\n\n- Peel the bulbs for staff soup (hands on\n- 3.\n\n1. Stir.")]
    [InlineData("# Soup\n\n- 4 bulbs\n\nstock:\n\n- 3 kg bones\n- Set the pan of reduction aside, 20 min\n\n1. Stir.")]
    [InlineData("# Soup\n\n- 4 bulbs\n\n## stock\n\n- 3.\n- Set a shine on it with a glaze of honey.\n\n1. Stir.")]
    [InlineData("<b>Eggs•0 g•Add to 45 °C.")]
    [InlineData("4 u>\nstock:\n<p>\n<p>1.Peel the bulbs for staff soup (hands on\nStir.\n3.")]
    [InlineData("4sa\nstock:\n<p>\n<i>4>\n1.Boil.<p>\n>4.Set the plate to cool (hands 20 min)")]
    [InlineData("e:<p>\n\n0 K\n<\nor:\n<p>\n<p>1.Peel the roots. Slice across on")]
    // strokes behind an item
    [InlineData("|\n--|1 g|4 g|5 g")]
    [InlineData("n|h\n| |00\n--||22")]
    [InlineData("##0\n- l\n00-\n#")]
    [InlineData("## 材料(4-\nt")]
    [InlineData("|\n--|5 g|40 g|5 g")]
    [InlineData("# Cake\n\n* 22 --\n* 5 g salt")]
    [InlineData("# Cake\n\n## Base\n\n- 5 g salt\n* 00-\n- 4 g oil\n\n1. Stir.")]
    // labels that no line follows
    [InlineData("tart\n\nTop:\n\nTop:\n\nrest it\n\nTop:")]
    [InlineData("# Tart\n\nTop:\n\nTop:\n\nrest it\n\n## Base\n\n1. Stir.")]
    [InlineData("# Tart\n\n## Base\n\n- 5 g salt\n\n1. Stir.\n\nTop:\n")]
    [InlineData("]:\n]:\n]:\nrest")]
    [InlineData("p:\np:\n## base\n4. x\n4 tray")]
    [InlineData("たれ\nc:\nc:\nc:\ncc")]
    // a group opens the list
    [InlineData("# Tart\n\nbase:\n\n- 5 g salt\n- 4 g oil\n\n1. Stir.")]
    // guests told again over the list
    [InlineData("Arroz (8 raciones)\nF8 raciones\n\n5 huevos")]
    [InlineData("(8 raciones)\n)\nF(8 raciones)\n5 os")]
    // raised figures before the first word
    [InlineData("Rice\n¹ 2 g")]
    [InlineData("Rice\n\n- ¹ 2 g salt\n- 8 g leaf gelatine¹\n\n¹ or 4 g agar")]
    [InlineData("Note\n¹ 2 g")]
    [InlineData("|\n--¹|---\n| |2")]
    // hashes in a name
    [InlineData("d#:\n\n2 d\ne")]
    [InlineData("# Tart\n\n## Glaze no. 2#\n\n- 5 g salt")]
    [InlineData("Tart\n<#top>\n1 egg")]
    public void A_card_written_twice_is_the_same_from_then_on(string card)
    {
        string twice = CardWriter.Write(Read(CardWriter.Write(Read(card))));

        Assert.Equal(twice, CardWriter.Write(Read(twice)));
        Assert.Null(Kept.Missing(card, Read(card)));
    }

    [Theory]
    [InlineData("# Soup\n\nFor the guests from Lyon.\n\nServes 4.\n\n- 5 g salt", "# Soup\n\nFor the guests from Lyon.\n\nServes 4.\n\n- 5 g salt\n")]
    [InlineData("# Soup\n\nAutumn\n\nHouse style\n\n- 5 g salt", "# Soup\n\n- 5 g salt\n\n## Notes\n\nAutumn\n\nHouse style\n")]
    [InlineData("# Soup\n\nAutumn\n\nHouse style\n\n## Base\n- 5 g salt", "# Soup\n\nAutumn\n\nHouse style\n\n## Base\n\n- 5 g salt\n")]
    [InlineData("# Soup\n\n## Base\n- 5 g salt\n- chopped chives\n", "# Soup\n\n## Base\n\n- 5 g salt\n- chopped chives\n")]
    [InlineData("# Suppe\n\nFür 6 Personen:\n\n- 5 g Salz", "# Suppe\n\nFür 6 Personen:\n\n- 5 g Salz\n")]
    public void What_reads_back_as_it_stands_is_written_as_it_stands(string card, string written) => Assert.Equal(written, CardWriter.Write(Read(card)));

    [Fact]
    public void A_label_under_the_work_stays_under_it_and_heads_no_list()
    {
        Dish d = Read("# Tart\n\n## Base\n\n- 5 g salt\n\n1. Stir.\n\nTop:\n");

        Assert.EndsWith("1. Stir.\n\nTop:\n", CardWriter.Write(d));
        Assert.Null(Assert.Single(Read(CardWriter.Write(d)).Components[0].Ingredients).Group);
    }

    [Theory]
    [InlineData("## Glaze ##", "Glaze")]
    [InlineData("##Glaze##", "Glaze")]
    [InlineData("## Glaze: ##", "Glaze")]
    [InlineData("## Glaze no. 2#", "Glaze no. 2#")]
    public void Hashes_behind_a_heading_close_what_they_open(string heading, string name) => Assert.Equal(name, Assert.Single(Read($"# Tart\n\n{heading}\n\n- 5 g salt").Components).Name);

    [Theory]
    [InlineData("# Gâteau\n\n- 200 g sucre\n\n## Jour J (samedi)\n\n1. Mélanger le sucre.", "Jour J", "samedi")]
    [InlineData("# Cake\n\n- 200 g sugar\n\n## Day 2 (Friday)\n\n1. Mix the sugar.", "Day 2", "Friday")]
    [InlineData("# Cake\n\n- 200 g sugar\n\n## Day 2\n\n1. Mix the sugar.", "Day 2", null)]
    [InlineData("# Cake\n\n- 200 g sugar\n\n## Method (easy)\n\n1. Mix the sugar.", null, "easy")]
    public void A_day_keeps_its_name_whatever_stands_in_brackets_behind_it(string card, string? day, string? beside)
    {
        Dish d = Read(card);

        Assert.Equal(day, Assert.Single(d.Components[0].Steps).Under);
        Assert.Equal(beside, d.Notes.SingleOrDefault()?.Text);
    }

    [Theory]
    [InlineData("Salad\n\nDressing: you want 200 g feta, 30 g oil and 4 g salt\nStir.", "you want")]
    [InlineData("Salat\n\nSauce: man nimmt 200 g Quark, 30 g Öl und 4 g Salz\nRühren.", "man nimmt")]
    [InlineData("Salad\n\nDressing: 200 g feta, 30 g oil and 4 g salt\nStir.", null)]
    public void The_words_that_lead_into_a_list_stand_over_it(string card, string? lead)
    {
        Component part = Read(card).Components.Single(c => c.Ingredients.Length == 3);

        Assert.All(part.Ingredients, l => Assert.Equal(lead, l.Group));
    }

    [Theory]
    [InlineData("鶏の照り焼き\n\n材料\n鶏もも肉 300g\n醤油 大さじ2\n\n作り方①鶏肉を焼く。醤油を加えて煮る。\n", null)]
    [InlineData("# A\n\n- 5 g salt\n\nMethod (easy)\n\n1. Stir the salt.\n", null)]
    [InlineData("# A\n\n- 5 g salt\n\nMethod (quince)\n\n1. Stir the salt.\n", "quince")]
    public void A_word_that_divides_a_card_is_not_lost_where_its_line_goes_on(string card, string? missing)
    {
        Dish dish = Read(card);
        dish = missing is null ? dish : dish with { Notes = [] };

        Assert.Equal(missing is null, Kept.Missing(card, dish) is null);
    }
}
