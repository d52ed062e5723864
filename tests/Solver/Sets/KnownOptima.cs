using System.Text.RegularExpressions;
using Coulisse.Gauge.Planning;
using Coulisse.Gauge.Planning.Reading;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Tests;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>Outside instance sets: PSPLIB (Kolisch and Sprecher 1996) and RCPSP/max (ProGen/max), with the values known for them.</summary>
public sealed class KnownOptima
{
    [Theory]
    [InlineData("j30", "j301_1.sm")]
    [InlineData("j30", "j305_7.sm")]
    [InlineData("j60", "j601_1.sm")]
    [InlineData("max-ubo10", "psp1.sch")]
    [InlineData("max-ubo10", "psp23.sch")]
    [InlineData("max-j10", "PSP1.SCH")]
    [InlineData("mm-j10", "j1010_10.mm")]
    [InlineData("mm-j20", "j2010_1.mm")]
    public void The_engine_that_plans_dishes_reaches_the_known_optimum(string set, string instance)
    {
        string root = SharedData.Path("data/scheduling");
        Known known = Known.Read(Path.Combine(root, "known.tsv"))[(set, instance)];
        SchedulingProblem problem = PlanningGauge.Parse(InstanceArchive.Read(Path.Combine(root, "instances", set + ".tar.gz"), n => n == instance).Single());

        EngineOutcome outcome = new CpSatEngine().Solve(problem, new Effort(120, 1, 2));

        if (known.Status == "infeasible")
        {
            Assert.IsType<EngineInfeasible>(outcome);
            return;
        }

        EngineSchedule schedule = Assert.IsType<EngineSchedule>(outcome);
        Assert.Equal("closed", known.Status);
        Assert.Equal(known.Upper, (int)schedule.Levels[0].Value);
        Assert.True(schedule.Proven);
        Assert.Null(ScheduleCheck.Fault(problem, schedule));
    }

    [Theory]
    [InlineData("j30", 480)]
    [InlineData("j60", 480)]
    public void The_longest_path_read_from_a_file_is_the_one_its_generator_wrote_into_it(string set, int count)
    {
        string archive = SharedData.Path($"data/scheduling/instances/{set}.tar.gz");
        int read = 0;
        foreach ((string name, string text) in InstanceArchive.Read(archive, _ => true))
        {
            int stated = int.Parse(Regex.Match(text, @"MPM-Time\s*\n\s*(?:\d+\s+){5}(\d+)").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
            Assert.True(stated == LongestPath(ProGenReader.Read(name, text)), $"{name}: the file states {stated}.");
            read++;
        }

        Assert.Equal(count, read);
    }

    [Fact]
    public void A_schedule_moved_one_step_too_early_is_not_accepted_by_the_check()
    {
        string archive = SharedData.Path("data/scheduling/instances/j30.tar.gz");
        SchedulingProblem problem = PlanningGauge.Parse(InstanceArchive.Read(archive, n => n == "j301_1.sm").Single());
        EngineSchedule good = Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(problem, new Effort(120, 1, 2)));
        int last = problem.Activities.Length - 1;

        Assert.NotNull(ScheduleCheck.Fault(problem, good with { Starts = good.Starts.SetItem(last, good.Starts[last] - 1) }));
    }

    private static int LongestPath(SchedulingProblem p)
    {
        int[] start = new int[p.Activities.Length];
        for (bool moved = true; moved;)
        {
            moved = false;
            foreach (Lag lag in p.Lags)
            {
                int least = start[lag.From] + p.Activities[lag.From].Modes[0].Duration + lag.Least;
                moved |= least > start[lag.To];
                start[lag.To] = Math.Max(start[lag.To], least);
            }
        }

        return start.Max();
    }
}
