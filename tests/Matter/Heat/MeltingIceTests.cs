using System.Collections.Immutable;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Ice around warm food through time: balances by hand, the exact series while the ice lasts, and laws.</summary>
public sealed class MeltingIceTests
{
    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static SolidBody Bag(double mm) => SolidBody.Of(SolidShape.Slab, [Length.FromMillimetres(mm)], Diffusivity.FromSquareMetresPerSecond(1.3e-7), Conductivity.FromWattsPerMetreKelvin(0.5), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(150));

    private static MeltingIce Ice(double ice, double gain = 0, double water = 3000, double tap = 10, double food = 4000) => new(Mass.FromGrams(ice), Mass.FromGrams(water), C(tap), Mass.FromGrams(food), Power.FromWatts(gain));

    [Fact]
    public void While_there_is_ice_the_middle_follows_the_exact_series_in_a_bath_of_one_degree()
    {
        SolidBody bag = Bag(25);
        foreach (MeltingIce.Moment m in Ice(9000).Follow(bag, C(60), Duration.FromHours(3)))
        {
            Assert.Equal(1, m.Bath.Celsius, 1e-9);
            Assert.Equal(bag.CoreAfter(C(60), C(1), Duration.FromMinutes(m.Minute)).Celsius, m.Core.Celsius, 1e-6);
        }
    }

    [Fact]
    public void Too_little_ice_ends_at_the_balance_by_hand_and_the_heat_is_kept_on_the_way()
    {
        // 4 kg at 60 °C and 3.8 kJ/(kg·K), 3 kg of tap water at 10 °C, 1 kg of ice: (912 + 125.7 − 333.6)/(15.2 + 16.76) = 22.03 °C
        ImmutableArray<MeltingIce.Moment> course = Ice(1000).Follow(Bag(25), C(60), Duration.FromHours(12));
        Assert.Equal(22.03, course[^1].Bath.Celsius, 0.05);
        Assert.Equal(22.03, course[^1].Core.Celsius, 0.1);
        Assert.All(course.Where(m => m.Bath.Celsius > 1.01), m =>
        {
            // what the food and the tap gave is in a litre of melted ice and three of water; kJ
            double gave = (4 * 3.8 * (60 - m.Mean.Celsius)) + (3 * 4.19 * 10) - 333.6;
            Assert.Equal(gave, 4 * 4.19 * m.Bath.Celsius, 0.01);
        });
    }

    [Fact]
    public void Ice_melts_as_the_food_gives_its_heat_and_the_room_takes_some()
    {
        // 4.12 kg from 60 to about 1 °C: 4.12 · 3.8 · 59 / 333.6 = 2.77 kg, the tap 3 · 4.19 · 10 / 333.6 = 0.38 kg, and 60 W for 6 h 1296 kJ = 3.88 kg (by hand)
        double left = Ice(9000, 60, food: 4120).Follow(Bag(25), C(60), Duration.FromHours(6))[^1].IceLeft.Grams;
        Assert.InRange(left, 9000 - 2770 - 377 - 3885 - 20, 9000 - 2770 - 377 - 3885 + 20);
    }

    [Fact]
    public void More_ice_is_never_slower_a_thicker_bag_never_faster_and_the_least_ice_just_does_it()
    {
        double before = double.PositiveInfinity;
        foreach (double grams in (double[])[0, 500, 1000, 2000, 4000])
        {
            double core = Ice(grams, 50).Follow(Bag(30), C(70), Duration.FromHours(2))[^1].Core.Celsius;
            Assert.True(core <= before + 1e-9);
            before = core;
        }

        // a bath without ice drifts to the room and not above it
        Assert.InRange(Ice(0, 200, tap: 20).Follow(Bag(20), C(20), Duration.FromHours(48))[^1].Bath.Celsius, 22, 25);
        Mass needed = MeltingIce.Needed(Ice(0, 50), Bag(25), C(60), C(5), Duration.FromHours(2))!.Value;
        Assert.True(Ice(needed.Grams, 50).Follow(Bag(25), C(60), Duration.FromHours(2))[^1].Core.Celsius <= 5);
        Assert.True(Ice(needed.Grams - 20, 50).Follow(Bag(25), C(60), Duration.FromHours(2))[^1].Core.Celsius > 5);
        Assert.True(MeltingIce.Needed(Ice(0, 50), Bag(40), C(60), C(5), Duration.FromHours(4))!.Value.Grams >= needed.Grams);
        Assert.Null(MeltingIce.Needed(Ice(0, 50), Bag(80), C(60), C(5), Duration.FromHours(2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ice(1000, tap: 60).Follow(Bag(20), C(60), Duration.FromHours(1)));
    }
}
