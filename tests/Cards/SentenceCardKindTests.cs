using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Cards told in sentences and letters, in six languages: their foods, their guests and their steps, and what looks like them and is none.</summary>
public sealed class SentenceCardKindTests
{
    [Theory]
    [InlineData("うちの豚汁は、豚バラ肉150gを鍋で2分炒め、大根200gとにんじん1本を入れます。水800mlを加え、15分煮ます。豆腐1丁を入れ、味噌大さじ4を溶いたら、2分温めてできあがり。4人分です。", ": 150 g 豚バラ肉|: 200 g 大根|: 1 piece にんじん|: 800 ml 水|: 1 block 豆腐|: 4 tbsp 味噌")]
    [InlineData("わが家の親子丼は2人分です。鶏もも肉200gと玉ねぎ1/2個を切ります。だし150ml、しょうゆ大さじ2を鍋に入れて煮立てます。卵3個を溶いて回し入れ、1分蒸らします。", ": 200 g 鶏もも肉|: 0.5 piece 玉ねぎ|: 150 ml だし|: 2 tbsp しょうゆ|: 3 piece 卵")]
    public void A_Japanese_sentence_names_its_foods_before_their_amounts(string card, string want)
    {
        Dish d = Read(card);

        Assert.Equal(want.Split('|'), Lines(d));
        Assert.All(d.Components[0].Steps, s => Assert.DoesNotContain("人分", s.Text, StringComparison.Ordinal));
        Assert.Equal("portions", Assert.Single(d.Yields).Unit);
    }

    [Fact]
    public void How_heavy_one_piece_is_and_how_many_tins_there_are_is_no_food()
    {
        Dish d = Read("小麦粉200gと水120mlをこねます。生地を12等分し、1個30gに丸めます。バター20gをぬった型2台に入れ、180℃で20分焼きます。");

        Assert.Equal([": 200 g 小麦粉", ": 120 ml 水", ": 20 g バター"], Lines(d));
    }

    [Theory]
    [InlineData("For a quick dal for four, rinse 250 g of red lentils and cook them in 900 ml of water with 1 tsp of turmeric.", 4)]
    [InlineData("For my leek tart for six people I use 250 g of flour, 125 g of butter and 3 tbsp of water.", 6)]
    [InlineData("Pour une bonne ratatouille (4 personnes), je prends 2 aubergines, 3 courgettes, 800 g de tomates et 40 ml d'huile.", 4)]
    [InlineData("Para hacer gazpacho para seis, trituro 1 kg de tomates con 80 ml de aceite y 8 g de sal.", 6)]
    [InlineData("Meine Suppe für 4 Personen geht so: Ich koche 500 g Kürbis mit 800 ml Brühe und 20 g Ingwer 30 Minuten.", 4)]
    public void The_first_clause_tells_for_how_many(string card, double guests)
    {
        CardYield told = Assert.Single(Read(card).Yields);

        Assert.Equal((guests, "portions"), (told.Amount, told.Unit));
    }

    [Theory]
    [InlineData("Pour une bonne pâte, je mélange 250 g de farine avec 125 g de beurre et 50 ml d'eau.")]
    [InlineData("For the sauce, simmer 250 g of tomatoes with 30 ml of oil and 5 g of salt for four minutes.")]
    [InlineData("Für einen Teig 250 g Mehl mit 125 g Butter und 50 ml Wasser verkneten.")]
    public void An_article_and_a_time_feed_nobody(string card)
    {
        Dish d = Read(card);

        Assert.Empty(d.Yields);
        Assert.Equal(3, Lines(d).Length);
    }

    [Theory]
    [InlineData("Für meine Rinderrouladen nehme ich 4 Rouladen, bestreiche sie mit 20 g Senf und gieße 250 ml Rotwein und 500 ml Fond an.", ": 4 piece Rouladen")]
    [InlineData("Ensuite viennent 800 g de tomates, 3 gousses d'ail et 200 g de crème. Je laisse mijoter 40 minutes avec 100 ml d'eau.", ": 3 piece gousses d'ail")]
    [InlineData("Fry 1 onion in 30 g of butter, add 250 g of rice and 500 ml of stock. Season with salt and serve with lemon.", ":   salt|:   lemon")]
    [InlineData("Man kocht 300 g Linsen in 900 ml Brühe mit 100 g Speck. Mit Salz und Pfeffer abschmecken.", ":   Salz|:   Pfeffer")]
    public void What_is_taken_counted_by_its_word_or_served_with_is_a_food(string card, string want) => Assert.Subset(Lines(Read(card)).ToHashSet(), want.Split('|').ToHashSet());

    [Fact]
    public void What_was_told_before_and_what_is_no_food_is_not_served_again()
    {
        Dish d = Read("Whip 300 ml of cream. Fold in 100 g of sugar and 200 g of raspberries, spread it on a sheet of baking paper and chill for 2 hours. Serve with the cream, or with a smile.");

        Assert.Equal([": 300 ml cream", ": 100 g sugar", ": 200 g raspberries"], Lines(d));
    }

    [Fact]
    public void Where_it_was_told_names_no_part() =>
        Assert.Equal("", Assert.Single(Read("My sister's pavlova, as she told it on the phone: beat 4 egg whites, add 220 g of caster sugar a spoonful at a time. Whip 300 ml of cream and top with 250 g of strawberries.").Components).Name);

    [Theory]
    [InlineData("Objet : madeleines\n\nCoucou Sophie,\n\nVoilà enfin ma recette (24 madeleines) :\n\n- 3 œufs\n- 130 g de sucre\n- 150 g de farine\n\nTu fouettes les œufs et le sucre. Au frigo 2 h minimum !\nFour à 220°, tu enfournes 4 min, tu baisses à 180° et encore 6 min.", 24, 2)]
    [InlineData("Da: Lucia\nA: Carla\nOggetto: pollo\n\nCiao Carla, eccola. Per 4:\n\n1 pollo\n1 cipolla\n150 ml di vino bianco\n\nRosola il pollo 10 minuti.\nSfuma col vino e cuoci 40 minuti.", 4, 2)]
    [InlineData("Hi Tom,\n\nHere is the cake, as promised:\n\n200 g flour\n3 eggs\n100 g sugar\n\nWhisk the eggs and the sugar for 5 minutes.\nFold in the flour and bake at 180 °C for 30 minutes.", 0, 2)]
    public void A_letter_leads_into_its_list_and_names_no_part(string card, double made, int steps)
    {
        Dish d = Read(card);

        Component only = Assert.Single(d.Components);
        Assert.Equal("", only.Name);
        Assert.Equal(3, only.Ingredients.Length);
        Assert.Equal(steps, only.Steps.Length);
        Assert.Equal(made, d.Yields.Select(y => y.Amount).FirstOrDefault());
    }

    [Theory]
    [InlineData("Dan 12:41: onion in the oil, 10 min\nDan 12:43: eggs in, lid on 6 min")]
    [InlineData("12:41 Dan: onion in the oil, 10 min\n12:43 Dan: eggs in, lid on 6 min")]
    [InlineData("Dan, 12:41: onion in the oil, 10 min\nDan, 12:43: eggs in, lid on 6 min")]
    [InlineData("Dan (12:41): onion in the oil, 10 min\nDan (12:43): eggs in, lid on 6 min")]
    [InlineData("Dan 12:41 PM - onion in the oil, 10 min\nDan 12:43 PM - eggs in, lid on 6 min")]
    public void Who_wrote_and_when_weighs_nothing(string chat)
    {
        Dish d = Read("Shakshuka\n\n4 eggs\n1 onion\n30 ml oil\n\n" + chat);

        Assert.Equal(3, Lines(d).Length);
        Assert.Equal([": onion in the oil, 10 min", ": eggs in, lid on 6 min"], Steps(d));
    }

    [Fact]
    public void A_clock_in_a_plan_is_no_weight()
    {
        Dish d = Read("Saturday\n\n2 kg beef\n20 g salt\n\nOven 12:30: put the beef in\nBeef 14:00: take it out and rest 20 min");

        Assert.Equal([": 2 kg beef", ": 20 g salt"], Lines(d));
    }
}
