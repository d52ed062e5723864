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
}
