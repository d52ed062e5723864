namespace Coulisse.Cards.Tests;

/// <summary>Lines over the list that tell of the whole: one plate and what lies on it, for how much it is, what each of several serves. Each beside what looks like it and is a food. Readings as a cook gives them: common practice, no source.</summary>
public sealed class PlateKindTests
{
    private static string[] Plate(Dish d) => [.. d.Plate.Select(p => FormattableString.Invariant($"{p.Component}: {p.Grams ?? p.Pieces} {p.Text}"))];

    private static string[] Yields(string line) => [.. Told.Read($"# Rye loaf\n\n{line}\n\n- 1 kg flour\n- 600 g water\n- 20 g salt\n\n1. Mix.\n2. Bake 40 min at 230 °C.").Yields.Select(y => FormattableString.Invariant($"{y.Amount}{(y.AmountMax is { } x ? $"-{x}" : "")} {y.Unit}"))];

    [Theory]
    [InlineData("Serves 10. One plate: 120 g pork, 30 g ketchup, 40 g slaw.")]
    [InlineData("For 10 covers. Per plate: 120 g pork, 30 g ketchup, 40 g slaw")]
    [InlineData("Serves 10. Per portion: 120 g pork, 30 g ketchup, 40 g slaw")]
    [InlineData("Per plate: 120 g pork, 30 g ketchup, 40 g slaw")]
    [InlineData("Für 10 Portionen. Pro Teller: 120 g pork, 30 g ketchup, 40 g slaw")]
    [InlineData("Pour 10 couverts. Par assiette : 120 g pork, 30 g ketchup, 40 g slaw")]
    [InlineData("Para 10 raciones. Por plato: 120 g pork, 30 g ketchup, 40 g slaw")]
    [InlineData("Per 10 persone. Per piatto: 120 g pork, 30 g ketchup, 40 g slaw")]
    public void What_lies_on_one_plate_is_no_list(string line)
    {
        Dish d = Told.Read($"# Braised pork\n\n{line}\n\n## Pork\n- 2 kg pork\n\n## Ketchup\n- 1 kg tomatoes\n\n## Slaw\n- 1 kg cabbage\n\n1. Mix.");
        Assert.Equal(["Pork: 120 120 g pork", "Ketchup: 30 30 g ketchup", "Slaw: 40 40 g slaw"], Plate(d));
        Assert.Equal(["Pork: 2 kg pork", "Ketchup: 1 kg tomatoes", "Slaw: 1 kg cabbage"], Told.Lines(d));
    }

    [Fact]
    public void Millilitres_on_a_plate_are_no_pieces() =>
        Assert.Null(Told.Read("# Turbot\n\nFor 12 covers. Per plate: 110 g turbot, 40 ml sauce\n\n## Turbot\n- 2 kg turbot\n\n## Sauce\n- 1 kg cream\n\n1. Mix.").Plate[1].Pieces);

    [Fact]
    public void A_list_to_one_guest_is_a_list() =>
        Assert.Equal(3, Told.Lines(Told.Read("Grilled fish\n\nPer person: 150 g hake, 20 g butter, 5 g parsley\n\nGrill the hake for 8 minutes, melt the butter over it.")).Length);

    [Fact]
    public void Energy_lies_on_no_plate() =>
        Assert.Empty(Told.Read("# Soup\n\nServes 4. Per portion: 512 kcal, 20 g fat\n\n## Soup\n- 1 kg carrots\n\n1. Boil.").Plate);

    [Theory]
    [InlineData("For 2 kg", "2 kg")]
    [InlineData("For 2 l (8 portions of 250 ml)", "2 l; 8 portions")]
    [InlineData("Dough weight 3.6 kg, 4 loaves at 900 g. DDT 25 °C.", "3.6 kg; 4 loaves")]
    [InlineData("Dough: 3.6 kg total, DDT 25 °C", "3.6 kg")]
    [InlineData("Final weight 2.4 kg", "2.4 kg")]
    [InlineData("Loaf weight 900 g", "")]
    [InlineData("Cost per portion 1.20", "")]
    [InlineData("Prep loss 15 %", "")]
    [InlineData("Station 3, chef 2", "")]
    [InlineData("Version 4, 12 May", "")]
    [InlineData("Makes enough for 2.5 kg meat", "")]
    [InlineData("10 pots @ 120 g", "10 pieces")]
    [InlineData("For 6 × 250 g", "6 pieces")]
    [InlineData("2 Bleche à 12 Stück", "24 pieces")]
    [InlineData("Makes 2 x 1.2 litre puddings, each serves 8", "16 portions")]
    [InlineData("2 terrines, 12 portions each", "2 terrines; 24 portions")]
    [InlineData("Pour 2 terrines de 8 personnes", "2 terrines; 16 portions")]
    [InlineData("Makes 1 terrine, 12 portions", "1 terrine; 12 portions")]
    [InlineData("Serves 8", "8 portions")]
    [InlineData("Serves 8, 2 slices each", "8 portions")]
    public void What_a_line_over_the_list_makes_is_no_food(string line, string want)
    {
        Assert.Equal(want, string.Join("; ", Yields(line)));
        Assert.Equal(3, Told.Lines(Told.Read($"# Rye loaf\n\n{line}\n\n- 1 kg flour\n- 600 g water\n- 20 g salt\n\n1. Mix.")).Length);
    }

    [Theory]
    [InlineData("Stock 3 l")]
    [InlineData("10 pots yoghurt")]
    [InlineData("Dough 500 g")]
    public void What_is_bought_stays_a_food(string line) =>
        Assert.Equal(3, Told.Lines(Told.Read($"Flatbread\n\n{line}\n600 g water\n20 g salt\n\nMix all for 5 minutes and bake.")).Length);

    [Fact]
    public void Guests_in_a_bracket_head_no_part()
    {
        Dish d = Told.Read("# 鍋\n\n【4〜5人前】\n\n豚肉 300g\n白菜 200g\n\n1 煮る。");
        Assert.Equal((4, 5, "portions"), (d.Yields[0].Amount, d.Yields[0].AmountMax ?? 0, d.Yields[0].Unit));
        Assert.Equal("", d.Components[0].Name);
    }

    [Fact]
    public void An_egg_with_its_size_heads_no_part() =>
        Assert.Contains(": 3 piece 卵", Told.Lines(Told.Read("# プリン\n\n【材料】\n牛乳 400ml\n卵(M) 3個\n卵黄 2個\nグラニュー糖 80g\n\n【作り方】\n1 牛乳を60℃に温め、砂糖を溶かす。")));
}
