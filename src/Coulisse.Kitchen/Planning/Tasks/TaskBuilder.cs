using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>All the work of the prep days: the dishes, the small batches that twins are made of, plating, and what no card states.</summary>
public static class TaskBuilder
{
    /// <summary>Minutes before the slot by which plates and twins stand ready. Common practice, no source.</summary>
    public const int ReadyBefore = 15;

    /// <summary>Minutes before the slot by which every component is made. Common practice, no source.</summary>
    public const int ComponentsReadyBefore = 60;

    /// <summary>Hours before the slot at which a twin's own batch may be begun: late the day before. Common practice, no source.</summary>
    public const int StageHours = 28;

    /// <summary>Seconds to plate one cold plate, all parts together, for a card that gives no time. Common practice, no source.</summary>
    public const int PlateSeconds = 60;

    /// <summary>Builds the work.</summary>
    public static PrepWork Build(Occasion occasion, ImmutableArray<Batch> batches, SlotPlan slot)
    {
        List<PrepTask> tasks = [];
        List<PrepLink> links = [];
        List<string> assumed = [];
        DishTasks dishes = new(occasion, tasks, links);
        for (int i = 0; i < occasion.Dishes.Length; i++)
        {
            dishes.Add(occasion.Dishes[i] with { Dish = batches[i].Weighed.Dish }, batches[i]);
        }

        for (int i = 0; i < occasion.Dishes.Length; i++)
        {
            dishes.Between(occasion.Dishes[i] with { Dish = batches[i].Weighed.Dish }, occasion.Dishes[i].Dish);
        }

        int cardTasks = tasks.Count;

        // Components stand ready well before the slot: what slips then still has room.
        for (int i = 0; i < cardTasks; i++)
        {
            tasks[i] = tasks[i] with { DoneBy = tasks[i].DoneBy ?? occasion.SlotStart.PlusMinutes(-ComponentsReadyBefore) };
        }

        ImmutableArray<int> twins = Twins(occasion, slot, dishes, tasks, links);
        Plating(occasion, tasks, links, cardTasks, assumed);
        twins = [.. twins.Select((t, k) => t < 0 && slot.Twins[k].Plated ? tasks.FindIndex(x => x.Kind == TaskKind.Plate && x.Dish == slot.Twins[k].Dish) : t)];
        BoxTasks.Add(occasion, tasks, links, cardTasks);
        House(occasion, slot, twins, tasks, links, assumed);
        TaskKeys.Name(tasks);
        int silent = tasks.Count(t => t.MinutesWhy.StartsWith("assumed:", StringComparison.Ordinal));
        if (silent > 0)
        {
            assumed.Add($"{silent.ToString(CultureInfo.InvariantCulture)} steps state no time: work standards stand in for them (most are common practice, no source); each task says so.");
        }

        return new PrepWork([.. tasks], [.. links], twins, [.. assumed]);
    }

    // A twin whose stage the batch for service has passed is made as a small batch of its own on the day; the rest is taken from service.
    private static ImmutableArray<int> Twins(Occasion occasion, SlotPlan slot, DishTasks dishes, List<PrepTask> tasks, List<PrepLink> links)
    {
        int[] made = [.. slot.Twins.Select(_ => -1)];
        foreach (IGrouping<(string Dish, string Component), int> group in Enumerable.Range(0, slot.Twins.Length).Where(i => slot.Twins[i].OwnBatch).GroupBy(i => (slot.Twins[i].Dish, slot.Twins[i].Twin.Component)))
        {
            OccasionDish dish = occasion.Dishes.First(d => d.Name == group.Key.Dish);
            int furthest = group.Max(i => slot.Twins[i].StageLine);
            string key = "stage " + dish.Name + " " + group.Key.Component;
            int weigh = Push(tasks, new PrepTask
            {
                Text = "weigh and set out for the stage: " + group.Key.Component,
                Kind = TaskKind.Work,
                Minutes = 8,
                MinutesWhy = "assumed (common practice, no source)",
                Dish = dish.Name,
                Component = group.Key.Component,
                People = 1,
                NotBefore = dish.Dish.Components.Any(c => c.Name == group.Key.Component && c.Keeps.Any(k => k.SameDay)) ? occasion.SlotStart.Date.AtMidnight() : occasion.SlotStart.PlusHours(-StageHours),
                DoneBy = Ready(occasion),
                ForStage = true,
            });
            if (furthest > 0)
            {
                StepTasks.Span? under = null;
                foreach (IGrouping<Component, Step> part in Sequence(dish, group.Key.Component, furthest).GroupBy(s => dish.Dish.Components.First(c => c.Steps.Contains(s))))
                {
                    double share = dish.Dish.Plate.IsEmpty ? 1 : Math.Clamp(group.Max(i => slot.Twins[i].Twin.Grams ?? 0) / Math.Max(1, part.Key.Ingredients.SelectMany(l => l.Foods).Sum(f => f.Grams ?? 0)), 0.2, 1);
                    int before = tasks.Count;
                    under = dishes.Chain(dish, part.Key, share, 1, part, under, forStage: true, key);
                    links.Add(new PrepLink(weigh, false, before, false, 0, null, false, "after weighing"));
                }

            }

            foreach (int i in group)
            {
                made[i] = slot.Twins[i].StageLine > 0 && dishes.Steps.TryGetValue((key, slot.Twins[i].StageLine), out StepTasks.Span at) ? at.Last : weigh;
                if (InTheBath(slot.Twins[i]))
                {
                    // It stands hot until its cue: cooked through, but not for hours.
                    tasks[made[i]] = tasks[made[i]] with { NotBefore = occasion.SlotStart.PlusMinutes(-tasks[made[i]].Minutes - 60), DoneBy = occasion.SlotStart.PlusMinutes(-5) };
                    StaysIn(tasks, made[i]);
                }
                else
                {
                    tasks[made[i]] = tasks[made[i]] with { DoneBy = Ready(occasion) };
                }
            }
        }

        for (int i = 0; i < made.Length; i++)
        {
            if (made[i] < 0 && slot.Twins[i].StageLine > 0 && dishes.Steps.TryGetValue((slot.Twins[i].Dish, slot.Twins[i].StageLine), out StepTasks.Span at))
            {
                made[i] = at.Last;
            }

            if (made[i] >= 0 && KeepHours(occasion, slot.Twins[i]) is { } hours)
            {
                // What keeps two days must still keep at its cue.
                LocalDateTime earliest = occasion.SlotStart.PlusSeconds(slot.Twins[i].Twin.CueSecond).PlusMinutes(1 - (long)(hours * 60) - tasks[made[i]].Minutes).PlusMinutes(tasks[made[i]].Minutes);
                tasks[made[i]] = tasks[made[i]] with { NotBefore = tasks[made[i]].NotBefore is { } n && n > earliest ? n : earliest };
            }
        }

        return [.. made];
    }

    // Whoever comes at its end looks and leaves it in: what is lifted out then is cold at its cue.
    private static void StaysIn(List<PrepTask> tasks, int bath)
    {
        foreach (int i in Enumerable.Range(0, tasks.Count).Where(i => tasks[i].Within == bath && tasks[i].Text.StartsWith(TaskWords.Out, StringComparison.Ordinal)).ToArray())
        {
            tasks[i] = tasks[i] with { Text = TaskWords.StaysIn + tasks[i].Text[TaskWords.Out.Length..] };
        }
    }

    private static double? KeepHours(Occasion occasion, TwinNeed need)
        => occasion.Dishes.First(d => d.Name == need.Dish).Dish.Components.Where(c => c.Name == need.Twin.Component)
            .SelectMany(c => c.Keeps).Where(k => !k.Quality && k.Hours is not null).Select(k => k.Hours).Min();

    private static IEnumerable<Step> Sequence(OccasionDish dish, string component, int furthest)
    {
        IEnumerable<Component> mine = dish.Dish.Plate.IsEmpty ? dish.Dish.Components.Where(c => !c.IsAssembly) : dish.Dish.Components.Where(c => c.Name == component);
        return mine.SelectMany(c => c.Steps).Where(s => s.Operation is not "line_tin").TakeWhile(s => s.Span.Line <= furthest);
    }

    private static void Plating(Occasion occasion, List<PrepTask> tasks, List<PrepLink> links, int cardTasks, List<string> assumed)
    {
        foreach (OccasionDish dish in occasion.Dishes.Where(d => d.Unit == "plates"))
        {
            Component? assembly = dish.Dish.Components.FirstOrDefault(c => c.IsAssembly);
            int ahead = dish.Count - occasion.PlatedLive;
            if (ahead <= 0)
            {
                continue;
            }

            Step? with = assembly?.Steps.FirstOrDefault(s => s.People > 1 && Hands(s) > 0);
            int people = with?.People ?? Math.Min(2, occasion.People.Length);
            double minutes = with is not null ? Hands(with) * ahead / Math.Max(1.0, Ahead(with, ahead)) : Math.Ceiling((double)ahead * PlateSeconds / 60 / people);
            if (with is null)
            {
                assumed.Add($"{dish.Name}: plating takes {PlateSeconds.ToString(CultureInfo.InvariantCulture)} s a plate and person (common practice, no source).");
            }

            int plate = Push(tasks, new PrepTask
            {
                Text = $"plate {ahead.ToString(CultureInfo.InvariantCulture)} {(ahead == 1 ? "plate" : "plates")} of {dish.Name}, diets first, back to the cold",
                Kind = TaskKind.Plate,
                Minutes = Math.Max(2, (int)Math.Ceiling(minutes)),
                MinutesWhy = with is null ? "assumed" : "the card",
                Dish = dish.Name,
                Component = assembly?.Name,
                Line = assembly?.Steps.FirstOrDefault()?.Span.Line ?? 0,
                People = Math.Min(people, occasion.People.Length),
                Skill = "plating",
                NotBefore = occasion.SlotStart.PlusHours(-4),
                DoneBy = Ready(occasion),
            });
            for (int i = 0; i < cardTasks; i++)
            {
                if (tasks[i].Dish == dish.Name && tasks[i].Kind != TaskKind.Moment)
                {
                    links.Add(new PrepLink(i, false, plate, false, 0, null, false, "every part before the plate"));
                }
            }
        }
    }

    private static void House(Occasion occasion, SlotPlan slot, ImmutableArray<int> twins, List<PrepTask> tasks, List<PrepLink> links, List<string> assumed)
    {
        if (occasion.Sheet.OrderArrives is { } arrives)
        {
            int work = tasks.Count;
            int receive = Push(tasks, new PrepTask { Text = "receive the order, check, log temperatures, store", Kind = TaskKind.House, Minutes = 30, MinutesWhy = "assumed (common practice, no source)", People = Math.Min(2, occasion.People.Count(p => p.Hours.Any(h => h.Start <= arrives && h.End >= arrives.PlusMinutes(30)))), At = arrives });
            for (int i = 0; i < work; i++)
            {
                links.Add(new PrepLink(receive, false, i, false, 0, null, false, "nothing before the order is here"));
            }
        }

        foreach (IGrouping<LocalDateTime, SheetKit> move in occasion.Kit.Where(k => k.MovesAt is not null).GroupBy(k => k.MovesAt!.Value))
        {
            Push(tasks, new PrepTask
            {
                Text = "move " + string.Join(" and ", move.Select(k => k.What.Split([',', ';'])[0])) + " to " + move.First().Place + ", test the circuits at full load",
                Kind = TaskKind.Carry,
                Minutes = 45,
                MinutesWhy = "assumed (common practice, no source)",
                People = 2,
                At = move.Key,
                Kit = [.. move.Select(k => new KitUse(k.Type, 1))],
            });
        }

        foreach (KitNeed need in slot.Kit)
        {
            SheetKit kit = occasion.Kit.First(k => k.Code == need.Kit);
            Push(tasks, new PrepTask
            {
                Text = $"have {need.Kit} at {need.Celsius?.ToString("0.#", CultureInfo.InvariantCulture)} °C for {need.What}: switch it on, or see that it holds",
                Kind = TaskKind.House,
                Minutes = 1,
                MinutesWhy = "assumed",
                People = 1,
                NotBefore = occasion.SlotStart.PlusMinutes(kit.Type == "bath" ? -70 : -35),
                DoneBy = occasion.SlotStart.PlusMinutes(kit.Type == "bath" ? -30 : -14),
            });
        }

        // What stands hot in the bath on the stage is made there and not carried; everything else is made before it is brought.
        int carried = slot.Twins.Count(t => !InTheBath(t));
        if (carried > 0)
        {
            int bring = Push(tasks, new PrepTask { Text = $"bring the {carried.ToString(CultureInfo.InvariantCulture)} twins to {occasion.SlotPlace}, in order, by number", Kind = TaskKind.Carry, SetsOut = true, Minutes = 12, MinutesWhy = "assumed (common practice, no source)", People = Math.Min(2, occasion.People.Length), NotBefore = occasion.SlotStart.PlusMinutes(-60), DoneBy = occasion.SlotStart.PlusMinutes(-3) });
            foreach (int made in twins.Where((t, k) => t >= 0 && !InTheBath(slot.Twins[k])).Distinct())
            {
                links.Add(new PrepLink(made, false, bring, false, 0, null, false, "made before it is brought"));
            }
        }

        if (slot.Twins.Length > 0)
        {
            Push(tasks, new PrepTask { Text = "run-through against the clock", Kind = TaskKind.House, Minutes = (int)Math.Ceiling(occasion.SlotLength.TotalMinutes * 2), MinutesWhy = "assumed: twice the slot", People = Math.Min(3, occasion.People.Length), DoneBy = occasion.SlotStart.PlusHours(-3), Optional = true });
            assumed.Add("A run-through of twice the slot's length is planned where hands allow (common practice, no source).");
        }

        // A wash can be asked for between any two uses of the blender; those nobody needs are left out.
        int uses = tasks.Count(t => t.Kit.Any(k => k.Type == "blender"));
        for (int i = 0; i < Math.Max(0, uses - 1); i++)
        {
            Push(tasks, new PrepTask { Text = "WASH jug, lid and blade: taken apart, hot water and detergent, rinsed, dried", Kind = TaskKind.Wash, Minutes = 8, MinutesWhy = "assumed (common practice, no source)", People = 1, Kit = [new KitUse("blender", 1)], Optional = true, Cleans = "blender" });
        }
    }

    /// <summary>It stands hot where it was cooked until its cue.</summary>
    internal static bool InTheBath(TwinNeed need) => need.Twin.Holds.Contains("in the bath", StringComparison.Ordinal);

    private static LocalDateTime Ready(Occasion occasion) => occasion.SlotStart.PlusMinutes(-ReadyBefore);

    private static double Hands(Step s) => s.HandsMinutes ?? s.Times.Where(t => t.Kind == TimeKind.Hands).Sum(t => t.MinutesMax ?? t.MinutesMin ?? 0);

    // "(three people, 40 min for 52)": the number the minutes are for, when the card says it.
    private static double Ahead(Step step, int ahead)
    {
        int at = step.Text.LastIndexOf(" for ", StringComparison.OrdinalIgnoreCase);
        string digits = at < 0 ? "" : new string([.. step.Text[(at + 5)..].TakeWhile(char.IsDigit)]);
        return digits.Length > 0 ? double.Parse(digits, CultureInfo.InvariantCulture) : ahead;
    }

    private static int Push(List<PrepTask> tasks, PrepTask task)
    {
        tasks.Add(task);
        return tasks.Count - 1;
    }
}
