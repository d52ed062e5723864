using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Kinds that two blind sets showed, each beside what looks like it and is none: amounts that would pair with the wrong food, lists of names, counts behind a stroke, yields under a title, a method over its list. Readings as a cook gives them: common practice, no source.</summary>
public sealed class MendedKindTests
{
    private static string Line(string line, string lang) => string.Join(" + ", CardReader.ReadLine(line, lang).Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}").Trim()));

    private static string Minutes(string step, string lang) => string.Join(' ', CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}")));

    [Theory]
    [InlineData("salt, white pepper and a little nutmeg", "en", "salt + white pepper + nutmeg")]
    [InlineData("Salz, Pfeffer und etwas Muskat", "de", "Salz + Pfeffer + Muskat")]
    [InlineData("sel, poivre et un peu de muscade", "fr", "sel + poivre + muscade")]
    [InlineData("butter, a little softened", "en", "butter")]
    public void A_little_of_a_food_is_one_of_a_list(string line, string lang, string want) => Assert.Equal(want, Line(line, lang));

    [Fact]
    public void A_little_is_said_of_its_own_food_and_to_taste_of_all()
    {
        Assert.Equal([null, "a little"], CardReader.ReadLine("salt and a little nutmeg", "en").Foods.Select(f => f.Use));
        Assert.DoesNotContain(CardReader.ReadLine("salt and pepper, to taste", "en").Foods, f => f.Use is null);
    }

    [Theory]
    [InlineData("Ox cheeks - 6, trimmed", "en", "6 piece Ox cheeks")]
    [InlineData("Shallots – 3, diced", "en", "3 piece Shallots")]
    [InlineData("Flour - 300, sifted", "en", "300 g Flour")]
    [InlineData("acciughe sott'olio, 6 filetti", "it", "6 piece acciughe sott'olio")]
    [InlineData("hake portions x10", "en", "10 piece hake portions")]
    [InlineData("water 620 g @ 30C", "en", "620 g water")]
    [InlineData("Wasser 620 g bei 30 °C", "de", "620 g Wasser")]
    [InlineData("eau 620 g à 30 °C", "fr", "620 g eau")]
    [InlineData("kaffir lime leaves\t8", "en", "8 piece kaffir lime leaves")]
    [InlineData("1,5 kg Schweinenacken am Stück", "de", "1.5 kg Schweinenacken")]
    [InlineData("1.5 kg pork neck in one piece", "en", "1.5 kg pork neck")]
    [InlineData("2-3 EL frisch geriebener Meerrettich", "de", "2 tbsp Meerrettich")]
    [InlineData("100 g fein gehackte Petersilie", "de", "100 g Petersilie")]
    public void Amounts_and_what_hangs_on_them(string line, string lang, string want) => Assert.Equal(want, Line(line, lang));

    [Theory]
    [InlineData("200 g frische Feigen", "de", "200 g frische Feigen")]
    [InlineData("chocolate 70%, chopped", "en", "chocolate 70%")]
    [InlineData("Weizenmehl Type  55", "de", "Weizenmehl Type 55")]
    public void Near_misses_of_them(string line, string lang, string want) => Assert.Equal(want, Line(line, lang));

    [Theory]
    [InlineData("10 hake portions (150 g)", 1500)]
    [InlineData("4 salmon fillets (600 g)", 600)]
    [InlineData("4 pork chops (800 g)", 800)]
    public void Nobody_serves_portions_of_fifteen_grams(string line, double grams) => Assert.Equal(grams, CardReader.ReadLine(line, "en").Foods[0].Grams);

    [Theory]
    [InlineData("Simmer for between 45 minutes and an hour.", "en", "45-60")]
    [InlineData("Zwischen 45 Minuten und einer Stunde köcheln.", "de", "45-60")]
    [InlineData("Cuire entre 45 minutes et une heure.", "fr", "45-60")]
    [InlineData("Cocer entre 45 minutos y una hora.", "es", "45-60")]
    [InlineData("Cuocere tra 45 minuti e un'ora.", "it", "45-60")]
    [InlineData("Cook 45 minutes and an hour later add the peas.", "en", "45-45 60-60")]
    public void Between_two_times_is_one_stretch(string step, string lang, string want) => Assert.Equal(want, Minutes(step, lang));

    [Theory]
    [InlineData("Roast at 170°C for 1½ hours. Turn up to 220°C for the last 10 minutes.", "en", "90-90 10-10")]
    [InlineData("Cuocere a 160°C per 1 ora, poi alzare a 200°C per gli ultimi 10 minuti.", "it", "60-60 10-10")]
    [InlineData("Bake 40 min at 180°C, uncover for the last 10 minutes.", "en", "40-40")]
    [InlineData("Bake from frozen 18 min @170°C, vent open for the last 3 min.", "en", "18-18")]
    public void The_last_minutes_at_a_heat_of_their_own(string step, string lang, string want) => Assert.Equal(want, Minutes(step, lang));

    [Theory]
    [InlineData("• ")]
    [InlineData("- ")]
    public void Items_further_in_under_a_bullet_keep_their_own_amounts(string mark)
    {
        Dish d = Read($"Arancini\n\n{mark}Riso\n  riso originario, 500 g\n  brodo vegetale, 1,3 l\n  zafferano, 2 bustine\n{mark}Panatura\n  farina, 150 g\n  pangrattato, 400 g\n\nCuocere il riso 18 minuti.\nFriggere 5 minuti.\n");

        Assert.Equal(["Riso: 500 g riso originario", "Riso: 1.3 l brodo vegetale", "Riso: 2 pack zafferano", "Panatura: 150 g farina", "Panatura: 400 g pangrattato"], Lines(d));
    }

    [Theory]
    [InlineData("riso, 500 g brodo vegetale, 1,3 l zafferano, 2 bustine burro, 50 g", "it", "500 g riso + 1.3 l brodo vegetale + 2 pack zafferano + 50 g burro")]
    [InlineData("flour, 500 g butter, 250 g sugar, 120 g", "en", "500 g flour + 250 g butter + 120 g sugar")]
    [InlineData("Mehl, 500 g Butter, 250 g Zucker, 120 g", "de", "500 g Mehl + 250 g Butter + 120 g Zucker")]
    [InlineData("salt, 500 g flour, 250 g butter", "en", "salt + 500 g flour + 250 g butter")]
    [InlineData("tomatoes, 400 g tin tomatoes", "en", "tomatoes")]
    [InlineData("beef shin, 4 cm cubes, 2 kg", "en", "2 kg beef shin")]
    [InlineData("asparagus, 600 g, 400 g trimmed", "en", "600 g asparagus")]
    public void A_list_that_lost_its_line_ends_keeps_each_amount_with_its_food(string line, string lang, string want)
    {
        (IngredientLine read, System.Collections.Immutable.ImmutableArray<Doubt> asked) = CardReader.ReadLineWithDoubts(line, lang);

        Assert.Equal(want, string.Join(" + ", read.Foods.Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}").Trim())));
        Assert.Empty(asked);
    }

    [Fact]
    public void A_list_whose_amounts_may_stand_before_or_behind_is_asked()
    {
        Doubt asked = Assert.Single(CardReader.ReadLineWithDoubts("flour, 500 g butter, 250 g sugar", "en").Doubts);

        Assert.Equal(["500 g butter + 250 g sugar + flour", "500 g flour + 250 g butter + sugar"], asked.Candidates.Select(c => c.Plain));
    }

    [Theory]
    [InlineData("10 hake fillets (150 g)", true)]
    [InlineData("4 salmon fillets (600 g)", false)]
    [InlineData("10 anchovy fillets (100 g)", false)]
    public void A_weight_too_small_for_all_is_asked(string line, bool asked) => Assert.Equal(asked, CardReader.ReadLineWithDoubts(line, "en").Doubts.Any(d => d.Question.Contains("does each weigh", StringComparison.Ordinal)));

    [Fact]
    public void Numbered_names_over_items_further_in() =>
        Assert.Equal(["Riso: 500 g riso originario", "Riso: 1.3 l brodo vegetale", "Panatura: 150 g farina", "Panatura: 400 g pangrattato"], Lines(Read("Arancini\n\n1. Riso\n   riso originario, 500 g\n   brodo vegetale, 1,3 l\n2. Panatura\n   farina, 150 g\n   pangrattato, 400 g\n\nFriggere 5 minuti.\n")));

    [Fact]
    public void The_rest_of_a_broken_bullet_is_still_joined() =>
        Assert.Equal([": 10 piece beef cheeks", ": 200 g butter"], Lines(Read("Beef cheeks\n\n• 10 beef cheeks, trimmed, about\n  280 g each\n• 200 g butter\n\nBraise 3 hours.\n")));

    [Fact]
    public void Small_words_under_an_amount_go_on_with_it() =>
        Assert.Equal([": 130 g brown butter", ": 50 g flour", ": 2 piece eggs"], Lines(Read("Small cakes\n\n130 g brown butter, cooled\nto lukewarm\n50 g flour\n2 eggs\n\nMix. Bake 12 minutes.\n")));

    [Theory]
    [InlineData("and a few walnuts", "walnuts")]
    [InlineData("with milk", "milk")]
    public void A_food_is_not_hidden_in_the_line_over_it(string line, string food) =>
        Assert.Contains(Read($"Small cakes\n\n130 g brown butter, cooled\n{line}\n50 g flour\n\nMix. Bake 12 minutes.\n").Components.SelectMany(c => c.Ingredients), l => l.Text == line && l.Foods.Any(f => f.Food.Contains(food, StringComparison.Ordinal)));

    [Fact]
    public void A_name_in_small_letters_is_not_joined() =>
        Assert.Contains("for the sauce", Read("Small cakes\n\n130 g butter\n50 g flour\n\nfor the sauce\n100 g cream\n2 eggs\n\nMix. Bake 12 minutes.\n").Components.Select(c => c.Name));

    [Fact]
    public void A_line_over_a_table_names_its_part()
    {
        Dish d = Read("LASAGNE\nDosi per 8 persone\n\nRAGÙ\n| Ingrediente | Quantità |\n|---|---|\n| Salsiccia | 300 g |\n| Cipolla | 1 |\n\nBESCIAMELLA\n| Ingrediente | Quantità |\n|---|---|\n| Latte intero | 1 l |\n| Burro | 80 g |\n\n1. Cuocere 15 minuti.\n");

        Assert.Equal(["RAGÙ: 300 g Salsiccia", "RAGÙ: 1 piece Cipolla", "BESCIAMELLA: 1 l Latte intero", "BESCIAMELLA: 80 g Burro"], Lines(d));
    }

    [Fact]
    public void The_number_of_the_next_step_counts_nothing()
    {
        Dish d = Read("LASAGNE - 60 portions\n\nRAGU\nOnions     2 kg\nPassata    5 kg\n\n1  Soften the onions, 15 min.\n2  Add passata and simmer 45 min.\n3  Hold above 63°C for service.\n");

        Assert.Equal(["RAGU: 2 kg Onions", "RAGU: 5 kg Passata"], Lines(d));
        Assert.Equal(3, d.Components.Sum(c => c.Steps.Length));
    }

    [Theory]
    [InlineData("HADDOCK FISHCAKES, PEA MAYONNAISE", "8 fishcakes", 8)]
    [InlineData("CANTINE - PARMENTIER DE CANARD", "50 rations", 50)]
    public void What_the_title_names_is_made_and_not_bought(string title, string line, double makes)
    {
        Dish d = Read($"{title}\n{line}\n\nMayonnaise\n2 egg yolks\n250 ml sunflower oil\n\n1. Whisk 5 minutes.\n");

        Assert.Equal(makes, d.Yields[0].Amount);
        Assert.Equal(["Mayonnaise: 2 piece egg yolks", "Mayonnaise: 250 ml sunflower oil"], Lines(d));
    }

    [Fact]
    public void A_food_the_title_names_is_bought() =>
        Assert.Contains(": 8 piece onions", Lines(Read("BAKED ONIONS\n8 onions\n\nStuffing\n200 g rice\n50 g butter\n\n1. Bake 50 minutes.\n")));

    [Fact]
    public void Rings_told_with_their_width() => Assert.Equal((2, "rings"), Read("# Coconut entremets (2 x 16 cm rings)\n\n- 100 g sugar\n- 100 g butter\n\n1. Mix. Bake 20 min.\n").Yields[0] is { } y ? (y.Amount, y.Unit) : default);

    [Fact]
    public void A_method_over_its_list_is_work()
    {
        Dish d = Read("Potted shrimps\n\nMelt the butter with the mace and leave to infuse for 15 minutes.\nStir in the shrimps and warm to 60°C.\nSpoon into 6 ramekins and chill for 2 hours.\n\nYou need:\n350 g brown shrimps\n180 g butter\n1/4 tsp ground mace\n");

        Assert.Equal(3, d.Components.Sum(c => c.Steps.Length));
        Assert.Equal(3, Lines(d).Length);
    }

    [Theory]
    [InlineData("Omas Apfelkuchen\n\nButter und Zucker schaumig rühren, Eier zugeben.\nMehl unterheben und in die Form füllen.\nBei 180 °C 45 Minuten backen.\n\nZutaten:\n125 g Butter\n125 g Zucker\n3 Eier\n200 g Mehl\n", 3)]
    [InlineData("Tarte aux pommes\n\nÉtaler la pâte et foncer le moule.\nÉplucher les pommes et les ranger sur la pâte.\nCuire 40 minutes à 180 °C.\n\nIl faut :\n6 pommes\n50 g de sucre\n", 3)]
    [InlineData("Omas Krabben\n\nMeine Oma hat die Krabben sonntags gekocht.\nWir haben sie auf Brot gegessen.\n\n125 g Butter\n500 g Krabben\n200 g Mehl\n", 0)]
    public void A_method_over_its_list_in_other_languages(string card, int steps) => Assert.Equal(steps, Read(card).Components.Sum(c => c.Steps.Length));

    [Theory]
    [InlineData("2 g Uova", "it", true)]
    [InlineData("120 g Uova", "it", false)]
    [InlineData("2 g salt", "en", false)]
    public void Two_grams_of_eggs_are_asked(string line, string lang, bool asked) => Assert.Equal(asked, !CardReader.ReadLineWithDoubts(line, lang).Doubts.IsEmpty);

    [Fact]
    public void The_number_of_a_step_goes_on_over_a_blank_line() =>
        Assert.Equal(["RAGU: 2 kg Onions", "RAGU: 5 kg Passata"], Lines(Read("LASAGNE - 60 portions\n\nRAGU\nOnions     2 kg\nPassata    5 kg\n\n1  Soften the onions, 15 min.\n\n2  Add passata and simmer 45 min.\n\n3  Hold above 63°C for service.\n")));

    [Fact]
    public void A_head_note_over_a_list_is_no_work() =>
        Assert.Equal(["Stir and serve."], Read("Potted shrimps\n\nMy aunt potted the shrimps on Sundays.\nWe ate them on toast.\n\n350 g brown shrimps\n180 g butter\n\nStir and serve.\n").Components.SelectMany(c => c.Steps).Select(s => s.Text));

    private static string Canteen(string bare, string salt) => $"Linsen mit Spätzle (40 Portionen)\n\nTellerlinsen                 3 kg\nZwiebeln                     800 g\nGemüsebrühe                  9 l\nWeizenmehl                   4 kg\n{bare}\n{salt}\n\nLinsen 40 Min. köcheln.\n";

    [Theory]
    [InlineData("Eier                         40", ": 40 piece Eier")]
    [InlineData("Saitenwürste                 80", ": 80 piece Saitenwürste")]
    public void A_bare_figure_among_told_units_counts(string line, string want)
    {
        Dish d = Read(Canteen(line, "Salz                         60 g"));

        Assert.Contains(want, Lines(d));
        Assert.DoesNotContain(d.Doubts, q => q.Question.Contains("of which unit", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bare_figure_of_what_nobody_counts_is_asked()
    {
        Dish d = Read(Canteen("Butter                       40", "Salz                         60 g"));

        Assert.Contains(": 40 g Butter", Lines(d));
        Assert.Contains(d.Doubts, q => q.Question.Contains("of which unit", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bare_figure_behind_a_colon_is_asked_where_it_may_count() =>
        Assert.NotEmpty(CardReader.ReadLineWithDoubts("Cuisses de canard confites : 25", "fr").Item2);
}
