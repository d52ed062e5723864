using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Shares and rates wherever they stand in a line, sizes of eggs, weights of one, and warnings among the foods, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class RateKindTests
{
    private static FoodAmount Food(string lang, string line) => CardReader.ReadLine(line, lang).Foods[0];

    [Theory]
    [InlineData("en", "Sugar 30 g per litre", "Sugar", 3)]
    [InlineData("en", "Juniper 5 g/L", "Juniper", 0.5)]
    [InlineData("en", "Nitrite salt (0.6 %) 18 g/kg", "Nitrite salt", 1.8)]
    [InlineData("en", "Pink salt #1 2.5 g/kg", "Pink salt", 0.25)]
    [InlineData("en", "Agar 1.2 g per 100 g liquid", "Agar", 1.2)]
    [InlineData("en", "Sodium nitrite 150 ppm", "Sodium nitrite", 0.015)]
    [InlineData("de", "Salz 60 g pro Liter Wasser", "Salz", 6)]
    [InlineData("fr", "Sucre 50 g par litre", "Sucre", 5)]
    [InlineData("es", "Sal 60 g por litro", "Sal", 6)]
    [InlineData("it", "Sale 18 g al kg", "Sale", 1.8)]
    [InlineData("en", "Cure #2 0.25 %", "Cure #2", 0.25)]
    [InlineData("en", "Salt 1.2 %", "Salt", 1.2)]
    [InlineData("en", "Salt: 2 %", "Salt", 2)]
    [InlineData("en", "Xanthan 0.3 %", "Xanthan", 0.3)]
    [InlineData("de", "Zucker 1,5 %", "Zucker", 1.5)]
    [InlineData("en", "1.5% sugar", "sugar", 1.5)]
    [InlineData("en", "0.25 % sodium nitrite", "sodium nitrite", 0.25)]
    [InlineData("de", "0,3 % Traubenzucker", "Traubenzucker", 0.3)]
    [InlineData("fr", "1,5 % de sucre", "sucre", 1.5)]
    [InlineData("es", "2 % de sal", "sal", 2)]
    [InlineData("ja", "塩 2%", "塩", 2)]
    [InlineData("ja", "岩塩 肉の2.5%", "岩塩", 2.5)]
    public void A_rate_is_a_share_of_the_rest_wherever_it_stands(string lang, string line, string food, double percent)
    {
        FoodAmount f = Food(lang, line);
        Assert.Equal(food, f.Food);
        Assert.Equal(percent, f.Percent);
        Assert.Null(f.Amount);
    }

    [Theory]
    [InlineData("en", "38 % cream")]
    [InlineData("en", "Cream 35 %")]
    [InlineData("en", "Dark chocolate 70 %")]
    [InlineData("en", "Salted butter 82 %")]
    [InlineData("en", "Sugar syrup 60 %")]
    [InlineData("en", "Curing salt 0.6 %")]
    [InlineData("de", "Nitritpökelsalz 0,5 %")]
    [InlineData("ja", "生クリーム 35%")]
    [InlineData("en", "Minced beef 9.90 €/kg")]
    [InlineData("en", "Basil 30 g per litre of oil")]
    public void A_grade_or_a_price_is_no_share(string lang, string line) => Assert.Null(Food(lang, line).Percent);

    [Theory]
    [InlineData("en", "Milk 3.5% fat | 2,450 g", "Milk 3.5% fat", 2450)]
    [InlineData("en", "Milk 3.6% fat 1 l", "Milk 3.6% fat", 1)]
    [InlineData("en", "Cream 36% fat, 500 ml", "Cream 36% fat", 500)]
    [InlineData("en", "Skimmed milk 0.1 % fat 2 l", "Skimmed milk 0.1 % fat", 2)]
    [InlineData("en", "Hofkrone 70% chocolate 200 g", "70% chocolate", 200)]
    public void A_food_before_its_percent_is_no_maker(string lang, string line, string food, double amount)
    {
        FoodAmount f = Food(lang, line);
        Assert.Equal(food, f.Food);
        Assert.Equal(amount, f.Amount);
    }

    [Theory]
    [InlineData("en", "6 quails (150 g/pc)", 900)]
    [InlineData("en", "8 scallops (35 g / pc.)", 280)]
    [InlineData("en", "10 rolls (55 g pp)", 550)]
    [InlineData("fr", "6 cailles (150 g/pièce)", 900)]
    [InlineData("de", "6 Wachteln (150 g/Stk.)", 900)]
    [InlineData("es", "6 codornices (150 g/ud)", 900)]
    [InlineData("en", "6 quails (900 g)", 900)]
    [InlineData("en", "1 duck (2 kg)", 2000)]
    public void A_weight_to_a_piece_is_of_one(string lang, string line, double grams) => Assert.Equal(grams, Food(lang, line).Grams);

    [Theory]
    [InlineData("de", "3 Eigelb (Kl. L)", "Eigelb", 3, "Kl. L")]
    [InlineData("de", "4 Eier (Kat. M)", "Eier", 4, "Kat. M")]
    [InlineData("fr", "3 œufs (cal. M)", "œufs", 3, "cal. M")]
    [InlineData("ja", "卵 M2個", "卵", 2, "M")]
    [InlineData("ja", "卵L1個", "卵", 1, "L")]
    [InlineData("ja", "卵(M) 3個", "卵", 3, "M")]
    [InlineData("ja", "卵(Mサイズ) 3個", "卵", 3, "M")]
    public void The_letter_of_a_size_is_no_unit_and_hides_no_count(string lang, string line, string food, double amount, string grade)
    {
        FoodAmount f = Food(lang, line);
        Assert.Equal((food, amount, grade), (f.Food, f.Amount ?? 0, f.Grade));
        Assert.True(f.Unit is "piece" or null);
    }

    [Fact]
    public void Litres_in_brackets_stay_litres() => Assert.Equal("l", Food("de", "Milch (1 l)").Unit);

    [Theory]
    [InlineData("en", "Do not use peanuts")]
    [InlineData("en", "NO NUTS other than listed")]
    [InlineData("en", "⚠ Allergen: milk, nuts")]
    [InlineData("en", "may contain traces of sesame")]
    [InlineData("en", "Energy 1,050 kJ; protein 5 g")]
    [InlineData("fr", "Peut contenir des traces de sésame")]
    [InlineData("de", "Kann Spuren von Nüssen enthalten")]
    [InlineData("es", "No usar cacahuetes")]
    [InlineData("it", "Può contenere tracce di noci")]
    [InlineData("ja", "※アレルギー:卵・乳・小麦")]
    public void A_warning_is_a_note(string lang, string line) => Assert.Equal(LineKind.Note, CardReader.ReadLine(line, lang).Kind);

    [Theory]
    [InlineData("en", "⚠ 200 g peanuts")]
    [InlineData("en", "No-salt butter")]
    [InlineData("de", "nicht zu reife Bananen")]
    [InlineData("en", "High-energy gel 50 g")]
    public void What_goes_in_is_none(string lang, string line) => Assert.Equal(LineKind.Ingredient, CardReader.ReadLine(line, lang).Kind);

    [Theory]
    [InlineData("en", "Also: 30 g trout roe, chives", "trout roe", 30)]
    [InlineData("de", "Außerdem: 20 g Walnüsse, Petersilie", "Walnüsse", 20)]
    [InlineData("it", "Inoltre: 30 g di uova di trota, prezzemolo", "uova di trota", 30)]
    [InlineData("it", "Decorazione: 10 g di mandorle", "mandorle", 10)]
    [InlineData("fr", "Garniture : 30 g d'œufs de truite, ciboulette", "œufs de truite", 30)]
    [InlineData("en", "Plus 40 g parmesan", "parmesan", 40)]
    [InlineData("de", "Und 20 g Butter", "Butter", 20)]
    [InlineData("de", "Fisch: 10 Forellen à 300 g", "Forellen", 10)]
    [InlineData("en", "Layer 1: 200 g raspberries", "raspberries", 200)]
    [InlineData("fr", "Lieu jaune : 4 pavés de 140 g", "Lieu jaune", 4)]
    [InlineData("en", "Butter: 100 g, cold", "Butter", 100)]
    [InlineData("ja", "カラメル:グラニュー糖 60g", "グラニュー糖", 60)]
    public void A_label_before_an_amount_of_a_food_is_no_food(string lang, string line, string food, double amount)
    {
        FoodAmount f = Food(lang, line);
        Assert.Equal((food, amount), (f.Food, f.Amount ?? 0));
    }

    [Theory]
    [InlineData("2 lb mirepoix: onions, carrots, celery", "mirepoix", "onions, carrots, celery")]
    [InlineData("200 g mixed nuts: almonds, cashews", "mixed nuts", "almonds, cashews")]
    [InlineData("200 g mirepoix", "mirepoix", null)]
    [InlineData("12 banana shallots, brunoise", "banana shallots", "brunoise")]
    public void A_mixture_keeps_its_name_and_what_it_is_of(string line, string food, string? of)
    {
        FoodAmount f = Food("en", line);
        Assert.Equal((food, of), (f.Food, f.Preparation));
    }

    // "l'" is an article, and no litre.
    [Theory]
    [InlineData("Per l'impasto")]
    [InlineData("Per l'impasto:")]
    public void An_article_before_its_name_is_no_litre(string head) =>
        Assert.Equal(250, Told.Read($"Crostata\n\n{head}\n1 uovo\n250 g di farina\n\n1. Impastare 5 minuti.\n").Components[0].Ingredients[1].Foods[0].Amount);
}
