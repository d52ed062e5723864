using System.Collections.Immutable;
using System.Diagnostics;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Method;

namespace Coulisse.Gauge.Foods;

/// <summary>The whole assessment of a dish without heat: weighed, scaled, mixed, its stages, percentages and balance, allergens, list, panel, sulphites, date mark. One warm, and ten thousand on two cores.</summary>
internal static class FoodsGauge
{
    private const int Many = 10_000;

    public static int Run()
    {
        string cards = Path.Combine(Start.StartGauge.Root(), "examples", "demo", "cards");
        Dish[] dishes = [.. Directory.GetFiles(cards, "*.md").Order(StringComparer.Ordinal).Select(f => CardReader.Read(new CardText(File.ReadAllText(f), f)).Match(d => d, _ => throw new InvalidOperationException(f)))];
        Dish starter = dishes.First(d => d.Components.Length == dishes.Max(x => x.Components.Length));
        // Until the compiler has seen which paths are hot: some thirty calls and a second of its own time.
        long begun = Stopwatch.GetTimestamp();
        for (int i = 0; i < 100 || Stopwatch.GetElapsedTime(begun) < TimeSpan.FromSeconds(4); i++)
        {
            Assess(starter, 1);
        }

        TimeSpan busy = Process.GetCurrentProcess().TotalProcessorTime;
        (double median, double p95) = Stopwatches.Milliseconds(100, _ => Assess(starter, 1));
        double each = (Process.GetCurrentProcess().TotalProcessorTime - busy).TotalMilliseconds / 100;
        Console.WriteLine($"starter ({starter.Components.Length} components, {starter.Components.Sum(c => c.Ingredients.Length)} lines), warm: median {median:0.0} ms, 95th of 100 {p95:0.0} ms, {each:0.0} ms of processor each");
        Parts(starter);

        TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
        long start = Stopwatch.GetTimestamp();
        long figures = 0;
        Parallel.For(0, Many, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => Interlocked.Add(ref figures, Assess(dishes[i % dishes.Length], 1 + (i % 97 / 50.0))));
        TimeSpan wall = Stopwatch.GetElapsedTime(start);
        TimeSpan processor = Process.GetCurrentProcess().TotalProcessorTime - before;
        Console.WriteLine($"{Many} dishes on two cores: {wall.TotalSeconds:0.0} s by the clock, {processor.TotalSeconds:0.0} s of processor ({processor.TotalSeconds / 2:0.0} s a core), {figures} figures");
        return 0;
    }

    // Where the time goes: each part alone, its fastest of fifty, so that other work on the cores does not count.
    private static void Parts(Dish dish)
    {
        WeighedDish weighed = Weighing.Weigh(dish);
        ImmutableArray<MixedComponent> mixed = Blending.Of(weighed).Match(m => m, p => throw new InvalidOperationException(p[0].Message));
        (WeighedComponent C, MixedComponent M)[] parts = [.. weighed.Components.Where(c => !c.Lines.IsEmpty).Zip(mixed)];
        (string Name, Action Do)[] all =
        [
            ("weigh", () => Weighing.Weigh(dish)), ("scale", () => Scaling.Scale(weighed, new ScaleTo.Factor(1.3))), ("mix", () => Blending.Of(weighed)), ("stages", () => Array.ForEach(parts, x => StageMixtures.Of(x.C, x.M))),
            ("percentages and balance", () => Array.ForEach(parts, x => _ = (Percentages.Of(weighed, x.C), BalanceRules.Of(weighed, x.C)))), ("activity and ice", () => Array.ForEach(parts, x => _ = (x.M.Activity, x.M.IceShare(-18), x.M.AlcoholByVolume))),
            ("allergens, three laws", () => Array.ForEach(Enum.GetValues<AllergenRegime>(), r => Allergens.Of(weighed, r))), ("list, three laws", () => Array.ForEach(Enum.GetValues<AllergenRegime>(), r => Ingredients.Of(weighed, r))),
            ("panel, three laws", () => Array.ForEach(Enum.GetValues<AllergenRegime>(), r => Panels.Of(weighed, r))), ("sulphites and date", () => _ = (Sulphites.Of(weighed, AllergenRegime.Eu), DateMark.Of(weighed))),
        ];
        foreach ((string name, Action run) in all)
        {
            double best = double.MaxValue;
            for (int i = 0; i < 50; i++)
            {
                long start = Stopwatch.GetTimestamp();
                run();
                best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            }

            Console.WriteLine($"  {name}: {best:0.00} ms");
        }
    }

    private static long Assess(Dish dish, double factor)
    {
        WeighedDish weighed = Weighing.Weigh(dish);
        Batch batch = Scaling.Scale(weighed, new ScaleTo.Factor(factor)).Match(b => b, _ => throw new InvalidOperationException(dish.Title));
        ImmutableArray<MixedComponent> mixed = Blending.Of(weighed).Match(m => m, p => throw new InvalidOperationException(p[0].Message));
        long figures = batch.Components.Sum(c => c.Lines.Length);
        foreach ((WeighedComponent c, MixedComponent m) in weighed.Components.Where(c => !c.Lines.IsEmpty).Zip(mixed))
        {
            figures += StageMixtures.Of(c, m).Length + (Percentages.Of(weighed, c)?.Lines.Length ?? 0) + BalanceRules.Of(weighed, c).Length + m.Agents.Length;
            figures += (m.Activity is null ? 0 : 1) + (m.IceShare(-18) is null ? 0 : 1) + (m.AlcoholByVolume is null ? 0 : 1);
        }

        foreach (AllergenRegime regime in Enum.GetValues<AllergenRegime>())
        {
            figures += Allergens.Of(weighed, regime).Dish.Length + Ingredients.Of(weighed, regime).Items.Length + Panels.Of(weighed, regime).Match(p => p.Rows.Length, _ => 0);
            figures += Sulphites.Of(weighed, regime)?.Lines.Length ?? 0;
        }

        return figures + (DateMark.Of(weighed) is null ? 0 : 1);
    }
}
