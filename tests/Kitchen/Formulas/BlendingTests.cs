using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;
using CsCheck;

namespace Coulisse.Kitchen.Tests.Formulas;

public sealed class BlendingTests
{
    private static ImmutableArray<MixedComponent> Mix(string card) => Blending.Of(WeighingTests.Weigh(card)).Match(m => m, p => throw new InvalidOperationException(string.Join("; ", p)));

    [Fact]
    public void A_custard_is_what_was_worked_by_hand()
    {
        // SR28 01077, 01053, 01125, 19335 by weight: water 59.60, fat 17.84, sucrose 14.27, lactose 2.86 in 100 g.
        MixedComponent custard = Assert.Single(Mix("# Custard\n\n- 500 g whole milk\n- 500 g whipping cream\n- 200 g egg yolk\n- 200 g caster sugar\n\n1. Cook.\n"));

        Assert.Equal(59.60, custard.Composition!.Water!.Value, 0.01);
        Assert.Equal(17.84, custard.Composition.Fat!.Value, 0.01);
        Assert.InRange(custard.FreezingPoint!.Value, -4, -1);
        Assert.True(custard.Activity!.Low < custard.Activity.High);
    }

    [Fact]
    public void A_fat_on_the_line_moves_the_fat_of_the_mixture()
    {
        Assert.Equal(3.6, Assert.Single(Mix("# Milk\n\n- 500 g whole milk, 3.6 % fat\n\n1. Warm.\n")).Composition!.Fat!.Value, 1e-9);
        Assert.Equal(FoodTable.Default.Find("milk")!.Composition.Fat!.Value, Assert.Single(Mix("# Milk\n\n- 500 g whole milk\n\n1. Warm.\n")).Composition!.Fat!.Value, 1e-9);
    }

    [Fact]
    public void A_food_that_is_not_known_leaves_no_composition_and_says_so()
    {
        MixedComponent mixed = Assert.Single(Mix("# X\n\n- 100 g moon dust\n- 100 g sugar\n\n1. Mix.\n"));

        Assert.Null(mixed.Composition);
        Assert.Null(mixed.Activity);
        Assert.Equal(["moon dust"], mixed.Unknown);
    }

    [Fact]
    public void A_part_taken_from_another_has_its_composition()
    {
        ImmutableArray<MixedComponent> mixed = Mix("# A dish\n\n## C1 Syrup\n\n- 100 g water\n- 100 g sugar\n\n1. Boil.\n\n## C2 Soak\n\n- 50 g C1 Syrup\n- 50 g water\n\n1. Stir.\n");

        Assert.Equal(25, mixed[1].Composition!.Sugars!.Value, 0.1);
        Assert.Equal(25, mixed[1].Phase!.Brix, 0.1);
    }

    [Fact]
    public void Parts_sum_to_the_whole_whatever_is_mixed_and_water_is_never_negative()
    {
        string[] ids = [.. FoodTable.Default.Ids.Where(i => FoodTable.Default.Find(i)!.Composition is { Water: not null, Protein: not null, Fat: not null, Carbohydrate: not null, Ash: not null } c && Math.Abs(c.PartsSum!.Value - 100) <= 2)];
        Gen.Select(Gen.Int[0, ids.Length - 1], Gen.Double[1, 500]).Array[1, 8].Sample(parts =>
        {
            Blend blend = Blend.Of(parts.Select(p => (ids[p.Item1], p.Item2, FoodTable.Default.Find(ids[p.Item1])!.Composition)));
            double least = blend.Grams * (1 - (blend.Composition.Water!.Value / 100));
            Blend reduced = least > 0.1 ? blend.Reduced(least + ((blend.Grams - least) * 0.5)) : blend;
            return Math.Abs(blend.Composition.PartsSum!.Value - 100) <= 2.5 && reduced.Composition.Water >= 0 && Math.Abs((reduced.Composition.Protein!.Value * reduced.Grams) - (blend.Composition.Protein!.Value * blend.Grams)) < 1e-6 * blend.Grams;
        }, iter: 500);
    }

    [Fact]
    public void Scaling_commutes_with_mixing()
        => Gen.Select(Gen.Double[1, 500], Gen.Double[1, 500], Gen.Double[0.1, 40]).Sample(x =>
        {
            Composition milk = FoodTable.Default.Find("milk")!.Composition, sugar = FoodTable.Default.Find("sugar")!.Composition;
            Blend one = Blend.Of([("a", x.Item1, milk), ("b", x.Item2, sugar)]);
            Blend many = Blend.Of([("a", x.Item1 * x.Item3, milk), ("b", x.Item2 * x.Item3, sugar)]);
            return Math.Abs(one.Composition.Water!.Value - many.Composition.Water!.Value) < 1e-9 && Math.Abs((one.Grams * x.Item3) - many.Grams) < 1e-6 * many.Grams;
        });
}
