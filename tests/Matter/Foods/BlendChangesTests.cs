using Coulisse.Matter.Foods;
using CsCheck;

namespace Coulisse.Matter.Tests.Foods;

/// <summary>Balances of soaking, draining, skimming, trimming, frying and reducing: worked examples and laws.</summary>
public sealed class BlendChangesTests
{
    private static readonly string[] Closed = [.. FoodTable.Default.Ids.Where(i => FoodTable.Default.Find(i)!.Composition is { Water: > 5, Protein: not null, Fat: not null, Carbohydrate: not null, Ash: not null, Sugars: not null } c && Math.Abs(c.PartsSum!.Value - 100) <= 2)];

    private static Blend Of(params (string Id, double Grams)[] parts) => Blend.Of(parts.Select(p => (p.Id, p.Grams, FoodTable.Default.Find(p.Id)!.Composition)));

    [Fact]
    public void Rice_that_takes_up_water_has_the_water_of_the_cooked_row()
    {
        // SR28 20444 raw 11.62 % water, yield 2.80 (dry matter); SR28 20445 cooked 68.44 %.
        Assert.Equal(68.44, Of(("rice-long", 100)).Soaked(180).Composition.Water!.Value, 0.1);
    }

    [Fact]
    public void An_aubergine_fried_by_its_solids_has_the_water_measured_in_it()
    {
        // Japan 2020 06193 raw: water 93.0, fat 0; 06194 fried plain: water 74.8, fat 17.0, so 7.0 g of solids are 8.2 % of what is left: 85.4 g with 14.5 g of oil.
        Blend raw = new(100, new Composition { Water = 93.0, Protein = 1.1, Fat = 0, Carbohydrate = 2.9, Fibre = 2.4, Ash = 0.5, Sugars = 2.6 }, Of(("salt", 1)).Lacking);
        Blend fried = raw.Fried(14.5, 85.4);

        Assert.Equal(74.8, fried.Composition.Water!.Value, 0.3);
        Assert.Equal(17.0, fried.Composition.Fat!.Value, 0.1);
    }

    [Fact]
    public void Half_the_liquid_takes_half_of_what_is_dissolved_evenly_and_none_of_the_rest()
    {
        // 800 g of water, 100 g of sugar, 20 g of salt, 80 g of protein: 920 g are liquid (and the little that salt holds besides); half of it runs off.
        Composition c = new() { Water = 80, Sugars = 10, Carbohydrate = 10, Ash = 2, SodiumMilligrams = 2000 / 2.542, Protein = 8, Fat = 0, Fibre = 0 };
        Blend left = new Blend(1000, c, Of(("salt", 1)).Lacking).Drained(460, 1);

        Assert.Equal(540, left.Grams, 1e-9);
        Assert.Equal((400.0, 50.0, 10.0, 80.0), (Math.Round(left.Composition.Water!.Value * 5.4, 6), Math.Round(left.Composition.Sugars!.Value * 5.4, 6), Math.Round(left.Composition.Ash!.Value * 5.4, 6), Math.Round(left.Composition.Protein!.Value * 5.4, 6)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Blend(1000, c, left.Lacking).Drained(921, 1));
    }

    [Fact]
    public void What_is_not_there_cannot_be_taken_away()
    {
        Blend stock = Of(("water", 900), ("butter", 100));
        Assert.Contains("81.1 g of fat", Assert.Throws<ArgumentOutOfRangeException>(() => stock.Skimmed(90)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => stock.Trimmed(1000));
        Assert.Throws<ArgumentOutOfRangeException>(() => stock.Soaked(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => stock.Fried(10, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => stock.Drained(10, 1.1));
        Assert.Equal(0, stock.Skimmed(81.11).Composition.Fat!.Value, 0.01);
    }

    [Fact]
    public void Parts_sum_to_the_whole_through_any_chain_water_is_never_negative_and_scaling_commutes()
    {
        Gen.Select(Gen.Select(Gen.Int[0, Closed.Length - 1], Gen.Double[5, 500]).Array[1, 6], Gen.Select(Gen.Int[0, 5], Gen.Double[0, 0.95]).Array[1, 8], Gen.Double[0.01, 50]).Sample((parts, steps, k) =>
        {
            (string Id, double Grams)[] foods = [.. parts.Select(p => (Closed[p.Item1], p.Item2))];
            Blend small = Of(foods);
            Blend large = Of([.. foods.Select(f => (f.Id, f.Grams * k))]);
            double missing = small.Grams * (100 - small.Composition.PartsSum!.Value) / 100;
            foreach ((int kind, double share) in steps)
            {
                double taken = Most(small, kind) * share;
                (small, large) = (Do(small, kind, taken), Do(large, kind, taken * k));

                // What the parts fall short of the whole (rounding of the sources) stays the same in grams, but where a piece is cut off.
                missing = kind == 3 ? missing * small.Grams / (small.Grams + taken) : missing;
                bool sums = Math.Abs((small.Grams * (100 - small.Composition.PartsSum!.Value) / 100) - missing) < 1e-6 * Math.Max(1, small.Grams);
                bool wet = small.Composition.Water >= -1e-9 && small.Composition.Sugars >= -1e-9 && small.Composition.Carbohydrate >= -1e-6 && small.Composition.Fat >= -1e-9;
                bool scales = Math.Abs((large.Grams / small.Grams) - k) < 1e-6 * k && Math.Abs(large.Composition.Water!.Value - small.Composition.Water!.Value) < 1e-6;
                if (!sums || !wet || !scales)
                {
                    return false;
                }
            }

            return true;
        }, iter: 2000);
    }

    [Fact]
    public void Soaking_parts_apart_or_together_is_the_same()
    {
        Blend apart = Blend.Of([("a", 150, Of(("rice-long", 100)).Soaked(50).Composition), ("b", 130, Of(("lentils", 100)).Soaked(30).Composition)]);
        Blend together = Of(("rice-long", 100), ("lentils", 100)).Soaked(80);
        Assert.Equal(together.Composition.Water!.Value, apart.Composition.Water!.Value, 1e-9);
        Assert.Equal(together.Composition.Protein!.Value, apart.Composition.Protein!.Value, 1e-9);
    }

    private static double Most(Blend b, int kind) => kind switch { 0 => b.Grams, 1 => Math.Min(b.Liquid(1)!.Value, b.Grams * 0.99), 2 => Math.Min(b.Composition.Fat!.Value * b.Grams / 100, b.Grams * 0.9), 3 => b.Grams * 0.9, 4 => Math.Min(b.Composition.Water!.Value * b.Grams / 100, b.Grams * 0.9), _ => Math.Min(b.Composition.Water!.Value * b.Grams / 100, b.Grams * 0.9) };

    private static Blend Do(Blend b, int kind, double grams) => kind switch
    {
        0 => b.Soaked(grams), 1 => b.Drained(grams, 1), 2 => b.Skimmed(grams), 3 => b.Trimmed(grams), 4 => b.Reduced(b.Grams - grams), _ => b.Fried(grams / 2, b.Grams - (grams / 2)),
    };
}
