using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Turns the components of a dish into chains of tasks, and ties the chains together where one takes from another.</summary>
internal sealed class DishTasks(Occasion occasion, List<PrepTask> tasks, List<PrepLink> links)
{
    // minutes within which the next step goes on; common practice, no source
    private const int StraightOn = 60;

    private static readonly string[] OnTop = ["over", "spread", "scatter", "pour", "lay", "on the", "into the tin", "top"];
    private readonly Dictionary<(string Dish, int Line), StepTasks.Span> _steps = [];
    private RunMinutes _physical = RunMinutes.None;

    /// <summary>Spans of tasks by dish and card line.</summary>
    public IReadOnlyDictionary<(string Dish, int Line), StepTasks.Span> Steps => _steps;

    /// <summary>Adds a dish; assembly components are plating and are left to the caller.</summary>
    public void Add(OccasionDish dish, Batch batch)
    {
        int vessels = OccasionBatches.WholeVessels(dish.Dish, dish.Count, dish.Unit);
        _physical = RunMinutes.Of(occasion, batch);
        StepTasks.Span? before = null;
        foreach (BatchComponent part in batch.Components.Where(c => !c.Weighed.Component.IsAssembly))
        {
            Component component = part.Weighed.Component;
            // A part that states its own trays or tins takes as many more as it is scaled.
            int own = component.Vessels.IsEmpty || dish.Unit == "pieces" ? vessels : Math.Max(1, (int)Math.Ceiling((component.Vessels.Sum(v => Math.Max(1, v.Count)) * part.Factor) - 1e-9));
            before = Chain(dish, component, part.Factor, own, component.Steps, dish.Dish.Plate.IsEmpty ? before : null, forStage: false, key: dish.Name) ?? before;
        }
    }

    /// <summary>Adds the steps of a component as one chain.</summary>
    /// <returns>The last step's span; null when it has no steps.</returns>
    public StepTasks.Span? Chain(OccasionDish dish, Component component, double factor, int vessels, IEnumerable<Step> steps, StepTasks.Span? underneath, bool forStage, string key)
    {
        StepTasks make = new(tasks, links, occasion.Learnt, forStage ? RunMinutes.None : _physical);
        PrepTask plain = new()
        {
            Text = "",
            Kind = TaskKind.Work,
            Minutes = 1,
            Dish = dish.Name,
            Component = component.Name.Length > 0 ? component.Name : dish.Name,
            Allergens = ComponentAllergens.Of(dish.Dish, component),
            NotBefore = SameDay(component) ? occasion.SlotStart.Date.AtMidnight() : forStage ? occasion.SlotStart.PlusHours(-TaskBuilder.StageHours) : null,
            ForStage = forStage,
        };
        StepTasks.Span? last = null;
        StepTasks.Span? heat = null;
        Step? previous = null;
        List<StepTasks.Span> beside = [];
        HashSet<int> readiedAt = [];
        (string Type, int Task)? heating = null;
        foreach (Step step in steps)
        {
            StepTasks.Span span = make.Add(step, plain, factor, vessels);
            span = last is null && beside.Count == 0 ? Filled(component, step, span, plain) : span;
            _steps[(key, step.Span.Line)] = span;
            bool parallel = step.Meanwhile || step.Text.StartsWith("As ", StringComparison.OrdinalIgnoreCase) || step.Text.StartsWith("While ", StringComparison.OrdinalIgnoreCase);
            bool readiesKit = step.Operation is "fill_bath" or "preheat_oven" or "line_tin";
            // Wherever the card says it, heat waits for nothing and only what goes in waits for it.
            bool heats = tasks[span.First].Kind == TaskKind.Preheat;
            if (last is { } l && !heats)
            {
                if (parallel)
                {
                    links.Add(new PrepLink(l.First, true, span.First, false, 0, null, false, "beside the step before"));
                }
                else
                {
                    // A mix goes straight on, within the hour, unless the step before leaves it cold, dry or boxed.
                    bool keeps = l.Wait > 0 || Rests(previous!, tasks[l.Last]);
                    bool gels = HotGel.Left(component, previous!);
                    links.Add(gels ? new PrepLink(l.Last, false, span.First, false, 0, HotGel.Minutes, false, HotGel.Because)
                        : new PrepLink(l.Last, false, span.First, false, 0, keeps ? null : StraightOn, !keeps, "after the step before"));
                    if (l.Wait > 0)
                    {
                        links.Add(new PrepLink(l.First, true, span.First, false, l.Wait, null, false, "the wait the card states"));
                    }
                }
            }

            if (!parallel && !heats)
            {
                foreach (StepTasks.Span b in beside)
                {
                    // A tin is lined and an oven switched on for what comes now, not for another day.
                    bool readied = readiedAt.Contains(b.Last);
                    links.Add(new PrepLink(b.Last, false, span.First, false, 0, readied ? StraightOn : null, readied, "what ran beside it is needed"));
                    if (b.Wait > 0)
                    {
                        links.Add(new PrepLink(b.First, true, span.First, false, b.Wait, null, false, "the wait the card states"));
                    }
                }

                beside.Clear();
            }

            Limits(step, span, last, heat);
            if (last is null && !heats && underneath is { } u && (OnTop.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase)) || component.Steps.Length == 1))
            {
                links.Add(new PrepLink(u.Last, false, span.First, false, 0, null, false, "goes on what is underneath"));
                underneath = null;
            }
            else if (last is not null && !heats && underneath is { } under)
            {
                links.Add(new PrepLink(under.Last, false, span.First, false, 0, null, false, "goes on what is underneath"));
                underneath = null;
            }

            if (parallel || readiesKit)
            {
                if (!heats)
                {
                    beside.Add(span);
                }

                if (readiesKit)
                {
                    readiedAt.Add(span.Last);
                }
            }
            else
            {
                last = span;
                previous = step;
            }

            if (tasks[span.Last].Kind == TaskKind.Unattended && tasks[span.Last].Kit.Any(k => k.Type is "oven" or "bath" or "hob"))
            {
                heat = span;
            }

            heating = Heated(step, span, heating);
        }

        if (last is { Wait: > 0 } waits && previous is not null)
        {
            last = Afterwards(waits, previous, plain, key);
        }

        if (last is { } made && forStage)
        {
            tasks[made.Last] = tasks[made.Last] with { Perishable = true };
        }

        if (last is { } end && !forStage)
        {
            tasks[end.Last] = tasks[end.Last] with { Perishable = true };
            Keeps(component, end);
        }

        return last;
    }

    /// <summary>Ties a component that takes from another to the step where that is set aside, else to its end.</summary>
    public void Between(OccasionDish dish, Dish whole)
    {
        foreach (Component component in dish.Dish.Components.Where(c => c.Steps.Length > 0))
        {
            foreach (string from in component.Ingredients.SelectMany(l => l.Foods).Select(f => f.FromComponent).OfType<string>().Distinct())
            {
                Component? source = whole.Components.FirstOrDefault(c => c.Name == from || c.Code == from);
                Step? given = source?.Steps.FirstOrDefault(s => SetsAside(s, component)) ?? source?.Steps.LastOrDefault(s => s.Times.IsEmpty || s == source.Steps[0]) ?? source?.Steps.LastOrDefault();
                Step taker = component.Steps.FirstOrDefault(s => s.Uses.Any(u => u.Component == from)) ?? component.Steps[0];
                string sourceDish = occasion.Dishes.FirstOrDefault(d => d.CardPath == dish.CardPath && _steps.ContainsKey((d.Name, given?.Span.Line ?? -1)))?.Name ?? dish.Name;
                if (source is null || source == component || given is null || !_steps.TryGetValue((sourceDish, given.Span.Line), out StepTasks.Span at) || !_steps.TryGetValue((dish.Name, taker.Span.Line), out StepTasks.Span to))
                {
                    continue;
                }

                bool hot = component.Ingredients.Any(l => l.Text.Contains("hot", StringComparison.OrdinalIgnoreCase) && l.Foods.Any(f => f.FromComponent == from));
                links.Add(new PrepLink(at.Last, false, to.First, false, 0, hot ? 20 : null, !hot, hot ? "taken hot from " + from : "takes from " + from));
            }
        }
    }

    private static bool Rests(Step step, PrepTask task) => task.Kit.Any(k => k.Type is "dehydrator" or "chiller" or "fridge" or "oven")
        || step.Times.Any(t => t.Kind is TimeKind.Chill && (t.MinutesMin ?? 0) >= 30)
        || new[] { "fridge", "keep", "hold at", "box", "bottle", "bags", "aside", "dry on", "to the cold" }.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase));

    // A part whose card says only how it is baked is filled first, by somebody: its lines are the words for it.
    private StepTasks.Span Filled(Component component, Step step, StepTasks.Span span, PrepTask plain)
    {
        string[] lines = [.. component.Ingredients.Where(l => l.Kind == LineKind.Ingredient).Select(l => l.Text)];
        if (lines.Length == 0 || tasks[span.First].Kind != TaskKind.Unattended || tasks[span.First].Kit.All(k => k.Type is not "oven" and not "bath"))
        {
            return span;
        }

        tasks.Add(plain with { Line = step.Span.Line, Text = TaskWords.Fill + string.Join("; ", lines), Minutes = StepTasks.FillMinutes, MinutesWhy = "assumed (common practice, no source)", People = 1 });
        links.Add(new PrepLink(tasks.Count - 1, false, span.First, false, 0, StraightOn, true, "filled before it goes in"));
        return span with { First = tasks.Count - 1 };
    }

    private static bool SetsAside(Step step, Component taker)
    {
        string[] words = [.. taker.Name.ToLowerInvariant().Split([' ', ',', '-'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 3)];
        return (step.Text.Contains("weigh out", StringComparison.OrdinalIgnoreCase) || step.Text.Contains("set aside", StringComparison.OrdinalIgnoreCase) || step.Text.Contains("take out", StringComparison.OrdinalIgnoreCase))
            && words.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    // An oven is heated for what goes into it, not on Thursday for Saturday: the first of the chain that is on such kit follows soon.
    private (string Type, int Task)? Heated(Step step, StepTasks.Span span, (string Type, int Task)? heating)
    {
        if (tasks[span.First].Kind == TaskKind.Preheat)
        {
            return (step.Operation == "fill_bath" ? "bath" : "oven", span.First);
        }

        if (heating is not { } heated)
        {
            return null;
        }

        for (int t = span.First; t < tasks.Count; t++)
        {
            if (tasks[t].Kind == TaskKind.Unattended && tasks[t].Kit.Any(k => k.Type == heated.Type))
            {
                links.Add(new PrepLink(heated.Task, false, t, false, 0, StepTasks.HeatStands, true, StepTasks.HeatFor));
                return null;
            }
        }

        return heating;
    }

    // The last step ends in a wait. What is then cut or turned out has its own hands; what only cools is done that much earlier.
    private StepTasks.Span Afterwards(StepTasks.Span waits, Step step, PrepTask plain, string key)
    {
        if (!new[] { "cut", "turn out", "unmould", "slice", "portion" }.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase)))
        {
            tasks[waits.Last] = tasks[waits.Last] with { DoneBy = occasion.SlotStart.PlusMinutes(-TaskBuilder.ComponentsReadyBefore - waits.Wait) };
            return waits;
        }

        tasks.Add(plain with { Text = TaskWords.Stood + step.Text, Minutes = plain.ForStage ? 3 : 10, MinutesWhy = "assumed (common practice, no source)", People = 1 });
        links.Add(new PrepLink(waits.First, true, tasks.Count - 1, false, waits.Wait, null, false, "the wait the card states"));
        links.Add(new PrepLink(waits.Last, false, tasks.Count - 1, false, 0, null, false, "after the step before"));
        StepTasks.Span end = waits with { Last = tasks.Count - 1, Wait = 0 };
        _steps[(key, step.Span.Line)] = end;
        return end;
    }

    // "Within 90 min of leaving the bath": counted from the heat; half of it is left for the cooling itself.
    private void Limits(Step step, StepTasks.Span span, StepTasks.Span? before, StepTasks.Span? heat)
    {
        StepTime? limit = step.Times.Where(t => t.Kind == TimeKind.Limit && t.Bound != Bound.AtLeast).MinBy(t => t.MinutesMax ?? t.MinutesMin);
        bool fromHeat = step.Text.Contains("leaving the", StringComparison.OrdinalIgnoreCase);
        if (limit is null || (fromHeat ? heat : before) is not { } from || from.Last == span.First)
        {
            return;
        }

        double most = (limit.MinutesMax ?? limit.MinutesMin ?? 0) * (fromHeat || step.Temperatures.Any(t => t.Bound == Bound.AtMost) ? 1 - StepTasks.CoolingShare : 1);
        if (most >= 5)
        {
            links.Add(new PrepLink(from.Last, false, span.First, false, 0, (int)most, false, "the card's limit: " + limit.Words));
        }
    }

    private void Keeps(Component component, StepTasks.Span end)
    {
        LocalDateTime eaten = occasion.SlotEnd;
        double[] hours = [.. component.Keeps.Where(k => !k.Quality && k.Hours is not null).Select(k => k.Hours!.Value)];
        if (hours.Length > 0)
        {
            // Day 1 is the day it is made, so a day less than the figure is the cautious reading.
            LocalDateTime earliest = eaten.PlusMinutes(-(long)(hours.Min() * 60)).PlusMinutes(tasks[end.Last].Minutes);
            tasks[end.Last] = tasks[end.Last] with { NotBefore = tasks[end.Last].NotBefore is { } n && n > earliest ? n : earliest.PlusMinutes(-tasks[end.Last].Minutes) };
        }
    }

    private static bool SameDay(Component component) => component.Keeps.Any(k => k.SameDay);
}
