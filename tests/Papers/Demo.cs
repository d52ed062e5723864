using System.Collections.Immutable;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;
using Coulisse.Tests;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Papers.Tests;

/// <summary>The example occasion of this repository as a bundle, without waiting for a planner: plan and run sheet are made by hand here.</summary>
internal static class Demo
{
    private static readonly Lazy<PaperBundle> Bare = new(() => Make(null));
    private static readonly Lazy<PaperBundle> Full = new(() => Make(Plan(Occasion())));

    public static Occasion Occasion() => OccasionFiles.Load(Path.Combine(SharedData.Repository, "examples/demo/occasion.md"), new LocalDate(2026, 10, 1)).Match(o => o, p => throw new InvalidOperationException(p[0].Message));

    public static PaperBundle Unplanned() => Bare.Value;

    public static PaperBundle Planned() => Full.Value;

    private static PaperBundle Make(Plan? plan)
    {
        Occasion occasion = Occasion();
        ImmutableArray<Batch> batches = OccasionBatches.Make(occasion).Match(b => b, p => throw new InvalidOperationException(p[0].Message));
        PriceList prices = PriceList.Read(File.ReadAllText(Path.Combine(SharedData.Repository, "examples/demo/prices.csv"))).Match(l => l, p => throw new InvalidOperationException(p[0].Message));
        PlannedOccasion planned = new(occasion, batches, [.. batches.Select(b => SafetyReview.Review(b.Weighed, "au"))], plan is null ? new NotYet("not asked") : plan, []);
        return PrintFlow.Bundle(planned, new LocalDateTime(2026, 10, 7, 18, 20), new PrintWish { Prices = prices, Cost = new CostTerms { TargetPercent = 28, TaxPercent = 10, UnlistedPercent = 4 }, IfThens = plan is null ? [] : Failures });
    }

    private static readonly ImmutableArray<IfThen> Failures =
    [
        new("kit", "BL fails", "Borrow one: the plan holds as it is.", []) { Subject = "BL" },
        new("kit", "SB fails", "Show the bag from the fridge; the rest goes on.", ["Bram: bring №1 forward"]) { Subject = "SB" },
        new("person", "Noor is not there", "Petra hands the twins in.", ["Petra: bring №1 at 5:10", "Petra: bring №2 at 12:00"]) { Subject = "Noor" },
        new("delay", "segment 2 begins 1:00 late", "Cut 0:10 in segment 1 and 0:20 in segment 2.", []) { Subject = "2" },
    ];

    /// <summary>Every step as a task, one after another from Friday eight o'clock, by the people in turn; the slot in four segments. No good plan, but one with every field filled.</summary>
    private static Plan Plan(Occasion occasion)
    {
        LocalDateTime at = occasion.SlotStart.Date.PlusDays(-1).At(new LocalTime(8, 0));
        List<PlannedTask> tasks = [];
        foreach (OccasionDish dish in occasion.Dishes)
        {
            foreach (Cards.Component c in dish.Dish.Components)
            {
                foreach (Cards.Step step in c.Steps)
                {
                    string person = occasion.People[tasks.Count % occasion.People.Length].Name;
                    tasks.Add(new PlannedTask
                    {
                        Id = $"t{tasks.Count}", Text = step.Text, Kind = TaskKind.Work, Start = at, End = at.PlusMinutes(7), Dish = dish.Name, Component = c.Name, Line = step.Span.Line,
                        People = [person], Kit = occasion.Kit[tasks.Count % 12].Code is { Length: > 0 } k ? [k] : [], Grams = 100 + tasks.Count, Slack = Duration.FromMinutes(5), Celsius = tasks.Count % 5 == 0 ? 82 : null,
                    });
                    at = at.PlusMinutes(7);
                }
            }
        }

        string[] people = [.. occasion.People.Select(p => p.Name)];
        LocalDateTime before = occasion.SlotStart.PlusMinutes(-40);
        tasks.Add(new PlannedTask { Id = "carry", Text = "bring the 3 twins to stage, in order, by number", Kind = TaskKind.Carry, Start = before, End = before.PlusMinutes(12), People = [people[1], people[2]] });
        RunSegment Segment(int n, int start, int seconds, params int[] twins) => new()
        {
            Number = n, StartSecond = start, Seconds = seconds, Show = $"segment {n} is shown", Who = people.ToImmutableSortedDictionary(p => p, p => p == people[0] ? "shows" : $"{p} does part {n}"), Kit = ["BL"], Twins = [.. twins], DroppableSeconds = n * 10, DropRank = n, Gate = n == 2, Silence = n == 3,
        };
        return new Plan
        {
            Title = occasion.Title, SlotStart = occasion.SlotStart, SlotLength = occasion.SlotLength, Tasks = [.. tasks],
            RunSheet = [Segment(1, 0, 300), Segment(2, 300, 400, 1), Segment(3, 700, 500, 2), Segment(4, 1200, 300, 3)],
            Twins =
            [
                new Twin { Number = 1, Component = tasks[0].Component!, State = "set, uncut", Grams = 132, MadeBy = "t3", ReadyBy = occasion.SlotStart.PlusHours(-20), Holds = "5 °C or less", Place = "F2", SetOutBy = "carry", BroughtBy = people[1], CueSecond = 310, Replaces = "6 h setting", Afterwards = "cut for the live plate" },
                new Twin { Number = 2, Component = tasks[12].Component!, State = "smooth, in the bottle", Grams = 18, MadeBy = "t12", ReadyBy = occasion.SlotStart.PlusHours(-3), Holds = "5 °C or less", Place = "F2", SetOutBy = "carry", BroughtBy = people[1], CueSecond = 720, Replaces = "2 min blending", Afterwards = "bin" },
                new Twin { Number = 3, Component = tasks[30].Component!, State = "finished", Grams = 5, MadeBy = "t30", ReadyBy = occasion.SlotStart.PlusHours(-3), Holds = "dry and closed", Place = "shelf, stage", SetOutBy = "carry", BroughtBy = "there", CueSecond = 1205, Replaces = "drying", Afterwards = "on the live plate" },
            ],
            Fallbacks = ["No bath: show the bag from the fridge."],
        };
    }
}
