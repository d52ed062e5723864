using CsCheck;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;

namespace Coulisse.Matter.Tests.Substance;

public sealed class GelatineStrengthPublished
{
    [Theory]
    [InlineData(10, 200, 250, 8.00, 8.94)]
    [InlineData(10, 200, 160, 12.50, 11.18)]
    [InlineData(12, 240, 200, 14.40, 13.15)]
    [InlineData(17.5, 200, 160, 21.88, 19.57)]
    public void Both_rules_match_worked_values(double grams, double from, double to, double linear, double root)
    {
        GelatineStrength converted = GelatineStrength.Convert(Mass.FromGrams(grams), from, to);

        Assert.Equal(linear, converted.Linear.Grams, 0.006);
        Assert.Equal(root, converted.SquareRoot.Grams, 0.006);
    }

    [Fact]
    public void The_published_60_to_240_pair_doubles_by_the_root_rule()
        // A 60 to 260 bloom conversion table: 60 to 240 is a factor 2.00.
        => Assert.Equal(0.5, GelatineStrength.Convert(Mass.FromGrams(1), 60, 240).SquareRoot.Grams, 0.005);

    [Fact]
    public void There_and_back_is_the_same_by_either_rule()
        => Gen.Double[50, 300].SelectMany(a => Gen.Double[50, 300].Select(b => (a, b))).Sample(x =>
        {
            GelatineStrength once = GelatineStrength.Convert(Mass.FromGrams(100), x.a, x.b);
            Assert.Equal(100, GelatineStrength.Convert(once.Linear, x.b, x.a).Linear.Grams, 1e-9);
            Assert.Equal(100, GelatineStrength.Convert(once.SquareRoot, x.b, x.a).SquareRoot.Grams, 1e-9);
        });

    [Fact]
    public void Nearby_blooms_need_no_trial_and_far_ones_do()
    {
        Assert.False(GelatineStrength.Convert(Mass.FromGrams(1), 200, 190).Wide);
        Assert.True(GelatineStrength.Convert(Mass.FromGrams(1), 200, 140).Wide);
    }

    [Fact]
    public void A_bloom_outside_the_range_is_refused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => GelatineStrength.Convert(Mass.FromGrams(1), 20, 200));
}
