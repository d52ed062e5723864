using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Why;
using Coulisse.Tests;

namespace Coulisse.Solver.Tests;

/// <summary>What more would be worth, and what is done when something fails.</summary>
public sealed class StudyTests(WhyTests.Planned planned) : IClassFixture<WhyTests.Planned>
{
    [Fact]
    public void More_of_anything_is_never_a_loss_and_its_value_is_never_under_its_bound()
    {
        ImmutableArray<Worth> worths = Marginal.Of(DemoOccasion.Occasion, DemoOccasion.Work, planned.Plan, new Effort(LongRun.On ? 10 : 3));
        Assert.True(worths.Length >= 4);
        Assert.All(worths, w =>
        {
            int first = w.Levels.ToList().FindIndex(l => Math.Abs(l.With - l.Without) > 1e-9);
            Assert.True(first < 0 || w.Levels[first].With < w.Levels[first].Without, w.Words);
            Assert.All(w.Levels, l => Assert.True(l.With >= l.Bound - 1e-9, w.Words));
            Assert.Equal(first >= 0, w.Saves);
        });
    }

    [Fact]
    public void Every_failure_has_one_sentence_and_every_delay_that_fits_the_droppable_seconds_ends_on_time()
    {
        IfThens ifThens = new(DemoOccasion.Occasion, DemoOccasion.Batches, planned.Plan, new PlanOptions(2));
        ImmutableArray<IfThen> all = ifThens.All();
        int kit = DemoOccasion.Occasion.Kit.Count(k => k.Code.Length > 0 && k.Type != "fridge");
        Assert.Equal(kit + DemoOccasion.Occasion.People.Length + (3 * planned.Plan.RunSheet.Length), all.Length);
        Assert.All(all, c => Assert.True(c.Answer.Length > 10 && c.Answer.TrimEnd('.').IndexOf(". ", StringComparison.Ordinal) < 0, c.Answer));
        Assert.All(all.Where(c => c.Case == "delay"), c =>
        {
            int number = int.Parse(c.Subject, CultureInfo.InvariantCulture);
            int droppable = planned.Plan.RunSheet.Where(s => s.Number >= number).Sum(s => s.DroppableSeconds);
            int late = 60 * int.Parse(c.WhatFails.Split("begins ")[1].Split(':')[0], CultureInfo.InvariantCulture);
            Assert.Equal(droppable >= late, c.Holds);
        });

        // Nobody who is absent, and nothing that failed, is in what is done about it.
        Assert.All(all.Where(c => c.Case == "person" && c.Holds), c => Assert.DoesNotContain(c.Changes, x => x.StartsWith(c.Subject + ": ", StringComparison.Ordinal) && x.Contains("takes over", StringComparison.Ordinal)));
        Assert.Contains(all, c => c.Case == "kit" && c.Holds);
        Assert.Contains(all, c => c.Case == "person" && c.Holds);
    }
}
