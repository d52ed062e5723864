using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Occasions;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Tests.Method;

/// <summary>Minutes at ×1, ×10, ×50: no line is another times a number, and none is the grams' factor.</summary>
public sealed class ScaledTimesTests
{
    private const string Card = """
        # Three

        Serves 4.

        ## Plum reduction

        - 690 g plum juice
        - 20 g caster sugar

        1. Boil down to 165 g, 18 min.

        ## Lamb in the bag

        - 600 g lamb loin

        1. Seal in a vacuum pouch, nowhere thicker than 30 mm. Bath 90 min at 60 °C.

        ## Tray bake

        One tin 330 × 230 mm.

        - 400 g plain flour
        - 200 g butter
        - 200 g caster sugar
        - 300 g whole milk

        1. Bake at 170 °C for 35 min.
        2. Rest 10 min.

        ## Stock

        - 900 g water
        - 100 g carrot

        1. Simmer 30 min.
        2. Chill 120 min in the fridge.
        """;

    private static readonly KitFacts Kit = KitFacts.Of(DefaultKitchen.Kit("back"));

    private static WeighedDish Weighed() => CardReader.Read(new CardText(Card)).Match(d => Weighing.Weigh(d, null), p => throw new InvalidOperationException(string.Join("; ", p)));

    private static Batch At(double factor, ImmutableDictionary<int, double>? measured = null)
        => Scaling.Scale(Weighed(), new ScaleTo.Factor(factor)).Match(b => ScaledTimes.For(b, Kit, measured), p => throw new InvalidOperationException(string.Join("; ", p)));

    private static BatchStep Step(Batch b, string component, int step = 0) => b.Components.First(c => c.Weighed.Component.Name == component).Steps[step];

    [Fact]
    public void Pan_bath_and_oven_grow_each_in_its_own_way()
    {
        double[] factors = [1, 10, 50];
        (string Name, double[] Best, double[] Cautious)[] lines = [.. new[] { "Plum reduction", "Lamb in the bag", "Tray bake" }.Select(n =>
        {
            BatchStep[] s = [.. factors.Select(f => Step(At(f), n))];
            return (n, s.Select(x => x.Minutes!.Value).ToArray(), s.Select(x => x.MinutesCautious!.Value).ToArray());
        })];
        foreach ((string name, double[] best, double[] cautious) in lines)
        {
            TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-16} ×1 {best[0]:0} to {cautious[0]:0}   ×10 {best[1]:0} to {cautious[1]:0}   ×50 {best[2]:0} to {cautious[2]:0} min"));
        }

        foreach ((string name, double[] best, double[] cautious) in lines)
        {
            Assert.True(best[1] / best[0] < 10 * 0.99, name);
            Assert.All(best.Zip(cautious), p => Assert.True(p.First <= p.Second + 1e-9));
            foreach ((string other, double[] theirs, double[] slow) in lines.Where(l => l.Name != name))
            {
                Assert.False(Proportional(best, theirs), $"{name} is {other} times a number");
                Assert.False(Proportional(cautious, slow), $"{name} is {other} times a number");
            }

            Assert.False(Proportional(best, factors), $"{name} is the grams' factor");
            Assert.False(Proportional(cautious, factors), $"{name} is the grams' factor");
        }
    }

    [Fact]
    public void What_a_clock_decides_stays_and_says_so()
    {
        BatchStep rest = Step(At(10), "Tray bake", 1);
        Assert.Equal(10, rest.Minutes);
        Assert.False(rest.Physical);
        Assert.Contains("clock", rest.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cards_own_amount_keeps_the_cards_minutes()
        => Assert.All(At(1).Components.SelectMany(c => c.Steps).Where(s => s.MinutesAsWritten is not null), s => Assert.Equal(s.MinutesAsWritten, s.Minutes));

    [Fact]
    public void A_simmer_keeps_its_length_and_gains_what_coming_to_the_boil_takes()
    {
        // 9 kg more by 80 K over 1.6 kW of net induction power at best: 9 × 4.19 × 80 / 1.6 / 60 = 31.4 min
        BatchStep s = Step(At(10), "Stock");
        Assert.Equal(30 + (9 * 4.19 * 80 / 1.6 / 60), s.Minutes!.Value, 0.6);
    }

    [Fact]
    public void A_thicker_pot_chills_slower_than_its_thickness_and_not_slower_than_its_square()
    {
        BatchStep s = Step(At(8), "Stock", 1);
        Assert.InRange(s.Minutes!.Value, 120 * 2, 120 * 4);
        Assert.Equal(120 * 4, s.MinutesCautious!.Value, 1);
    }

    [Fact]
    public void A_measured_time_takes_the_place_of_the_cards()
    {
        int line = Step(At(1), "Tray bake").Step.Span.Line;
        BatchStep s = Step(At(10, ImmutableDictionary<int, double>.Empty.Add(line, 45)), "Tray bake");
        Assert.True(s.Minutes >= 3 * 45);
        Assert.StartsWith("from the time measured", s.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ring_that_only_feeds_its_losses_never_gets_there()
    {
        PanOnBurner weak = PanOnBurner.Of("gas", Power.FromWatts(1000));
        Assert.Null(ScaledDurations.Reduced(10, new Reduction(Mass.FromGrams(500), Mass.FromGrams(300)), 10, weak, 1).Cautious);
    }

    private static bool Proportional(double[] a, double[] b)
    {
        double k = a[0] / b[0];
        return a.Zip(b).All(p => Math.Abs((p.First / p.Second / k) - 1) < 0.01);
    }
}
