using Coulisse.Gauge.Planning;
using Coulisse.Gauge.Planning.Reading;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Tests;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>The laws again on instances of 30 tasks (PSPLIB, Kolisch and Sprecher 1996) and on the example's prep days: more is never worse, slower is longer in measure, another order is the same.</summary>
public sealed class LargerLaws
{
    [Fact]
    public void Thirty_tasks_keep_the_laws()
    {
        string archive = SharedData.Path("data/scheduling/instances/j30.tar.gz");
        int step = LongRun.On ? 12 : 240;
        foreach ((string name, SchedulingProblem p) in InstanceArchive.Read(archive, _ => true).OrderBy(f => f.Name, StringComparer.Ordinal).Where((_, i) => i % step == 0).Select(f => (f.Name, PlanningGauge.Parse(f))))
        {
            long best = Best(p);
            for (int r = 0; r < p.Resources.Length; r++)
            {
                Assert.True(Best(p with { Resources = p.Resources.SetItem(r, p.Resources[r] with { Capacity = p.Resources[r].Capacity + 1 }) }) <= best, $"{name}, one more of {p.Resources[r].Name}");
            }

            int n = p.Activities.Length;
            SchedulingProblem turned = p with
            {
                Activities = [.. p.Activities.Reverse().Select(a => a with { Name = "other " + a.Name })],
                Lags = [.. p.Lags.Select(l => l with { From = n - 1 - l.From, To = n - 1 - l.To })],
            };
            Assert.Equal(best, Best(turned));

            SchedulingProblem twice = p with
            {
                Horizon = 2 * p.Horizon,
                Activities = [.. p.Activities.Select(a => a with { Modes = [.. a.Modes.Select(m => m with { Duration = 2 * m.Duration })] })],
                Lags = [.. p.Lags.Select(l => l with { Least = 2 * l.Least, Most = 2 * l.Most })],
            };
            Assert.Equal(2 * best, Best(twice));
        }
    }

    private static long Best(SchedulingProblem p) => new CpSatEngine().Solve(p, new Effort(120, 1, 2)) is EngineSchedule { Proven: true } s ? s.Levels[0].Value : throw new InvalidOperationException($"{p.Name} was not settled in two minutes");
}
