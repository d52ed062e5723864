using Coulisse.Matter.Foods;
using Coulisse.Matter.Measures;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;
using Coulisse.Matter.Substance;
using Coulisse.Tests;

namespace Coulisse.Matter.Tests.Measures;

/// <summary>Every row of the table of worked values that needs no card: solutions, strengths, cures, shapes.</summary>
public sealed class CheckValuesTests
{
    [Fact]
    public void Every_worked_value_of_this_room_comes_out()
    {
        Assert.Equal(75, CheckValues.Rows().Count);
        Assert.Empty(CheckValues.Misses(false, Ours(), new Dictionary<string, double>
        {
            // By the straight line 1.858 m; water's own curve lies 2 % above it at 4 °C below.
            ["al3"] = 0.08,
        }));
    }

    [Fact]
    public void A_row_that_is_not_met_is_named()
    {
        Dictionary<string, double[]> spoiled = Ours();
        spoiled["sy2"] = [584];
        spoiled.Remove("ov1");

        Assert.Equal(["ov1: not answered for “77.4 %”", "sy2: 584 for 583.3 of “add 583.3 g”"], CheckValues.Misses(false, spoiled, new Dictionary<string, double> { ["al3"] = 0.08 }).Order(StringComparer.Ordinal));
    }

    private static Dictionary<string, double[]> Ours()
    {
        Solution sucrose(double brix) => new() { Water = 100 - brix, Sucrose = brix };
        Solution mixA = new() { Water = 100, Sucrose = 120, Hexoses = 30 };
        Solution mixB = new() { Water = 100, Sucrose = 60, Glycerol = 20, Salt = 5 };
        Solution frozen = new() { Water = 60, Sucrose = 14, Hexoses = 4, Lactose = 5.45, MilkSolids = 10 };
        Solution brine = new() { Water = 1500 + 1000, Salt = 60 };
        double spirit = Spirit.EthanolGrams(50, 40);
        double spiritGrams = 50 * MixVolume.Density(100 * spirit / 47.40);
        double first = 1000 / (1 + Syrup.Dilution(1, 65, 28, 10));
        RolledTube one = RolledTube.Of(Mm(14), Mm(1.2), 1, Mm(8), Mm(40)), two = RolledTube.Of(Mm(14), Mm(1.2), 2, Mm(0), Mm(40));
        CutPlan plain = Cutting.Fit(Mm(580), Mm(380), Mm(90), Mm(30), Mm(1.5), mayTurn: false), edged = Cutting.Fit(Mm(580), Mm(380), Mm(90), Mm(30), Mm(1.5), Mm(5));
        RoundsOnTray sixty = RoundsOnTray.Fit(Mm(600), Mm(400), Mm(60), Mm(10)), eighty = RoundsOnTray.Fit(Mm(600), Mm(400), Mm(80), Mm(10));
        SpiralRoll roll = SpiralRoll.Of(Mm(1.5), Mm(400), Mm(12)), swiss = SpiralRoll.Of(Mm(8), Mm(380));
        HenEgg egg = HenEgg.Of("uk", "L");
        return new Dictionary<string, double[]>
        {
            ["ge200_250"] = Bloom(10, 200, 250), ["ge200_160"] = Bloom(10, 200, 160), ["ge240_200"] = Bloom(12, 240, 200),
            ["sy1"] = [10 * new Solution { Water = 350, Sucrose = 650 }.Brix, 1000 - (10 * new Solution { Water = 350, Sucrose = 650 }.Brix)],
            ["sy2"] = [Syrup.Dilution(500, 65, 30)], ["sy3"] = [first, 65, Syrup.Dilution(first, 65, 28, 10), 10], ["sy4"] = [Syrup.Reduced(2400, 8, 30), 2400 - Syrup.Reduced(2400, 8, 30)],
            ["sy5"] = [Syrup.Density(50)!.Value, Syrup.Density(50)!.Value * 1000 * 0.50],
            ["aw_s20"] = [WaterActivity.Norrish(sucrose(20))], ["aw_s40"] = [WaterActivity.Norrish(sucrose(40))], ["aw_s60"] = [WaterActivity.Norrish(sucrose(60))], ["aw_s65"] = [WaterActivity.Norrish(sucrose(65))],
            ["aw_n"] = [WaterActivity.Norrish(new Solution { Water = 1000, Salt = 2 * 58.44 })], ["aw_r"] = [WaterActivity.Raoult(new Solution { Water = 80, Glycerol = 20 })],
            ["aw_mixA"] = [WaterActivity.Norrish(mixA), WaterActivity.Ross(mixA), WaterActivity.Raoult(mixA), WaterActivity.MoneyBorn(mixA)!.Value, WaterActivity.Grover(mixA)!.Value],
            ["aw_mixB"] = [WaterActivity.Ross(mixB), WaterActivity.Ross(mixB with { Glycerol = 0, Salt = 0 }), WaterActivity.Ross(mixB with { Sucrose = 0, Salt = 0 }), WaterActivity.Ross(mixB with { Sucrose = 0, Glycerol = 0 })],
            ["fp1"] = [Freezing.Point(frozen)!.Value], ["ice5"] = [100 * Freezing.IceShare(frozen, -5)], ["ice10"] = [100 * Freezing.IceShare(frozen, -10)], ["ice12"] = [100 * Freezing.IceShare(frozen, -12)], ["ice18"] = [100 * Freezing.IceShare(frozen, -18)],
            ["fp2"] = [Freezing.Point(sucrose(10))!.Value, Freezing.Point(sucrose(20))!.Value, Freezing.Point(sucrose(30))!.Value],
            ["al1"] = [spirit, spiritGrams - spirit, spiritGrams], ["al2"] = [Spirit.EthanolGrams(150, 13) * Spirit.LeftAfter(30).Best], ["al3"] = [Freezing.Point(new Solution { Water = 100, Ethanol = 10 })!.Value],

            // The row counts salt on water, we count it on water and salt.
            ["br3"] = [100 * (brine.SaltInWaterPercent / 100) / (1 - (brine.SaltInWaterPercent / 100))],
            ["cu1"] = [Nitrite.MilligramsPerKilogram(6.24, 6.25, 2500)], ["cu2"] = [Nitrite.AsSodiumNitrite(80)],
            ["ov1"] = [Syrup.OverrunPercent(1.10, 0.62)], ["ov2"] = [(Mass.FromGrams(400) / Density.FromGramsPerMillilitre(0.42)).Millilitres], ["dl1"] = [Syrup.Dilution(500, 18, 14.40), 18 * 500 / (500 + Syrup.Dilution(500, 18, 14.40))],
            ["sh1"] = [MouldScaling.SameDepth(new RoundMould(Mm(200), Mm(50)), new RoundMould(Mm(240), Mm(50)), Mm(30)).Factor], ["sh2"] = [MouldScaling.SameDepth(new RoundMould(Mm(200), Mm(50)), new BoxMould(Mm(180), Mm(180), Mm(50)), Mm(30)).Factor],
            ["sh3"] = [800 * MouldScaling.SameDepth(new RoundMould(Mm(200), Mm(50)), new BoxMould(Mm(380), Mm(280), Mm(50)), Mm(30)).Factor], ["sh4"] = [new TaperedMould(Mm(50), Mm(70), Mm(35)).Volume.Millilitres],
            ["sh5"] = [new LoafMould(Mm(190), Mm(90), Mm(210), Mm(110), Mm(70)).Volume.Millilitres], ["sh6"] = [new RingMould(Mm(240), Mm(75)).Volume.Millilitres], ["sh7"] = [plain.Straight], ["sh8"] = [edged.Turned, edged.Straight],
            ["sh9"] = [roll.Diameter.Millimetres, roll.Turns], ["sh10"] = [one.StripLength.Millimetres, one.Outer.Millimetres, one.AtSeam.Millimetres], ["sh11"] = [two.StripLength.Millimetres, two.Outer.Millimetres],
            ["sh12"] = [one.HoleVolume.Millilitres, (one.HoleVolume * 0.97 * Density.FromGramsPerMillilitre(1.02)).Grams],
            ["sh13"] = [RoundsInRing.Fit(Mm(80), Mm(16.4)).Count], ["sh14"] = [RoundsInRing.Fit(Mm(80), Mm(17.6)).Count], ["sh15"] = [RoundsInRing.Fit(Mm(80), Mm(15)).Count],
            ["sh16"] = [sixty.Square], ["sh17"] = [Math.Max(sixty.OffsetAlong, sixty.OffsetAcross)], ["sh18"] = [eighty.Square, Math.Max(eighty.OffsetAlong, eighty.OffsetAcross)],
            ["sh19"] = [Piped.Quenelle(Mm(60), Mm(30), Mm(25)).Millilitres], ["sh20"] = [Piped.Drop(Mm(35), Mm(12)).Millilitres], ["sh21"] = [swiss.Diameter.Millimetres, swiss.Turns],
            ["eg1"] = [egg.InShell.Grams * HenEgg.ShareOf("egg"), egg.InShell.Grams * HenEgg.ShareOf("white"), egg.InShell.Grams * HenEgg.ShareOf("yolk")],
        };
    }

    private static Length Mm(double v) => Length.FromMillimetres(v);

    private static double[] Bloom(double grams, double from, double to) => GelatineStrength.Convert(Mass.FromGrams(grams), from, to) is var g ? [g.Linear.Grams, g.SquareRoot.Grams] : [];
}
