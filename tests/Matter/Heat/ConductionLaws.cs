using System.Collections.Immutable;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Finite volumes against the exact series and against the laws they must keep.</summary>
public sealed class ConductionLaws
{
    private const double K = 0.5;
    private const double Alpha = 1.4e-7;
    private static readonly HeatMaterial Moist = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(K), Diffusivity.FromSquareMetresPerSecond(Alpha));

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static Length Mm(double mm) => Length.FromMillimetres(mm);

    private static BodyFace Face(double h, double medium) => new(double.IsPositiveInfinity(h) ? null : HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h), Medium.Constant(C(medium)));

    private static HeatBody Slab(double mm, double h, double medium, int cells = 24) => HeatBody.Piece(SolidShape.Slab, [Mm(mm)], Moist, Face(h, medium), cells);

    public static TheoryData<SolidShape, double> Grid()
    {
        TheoryData<SolidShape, double> all = [];
        foreach (SolidShape shape in (SolidShape[])[SolidShape.Slab, SolidShape.Cylinder, SolidShape.Sphere])
        {
            foreach (double biot in (double[])[0.1, 0.5, 1, 2.5, 5, 10, 50, double.PositiveInfinity])
            {
                all.Add(shape, biot);
            }
        }

        return all;
    }

    [Theory]
    [MemberData(nameof(Grid))]
    public void Core_within_0_05_K_of_the_exact_series_from_Fo_0_05_to_10(SolidShape shape, double biot)
    {
        const double L = 0.02;
        BodyShape one = shape switch { SolidShape.Slab => BodyShape.Slab, SolidShape.Cylinder => BodyShape.Cylinder, _ => BodyShape.Sphere };
        ConductionSeries exact = ConductionSeries.For(one, biot);
        Duration length = Duration.FromSeconds((biot < 1 ? 10 : 2) * L * L / Alpha);
        (BodyRun run, double mesh) = HeatBody.Piece(shape, [Mm(2000 * L)], Moist, Face(biot * K / L, 65)).Refined(C(5), length);
        Assert.InRange(mesh, 0, 0.1);
        foreach (BodyMoment m in run.Moments.Skip(1))
        {
            double fo = Alpha * m.Time.TotalSeconds / (L * L);
            if (fo >= 0.05)
            {
                Assert.Equal(65 - (60 * exact.CentreAt(fo)), m.Core.Celsius, 0.05);
                Assert.Equal(65 - (60 * exact.MeanAt(fo)), m.Mean.Celsius, 0.1);
            }
        }
    }

    [Theory]
    [InlineData(SolidShape.Slab, 1.0)]
    [InlineData(SolidShape.Slab, double.PositiveInfinity)]
    [InlineData(SolidShape.Cylinder, 5.0)]
    [InlineData(SolidShape.Sphere, 5.0)]
    public void Halving_the_cells_quarters_the_error(SolidShape shape, double biot)
    {
        const double L = 0.02;
        BodyShape one = shape switch { SolidShape.Slab => BodyShape.Slab, SolidShape.Cylinder => BodyShape.Cylinder, _ => BodyShape.Sphere };
        double fo = 0.4;
        double exact = 65 - (60 * ConductionSeries.For(one, biot).CentreAt(fo));
        double Error(int cells) => Math.Abs(HeatBody.Piece(shape, [Mm(2000 * L)], Moist, Face(biot * K / L, 65), cells).Follow(C(5), Duration.FromSeconds(fo * L * L / Alpha), 1e-5, 2).Moments[^1].Core.Celsius - exact);
        double[] errors = [Error(8), Error(16), Error(32), Error(64)];
        foreach ((double coarse, double fine) in errors.Zip(errors.Skip(1)))
        {
            Assert.InRange(Math.Log2(coarse / fine), 1.7, 2.3);
        }
    }

    [Fact]
    public void Smaller_steps_converge_at_third_order_or_better()
    {
        double At(double perStep) => Slab(40, 200, 65, 20).Follow(C(5), Duration.FromMinutes(30), perStep, 2).Moments[^1].Core.Celsius;
        double truth = At(1e-9);
        Assert.True(Math.Abs(At(1e-2) - truth) < 0.01);
        Assert.True(Math.Abs(At(1e-5) - truth) < Math.Abs(At(1e-2) - truth) / 50);
    }

    [Theory]
    [InlineData(SolidShape.Brick, new double[] { 40, 60, 90 })]
    [InlineData(SolidShape.Cylinder, new double[] { 60, 80 })]
    public void Block_and_cut_roll_within_0_05_K_of_the_product_of_series(SolidShape shape, double[] mm)
    {
        ImmutableArray<Length> sizes = [.. mm.Select(Mm)];
        SolidBody exact = SolidBody.Of(shape, sizes, Diffusivity.FromSquareMetresPerSecond(Alpha), Conductivity.FromWattsPerMetreKelvin(K), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));
        (BodyRun run, _) = HeatBody.Piece(shape, sizes, Moist, Face(95, 65), 8).Refined(C(5), Duration.FromHours(2), points: 48);
        Assert.All(run.Moments.Skip(1), m => Assert.Equal(exact.CoreAfter(C(5), C(65), m.Time).Celsius, m.Core.Celsius, 0.05));
        Assert.InRange(run.Unbalanced, 0, 1e-6);
    }

    [Fact]
    public void A_body_of_little_resistance_is_a_stirred_pot()
    {
        // Bi 0.001: exp(-h·t/(rho·c·L)) with rho·c = k/alpha
        const double L = 0.005;
        double h = 0.001 * K / L;
        BodyRun run = Slab(10, h, 65).Follow(C(5), Duration.FromHours(40));
        foreach (BodyMoment m in run.Moments.Skip(1))
        {
            Assert.Equal(65 - (60 * Math.Exp(-h * m.Time.TotalSeconds / (K / Alpha * L))), m.Core.Celsius, 0.03);
        }
    }

    [Fact]
    public void A_huge_coefficient_is_a_face_at_once_at_the_medium()
    {
        BodyRun huge = Slab(40, 1e6, 65).Follow(C(5), Duration.FromMinutes(40));
        BodyRun fixedFace = Slab(40, double.PositiveInfinity, 65).Follow(C(5), Duration.FromMinutes(40));
        Assert.All(huge.Moments.Zip(fixedFace.Moments), p => Assert.Equal(p.Second.Core.Celsius, p.First.Core.Celsius, 0.02));
    }

    [Fact]
    public void The_balance_closes_to_a_millionth()
    {
        foreach (SolidShape shape in (SolidShape[])[SolidShape.Slab, SolidShape.Cylinder, SolidShape.Sphere])
        {
            Assert.InRange(HeatBody.Piece(shape, [Mm(30)], Moist, Face(95, 65)).Follow(C(5), Duration.FromMinutes(25)).Unbalanced, 0, 1e-6);
        }
    }

    [Fact]
    public void One_warm_face_and_one_that_passes_nothing_is_twice_the_thickness()
    {
        HeatBody tray = new([new BodyAxis(BodyShape.Slab, [new BodyLayer(Moist, Mm(25), 24)], null, Face(15, 4))]);
        BodyRun both = Slab(50, 15, 4).Follow(C(60), Duration.FromHours(4));
        Assert.All(tray.Follow(C(60), Duration.FromHours(4)).Moments.Zip(both.Moments), p => Assert.Equal(p.Second.Core.Celsius, p.First.Core.Celsius, 1e-9));
    }

    [Fact]
    public void Two_like_faces_reckoned_whole_are_the_half_reckoned_once()
    {
        HeatBody whole = new([new BodyAxis(BodyShape.Slab, [new BodyLayer(Moist, Mm(40), 49)], Face(95, 65), Face(95, 65))]);
        BodyRun run = whole.Follow(C(5), Duration.FromHours(1));
        Assert.All(run.Moments.Zip(Slab(40, 95, 65, 49).Follow(C(5), Duration.FromHours(1)).Moments), p => Assert.Equal(p.Second.Core.Celsius, p.First.Core.Celsius, 0.02));
        Assert.InRange(run.Unbalanced, 0, 1e-6);
    }

    [Fact]
    public void A_layer_of_still_air_is_a_smaller_coefficient()
    {
        // 1 mm of air at 0.026 W/(m·K): h 95 falls to 1/(1/95 + 0.001/0.026) = 20.4
        BodyRun gap = HeatBody.Piece(SolidShape.Slab, [Mm(20)], Moist, Face(95, 65), 24, new BodyLayer(HeatMaterial.AirGap, Mm(1), 4)).Follow(C(5), Duration.FromHours(1));
        BodyRun plain = Slab(20, 1 / ((1 / 95.0) + (0.001 / 0.026)), 65).Follow(C(5), Duration.FromHours(1));
        Assert.All(gap.Moments.Zip(plain.Moments), p => Assert.Equal(p.Second.Core.Celsius, p.First.Core.Celsius, 0.1));
    }

    [Fact]
    public void A_medium_that_jumps_is_the_sum_of_two_that_do_not()
    {
        // Duhamel: the answer to a jump at t1 is the first answer plus the later one, shifted
        SolidBody exact = SolidBody.Of(SolidShape.Slab, [Mm(40)], Diffusivity.FromSquareMetresPerSecond(Alpha), Conductivity.FromWattsPerMetreKelvin(K), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(200));
        Duration jump = Duration.FromMinutes(20);
        Medium medium = Medium.Constant(C(65)).Then(jump, Medium.Constant(C(2)));
        HeatBody body = HeatBody.Piece(SolidShape.Slab, [Mm(40)], Moist, new BodyFace(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(200), medium));
        foreach (BodyMoment m in body.Refined(C(5), Duration.FromHours(1)).Run.Moments.Skip(1))
        {
            double first = exact.CoreAfter(C(5), C(65), m.Time).Celsius;
            double second = m.Time > jump ? exact.CoreAfter(C(0), C(63), m.Time - jump).Celsius : 0;
            Assert.Equal(first - second, m.Core.Celsius, 0.05);
        }
    }

    [Fact]
    public void A_ramped_medium_in_a_stirred_pot_has_its_closed_answer()
    {
        // dT/dt = (Tm - T)/tau with Tm = a + b·t from T0 = a: T = Tm - b·tau·(1 - exp(-t/tau))
        const double L = 0.005;
        double tau = K / Alpha * L / 0.1;
        Medium ramp = Medium.Through([(Duration.Zero, C(5)), (Duration.FromSeconds(tau), C(65)), (Duration.FromSeconds(2 * tau), C(65))]);
        BodyRun run = HeatBody.Piece(SolidShape.Slab, [Mm(10)], Moist, new BodyFace(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(0.1), ramp)).Follow(C(5), Duration.FromSeconds(tau), 1e-4, 40);
        Assert.All(run.Moments.Skip(1), m => Assert.Equal(5 + (60 * m.Time.TotalSeconds / tau) - (60 * (1 - Math.Exp(-m.Time.TotalSeconds / tau))), m.Core.Celsius, 0.05));
        Assert.InRange(run.Unbalanced, 0, 1e-6);
    }

    [Fact]
    public void Thicker_never_faster_and_hotter_never_slower()
    {
        double At(double mm, double bath) => Slab(mm, 95, bath).Follow(C(5), Duration.FromMinutes(20)).Moments[^1].Core.Celsius;
        Assert.True(At(20, 60) > At(22, 60));
        Assert.True(At(20, 61) > At(20, 60));
    }

    [Fact]
    public void A_bath_that_sags_and_an_oven_that_swings_are_not_a_steady_one()
    {
        WaterBath bath = new(Mass.FromGrams(20_000), Power.FromWatts(1400), Power.FromWatts(0));
        Energy taken = WaterBath.HeatTakenUp(Mass.FromGrams(3000), SpecificHeat.FromKilojoulesPerKilogramKelvin(3.6), C(5), C(60));
        double Mean(Medium m) => HeatBody.Piece(SolidShape.Slab, [Mm(20)], Moist, new BodyFace(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95), m)).Follow(C(5), Duration.FromMinutes(15)).Moments[^1].Core.Celsius;
        double steady = Mean(Medium.Constant(C(60)));
        Assert.InRange(steady - Mean(Medium.Sagging(C(60), bath, taken)), 0.5, 7.1);
        Assert.InRange(Math.Abs(steady - Mean(Medium.Cycling(C(60), TemperatureDelta.FromKelvin(5), Duration.FromMinutes(8)))), 0, 1);
        Assert.InRange(Mean(Medium.Loaded(C(60), TemperatureDelta.FromKelvin(5), Duration.FromMinutes(10))) - steady, 0.3, 5);
    }

    [Fact]
    public void What_lies_outside_the_model_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Slab(0, 95, 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => Slab(20, 95, 60).Follow(C(5), Duration.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Slab(20, 95, 400).Follow(C(5), Duration.FromMinutes(1)));
    }
}
