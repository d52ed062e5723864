using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Gauge.Heat;

/// <summary>gauge heat: nearness to the exact series, single answers, and throughput against a plain explicit scheme at equal accuracy in the same run.</summary>
internal static class HeatGauge
{
    private static readonly HeatMaterial Moist = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(0.5), Diffusivity.FromSquareMetresPerSecond(1.4e-7));

    public static int Run()
    {
        Nearness();
        Console.WriteLine();
        Console.WriteLine("| what | median, ms | 95th, ms | limit, ms |");
        Console.WriteLine("|---|---|---|---|");
        Bag();
        Brick();
        Samples();
        Console.WriteLine();
        Throughput();
        Console.WriteLine();
        SampleThroughput();
        Console.WriteLine();
        Changing();
        Console.WriteLine();
        Blocks();
        Console.WriteLine();
        Freezing();
        return 0;
    }

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static BodyFace Face(double h, double medium) => new(double.IsPositiveInfinity(h) ? null : HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h), Medium.Constant(C(medium)));

    private static void Nearness()
    {
        double worst = 0;
        int compared = 0;
        foreach ((SolidShape shape, BodyShape one) in new[] { (SolidShape.Slab, BodyShape.Slab), (SolidShape.Cylinder, BodyShape.Cylinder), (SolidShape.Sphere, BodyShape.Sphere) })
        {
            foreach (double biot in (double[])[0.1, 0.5, 1, 2.5, 5, 10, 50, double.PositiveInfinity])
            {
                const double L = 0.02;
                ConductionSeries exact = ConductionSeries.For(one, biot);
                (BodyRun run, _) = HeatBody.Piece(shape, [Length.FromMillimetres(2000 * L)], Moist, Face(biot * 0.5 / L, 65)).Refined(C(5), Duration.FromSeconds((biot < 1 ? 10 : 2) * L * L / 1.4e-7));
                foreach (BodyMoment m in run.Moments)
                {
                    double fo = 1.4e-7 * m.Time.TotalSeconds / (L * L);
                    if (fo >= 0.05)
                    {
                        worst = Math.Max(worst, Math.Abs(65 - (60 * exact.CentreAt(fo)) - m.Core.Celsius));
                        compared++;
                    }
                }
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Core against the exact series, 60 K apart, three shapes, Bi 0.1 to infinite, Fo from 0.05: worst {worst:0.0000} K over {compared} moments (limit 0.05 K)."));
    }

    private static void Bag()
    {
        ThermalParts lean = ThermalParts.FromGrams(75, 21, 3, 0, 0, 1);
        ImmutableArray<Organism> six = [.. Organism.All.Take(6)];
        double kill = 0;
        void Answer(HeatMaterial food, BodyFace face)
        {
            BodyRun run = HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(20)], food, face).Follow(C(5), Duration.FromMinutes(45));
            ImmutableArray<(double, Temperature)> history = run.History;
            kill = six.Min(o => Lethality.Log10(o.Hardest, history, o.Floor, o.Ceiling));
        }

        HeatMaterial meat = HeatMaterial.Food(lean, null, Fraction.FromValue(0.5));
        Row("45-minute bag, properties that change, lethality of six organisms", Stopwatches.Milliseconds(400, _ => Answer(meat, Face(95, 62))), 2);
        Row("the same with the food's tables made anew each time", Stopwatches.Milliseconds(200, _ => Answer(HeatMaterial.Food(lean, null, Fraction.FromValue(0.5)), Face(95, 62))), 2);
        GC.KeepAlive(kill);
    }

    private static void Brick()
    {
        HeatMaterial meat = HeatMaterial.Food(ThermalParts.FromGrams(75, 21, 3, 0, 0, 1), C(-1.5), Fraction.FromValue(0.5));
        ImmutableArray<Length> sizes = [.. ((double[])[60, 80, 120]).Select(Length.FromMillimetres)];
        Row("block 60 × 80 × 120 mm, 12³ cells an octant, properties that change, 3 h at 65 °C", Stopwatches.Milliseconds(20, _ => HeatBody.Piece(SolidShape.Brick, sizes, meat, Face(95, 65), 12).Follow(C(5), Duration.FromHours(3), 0.02)), 300);
        Row("the same from frozen, 5 h", Stopwatches.Milliseconds(8, _ => HeatBody.Piece(SolidShape.Brick, sizes, meat, Face(95, 65), 12).Follow(C(-18), Duration.FromHours(5), 0.05)), 300);
    }

    private static void Samples()
    {
        HeatCase food = new(Diffusivity.FromSquareMetresPerSecond(1.4e-7), Diffusivity.FromSquareMetresPerSecond(1.15e-7), Conductivity.FromWattsPerMetreKelvin(0.48), Conductivity.FromWattsPerMetreKelvin(0.46), null, HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));
        Row("100 samples, minutes to a core", Stopwatches.Milliseconds(20, _ => UncertainCore.Minutes(SolidShape.Slab, [Length.FromMillimetres(20)], C(5), C(62), food, C(60))), 500);
        Row("100 samples, log reduction", Stopwatches.Milliseconds(20, _ => UncertainCore.Log10(SolidShape.Slab, [Length.FromMillimetres(20)], C(5), C(62), food, Duration.FromMinutes(45), Organism.All[0])), 500);
    }

    /// <summary>One axis, constant properties: the way the product answers (series for one material, modes for layers) against the plain scheme with the fewest cells that keep the error asked.</summary>
    private static void Throughput()
    {
        Console.WriteLine("| half a slab, 45 min from 5 °C in 65 °C | error asked, K | ours: how, error K, µs | plain: cells, error K, µs | times as fast |");
        Console.WriteLine("|---|---|---|---|---|");
        foreach ((string what, double mm, double h, BodyLayer[] skin) in new[]
        {
            ("bag 20 mm, film 0.1 mm, h 95", 20.0, 95.0, new[] { new BodyLayer(HeatMaterial.Film, Length.FromMillimetres(0.1), 1) }),
            ("bag 40 mm, film 0.1 mm, h 600", 40.0, 600.0, [new BodyLayer(HeatMaterial.Film, Length.FromMillimetres(0.1), 1)]),
            ("terrine 40 mm, steel 1 mm, h 200", 40.0, 200.0, [new BodyLayer(HeatMaterial.Steel, Length.FromMillimetres(1), 1)]),
            ("bare slab 20 mm, h 95", 20.0, 95.0, []),
            ("bare slab 40 mm, h 600", 40.0, 600.0, []),
        })
        {
            BodyAxis Axis(int cells) => new(BodyShape.Slab, [new BodyLayer(Moist, Length.FromMillimetres(mm / 2), cells), .. skin], null, Face(h, 65));
            double Series() => SolidBody.Of(SolidShape.Slab, [Length.FromMillimetres(mm)], Diffusivity.FromSquareMetresPerSecond(1.4e-7), Conductivity.FromWattsPerMetreKelvin(0.5), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h)).CoreAfter(C(5), C(65), Duration.FromMinutes(45)).Celsius;
            double Modes(int cells) => new LayerModes(Axis(cells)).CoreAfter(C(5), C(65), Duration.FromMinutes(45)).Celsius;

            // the followed body with fine cells and steps: neither of the two that are compared
            double exact = new HeatBody([Axis(48)]).Refined(C(5), Duration.FromMinutes(45), 1e-6, 2).Run.Moments[^1].Core.Celsius;
            foreach (double asked in (double[])[0.05, 0.01, 0.002])
            {
                int ours = 2;
                while (skin.Length > 0 && Math.Abs(Modes(ours) - exact) > asked && ours < 100)
                {
                    ours++;
                }

                double Ours() => skin.Length > 0 ? Modes(ours) : Series();
                double Plain(int cells) => PlainExplicit.Core(
                    [.. Enumerable.Repeat(mm / 2000 / cells, cells), .. skin.Select(l => l.Thick.Metres)],
                    [.. Enumerable.Repeat(0.5, cells), .. skin.Select(l => l.Material == HeatMaterial.Film ? 0.35 : 16)],
                    [.. Enumerable.Repeat(1.4e-7, cells), .. skin.Select(l => l.Material == HeatMaterial.Film ? 1.7e-7 : 4.2e-6)], h, 5, 65, 2700);

                // An error may pass through nought by chance: the fewest cells after which it stays inside.
                int plain = 80;
                while (plain > 3 && Math.Abs(Plain(plain - 1) - exact) <= asked)
                {
                    plain--;
                }

                (double fast, _) = Many(400, 50, Ours);
                (double slow, _) = Many(40, SlowIsShort(plain) ? 50 : 4, () => Plain(plain));
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {asked} | {(skin.Length > 0 ? $"modes, {ours} and {2 * ours} cells" : "series")}, {Math.Abs(Ours() - exact):0.00000}, {1000 * fast:0.00} | {plain}, {Math.Abs(Plain(plain) - exact):0.00000}, {1000 * slow:0.00} | {slow / fast:0.0} |"));
            }

            static bool SlowIsShort(int cells) => cells < 15;
        }
    }

    /// <summary>A hundred pieces that differ by what is not known exactly, minutes to a core each: the product's samples against the plain scheme run until it is there.</summary>
    private static void SampleThroughput()
    {
        Console.WriteLine("| 100 samples, minutes until the middle of 20 mm is at 60 °C in 62 °C | error asked, K | ours, µs a sample | plain: cells, µs a sample | times as fast |");
        Console.WriteLine("|---|---|---|---|---|");
        (double T, double Alpha, double K, double H)[] samples = [.. Enumerable.Range(0, 100).Select(i => (0.009 + (0.002 * i / 99.0), 1.15e-7 + (0.25e-7 * ((i * 37) % 100) / 99.0), 0.46 + (0.02 * ((i * 61) % 100) / 99.0), 95 + (505.0 * ((i * 83) % 100) / 99.0)))];
        double Series(int i) => SolidBody.Of(SolidShape.Slab, [Length.FromMetres(2 * samples[i].T)], Diffusivity.FromSquareMetresPerSecond(samples[i].Alpha), Conductivity.FromWattsPerMetreKelvin(samples[i].K), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(samples[i].H)).TimeTo(C(5), C(62), C(60))!.Value.TotalSeconds;
        double At(int i, double seconds) => SolidBody.Of(SolidShape.Slab, [Length.FromMetres(2 * samples[i].T)], Diffusivity.FromSquareMetresPerSecond(samples[i].Alpha), Conductivity.FromWattsPerMetreKelvin(samples[i].K), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(samples[i].H)).CoreAfter(C(5), C(62), Duration.FromSeconds(seconds)).Celsius;
        double Plain(int i, int cells) => PlainExplicit.SecondsTo(cells, samples[i].T, samples[i].K, samples[i].Alpha, samples[i].H, 5, 62, 60);
        foreach (double asked in (double[])[0.05, 0.01, 0.002])
        {
            int plain = 60;
            while (plain > 3 && Enumerable.Range(0, 100).All(i => Math.Abs(At(i, Plain(i, plain - 1)) - 60) <= asked))
            {
                plain--;
            }

            (double fast, _) = Many(40, 1, () => Enumerable.Range(0, 100).Sum(Series));
            (double slow, _) = Many(10, 1, () => Enumerable.Range(0, 100).Sum(i => Plain(i, plain)));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| | {asked} | {10 * fast:0.00} | {plain}, {10 * slow:0.00} | {slow / fast:0.0} |"));
        }
    }

    /// <summary>One axis, properties that change with temperature: the followed body against the plain scheme, both reading tables.</summary>
    private static void Changing()
    {
        Console.WriteLine("| half a slab of lean meat, properties that change | error asked, K | ours: cells, error K, ms | plain: cells, error K, ms | times as fast |");
        Console.WriteLine("|---|---|---|---|---|");
        ThermalParts lean = ThermalParts.FromGrams(75, 21, 3, 0, 0, 1);
        HeatMaterial meat = HeatMaterial.Food(lean, null, Fraction.FromValue(0.5));
        PlainChanging plainly = new(meat, lean, 0.5, 1, 80);
        foreach ((string what, double mm, double h, double minutes) in new[] { ("bag 20 mm, h 95, 45 min", 20.0, 95.0, 45.0), ("bag 40 mm, h 600, 90 min", 40, 600, 90), ("roast 100 mm, h 600, 8 h", 100, 600, 480) })
        {
            HeatBody Body(int cells) => HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(mm)], meat, Face(h, 65), cells);
            double exact = Body(48).Refined(C(5), Duration.FromMinutes(minutes), 1e-6, 2).Run.Moments[^1].Core.Celsius;
            foreach (double asked in (double[])[0.05, 0.01, 0.002])
            {
                double Ours(int cells, double perStep) => Body(cells).Refined(C(5), Duration.FromMinutes(minutes), perStep, 2).Run.Moments[^1].Core.Celsius;
                (int ours, double step) = (2, asked * 2);
                while (Math.Abs(Ours(ours, step) - exact) > asked && ours < 100)
                {
                    (ours, step) = (ours + 1, step * 0.7);
                }

                double Plain(int cells) => plainly.Core(mm / 2000, cells, h, 5, 65, 60 * minutes);
                int plain = 70;
                while (plain > 3 && Math.Abs(Plain(plain - 1) - exact) <= asked)
                {
                    plain--;
                }

                (double fast, _) = Many(100, 1, () => Ours(ours, step));
                (double slow, _) = Many(10, 1, () => Plain(plain));
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {asked} | {ours} and {2 * ours}, {Math.Abs(Ours(ours, step) - exact):0.00000}, {fast:0.000} | {plain}, {Math.Abs(Plain(plain) - exact):0.00000}, {slow:0.000} | {slow / fast:0.0} |"));
            }
        }
    }

    private static void Blocks()
    {
        Console.WriteLine("| block 60 × 80 × 120 mm, h 95, 90 min from 5 °C in 65 °C | error asked, K | ours: cells an axis, error K, ms | plain: cells an axis, error K, ms | times as fast |");
        Console.WriteLine("|---|---|---|---|---|");
        ImmutableArray<Length> sizes = [.. ((double[])[60, 80, 120]).Select(Length.FromMillimetres)];
        double exact = SolidBody.Of(SolidShape.Brick, sizes, Diffusivity.FromSquareMetresPerSecond(1.4e-7), Conductivity.FromWattsPerMetreKelvin(0.5), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95)).CoreAfter(C(5), C(65), Duration.FromMinutes(90)).Celsius;
        foreach (double asked in (double[])[0.05, 0.02, 0.01])
        {
            double Ours(int cells, double perStep) => HeatBody.Piece(SolidShape.Brick, sizes, Moist, Face(95, 65), cells).Refined(C(5), Duration.FromMinutes(90), perStep, 2).Run.Moments[^1].Core.Celsius;
            (int ours, double step) = (2, asked * 2);
            while (Math.Abs(Ours(ours, step) - exact) > asked && ours < 20)
            {
                (ours, step) = (ours + 1, step * 0.7);
            }

            double Plain(int cells) => PlainBlock.Core([0.03, 0.04, 0.06], cells, 1.4e-7, 0.5, 95, 5, 65, 5400);
            int plain = 30;
            while (plain > 3 && Math.Abs(Plain(plain - 1) - exact) <= asked)
            {
                plain--;
            }

            (double fast, _) = Cpu(30, () => Ours(ours, step));
            (double slow, _) = Cpu(3, () => Plain(plain));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| | {asked} | {ours} and {2 * ours}, {Math.Abs(Ours(ours, step) - exact):0.0000}, {fast:0.00} | {plain}, {Math.Abs(Plain(plain) - exact):0.0000}, {slow:0.00} | {slow / fast:0.0} |"));
        }
    }

    private static void Freezing()
    {
        Console.WriteLine("| slab 30 mm of lean meat from 5 °C, air −30 °C, h 30, to −18 °C | error asked | ours: cells, hours, ms | plain: cells, hours, ms | times as fast |");
        Console.WriteLine("|---|---|---|---|---|");
        ThermalParts lean = ThermalParts.FromGrams(75, 21, 3, 0, 0, 1);
        HeatMaterial meat = HeatMaterial.Food(lean, C(-1.5), Fraction.FromValue(1));
        PlainFreezing plainly = new(meat, lean, C(-1.5), -30, 6);
        double Ours(int cells, double perStep) => HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(30)], meat, Face(30, -30), cells).Follow(C(5), Duration.FromHours(3), perStep, 600).TimeTo(C(-18))!.Value.TotalHours;
        double Plain(int cells) => plainly.Hours(0.015, cells, 30, 5, -30, -18);
        double exact = Ours(160, 0.001);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| reference, ours with 160 cells {exact:0.0000} h; plain with 60 {Plain(60):0.0000} h | | | | |"));
        foreach (double asked in (double[])[0.01, 0.003, 0.001])
        {
            (int ours, double step) = (4, 0.5);
            while (Math.Abs((Ours(ours, step) / exact) - 1) > asked && ours < 120)
            {
                (ours, step) = (ours + 2, Math.Max(0.01, step * 0.8));
            }

            int plain = 60;
            while (plain > 3 && Math.Abs((Plain(plain - 1) / exact) - 1) <= asked)
            {
                plain--;
            }

            (double fast, _) = Cpu(30, () => Ours(ours, step));
            (double slow, _) = Cpu(3, () => Plain(plain));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| | {100 * asked:0.0} % | {ours}, {Ours(ours, step):0.0000}, {fast:0.00} | {plain}, {Plain(plain):0.0000}, {slow:0.00} | {slow / fast:0.0} |"));
        }
    }

    private static (double Milliseconds, double Sum) Cpu(int times, Func<double> work) => Many(times, 1, work);

    /// <summary>Best of so many runs, each of so many answers: what a clock's tick is too coarse for is asked many times over.</summary>
    private static (double Milliseconds, double Sum) Many(int times, int each, Func<double> work)
    {
        for (int i = 0; i < 5; i++)
        {
            work();
        }

        (double best, double sum) = (double.PositiveInfinity, 0);
        for (int i = 0; i < times; i++)
        {
            long start = Stopwatch.GetTimestamp();
            for (int j = 0; j < each; j++)
            {
                sum += work();
            }

            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds / each);
        }

        return (best, sum);
    }

    private static void Row(string what, (double Median, double P95) time, double limit)
        => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {time.Median:0.00} | {time.P95:0.00} | {limit:0} |"));
}
