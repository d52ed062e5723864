using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;

namespace Coulisse.Kitchen.Tests.Method;

/// <summary>What each step leaves of a mixture.</summary>
public sealed class MethodFoldTests
{
    private static MethodRun Run(string list, string steps) => CardReader.Read(new CardText($"# Card\n\n## Part\n\nMakes 1 tray.\n\n{list}\n\n{steps}\n", "card.md"))
        .Match(d => MethodFold.Run(Weighing.Weigh(d, null).Components[0]), p => throw new InvalidOperationException(string.Join("; ", p)));

    [Fact]
    public void Reducing_to_a_stated_weight_takes_water_and_nothing_else()
    {
        MethodRun run = Run("- 400 g beetroot juice\n- 200 g apple juice\n- 30 g caster sugar", "1. Reduce at a steady boil until it weighs about 165 g.");
        MethodStage boil = run.Stages[^1];
        Assert.Equal(630, boil.Before.Grams, 1e-6);
        Assert.Equal(165, boil.After.Grams, 1e-6);
        Assert.Equal(465, boil.Before.Water!.Value - boil.After.Water!.Value, 1e-6);
        Assert.Equal(boil.Before.Sugars, boil.After.Sugars);
        Assert.Equal(boil.Before.Fibre, boil.After.Fibre);
        Assert.Single(boil.Losses);
    }

    [Fact]
    public void An_end_weight_below_the_solids_is_refused_and_said()
    {
        MethodStage dry = Run("- 200 g caster sugar\n- 50 g water", "1. Boil and reduce until it weighs about 100 g.").Stages[^1];
        Assert.Equal(dry.Before, dry.After);
        Assert.Contains("more than", Assert.Single(dry.Losses), StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_without_heat_takes_nothing_off()
    {
        MethodStage press = Run("- 300 g plain flour\n- 200 g butter", "1. Rub together. You should have 498 g.").Stages[^1];
        Assert.Equal(press.Before.Grams, press.After.Grams);
        Assert.Empty(press.Losses);
    }

    [Fact]
    public void A_food_without_a_row_is_unknown_and_never_zero()
    {
        Mixture m = Run("- 100 g moondust\n- 100 g water", "1. Stir.").Stages[0].Before;
        Assert.Equal(100, m.UnknownGrams, 1e-9);
        Assert.Contains("moondust", m.Unknown);
        Assert.Null(Mixing.Parts(m));
    }

    [Theory]
    [InlineData(30, 0.35)]
    [InlineData(120, 0.10)]
    public void Alcohol_goes_by_the_minutes_of_simmering(int minutes, double left)
    {
        // USDA retention factors, release 6, codes 5005 and 5008.
        MethodStage simmer = Run("- 500 g red wine\n- 500 g water", $"1. Simmer for {minutes} min.").Stages[^1];
        Assert.Equal(left, simmer.After.Alcohol!.Value / simmer.Before.Alcohol!.Value, 0.001);
        Assert.Equal(simmer.Before.Grams - simmer.After.Grams, simmer.Before.Alcohol.Value - simmer.After.Alcohol.Value, 1e-9);
        Assert.Contains("never a claim", Assert.Single(simmer.Losses), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stew_weighed_at_the_end_has_the_water_and_alcohol_of_the_published_example()
    {
        // Beef in red wine, 1,960 g to 1,450 g in 2 h: alcohol 53.00 to 5.30 g, water 1,520.1 to 1,057.8 g (mixed-recipe method, worked by hand).
        MethodRun run = Run("- 1000 g beef brisket\n- 500 g red wine\n- 200 g onion\n- 200 g carrot\n- 30 g unsalted butter\n- 20 g plain flour\n- 10 g salt", "1. Simmer for 2 hours until it weighs about 1450 g.");
        MethodStage stew = run.Stages[^1];
        Assert.Equal(53.0, stew.Before.Alcohol!.Value, 0.1);
        Assert.Equal(5.3, stew.After.Alcohol!.Value, 0.02);
        Assert.Equal(1450, stew.After.Grams, 1e-6);
        Assert.Equal(510 - 47.7, stew.Before.Water!.Value - stew.After.Water!.Value, 0.1);
    }

    [Fact]
    public void Vitamin_C_of_a_stew_is_what_the_published_example_keeps()
    {
        // Beef in red wine by the mixed-recipe method: vitamin C 26.60 mg in, 19.95 kept (code 3456, roots, water used, 75 %); iron, potassium and calcium stay with the juices.
        WeighedDish Stew(string steps) => CardReader.Read(new CardText($"# Stew\n\n- 1000 g beef brisket\n- 200 g onion\n- 200 g carrot\n- 10 g salt\n\n{steps}\n", "c.md")).Match(d => Weighing.Weigh(d), _ => null!);
        KeptInCooking kept = KeptInCooking.Of(Stew("1. Simmer for 2 hours.").Components[0])!;

        Assert.Equal(("simmered", 26.60, 19.95), (kept.Way, Math.Round(kept["vitamin C"].Before!.Value, 2), Math.Round(kept["vitamin C"].After!.Value, 2)));
        Assert.Equal(kept["iron"].Before, kept["iron"].After);
        Assert.Equal(["salt"], kept.WithoutFactor);
        Assert.Equal("drained", KeptInCooking.Of(Stew("1. Boil for 20 min, then drain.").Components[0])!.Way);
        Assert.Null(KeptInCooking.Of(Stew("1. Mix.").Components[0]));
    }

    [Fact]
    public void Stages_carry_the_whole_composition_and_boiled_sugar_its_stage()
    {
        WeighedDish dish = CardReader.Read(new CardText("# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil the syrup to 121 °C until it weighs about 560 g.\n", "c.md")).Match(d => Weighing.Weigh(d), _ => null!);
        MixedComponent mixed = Blending.Of(dish).Match(m => m[0], _ => null!);
        StageMixture stage = Assert.Single(StageMixtures.Of(dish.Components[0], mixed, 1500));

        Assert.Equal(100 * 60.0 / 560, stage.Composition!.Water!.Value, 0.1);
        Assert.Contains(stage.Notes, n => n.Contains("hard ball", StringComparison.Ordinal) && n.Contains("at 1500 m take 116 °C", StringComparison.Ordinal));
    }

    private static StageMixture[] Stages(string list, string steps)
    {
        WeighedDish dish = CardReader.Read(new CardText($"# Card\n\n{list}\n\n{steps}\n", "c.md")).Match(d => Weighing.Weigh(d), _ => null!);
        return [.. StageMixtures.Of(dish.Components[0], Blending.Of(dish).Match(m => m[0], _ => null!))];
    }

    [Fact]
    public void Beans_are_soaked_drained_and_boiled_down_step_by_step()
    {
        StageMixture[] stages = Stages("- 500 g dried chickpeas\n- 1500 g water\n- 10 g salt", "1. Soak the chickpeas overnight.\n2. Drain; they weigh 1050 g.");
        StageMixture drained = Assert.Single(stages);

        Assert.True(drained.Composition is not null, string.Join(" | ", drained.Notes));

        // 960 g of the liquid run off; 500 g of chickpeas hold 38 g of water of their own.
        Assert.Equal(1050, drained.Grams, 1e-6);
        Assert.Equal(FoodTableOf("chickpeas").Protein!.Value * 500 / 1050, drained.Composition!.Protein!.Value, 1e-6);
        Assert.InRange(drained.Composition.Water!.Value * 10.5, 1538 - 960, 1538 - 930);
        Assert.Contains(drained.Notes, n => n.Contains("salt 0.", StringComparison.Ordinal) && n.Contains("the middle is taken", StringComparison.Ordinal));
    }

    [Fact]
    public void Fat_is_skimmed_off_and_no_more_than_there_is()
    {
        Assert.Equal(100 * 31.1 / 950, Stages("- 900 g water\n- 100 g unsalted butter", "1. Skim off the fat; it weighs 950 g.").Single().Composition!.Fat!.Value, 0.1);
        Assert.Contains("nothing was taken off", Assert.Single(Run("- 900 g water\n- 100 g unsalted butter", "1. Skim off the fat; it weighs 900 g.").Stages[^1].Losses), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_fried_takes_up_oil_in_a_range_and_loses_water_to_the_weight_stated()
    {
        StageMixture fried = Stages("- 1000 g potato", "1. Deep-fry the chips at 180 °C until golden; they weigh about 500 g.").Single();

        // Ciqual 4032, chips from the fryer: 11.9 g of fat in 100 g; a figure of the range's sources, so only the carrying-over is checked.
        Assert.Equal(12, fried.Composition!.Fat!.Value, 0.3);
        Assert.Contains(fried.Notes, n => n.Contains("45 to 75 g", StringComparison.Ordinal));
        Assert.Equal(100, fried.Composition.PartsSum!.Value, 2.5);
        Assert.Contains("not worked out without the weight", Assert.Single(Run("- 1000 g potato", "1. Deep-fry the chips at 180 °C until golden.").Stages[^1].Losses), StringComparison.Ordinal);
    }

    [Fact]
    public void A_trimmed_edge_is_of_the_same_make_and_a_bake_without_a_weight_says_what_it_may_lose()
    {
        StageMixture[] stages = Stages("- 500 g plain flour\n- 250 g unsalted butter", "1. Rub in.\n2. Trim the edges level; it weighs 700 g.");
        Assert.Equal(700, Assert.Single(stages).Grams, 1e-6);
        Assert.Equal(100 * ((250 * 0.8111) + (500 * 0.0098)) / 750, stages[0].Composition!.Fat!.Value, 0.01);

        Assert.Contains(Stages("- 500 g plain flour\n- 250 g caster sugar", "1. Bake the cake at 180 °C for 40 min.").Single().Notes, n => n.Contains("cake loses about 10 % (8 to 12 %)", StringComparison.Ordinal));
        Assert.Empty(Stages("- 500 g plain flour\n- 250 g caster sugar", "1. Mix the cake."));
    }

    private static Matter.Foods.Composition FoodTableOf(string id) => Matter.Foods.FoodTable.Default.Find(id)!.Composition;
}
