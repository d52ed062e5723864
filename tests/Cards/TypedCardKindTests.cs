using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Kinds of whole cards as people type and copy them: bullets of a word processor, sentences a page broke, lines that look like the name of a part; each beside what looks like it. Readings as a cook gives them: common practice, no source.</summary>
public sealed class TypedCardKindTests
{
    [Theory]
    [InlineData("•\tCrust\no\t200 g flour\no\tA pinch of salt\n•\tCurd\no\t3 eggs\n•\tMethod\no\tRub the butter into the flour and rest for 20 minutes.")]
    [InlineData("• Crust\no 200 g flour\no A pinch of salt\n• Curd\no 3 eggs\n• Method\no Rub the butter into the flour and rest for 20 minutes.")]
    public void A_letter_o_under_a_bullet_is_the_hollow_bullet_of_a_word_processor(string list)
    {
        Dish d = Read("Lemon tart\n" + list);

        Assert.Equal(["Crust: 200 g flour", "Crust: 1 pinch salt", "Curd: 3 piece eggs"], Lines(d));
        Assert.Equal("Rub the butter into the flour and rest for 20 minutes.", Assert.Single(d.Components.SelectMany(c => c.Steps)).Text);
    }

    [Fact]
    public void The_italian_word_for_or_is_no_bullet() =>
        Assert.Equal(["Impasto: 500 g farina", "Impasto: 100 g burro"], Lines(Read("Torta\n\n## Impasto\n• 500 g farina\n• 100 g burro\no strutto\n\n## Procedimento\nImpastare e cuocere 40 minuti.")).Take(2));

    [Theory]
    [InlineData("Quince paste as at home.\n\nTake 1 kg of quinces and 200 ml of water, and cook\nthem until soft. Put the pulp through a sieve, then add\n800 g of sugar and the juice of 1 lemon.\n\nStir over a low heat for 1 to\n1½ hours until it leaves the pan.", "1 kg quinces; 200 ml water; 800 g sugar", 60, 90)]
    [InlineData("Quittenbrot.\n\nMan nimmt 1 kg Quitten und 200 ml Wasser und kocht\nsie weich. Das Mus durch ein Sieb streichen, dann 800 g\nZucker zugeben.\n\nUnter ständigem Rühren noch 1 bis\n1,5 Stunden einkochen.", "1 kg Quitten; 200 ml Wasser; 800 g Zucker", 60, 90)]
    [InlineData("Peperoni sott'olio.\n\nSi prendono 2 kg di peperoni, si lavano e si cuociono in 500 ml\ndi aceto e 300 ml di acqua e si scolano. Si mettono nei\nvasi con 10 g di origano.\n\nCuocere nei vasi per 20 o\n25 minuti.", "2 kg peperoni; 500 ml aceto; 300 ml acqua; 10 g origano", 20, 25)]
    public void Sentences_that_the_edge_of_a_page_broke_are_put_together(string card, string foods, double from, double to)
    {
        Dish d = Read(card);

        Assert.Equal(foods, string.Join("; ", d.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods).Where(f => f.Grams is not null || f.Unit == "ml").Select(f => FormattableString.Invariant($"{f.Amount} {f.Unit} {f.Food}"))));
        Assert.Contains(d.Components.SelectMany(c => c.Steps).SelectMany(s => s.Times), t => t.MinutesMin == from && t.MinutesMax == to);
    }

    [Theory]
    [InlineData("Pie\n\nFlour 250 g,\nbutter 125 g,\nsugar 60 g.\n\nMix and bake 30 minutes.")]
    [InlineData("Bread\n\nStrong white bread flour 500 g,\nfine sea salt 10 g,\nlukewarm water 350 g.\n\nKnead for 10 minutes.")]
    [InlineData("Pie\n\n250 g flour,\n125 g butter,\n60 g sugar.\n\nMix and bake 30 minutes.")]
    public void A_list_with_commas_and_a_stop_is_no_broken_sentence(string card) =>
        Assert.Equal(3, Read(card).Components.SelectMany(c => c.Ingredients).Count(l => l.Foods.Length == 1 && l.Foods[0].Grams > 0));

    [Fact]
    public void What_is_done_to_the_only_food_of_a_part_is_no_food_and_a_herb_is()
    {
        const string Pie = "Fish pie\n\nFor the filling\n300 g cod\n200 ml milk\n\nFor the top\n60 g cheddar, {0}\n\nMethod\nBake for 30 minutes.";

        Assert.Equal("grated", Assert.Single(Read(string.Format(System.Globalization.CultureInfo.InvariantCulture, Pie, "grated")).Components[1].Ingredients).Foods[0].Preparation);
        Assert.Equal(["For the top: 60 g cheddar", "For the top:   thyme"], Lines(Read(string.Format(System.Globalization.CultureInfo.InvariantCulture, Pie, "thyme"))).Skip(2));
    }

    [Theory]
    [InlineData("Rouladen\n\nFür das Fleisch:\n4 Rouladen\n1 Zwiebel\nSalz und Pfeffer\n2 EL Öl\n400 ml Fond\n\nAlles 90 Minuten schmoren.", 6)]
    [InlineData("Pollo\n\nPara la carne:\n4 muslos de pollo\n1 cebolla\nSal y pimienta\n200 ml vino\n400 ml caldo\n\nCocer 40 minutos.", 6)]
    public void Salt_and_pepper_among_amounts_name_no_part(string card, int foods) => Assert.Equal(foods, Assert.Single(Read(card).Components).Ingredients.Sum(l => l.Foods.Length));

    [Fact]
    public void A_name_among_amounts_is_still_a_part() =>
        Assert.Contains("Marinade: 200 ml Wein", Lines(Read("Braten\n\nFleisch\n1 kg Rind\n1 Zwiebel\nMarinade\n200 ml Wein\n2 EL Öl\n\nAlles 90 Minuten schmoren.")));

    [Theory]
    [InlineData("Pane\n\nBiga\n300 g farina\n150 g acqua\n\nImpasto\ntutta la biga\n700 g farina\n20 g sale\n\nImpastare 12 minuti.", "Impasto", "biga")]
    [InlineData("Bread\n\nPoolish\n300 g flour\n300 g water\n\nDough\nall of the poolish\n700 g flour\n20 g salt\n\nKnead for 12 minutes.", "Dough", "poolish")]
    [InlineData("Pain\n\nLevain\n300 g farine\n150 g eau\n\nPâte\ntout le levain\n700 g farine\n20 g sel\n\nPétrir 12 minutes.", "Pâte", "levain")]
    public void All_of_a_part_made_before_is_an_item_and_heads_nothing(string card, string part, string food)
    {
        Dish d = Read(card);

        Assert.Equal(2, d.Components.Length);
        Component c = d.Components[1];
        Assert.Equal((part, 3), (c.Name, c.Ingredients.Length));
        Assert.Equal((food, d.Components[0].Name), (c.Ingredients[0].Foods[0].Food, c.Ingredients[0].Foods[0].FromComponent));
    }

    [Theory]
    [InlineData("Line the 20 cm tin and bake 40 minutes.", false)]
    [InlineData("Line the 26 cm tin and bake 40 minutes.", false)]
    [InlineData("Line the 20 cm tin or the 26 cm tin and bake 40 minutes.", true)]
    [InlineData("Line the tin and bake 40 minutes.", true)]
    public void Of_two_sizes_a_step_may_say_which(string step, bool asked)
    {
        Dish d = Read($"# Almond cake\n\n| Ingredient | 20 cm tin | 26 cm tin |\n|---|---|---|\n| Butter | 200 g | 340 g |\n| Sugar | 150 g | 255 g |\n| Almonds | 250 g | 425 g |\n\n1. {step}");

        Assert.Equal(asked, d.Doubts.Any(q => q.Question.Contains("another size", StringComparison.Ordinal)));
        Assert.Equal(step.Contains("the 26", StringComparison.Ordinal) && !asked ? 340 : 200, d.Components[0].Ingredients[0].Foods[0].Grams);
    }

    [Fact]
    public void A_line_of_work_that_ends_is_not_joined_to_the_next()
    {
        Assert.Contains(": chicken in, brown it all over", Steps(Read("Curry\n\n1 kg chicken\n2 onions\n400 g tomatoes\n\nsweat the onions 10 min\nchicken in, brown it all over\ntomatoes in, simmer 40 min")));
        Assert.Contains(Steps(Read("Curry\n\n1 kg chicken\n2 onions\n400 g tomatoes\n\nsweat the onions 10 min\nturn the heat down, pour over\nthe tomatoes, simmer 40 min")), s => s.Contains("pour over the tomatoes", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("15cm丸型 1台分", 0)]
    [InlineData("6号の型 1台分", 0)]
    [InlineData("卵黄…3個分", 1)]
    [InlineData("卵黄 3個分", 1)]
    public void A_mould_and_how_many_of_it_is_no_food(string line, int foods) =>
        Assert.Equal(foods, Read($"いちごのケーキ\n{(foods == 0 ? line : "")}\n\n【生地】\n薄力粉 60g\nグラニュー糖 60g\n{(foods == 0 ? "" : line)}\n\n作り方\n1. 混ぜて焼く。").Components.SelectMany(c => c.Ingredients).Sum(l => l.Foods.Length) - 2);
}
