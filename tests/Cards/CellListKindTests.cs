using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Whole parts in a row of a table, and sheets pasted as values with signs between them; each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class CellListKindTests
{
    [Theory]
    [InlineData("# Brunch\n\n| Dish | Ingredients | Method |\n|---|---|---|\n| Pancakes | 200 g flour<br>2 eggs<br>300 ml milk | Whisk, rest 20 min. |\n| Compote | 300 g berries<br>50 g sugar | Simmer 10 min. |\n", "Pancakes: 200 g flour", "Pancakes: 2 piece eggs", "Pancakes: 300 ml milk", "Compote: 300 g berries", "Compote: 50 g sugar")]
    [InlineData("# Brunch\n\n| Dish | Ingredients | Method |\n|---|---|---|\n| Pancakes | 200 g flour, 2 eggs, 300 ml milk | Whisk, rest 20 min. |\n", "Pancakes: 200 g flour", "Pancakes: 2 piece eggs", "Pancakes: 300 ml milk")]
    [InlineData("| Partie | Ingrédients | Préparation |\n|---|---|---|\n| Pâte | 500 g de farine, 10 g de sel et 300 ml d'eau | Pétrir 10 min. |\n| Garniture | 1 kg d'oignons<br/>200 g de lardons | Fondre 30 min. |\n", "Pâte: 500 g farine", "Pâte: 10 g sel", "Pâte: 300 ml eau", "Garniture: 1 kg oignons", "Garniture: 200 g lardons")]
    [InlineData("# Menü\n\n| Gang | Zutaten | Zubereitung |\n|---|---|---|\n| Suppe | 200 g Kürbis; 50 ml Sahne | 20 Min. kochen. |\n", "Suppe: 200 g Kürbis", "Suppe: 50 ml Sahne")]
    [InlineData("# 弁当\n\n| 料理 | 材料 | 作り方 |\n|---|---|---|\n| 卵焼き | 卵3個、だし50ml | 5分焼く。 |\n", "卵焼き: 3 piece 卵", "卵焼き: 50 ml だし")]
    [InlineData("Dish\tIngredients\tMethod\nPancakes\t200 g flour, 2 eggs\tFry 2 min each side.\nCompote\t300 g berries, 50 g sugar\tSimmer 10 min.\nCustard\t4 yolks, 500 ml milk\tCook to 82 C.\n", "Pancakes: 200 g flour", "Pancakes: 2 piece eggs", "Compote: 300 g berries", "Compote: 50 g sugar", "Custard: 4 piece yolks", "Custard: 500 ml milk")]
    public void A_row_with_its_list_in_one_cell_is_a_part(string card, params string[] lines)
    {
        Dish d = Read(card);

        Assert.Equal(lines, Lines(d));
        Assert.All(d.Components.Where(c => c.Ingredients.Length > 0), c => Assert.Single(c.Steps));
    }

    [Fact]
    public void Names_alone_under_their_head_are_foods_and_what_stands_beside_is_said_of_the_part()
    {
        Dish d = Read("# Menü\n\n| Gang | Zutaten | Allergene |\n|---|---|---|\n| Suppe | 200 g Kürbis, 50 ml Sahne | Milch |\n| Salat | Rucola, Walnüsse, Parmesan | Nüsse, Milch |\n");

        Assert.Equal(["Suppe: 200 g Kürbis", "Suppe: 50 ml Sahne", "Salat:   Rucola", "Salat:   Walnüsse", "Salat:   Parmesan"], Lines(d));
        Assert.Contains(d.Components.SelectMany(c => c.Notes), n => n.Text == "Allergene: Nüsse, Milch");
    }

    [Theory]
    [InlineData("# Sauce\n\n| Food | Amount |\n|---|---|\n| Butter, diced | 200 g |\n| Shallots, finely chopped | 50 g |\n\n1. Sweat 5 min.\n", ": 200 g Butter", ": 50 g Shallots")]
    [InlineData("# Sauce\n\n| Amount | Ingredient |\n|---|---|\n| 200 g | butter, cold, diced |\n| 2 | eggs, beaten |\n\n1. Sweat 5 min.\n", ": 200 g butter", ": 2 piece eggs")]
    public void What_is_done_to_a_food_is_no_list(string card, params string[] lines) => Assert.Equal(lines, Lines(Read(card)));

    [Theory]
    [InlineData("Onion soup\ningredient,qty,unit,prep\n\"onions\",800,g,\"peeled, sliced\"\n\"butter\",60,g,\n\"beef stock\",1.5,l,\"hot\"\n", ": 800 g onions", ": 60 g butter", ": 1.5 l beef stock")]
    [InlineData("ingredient,qty,unit,prep\nonions,800,g,peeled\nbutter,60,g,\n", ": 800 g onions", ": 60 g butter")]
    [InlineData("Suppe\nZutat;Menge;Einheit;Bearbeitung\nZwiebeln;800;g;geschält, in Ringen\nBrühe;1,5;l;heiß\n", ": 800 g Zwiebeln", ": 1.5 l Brühe")]
    [InlineData("Teil;Zutat;Menge;Einheit\nTeig;Mehl;500;g\nTeig;Wasser;300;ml\nBelag;Zwiebeln;1,2;kg\nBelag;Speck;200;g\n", "Teig: 500 g Mehl", "Teig: 300 ml Wasser", "Belag: 1.2 kg Zwiebeln", "Belag: 200 g Speck")]
    [InlineData("Sopa\ningrediente\tcantidad\tunidad\tpreparación\ncebollas\t800\tg\ten juliana\nmantequilla\t60\tg\t\ncaldo\t1,5\tl\tcaliente\n", ": 800 g cebollas", ": 60 g mantequilla", ": 1.5 l caldo")]
    [InlineData("Soup\n\nonions,800,g,peeled\nbutter,60,g\nstock,1.5,l,hot\n\nSimmer 30 min.\n", ": 800 g onions", ": 60 g butter", ": 1.5 l stock")]
    public void Values_with_signs_between_them_are_a_table(string card, params string[] lines) => Assert.Equal(lines, Lines(Read(card)));

    [Fact]
    public void What_stands_in_quotes_stays_together() =>
        Assert.Equal("peeled, sliced", Read("Soup\ningredient,qty,unit,prep\n\"onions\",800,g,\"peeled, sliced\"\n\"butter\",60,g,\n").Components[0].Ingredients[0].Foods[0].Preparation);

    [Fact]
    public void Lines_of_a_list_with_commas_are_no_sheet() =>
        Assert.Equal([": 2 kg Beef", ": 3 piece onions", ": 4 piece Carrots"], Lines(Read("Stew\n\nBeef, 2 kg, cut in cubes, and 3 onions\nCarrots, 4, peeled\n\nSimmer 3 hours.\n")));
}
