using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Formulas.Targets;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Needs;
using Coulisse.Matter.Foods;
using Coulisse.Solver.Fitting;
using CsCheck;

namespace Coulisse.Solver.Tests;

/// <summary>Grams for a target, and exchanged lines, against handbook figures and closed forms.</summary>
public sealed class TargetFitTests
{
    private static readonly GlopFit Fit = new();

    private static WeighedDish Weigh(string card) => CardReader.Read(new CardText(card, "card.md")).Match(d => Weighing.Weigh(d), p => throw new InvalidOperationException(string.Join("; ", p)));

    private static T Ok<T>(Parsed<T> parsed) => parsed.Match(v => v, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static string Code<T>(Parsed<T> parsed) => parsed.Match(_ => "", p => p[0].Code);

    private static TargetAnswer Reach(string card, string target, bool keepWeight, params MayMove[] moves)
        => Ok(TargetFit.Reach(Ok(ComponentTargets.Of(Weigh(card), null, [Ok(Target.Read(target))], [.. moves], keepWeight)), Fit));

    [Theory]
    [InlineData("freezes at −0.63 °C", 100)]
    [InlineData("freezes at −1.47 °C", 200)]
    [InlineData("freezes at −2.64 °C", 300)]
    public void A_sugar_solution_freezes_where_the_handbook_says(string target, double sugar)
    {
        // Handbook freezing points of 10, 20 and 30 % sucrose by mass; the model is within 0.03 °C of them, which is 4 g of sugar in 1 kg.
        TargetAnswer a = Reach("# Syrup\n\n- 850 g water\n- 150 g sugar\n\n1. Stir.\n", target, true, new MayMove("sugar", 0, 500), new MayMove("water", 0, 1000));

        Assert.True(a.Reached);
        Assert.Equal(sugar, a.Lines[1].Grams, 4.0);
        Assert.Equal(1000, a.Lines.Sum(l => l.Grams), 1e-6);
    }

    [Fact]
    public void Milk_and_cream_meet_a_fat_by_the_square()
    {
        // Pearson's square: cream = (18 − 3.25)/(36.08 − 3.25) of the whole, milk the rest (fat of SR28 01077 and 01053).
        TargetAnswer a = Reach("# Blend\n\n- 500 g whole milk\n- 500 g whipping cream\n\n1. Mix.\n", "18 % fat", true);

        Assert.True(a.Reached);
        Assert.Equal(1000 * (18 - 3.25) / (36.08 - 3.25), a.Lines[1].Grams, 0.01);
    }

    [Fact]
    public void What_the_bounds_do_not_allow_is_said_with_the_nearest()
    {
        TargetAnswer a = Reach("# Syrup\n\n- 850 g water\n- 150 g sugar\n\n1. Stir.\n", "sugars 40 %", true, new MayMove("sugar", 100, 300), new MayMove("water"));

        Assert.False(a.Reached);
        Assert.Equal(300, a.Lines[1].Grams, 1e-6);
        Assert.Equal(30, a.Targets[0].After, 0.1);
        Assert.Contains("sugar", a.Stopped);
    }

    [Fact]
    public void A_bound_that_is_already_met_moves_nothing()
    {
        TargetAnswer a = Reach("# Syrup\n\n- 850 g water\n- 150 g sugar\n\n1. Stir.\n", "sugars at most 40 %", true);

        Assert.True(a.Reached);
        Assert.All(a.Lines, l => Assert.Equal(0, l.Moved, 1e-9));
    }

    [Fact]
    public void A_target_that_some_grams_meet_is_always_reached_within_bounds_and_weight()
    {
        string[] ids = [.. FoodTable.Default.Ids.Where(i => FoodTable.Default.Find(i)!.Composition is { Water: > 20, Fat: not null, Sugars: not null, SodiumMilligrams: not null, Alcohol: null or 0 })];
        MixtureProperty[] properties = [.. new[] { "fat", "sugars", "water", "salt", "freezing point", "soluble solids" }.Select(n => MixtureProperty.Find(n)!)];
        Gen.Select(Gen.Int[0, ids.Length - 1], Gen.Double[20, 300], Gen.Double[0.6, 1.8]).Array[2, 6].Select(Gen.Int[0, properties.Length - 1]).Sample((lines, p) =>
        {
            double total = lines.Sum(l => l.Item2);
            double scaled = lines.Sum(l => l.Item2 * l.Item3);
            double[] wanted = [.. lines.Select(l => l.Item2 * l.Item3 * total / scaled)];
            TargetLine[] task = [.. lines.Select((l, i) => new TargetLine(ids[l.Item1], i + 1, l.Item2, Math.Min(l.Item2, wanted[i]) * 0.9, Math.Max(l.Item2, wanted[i]) * 1.1, FoodTable.Default.Find(ids[l.Item1])!.Composition))];
            TargetTask asked = new([.. task], [new Target(properties[p], 0, Bound.At)], true);
            if (TargetFit.At(asked, wanted, asked.Targets[0]) is not { } figure || TargetFit.At(asked, task.Select(t => t.Grams), asked.Targets[0]) is null)
            {
                return true;
            }

            TargetAnswer a = Ok(TargetFit.Reach(asked with { Targets = [new Target(properties[p], figure, Bound.At)] }, Fit));
            return a.Reached && Math.Abs(a.Lines.Sum(l => l.Grams) - total) < 1e-5 * total && a.Lines.All(l => l.Grams >= l.Line.Low - 1e-6 && l.Grams <= l.Line.High + 1e-6);
        }, iter: 200);
    }

    [Fact]
    public void Soy_sauce_for_salt_keeps_the_salt_and_says_what_comes()
    {
        WeighedDish dish = Weigh("# Broth\n\n- 500 g mushrooms\n- 400 g water\n- 8 g fine sea salt\n\n1. Simmer.\n");
        Exchanged done = Ok(Substitution.Make(dish, "fine sea salt", "soy sauce", MixtureProperty.Find("salt"), "water", Fit));

        // Sodium of the two rows by hand: 8 g of salt over the share of salt in soy sauce; the rest of the lines does not change.
        double expected = 8 * FoodTable.Default.Find(done.Out.Food.FoodId!)!.Composition.SodiumMilligrams!.Value / FoodTable.Default.Find("soy-sauce")!.Composition.SodiumMilligrams!.Value;
        Assert.Equal(expected, done.In.Grams, 0.6);
        Assert.Equal(908, done.After.Components[0].Grams, 0.01);
        WhatMoves moves = Ok(WhatMoves.Of(done.Before, done.After, AllergenRegime.Anz));
        Assert.Contains(moves.AllergensIn, a => a.StartsWith("soy", StringComparison.Ordinal));
        Assert.Contains(moves.AllergensIn, a => a.StartsWith("wheat", StringComparison.Ordinal));
        Assert.Empty(moves.AllergensOut);
        Assert.DoesNotContain(moves.Parts[0].Figures, f => f.Name == "salt");
    }

    [Fact]
    public void A_food_without_the_part_cannot_keep_it_and_the_line_is_named()
    {
        WeighedDish dish = Weigh("# Broth\n\n- 400 g water\n- 8 g fine sea salt\n\n1. Simmer.\n");

        Assert.Equal(("MIX006", 4), Substitution.Make(dish, "fine sea salt", "caster sugar", MixtureProperty.Find("fat"), null, Fit).Match(_ => ("", 0), p => (p[0].Code, p[0].Line)));
        Assert.Equal("MIX005", Code(Substitution.Make(dish, "pepper", "salt", null, null, Fit)));
    }

    [Fact]
    public void The_same_weight_of_another_fat_moves_what_it_should()
    {
        WeighedDish dish = Weigh("# Dough\n\n- 300 g plain flour\n- 200 g unsalted butter\n\n1. Rub.\n");
        Exchanged done = Ok(Substitution.Make(dish, "butter", "olive oil", null, null, Fit));
        WhatMoves moves = Ok(WhatMoves.Of(done.Before, done.After, AllergenRegime.Eu));

        Assert.Equal(200, done.In.Grams, 1e-9);
        Assert.Contains(moves.AllergensOut, a => a.StartsWith("milk", StringComparison.OrdinalIgnoreCase));
        // 40 g of oil and the flour's own fat, 0.6 · 0.98 (SR28 20581).
        Assert.Equal(40 + (0.6 * 0.98), moves.Parts[0].Figures.Single(f => f.Name == "fat").After!.Value, 0.01);
    }

    [Theory]
    [InlineData("18 % fat", "fat", 18, Bound.At)]
    [InlineData("make it freeze at −3 °C", "freezing point", -3, Bound.At)]
    [InlineData("salt at most 1,2 %", "salt", 1.2, Bound.AtMost)]
    [InlineData("at least 55 % soluble solids", "soluble solids", 55, Bound.AtLeast)]
    [InlineData("saturated fat below 5", "saturates", 5, Bound.AtMost)]
    [InlineData("water activity 0.85", "water activity", 0.85, Bound.At)]
    public void A_target_is_read_as_people_write_it(string text, string property, double value, Bound bound)
    {
        Target t = Ok(Target.Read(text));
        Assert.Equal((property, value, bound), (t.Property.Name, t.Value, t.Bound));
    }

    [Theory]
    [InlineData("very fat")]
    [InlineData("18 %")]
    [InlineData("140 % fat")]
    [InlineData("freezes at 5 °C")]
    [InlineData("saltpetre 3")]
    public void What_is_no_target_is_refused(string text) => Assert.Equal("MIX003", Code(Target.Read(text)));
}
