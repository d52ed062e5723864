using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Method;

namespace Coulisse.Kitchen.Tests.Formulas;

/// <summary>What no figure may be built on is named with its line, and no figure is built on it; each fault has a neighbour that passes.</summary>
public sealed class SoundnessTests
{
    [Theory]
    [InlineData("# X\n\n- 100 g sugar\n- 0 g water\n\n1. Mix.\n", "WGH008", 4)]
    [InlineData("# X\n\n- 100 g whole milk, 120 % fat\n- 20 g sugar\n\n1. Mix.\n", "MIX008", 3)]
    [InlineData("# X\n\n- 100 g sugar\n- 100 g water\n\n1. Boil; it loses −5 % by weight.\n", "MIX010", 6)]
    [InlineData("# X\n\n## C1 Base\n\n- 100 g C2 Top\n\n1. Mix.\n\n## C2 Top\n\n- 100 g C1 Base\n\n1. Mix.\n", "WGH007", 11)]
    public void A_fault_stops_mixture_panel_and_targets(string card, string code, int line)
    {
        WeighedDish dish = WeighingTests.Weigh(card);

        Assert.Contains(Soundness.Of(dish), p => p.Code == code && p.Line == line);
        Assert.Equal(code, Blending.Of(dish).Match(_ => "", p => p[0].Code));
        Assert.Equal(code, Panels.Of(dish, AllergenRegime.Eu).Match(_ => "", p => p[0].Code));
    }

    [Theory]
    [InlineData("# X\n\n- 100 g sugar\n- 0.1 g water\n\n1. Mix.\n")]
    [InlineData("# X\n\n- 100 g whole milk, 3.6 % fat\n- 20 g sugar\n- pepper to taste\n\n1. Mix.\n")]
    [InlineData("# X\n\n- 100 g sugar\n- 100 g water\n\n1. Boil; it loses about 5 % by weight.\n")]
    [InlineData("# X\n\n## C1 Base\n\n- 100 g sugar\n\n1. Mix.\n\n## C2 Top\n\n- 100 g C1 Base\n\n1. Mix.\n")]
    public void What_is_sound_passes(string card)
    {
        WeighedDish dish = WeighingTests.Weigh(card);

        Assert.Empty(Soundness.Of(dish));
        Assert.True(Blending.Of(dish).Match(m => m.All(c => c.Composition is not null), _ => false));
    }

    [Fact]
    public void A_loss_above_the_water_there_is_has_its_line_and_no_figure_after_it()
    {
        WeighedDish dish = WeighingTests.Weigh("# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil until it weighs about 400 g.\n");
        MixedComponent mixed = Blending.Of(dish).Match(m => m[0], _ => null!);

        Assert.Equal(("MIX002", 6), Assert.Single(MethodFold.Faults(dish.Components[0])) is var f ? (f.Code, f.Line) : default);
        Assert.DoesNotContain(StageMixtures.Of(dish.Components[0], mixed), s => s.Grams < 640);
        Assert.Empty(MethodFold.Faults(WeighingTests.Weigh("# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil until it weighs about 550 g.\n").Components[0]));
    }

    [Fact]
    public void Scaling_counts_whole_eggs_and_whole_tins()
    {
        WeighedDish dish = WeighingTests.Weigh("# Cake\n\n## Sponge\n\nMakes 1 tin, 330 × 230 mm.\n\n- 4 eggs\n- 200 g sugar\n\n1. Beat.\n");
        Batch batch = Scaling.Scale(dish, new ScaleTo.Factor(1.3)).Match(b => b, p => throw new InvalidOperationException(string.Join("; ", p)));

        WholeEggs eggs = WholeEggs.Of(batch.Components[0].Lines[0], dish.Measures)!;
        Assert.Equal(6, eggs.Eggs); // 5.2 eggs
        Assert.InRange(eggs.Over, 0.79 * batch.Components[0].Lines[0].Weighed.Grams / 4, 0.81 * batch.Components[0].Lines[0].Weighed.Grams / 4);
        Assert.Equal(2, batch.Components[0].Batches);
        Assert.Null(WholeEggs.Of(batch.Components[0].Lines[1], dish.Measures));
        Assert.Equal(1, Scaling.Scale(dish, new ScaleTo.Factor(1)).Match(b => b.Components[0].Batches, _ => 0));
    }
}
