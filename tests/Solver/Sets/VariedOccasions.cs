using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>Occasions drawn by chance (covers, length of the slot, ovens, helpers away) through the planner, and every plan before the validator.</summary>
public sealed class VariedOccasions
{
    [Fact]
    public void Plans_of_occasions_drawn_by_chance_have_no_fault()
    {
        int count = LongRun.On ? 20 : 2;
        OccasionSheet sheet = OccasionReader.Read(File.ReadAllText(Demo("occasion.md")), new LocalDate(2026, 10, 1)).Match(s => s, p => throw new InvalidOperationException(string.Join("; ", p)));
        List<string> faults = [];
        int planned = 0;
        for (int seed = 1; seed <= count; seed++)
        {
            OccasionSheet varied = Varied(sheet, new Random(seed), out string how);
            Occasion occasion = OccasionBuilder.Build(varied, Card).Match(o => o, p => throw new InvalidOperationException($"{how}: {string.Join("; ", p)}"));
            ImmutableArray<Batch> batches = OccasionBatches.Make(occasion).Match(b => b, p => throw new InvalidOperationException($"{how}: {string.Join("; ", p)}"));
            if (new CpSatPlanner().Plan(occasion, batches, new PlanOptions(120, seed) { FirstOnly = true }) is Plan plan)
            {
                planned++;
                faults.AddRange(PlanValidator.Check(occasion, plan).Select(f => $"{how}: {f.Code} by {f.By:0.#} {f.Unit}, {f.Words} ({string.Join(" ", f.TaskIds.Select(id => plan.Tasks.First(t => t.Id == id)).Select(t => $"{t.Id} {t.Kind} line {t.Line} {t.Start.Day} {t.Start.TimeOfDay} to {t.End.Day} {t.End.TimeOfDay}"))})"));
            }
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
        // Some draws ask too much of the kitchen; were it most of them, silence would say little.
        Assert.True(2 * planned >= count, $"only {planned} of {count} were planned");
    }

    private static OccasionSheet Varied(OccasionSheet sheet, Random r, out string how)
    {
        int plates = r.Next(12, 60);
        int minutes = r.Next(18, 36);
        SheetKit[] ovens = [.. sheet.Kit.Where(k => k.Type == "oven")];
        string? gone = r.Next(3) == 0 ? ovens[r.Next(ovens.Length)].Code : null;
        double slower = 1 + (0.2 * r.Next(3));
        how = $"{plates} plates, {minutes} min, {(gone is null ? "all ovens" : "without " + gone)}, hands times {slower}";
        return sheet with
        {
            Guests = plates - 2, Over = 2, SlotLength = Duration.FromMinutes(minutes),
            Dishes = [.. sheet.Dishes.Select(d => d.Unit == "plates" ? d with { Count = plates } : d)],
            Kit = [.. sheet.Kit.Where(k => gone is null || k.Code != gone)],
            Circuits = [.. sheet.Circuits.Select(c => gone is null ? c : c with { Kit = c.Kit.Remove(gone) })],
            People = [.. sheet.People.Select(p => p with { Speed = slower })],
        };
    }

    private static Dish Card(string path) => CardReader.Read(new CardText(File.ReadAllText(Demo(path)), path)).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static string Demo(string path) => Path.Combine(SharedData.Repository, "examples", "demo", path);
}
