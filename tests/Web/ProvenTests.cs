using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Web.House;
using Coulisse.Web.Plans;
using Microsoft.Extensions.DependencyInjection;

namespace Coulisse.Web.Tests;

/// <summary>What was shown on an occasion can be shown again, whatever was kept since.</summary>
public sealed class ProvenTests
{
    private const string Card = "# Leek tart\n\nMakes 8.\n\n## Filling\n\n- 600 g leek\n- 200 g cream\n\n1. Slice the leek (hands 10 min).\n2. Bake at 180 °C for 25 min.\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // The first plan of one worker is the same whatever else the machine does.
    private static WebBenchOptions Options => new() { Planner = (o, options, progress, cancel) => PlanFlow.Plan(o, options with { FirstOnly = true, Workers = 1 }, "au", progress, cancel) };

    [Fact]
    public async Task A_kept_plan_names_what_it_was_made_with_is_opened_with_those_cards_and_planned_again_is_the_same_to_the_mark_on_its_papers()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: Options);
        OccasionShelf shelf = bench.Services.GetRequiredService<OccasionShelf>();
        KeptOccasion occasion = Assert.IsType<Parsed<KeptOccasion>.Ok>(await shelf.KeepSentenceAsync("8 plates, 2026-03-07 14:00, 10 minutes, Ada and one other", Card, Cancel)).Value;
        string plan = await PlanAsync(bench, occasion);
        string card = Assert.Single(occasion.Cards.Keys);

        KeptPlans plans = bench.Services.GetRequiredService<KeptPlans>();
        (KeptPlan kept, PlannedOccasion shown) = (await plans.OpenAsync(plan, Cancel))!.Value;
        foreach (string said in new[] { "engine " + MadeWith.Engine, "tables " + MadeWith.Tables, "solver ", "card Leek tart ", $"kept {card} 1" })
        {
            Assert.Contains(said, kept.Versions);
        }

        string mark = Mark(shown);
        await bench.Store.SaveAsync(DocumentKind.Card, card, 1, "Leek tart", Card.Replace("600 g leek", "900 g leek", StringComparison.Ordinal), "w", "", Cancel);
        (_, PlannedOccasion later) = (await plans.OpenAsync(plan, Cancel))!.Value;
        Assert.Equal(mark, Mark(later));
        Assert.Contains(later.Occasion.Dishes[0].Dish.Components.SelectMany(c => c.Ingredients), i => i.Text.Contains("600 g", StringComparison.Ordinal));

        PlannedOccasion again = Assert.IsType<Parsed<PlannedOccasion>.Ok>(Options.Planner(later.Occasion, new PlanOptions(10), new Nobody(), Cancel)).Value;
        Assert.Equal(TravelJson.Write((Plan)shown.Outcome), TravelJson.Write((Plan)again.Outcome));

        // a plan made now is made of the card as it is now, and says so
        KeptOccasion now = Assert.IsType<Parsed<KeptOccasion>.Ok>(await shelf.OpenAsync(occasion.Id, null, Cancel)).Value;
        (KeptPlan newer, PlannedOccasion fresh) = (await plans.OpenAsync(await PlanAsync(bench, now), Cancel))!.Value;
        Assert.Contains($"kept {card} 2", newer.Versions);
        Assert.NotEqual(mark, Mark(fresh));
    }

    [Fact]
    public async Task A_plan_opened_again_has_the_minutes_of_its_own_batch_and_the_mark_of_the_plan_just_made()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: Options);
        OccasionShelf shelf = bench.Services.GetRequiredService<OccasionShelf>();
        string stew = Card.Replace("2. Bake at 180 °C for 25 min.", "2. Simmer 25 min.", StringComparison.Ordinal);
        KeptOccasion occasion = Assert.IsType<Parsed<KeptOccasion>.Ok>(await shelf.KeepSentenceAsync("80 plates, 2026-03-07 14:00, 10 minutes, Ada and one other", stew, Cancel)).Value;
        PlannedOccasion made = Assert.IsType<Parsed<PlannedOccasion>.Ok>(Options.Planner(occasion.Occasion, new PlanOptions(10), new Nobody(), Cancel)).Value;
        (_, PlannedOccasion opened) = (await bench.Services.GetRequiredService<KeptPlans>().OpenAsync(await PlanAsync(bench, occasion), Cancel))!.Value;
        static (double? Written, double? Here, string Why)[] Minutes(PlannedOccasion p) => [.. p.Batches.SelectMany(b => b.Components).SelectMany(c => c.Steps).Select(s => (s.MinutesAsWritten, s.Minutes, s.Why))];
        Assert.Contains(Minutes(made), m => m.Here > m.Written);
        Assert.Equal(Minutes(made), Minutes(opened));
        Assert.Equal(Mark(made), Mark(opened));
    }

    [Fact]
    public async Task What_was_learnt_and_the_kitchen_as_it_was_stay_with_a_kept_plan_whatever_is_tried_or_bought_since()
    {
        await using BenchServer bench = await BenchServer.StartAsync(options: Options);
        OccasionShelf shelf = bench.Services.GetRequiredService<OccasionShelf>();
        KitchenBook book = bench.Services.GetRequiredService<KitchenBook>();
        KeptOccasion first = Assert.IsType<Parsed<KeptOccasion>.Ok>(await shelf.KeepSentenceAsync("8 plates, 2026-03-07 14:00, 10 minutes, Ada and one other", Card, Cancel)).Value;
        string card = Assert.Single(first.Cards.Keys);
        for (int i = 0; i < 3; i++)
        {
            Assert.Empty(first.Occasion.LearntCards);
            await TryAsync(bench, card, 16 + i, 700 + i);
        }

        KeptOccasion taught = Assert.IsType<Parsed<KeptOccasion>.Ok>(await shelf.OpenAsync(first.Id, null, Cancel)).Value;
        Assert.Equal([16.0, 17, 18], Assert.Single(taught.Occasion.Learnt).Minutes.Order());
        Assert.Equal(701, Assert.Single(Assert.Single(taught.Occasion.LearntCards).Parts).Grams.Mean, 9);
        string plan = await PlanAsync(bench, taught);
        KeptPlans plans = bench.Services.GetRequiredService<KeptPlans>();
        (KeptPlan kept, PlannedOccasion shown) = (await plans.OpenAsync(plan, Cancel))!.Value;
        Assert.Contains("basis ", kept.Versions, StringComparison.Ordinal);
        Assert.Contains("learnt ", kept.Versions, StringComparison.Ordinal);
        Assert.Contains(((Plan)shown.Outcome).Tasks, t => t.Text.StartsWith("Slice the leek", StringComparison.Ordinal) && NodaTime.Period.Between(t.Start, t.End, NodaTime.PeriodUnits.Minutes).Minutes == 17);
        string mark = Mark(shown);

        await TryAsync(bench, card, 40, 702);
        Dictionary<string, List<string[]>> rows = BookText.Tables.ToDictionary(t => t.Key, _ => new List<string[]>());
        rows["Kit"].Add(["X9", "oven", "back", "1", "2 shelves", "to 250 °C", "", "3", "", ""]);
        await book.KeepAsync(rows, 0, "w", Cancel);
        (_, PlannedOccasion later) = (await plans.OpenAsync(plan, Cancel))!.Value;
        Assert.Equal(mark, Mark(later));
        Assert.DoesNotContain(later.Occasion.Kit, k => k.Code == "X9");
        Assert.Empty(later.Faults);
        PlannedOccasion again = Assert.IsType<Parsed<PlannedOccasion>.Ok>(Options.Planner(later.Occasion, new PlanOptions(10), new Nobody(), Cancel)).Value;
        Assert.Equal(TravelJson.Write((Plan)shown.Outcome), TravelJson.Write((Plan)again.Outcome));
        KeptOccasion now = Assert.IsType<Parsed<KeptOccasion>.Ok>(await shelf.OpenAsync(first.Id, null, Cancel)).Value;
        Assert.Equal(4, Assert.Single(now.Occasion.Learnt).Minutes.Length);
        Assert.Equal(["X9"], now.Occasion.Kit.Select(k => k.Code));
    }

    private static async Task TryAsync(BenchServer bench, string card, int minutes, int grams)
        => Assert.IsType<Parsed<string>.Ok>(await new TrialShelf(bench.Store).KeepAsync(null, card, $"# Trial of Leek tart\n\nGood run.\n\n## Times\n| Part | Step | Minutes |\n|---|---|---|\n| Filling | Slice the leek (hands 10 min). | {minutes} |\n\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n| Filling | 800 | {grams} | |\n", "Ada", Cancel));

    // the mark on every sheet: a hash of what all of them say
    private static string Mark(PlannedOccasion planned) => PrintFlow.Bundle(planned, new NodaTime.LocalDateTime(2026, 3, 7, 9, 0)).Mark.Version;

    private static async Task<string> PlanAsync(BenchServer bench, KeptOccasion occasion)
    {
        PlanJob job = bench.Services.GetRequiredService<PlanDesk>().Begin(occasion);
        for (int i = 0; i < 600 && job.View.At is null; i++)
        {
            Assert.Empty(job.View.Why);
            await Task.Delay(100, Cancel);
        }

        return Assert.IsType<string>(job.View.At)["/plan/".Length..];
    }

    private sealed class Nobody : IProgress<Plan>
    {
        public void Report(Plan value)
        {
            // nobody listens
        }
    }
}
