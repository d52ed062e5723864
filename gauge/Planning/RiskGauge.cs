using System.Diagnostics;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Risk;
using NodaTime;

namespace Coulisse.Gauge.Planning;

/// <summary>gauge risk: ten thousand runs of plans of 120 and 600 tasks, timed cold and warm.</summary>
internal static class RiskGauge
{
    public static int Run()
    {
        Console.WriteLine("| tasks | people | runs | first, ms | again, ms | on time |");
        Console.WriteLine("|---|---|---|---|---|---|");
        foreach ((int people, int each) in (ReadOnlySpan<(int, int)>)[(3, 40), (12, 50)])
        {
            (Occasion occasion, Plan plan) = Made(people, each);
            double first = Timed(occasion, plan, out RiskReport report);
            double again = Timed(occasion, plan, out _);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {plan.Tasks.Length} | {people} | {report.Runs} | {first:0} | {again:0} | {report.OnTime:0.000} |"));
        }

        return 0;
    }

    private static double Timed(Occasion occasion, Plan plan, out RiskReport report)
    {
        Stopwatch clock = Stopwatch.StartNew();
        report = RiskOfPlan.Simulate(occasion, plan);
        return clock.Elapsed.TotalMilliseconds;
    }

    private static (Occasion Occasion, Plan Plan) Made(int people, int each)
    {
        LocalDateTime day = new(2026, 10, 9, 8, 0);
        List<PlannedTask> tasks = [];
        for (int p = 0; p < people; p++)
        {
            for (int i = 0; i < each; i++)
            {
                // A gap after every fifth task, so that delays are sometimes made good; every fourth holds the one blender in turn.
                LocalDateTime start = day.PlusMinutes((12 * i) + (5 * (i / 5)));
                tasks.Add(new PlannedTask
                {
                    Id = string.Create(CultureInfo.InvariantCulture, $"t{p}-{i}"), Text = "", Kind = TaskKind.Work, Start = start, End = start.PlusMinutes(10), People = [string.Create(CultureInfo.InvariantCulture, $"p{p}")],
                    Kit = i % people == p ? ["BL"] : [],
                });
            }
        }

        Occasion occasion = new()
        {
            Title = "made", Sheet = new OccasionSheet { Title = "made" }, SlotStart = tasks.Max(t => t.End).PlusMinutes(3), SlotLength = Duration.FromMinutes(20), SlotPlace = "", Guests = 1, Covers = 1,
            Kit = [new SheetKit("BL", "blender", "blender", "", 1, "", 1)],
        };
        return (occasion, new Plan { Title = "made", SlotStart = occasion.SlotStart, SlotLength = occasion.SlotLength, Tasks = [.. tasks] });
    }
}
