using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>What stands over the first list, and parts told in sentences: titles that count, yields, tins, rows of a form, heads of pages, each beside what looks like it and is a food. Readings as a cook gives them: common practice, no source.</summary>
public sealed class FrontKindTests
{
    private const string List = "\n\nBase\n200 g flour\n100 g butter\n3 eggs\n";

    [Theory]
    [InlineData("Lemon meringue cups, 10 glasses", "Lemon meringue cups, 10 glasses", 10)]
    [InlineData("PAN DE CENTENO Y MIEL                 4 piezas", "PAN DE CENTENO Y MIEL", 4)]
    [InlineData("COLOMBA - 5 pezzi da 1 kg", "COLOMBA - 5 pezzi da 1 kg", 5)]
    [InlineData("pasta e ceci x 6", "pasta e ceci x 6", 6)]
    [InlineData("STICKY PUDDING x 40 (2 x GN 1/1 60 mm)", "STICKY PUDDING x 40 (2 x GN 1/1 60 mm)", 40)]
    [InlineData("Milk ice base, 5 kg", "Milk ice base, 5 kg", 5)]
    [InlineData("FICHE TECHNIQUE N° 18 – Tarte aux poireaux      Couverts : 8", "Tarte aux poireaux", 8)]
    [InlineData("REZEPTBLATT 112   Roggenmischbrot 70/30        Stück: 60   TE: 1,150 kg", "Roggenmischbrot 70/30", 60)]
    [InlineData("Buckwheat Pancakes (about 12)", "Buckwheat Pancakes (about 12)", 12)]
    [InlineData("Entremets trois chocolats     (cadre 40 x 60, 80 portions)", "Entremets trois chocolats     (cadre 40 x 60, 80 portions)", 80)]
    public void A_first_line_that_counts_is_the_title_and_tells_its_yield(string first, string title, double amount)
    {
        Dish d = Read(first + List);

        Assert.Equal(title, d.Title);
        Assert.Contains(d.Yields, y => Math.Abs(y.Amount - amount) < 0.01);
        Assert.Equal(["Base: 200 g flour", "Base: 100 g butter", "Base: 3 piece eggs"], Lines(d));
    }

    [Theory]
    [InlineData("Ham 2 slices\n\nCheese 3 slices\n\nBread 4 slices\n", new[] { ": 2 slice Ham", ": 3 slice Cheese", ": 4 slice Bread" })]
    [InlineData("Butter 200 g\n\nSugar 100 g\n\nFlour 300 g\n", new[] { ": 200 g Butter", ": 100 g Sugar", ": 300 g Flour" })]
    public void A_list_with_room_between_its_lines_has_no_title(string card, string[] lines) => Assert.Equal(lines, Lines(Read(card)));

    [Theory]
    [InlineData("3 loaves x 1 kg, paper moulds", new[] { 3.0 })]
    [InlineData("1 tart of 26 cm (fluted tin, loose base) - cuts into 12", new[] { 1.0, 12 })]
    [InlineData("12 verrines", new[] { 12.0 })]
    [InlineData("Springform 26 cm, 12 Stücke", new[] { 12.0 })]
    [InlineData("Nombre : 10 tartelettes Ø 8 cm", new[] { 10.0 })]
    [InlineData("Makes 1 cake, 12 slices", new[] { 1.0, 12 })]
    public void A_line_under_the_title_that_counts_the_whole_is_a_yield_and_no_food(string told, double[] amounts)
    {
        Dish d = Read("Winter tart\n" + told + List);

        Assert.Equal(amounts, d.Yields.Select(y => y.Amount));
        Assert.Equal(3, Lines(d).Length);
    }

    [Theory]
    [InlineData("1 loaf, sliced")]
    [InlineData("8 slices of bread")]
    [InlineData("2 jars (250 g) capers")]
    public void A_list_right_under_the_title_may_open_with_a_loaf(string first) => Assert.Equal(3, Lines(Read($"Bread pudding\n{first}\n400 ml milk\n3 eggs\n")).Length);

    [Fact]
    public void A_first_line_of_marks_alone_names_nothing_and_stops_nobody() => Assert.Equal([": 200 g flour", ": 3 piece eggs"], Lines(Read("\u0001\u0002:\u0003\u0004\u0005 \n\n200 g flour\n3 eggs\n")));

    [Fact]
    public void The_rows_of_a_form_and_its_kit_are_no_foods()
    {
        Dish d = Read("FICHE TECHNIQUE N° 27\nIntitulé : Tarte citron meringuée\nNombre : 10 tartelettes Ø 8 cm\nMatériel : cercles 8 cm, poche, douille 12\n\nPÂTE SUCRÉE\nBeurre      150 g\nŒufs        60 g\n");

        Assert.Equal("Tarte citron meringuée", d.Title);
        Assert.Equal(["PÂTE SUCRÉE: 150 g Beurre", "PÂTE SUCRÉE: 60 g Œufs"], Lines(d));
    }

    [Fact]
    public void What_one_needs_is_kit_where_kit_is_told_and_a_list_where_foods_are()
    {
        Assert.Equal(["Parfait: 120 g egg yolk", "Parfait: 50 g water"], Lines(Read("Parfait with quince\n\nYou need: a terrine mould of 1.2 litres, a sugar thermometer, cling film\n\nParfait:\n120 g egg yolk\n50 g water\n")));
        Assert.Equal(2, Lines(Read("Dressing\n\nYou need: 200 g feta, 50 g oil\n")).Length);
    }

    [Fact]
    public void The_first_line_of_a_list_under_its_name_is_one_food()
    {
        Dish d = Read("Poached trout\n4 covers\n\nTrout\n4 trout fillets, 120 g each\n40 g butter\n\nPisto\n300 g courgette, in dice\n200 g onion, chopped\n");

        Assert.Equal(["Trout: 4 piece trout fillets", "Trout: 40 g butter", "Pisto: 300 g courgette", "Pisto: 200 g onion"], Lines(d));
        Assert.Equal(480, d.Components[0].Ingredients[0].Foods[0].Grams);
    }

    [Fact]
    public void A_list_in_one_line_under_its_name_stays_a_list() => Assert.Equal(["OIL: 100 g chive", "OIL: 200 g grapeseed"], Lines(Read("Leeks\n\nOIL\nchive 100, grapeseed 200. blitz 70C 6 min\n\nCURD\nlemon 100 g, egg 200 g\n")).Take(2));

    [Fact]
    public void The_head_of_every_page_is_no_part()
    {
        Dish d = Read("KITCHEN MANUAL                              Section 4: Cold\n\n4.7  Pork terrine\n\nForcemeat\n1 kg pork shoulder\n26 g salt\n\n                 - 38 -\nKITCHEN MANUAL                              Section 4: Cold\n\nRelish\n500 g rhubarb\n120 g sugar\n");

        Assert.Equal("Pork terrine", d.Title);
        Assert.Equal(["Forcemeat: 1 kg pork shoulder", "Forcemeat: 26 g salt", "Relish: 500 g rhubarb", "Relish: 120 g sugar"], Lines(d));
    }

    [Fact]
    public void A_part_told_in_sentences_beside_a_part_with_a_list_is_read()
    {
        Dish d = Read("# Salmon\n\n## Cure\n\nMix 100 g salt with 80 g sugar and 10 g dill. Cover 800 g salmon fillet with it and cure 12 h at 3 °C. Rinse.\n\n## Dressing\n\n- 100 g apple juice\n- 5 g oil\n\n1. Stir together.\n");

        Assert.Equal(["Cure: 100 g salt", "Cure: 80 g sugar", "Cure: 10 g dill", "Cure: 800 g salmon fillet", "Dressing: 100 g apple juice", "Dressing: 5 g oil"], Lines(d));
        Assert.Equal(3, d.Components[0].Steps.Length);
        Assert.NotNull(d.Components[0].Ingredients[3].Foods[0].FoodId);
    }

    [Fact]
    public void The_assembly_takes_parts_and_no_foods_of_its_own()
    {
        Dish d = Read("# Plate\n\n## Purée\n- 500 g carrots\n\n## Crumb\n- 100 g rye bread\n\n## To serve\n\nPut 60 g purée on the plate, scatter 12 g crumb over it. Add 4 g salt and 10 g oil.\n");

        Assert.Equal(["Purée: 500 g carrots", "Crumb: 100 g rye bread"], Lines(d));
    }

    [Fact]
    public void A_head_note_that_remembers_is_no_list() => Assert.Single(Lines(Read("# Cake\n\nMy aunt used 200 g butter and 100 g sugar for hers, which is far too sweet.\n\n## Sponge\n- 300 g flour\n")));

    [Fact]
    public void Work_in_lower_case_behind_the_list_is_work_from_its_first_line()
    {
        Assert.Equal([": flake cod into mash w parsley, shape 8 cakes", ": chill 30 mins"], Steps(Read("Fish cakes\n\n300 g cod\n300 g mash\n2 tbsp parsley\n\nflake cod into mash w parsley, shape 8 cakes\nchill 30 mins\n")));
        Assert.Empty(Steps(Read("Fish cakes\n\n300 g cod\n300 g mash\n2 tbsp parsley\n\nonly for the party of the 12th\n")));
    }

    [Theory]
    [InlineData("Lessare 3/4 minuti.", "it", 3, 4)]
    [InlineData("Cook for 3/4 hour.", "en", 45, 45)]
    [InlineData("Boil 1/2 minute.", "en", 0.5, 0.5)]
    public void Three_stroke_four_are_minutes_and_three_quarters_an_hour(string step, string lang, double least, double most)
    {
        StepTime t = Assert.Single(CardReader.ReadStep(step, lang).Times);
        Assert.Equal((least, most), (t.MinutesMin, t.MinutesMax));
    }

    [Fact]
    public void A_dough_at_26_C_is_no_dough_of_26_cups()
    {
        Assert.DoesNotContain(CardReader.ReadLine("mix 6 min, dough 26 C", "en").Foods, f => f.Unit == "cup");
        Assert.Equal("cup", CardReader.ReadLine("flour 2C", "en").Foods[0].Unit);
    }
}
