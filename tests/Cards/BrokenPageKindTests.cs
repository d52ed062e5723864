using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Steps and lists a page broke, and what it prints beside them: each kind with a near miss.</summary>
public sealed class BrokenPageKindTests
{
    [Theory]
    [InlineData("Beef\n\n1 kg beef\n200 g onions\n\n1. Salt the beef.\n2. Sweat the onions for 10 min,\nreduce the wine by half and add the stock.\nBring to a boil, cover, braise at 140 °C for 3½\nhours.\n3. Strain.", ": Sweat the onions for 10 min, reduce the wine by half and add the stock. Bring to a boil, cover, braise at 140 °C for 3½ hours.")]
    [InlineData("Kipferl\n\n280 g Mehl\n210 g Butter\n\n1. Zu einem Teig ver-\nkneten und 1 Stunde kalt stellen.\n2. Formen. Im vorge-\nheizten Ofen bei 175 °C 12–15\nMinuten backen.", ": Formen. Im vorgeheizten Ofen bei 175 °C 12-15 Minuten backen.")]
    [InlineData("Bread\n\n500 g flour\n350 g water\n\n1. Mix everything and leave it for\n20 minutes.\n2. Bake for 35\nminutes, then cool on a rack.\nKeeps 3 days.", ": Mix everything and leave it for 20 minutes.")]
    public void A_numbered_step_goes_on_to_the_next_number(string card, string want) => Assert.Contains(want, Steps(Read(card)));

    [Theory]
    [InlineData("Cake\n\n1. Dough\n200 g flour\n100 g butter\n2. Filling\n300 g apples\n50 g sugar", 4)]
    [InlineData("Ragù\n\n500 g di carne\n1 cipolla\n\n1. Soffriggere la cipolla\n2. Aggiungere la carne\n3. Cuocere 2 ore", 2)]
    public void Numbered_names_over_lists_and_steps_without_stops_stay(string card, int foods) => Assert.Equal(foods, Lines(Read(card)).Length);

    [Fact]
    public void What_follows_the_last_step_is_no_part_of_it()
    {
        Dish d = Read("Bread\n\n500 g flour\n350 g water\n\n1. Mix everything and leave it for\n20 minutes.\n2. Bake for 35\nminutes, then cool on a rack.\nServes 6.");

        Assert.Equal(": Bake for 35 minutes, then cool on a rack.", Steps(d)[^1]);
        Assert.Equal(6, Assert.Single(d.Yields).Amount);
    }

    [Fact]
    public void A_noun_that_opens_the_next_line_belongs_to_the_amount_before_it() =>
        Assert.Contains(": 100 g Mandeln", Lines(Read("Kipferl\n\n• 280 g Mehl\n• 100 g gemahlene\nMandeln\n• 210 g Butter\n\n1. Kneten.")));

    [Theory]
    [InlineData("croquetas\n\n100 g mantequilla\n1 litro leche\n\npara rebozar\n2 huevos\npan rallado\n\nderretir la mantequilla y freir 2 min", "para rebozar")]
    [InlineData("tarte\n\n250 g de farine\n125 g de beurre\n\npour la crème\n3 œufs\n200 ml de crème\n\ncuire 40 min à 180 °C", "pour la crème")]
    public void A_purpose_in_small_letters_names_what_stands_under_it(string card, string part) => Assert.Equal(part, Read(card).Components[^1].Name);

    [Fact]
    public void What_is_taken_to_taste_behind_steps_is_a_food()
    {
        Dish d = Read("Pasta e fagioli\n\n2 cucchiai di olio\n1 cipolla\n  Soffriggere 8 minuti.\n\n200 g di ditalini\n  Cuocere 9 minuti, mescolando.\n\npepe q.b.\n  Riposare 5 minuti e servire con il pepe.");

        Assert.Contains(":   pepe", Lines(d));
        Assert.Equal(3, Steps(d).Length);
    }

    [Fact]
    public void A_list_under_a_marked_heading_may_begin_with_a_count() =>
        Assert.Contains("Garniture: 5 piece pommes", Lines(Read("# Tarte\n\n## Pâte\n\n250 g de farine\n125 g de beurre\n\n## Garniture\n\n5 pommes\n200 g de compote\n30 g de sucre\n\n## Réalisation\n\nCuire 40 minutes à 190 °C.")));

    [Theory]
    [InlineData("| Ingredient | Quantity |\n|---|---|\n| Flour | 700 g |\n| Eggs | 12 |\n| Icing sugar | for dusting |", ":   Icing sugar")]
    [InlineData("| Zutat | Menge |\n|---|---|\n| Mehl | 700 g |\n| Eier | 12 |\n| Puderzucker | zum Bestäuben |", ":   Puderzucker")]
    public void What_for_stands_where_the_amount_would(string table, string want) => Assert.Contains(want, Lines(Read("# Cake\n\n" + table)));

    [Theory]
    [InlineData("Éclairs\n\nCRÈME\nlait entier 500 g / jaunes 100 g / sucre 110 g / café soluble 8 g\n\nCuire 2 min.", 4)]
    [InlineData("Custard\n\nBASE\nwhole milk 500 g / egg yolks 100 g / sugar 110 g\n\nCook 2 min.", 3)]
    public void A_list_of_strokes_may_hold_whole_milk(string card, int foods) => Assert.Equal(foods, Lines(Read(card)).Length);

    [Theory]
    [InlineData("CANTINE SCOLAIRE – FICHE N° 22\nHachis parmentier – 50 couverts\n\nLait 2 L\nBeurre 400 g\n\n1. Cuire 35 min.", "Hachis parmentier - 50 couverts", 50)]
    [InlineData("SHORT RIBS\nHouse book / winter menu / 8 covers\n\n30 g salt\n2 kg ribs\n\n1. Cook 3 hours.", "SHORT RIBS", 8)]
    [InlineData("Vanillekipferl\n\nZutaten (ca. 60 Stück)\n\n280 g Mehl\n210 g Butter\n\n1. Kneten.", "Vanillekipferl", 60)]
    [InlineData("Bread\n\n500 g flour\n350 g water\n\nMix and bake at 230 °C for 30 minutes.\n\nOne loaf. Leftovers: slice and freeze up to 2 months.", "Bread", 1)]
    [InlineData("食パン 1斤(手ごね)\n\n強力粉 250g\n牛乳 180g\n\n1 190℃で30分焼く。", "食パン 1斤(手ごね)", 1)]
    [InlineData("Apfelkuchen\n4,8 Sterne (341 Bewertungen)   Drucken   Merken\n\nZutaten für 1 Blech:\n250 g Butter\n4 Eier\n\nZubereitung\nBei 180 °C 40 Minuten backen.", "Apfelkuchen", 1)]
    public void Heads_of_pages_tell_the_name_and_the_yield_and_no_food(string card, string title, double made)
    {
        Dish d = Read(card);

        Assert.Equal(title, d.Title);
        Assert.Equal(made, Assert.Single(d.Yields).Amount);
        Assert.Equal(2, Lines(d).Length);
    }

    [Theory]
    [InlineData("HOTEL BELLEVUE - Rezept Nr. 14\nGulaschsuppe - 30 Portionen\n\n3 kg Rindfleisch\n2 kg Zwiebeln\n\n1. 2 Std. schmoren.", 30)]
    [InlineData("MENSA CENTRALE – SCHEDA N. 7\nLasagne al forno – 60 porzioni\n\nCarne macinata 5 kg\nPassata 3 l\n\n1. Cuocere 2 ore.", 60)]
    [InlineData("Galletas\n★ 4,6 (128 valoraciones)   Imprimir   Guardar\n\nUnidades: 24\n\n200 g de avena\n100 g de mantequilla\n\nHornear 15/18 min a 180 °C.", 24)]
    [InlineData("Muffins\nPièces : 12\nFour : 180 °C\n\n200 g de farine\n2 œufs\n\nCuire 20/25 min.", 12)]
    [InlineData("Stew\nGuests: 10\n\n2 kg beef\n1 kg carrots\n\nCook 3 hours.", 10)]
    public void A_houses_sheet_and_a_labelled_count_are_no_foods(string card, double made)
    {
        Dish d = Read(card);

        Assert.Equal(made, Assert.Single(d.Yields).Amount);
        Assert.Equal(2, Lines(d).Length);
    }

    [Theory]
    [InlineData("Salad - Recipe for 4\n\n2 kg tomatoes\n1 kg onions")]
    [InlineData("Board\n\nPieces: 4 chicken thighs\n200 g cheese")]
    public void Other_counts_stay_what_they_are(string card) => Assert.Equal(2, Lines(Read(card)).Length);

    [Fact]
    public void What_it_makes_and_how_long_it_keeps_behind_the_method_is_no_wait()
    {
        Dish d = Read("Galletas\n\n200 g de avena\n100 g de mantequilla\n\nHornear 15 min a 180 °C.\nSalen 24 galletas. Se guardan 5 días en una lata.");

        Assert.Equal(": Hornear 15 min a 180 °C.", Assert.Single(Steps(d)));
        Assert.Equal(24, Assert.Single(d.Yields).Amount);
    }

    [Theory]
    [InlineData("8 beef short ribs, 350 g each", "piece")]
    [InlineData("6 pork ribs", "piece")]
    [InlineData("2 celery ribs", "stalk")]
    public void Ribs_of_meat_are_no_stalks(string line, string unit) => Assert.Equal(unit, CardReader.ReadLine(line, "en").Foods[0].Unit);

    [Fact]
    public void Keeping_warm_in_an_oven_is_work()
    {
        Dish d = Read("Pancakes\n\n2 eggs\n200 g flour\n\nDIRECTIONS:\nCook 3 minutes per side.\nKeep warm in a 200 degree F oven.");

        Assert.Equal(2, Steps(d).Length);
        Assert.NotEmpty(d.Components[0].Steps[^1].Temperatures);
    }
}
