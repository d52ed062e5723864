using System.Globalization;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Solver;

namespace Coulisse.Gauge.Planning;

/// <summary>gauge bakes: 60 bakes at 5 set points in 2 ovens, the three formulations in one run.</summary>
internal static class BakesGauge
{
    public static int Run(string[] args)
    {
        double seconds = args.Length > 0 && double.TryParse(args[0], NumberStyles.Float, CultureInfo.InvariantCulture, out double s) ? s : 20;
        SchedulingProblem problem = Sixty();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"60 bakes, 5 set points, 2 ovens of 4 shelves; {seconds} s each, 2 workers"));
        Console.WriteLine("| formulation | solver words | makespan, min | bound, min | seconds |");
        Console.WriteLine("|---|---|---|---|---|");
        foreach (StateFormulation formulation in Enum.GetValues<StateFormulation>())
        {
            foreach (string words in (string[])["linearization_level:1", "subsolvers:\"no_lp\""])
            {
                EngineOutcome o = new CpSatEngine().Solve(problem, new Effort(seconds, 1, 2) { States = formulation, Parameters = words });
                Console.WriteLine(o is EngineSchedule e
                    ? string.Create(CultureInfo.InvariantCulture, $"| {formulation} | {words} | {e.Levels[0].Value} | {e.Levels[0].Bound} | {e.Seconds:0.0} |")
                    : $"| {formulation} | {words} | none | | |");
            }
        }

        Console.WriteLine(new CpSatEngine().Solve(problem, new Effort(seconds, 1, 2)) is EngineSchedule kept
            ? string.Create(CultureInfo.InvariantCulture, $"| the engine as it is | | {kept.Levels[0].Value} | {kept.Levels[0].Bound} | {kept.Seconds:0.0} |") : "| the engine as it is | | none | | |");
        return 0;
    }

    private static SchedulingProblem Sixty()
    {
        Random r = new(60);
        return new SchedulingProblem
        {
            Name = "sixty bakes", Horizon = 1200,
            Activities = [.. Enumerable.Range(0, 60).Select(i =>
            {
                (int minutes, int celsius) = (r.Next(12, 60), 150 + (10 * r.Next(5)));
                return new Activity($"bake {i}", [.. new[] { 0, 1 }.Select(oven => new Mode(minutes, [new Demand(oven, 1)]) { State = new StateUse(oven, celsius) })]);
            })],
            Resources = [new Resource("shelves of oven 1", 4), new Resource("shelves of oven 2", 4)],
            // Ten degrees up in two minutes, down in five.
            StateKits = [new StateKit("oven 1", 5, 2), new StateKit("oven 2", 5, 2)],
        };
    }
}
