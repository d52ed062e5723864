using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>The three ways of saying that an oven holds one set point agree where none of them cuts anything off.</summary>
public sealed class SetPointFormulations
{
    [Theory]
    [InlineData(StateFormulation.Campaigns)]
    [InlineData(StateFormulation.Padded)]
    public void Another_formulation_gives_the_value_of_the_pairs_on_random_bakes(StateFormulation other)
    {
        for (int seed = 1; seed <= 12; seed++)
        {
            SchedulingProblem p = Bakes(new Random(seed));
            Assert.Equal(Value(p, StateFormulation.Pairs), Value(p, other));
        }
    }

    [Theory]
    [InlineData(StateFormulation.Pairs)]
    [InlineData(StateFormulation.Campaigns)]
    [InlineData(StateFormulation.Padded)]
    public void Two_equal_bakes_share_and_a_third_waits_for_the_change(StateFormulation formulation)
    {
        Activity Bake(int celsius) => new("bake", [new Mode(10, []) { State = new StateUse(0, celsius) }]);
        SchedulingProblem p = new() { Horizon = 60, Activities = [Bake(160), Bake(160), Bake(170)], StateKits = [new StateKit("oven", 5, 2)] };

        // 10, two steps up by 5 a step, 10.
        Assert.Equal(22, Value(p, formulation));
    }

    [Fact]
    public void All_shelves_together_bound_a_row_of_bakes_that_no_search_can_settle()
    {
        // Forty bakes of 21 to 60 min on either of two ovens of two shelves: the work over four shelves, rounded up.
        int[] minutes = [.. Enumerable.Range(0, 40).Select(i => 21 + (i * 17 % 40))];
        SchedulingProblem p = new()
        {
            Horizon = 3000,
            Activities = [.. minutes.Select((m, i) => new Activity($"b{i}", [.. new[] { 0, 1 }.Select(oven => new Mode(m, [new Demand(oven, 1)]) { State = new StateUse(oven, 150 + (10 * (i % 5))) })]))],
            Resources = [new Resource("shelves", 2), new Resource("shelves", 2)],
            StateKits = [new StateKit("oven 1", 5, 2), new StateKit("oven 2", 5, 2)],
        };
        EngineSchedule s = Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p, new Effort(5, 1, 1)));
        Assert.InRange(s.Levels[0].Bound, (minutes.Sum() + 3) / 4, s.Levels[0].Value);
    }

    private static long Value(SchedulingProblem p, StateFormulation formulation)
    {
        EngineSchedule s = Assert.IsType<EngineSchedule>(new CpSatEngine().Solve(p, new Effort(90, 1, 1) { States = formulation }));
        Assert.True(s.Proven);
        return s.Levels[0].Value;
    }

    // Three bakes at the most of each state, so that three tiles are enough.
    private static SchedulingProblem Bakes(Random r) => new()
    {
        Horizon = 90,
        Activities = [.. Enumerable.Range(0, 6).Select(i => new Activity($"b{i}", [.. new[] { 0, 1 }.Take(r.Next(1, 3)).Select(oven => new Mode(r.Next(4, 9), [new Demand(oven, 1)]) { State = new StateUse(oven, 150 + (10 * (i % 3))) })]))],
        Resources = [new Resource("shelves", 2), new Resource("shelves", 2)],
        StateKits = [new StateKit("oven 1", 10, 5), new StateKit("oven 2", 5, 2)],
    };
}
