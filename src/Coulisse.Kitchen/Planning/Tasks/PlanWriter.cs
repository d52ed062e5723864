using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Why;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Reads a schedule back into a plan people can follow.</summary>
public static class PlanWriter
{
    /// <summary>Makes the plan.</summary>
    public static Plan Write(Occasion occasion, SlotPlan slot, PrepWork work, PrepProblem prep, EngineSchedule schedule)
    {
        work = EditedWork.Of(work) with { Edits = work.Edits };
        int[] present = [.. Enumerable.Range(0, work.Tasks.Length).Where(i => schedule.Starts[i] >= 0).OrderBy(i => schedule.Starts[i]).ThenBy(i => work.Tasks[i].Kind == TaskKind.Moment).ThenBy(i => i)];
        Dictionary<int, string> ids = Ids(prep, schedule, present);
        Dictionary<int, ImmutableArray<string>> kit = Kit(work, prep, schedule, present);
        Heated(work, prep, schedule, present, kit);
        ImmutableArray<PlannedTask>.Builder tasks = ImmutableArray.CreateBuilder<PlannedTask>();
        OneMove move = new(prep.Problem, schedule);
        HoldWords words = new(occasion, work, prep, schedule, i => ids[i]);
        foreach (int i in present)
        {
            PrepTask t = work.Tasks[i];
            ImmutableArray<string> codes = t.Within is { } w ? kit[w] : kit[i];
            tasks.Add(new PlannedTask
            {
                Id = ids[i],
                Key = t.Key,
                Text = t.ForStage ? PlannedTask.StageWords + t.Text : t.Text,
                Kind = t.Kind,
                Start = prep.Zero.PlusMinutes(schedule.Starts[i]),
                End = prep.Zero.PlusMinutes(schedule.Starts[i] + prep.Minutes(schedule, i)),
                Shelves = t.Kit.FirstOrDefault(k => k.Type == "oven").Amount,
                Dish = t.Dish,
                Component = t.Component,
                Line = t.Line,
                People = [.. schedule.Served[i].Select(r => occasion.People[r].Name)],
                Kit = codes,
                Celsius = t.Celsius,
                Within = t.Within is { } within ? ids[within] : null,
                Slack = Duration.FromMinutes(Slack(work, prep, schedule, i)),
                Because = Because(move, words, i),
                Removes = t.Cleans is null ? [] : [.. work.Tasks.SelectMany(x => x.Allergens).Distinct().Order(StringComparer.Ordinal)],
                Grams = t.Grams,
            });
        }

        Meals(occasion, tasks);
        AfterSlot.Add(occasion, slot, tasks);
        ImmutableArray<Twin> twins = Twins(occasion, slot, work, prep, schedule, ids);
        Stand(occasion, twins, tasks);
        return new Plan
        {
            Title = occasion.Title,
            SlotStart = occasion.SlotStart,
            SlotLength = occasion.SlotLength,
            Tasks = [.. tasks.OrderBy(t => t.Start).ThenBy(t => t.Kind == TaskKind.Moment).ThenBy(t => t.Id, StringComparer.Ordinal)],
            Twins = twins,
            RunSheet = slot.Segments,
            Objective = [slot.Level, .. Levels(prep, schedule)],
            Fallbacks = slot.Fallbacks,
            Edits = work.Edits,
            Assumed = [.. occasion.Assumed, .. slot.Assumed, .. work.Assumed],
        };
    }

    private static IEnumerable<ObjectiveLevel> Levels(PrepProblem prep, EngineSchedule schedule)
        => schedule.Levels.Zip(prep.Problem.Goals, (l, g) => new ObjectiveLevel(g.Name, (l.Value + g.Offset) / g.Scale, l.Bound == long.MinValue ? null : (l.Bound + g.Offset) / g.Scale, g.Unit));

    private static ImmutableArray<Twin> Twins(Occasion occasion, SlotPlan slot, PrepWork work, PrepProblem prep, EngineSchedule schedule, Dictionary<int, string> ids)
    {
        int carry = Array.FindIndex([.. work.Tasks], t => t.SetsOut);
        return [.. slot.Twins.Select((need, k) =>
        {
            int task = work.TwinTasks[k];
            int sets = TaskBuilder.InTheBath(need) ? task : carry;
            bool made = task >= 0 && schedule.Starts[task] >= 0;
            // What no single task makes is ready at the latest when it is carried.
            LocalDateTime ready = made ? prep.Zero.PlusMinutes(schedule.Starts[task] + prep.Minutes(schedule, task)) : need.Twin.ReadyBy;
            LocalDateTime? carried = !made && sets >= 0 && schedule.Starts[sets] >= 0 ? prep.Zero.PlusMinutes(schedule.Starts[sets]) : null;
            ready = carried < ready ? carried.Value : ready;
            return need.Twin with { MadeBy = made ? ids[task] : null, SetOutBy = sets >= 0 && schedule.Starts[sets] >= 0 ? ids[sets] : null, ReadyBy = ready < occasion.SlotStart.PlusSeconds(need.Twin.CueSecond) ? ready : need.Twin.ReadyBy };
        })];
    }

    // What stands in its heat holds the kit, and draws its power, from when it is cooked until its cue, or until what is begun live goes in beside it.
    private static void Stand(Occasion occasion, ImmutableArray<Twin> twins, ImmutableArray<PlannedTask>.Builder tasks)
    {
        foreach (Twin t in twins)
        {
            if (tasks.FirstOrDefault(x => x.Id == t.SetOutBy && x.Kind == TaskKind.Unattended) is not { } cooked)
            {
                continue;
            }

            LocalDateTime until = tasks.Where(x => x.Id.StartsWith("live-", StringComparison.Ordinal) && x.Kit.Intersect(cooked.Kit).Any() && x.Start > cooked.End).Select(x => x.Start).Append(occasion.SlotStart.PlusMinutes(t.CueSecond / 60)).Min();
            if (until > cooked.End)
            {
                tasks.Add(new PlannedTask { Id = "stands-" + t.Number.ToString(CultureInfo.InvariantCulture), Text = $"twin {t.Number.ToString(CultureInfo.InvariantCulture)}, {t.Component}, stands in its heat until its cue", Kind = TaskKind.Unattended, Start = cooked.End, End = until, Kit = cooked.Kit, Celsius = cooked.Celsius });
            }
        }
    }

    private static Dictionary<int, string> Ids(PrepProblem prep, EngineSchedule schedule, int[] present)
    {
        Dictionary<int, string> ids = [];
        Dictionary<string, int> count = [];
        foreach (int i in present)
        {
            string day = prep.Zero.PlusMinutes(schedule.Starts[i]).ToString("ddd", CultureInfo.InvariantCulture)[..2];
            count[day] = count.GetValueOrDefault(day) + 1;
            ids[i] = day + count[day].ToString("000", CultureInfo.InvariantCulture);
        }

        return ids;
    }

    // Of a group of like kit each task gets its own piece: the first that is free, in order of start; pinned ones choose first.
    private static Dictionary<int, ImmutableArray<string>> Kit(PrepWork work, PrepProblem prep, EngineSchedule schedule, int[] present)
    {
        Dictionary<int, ImmutableArray<string>> kit = [];
        Dictionary<string, List<Stretch>> taken = [];
        foreach (int i in present.OrderBy(i => work.Tasks[i].OnlyOn.IsEmpty))
        {
            ImmutableArray<string>.Builder codes = ImmutableArray.CreateBuilder<string>();
            Stretch span = new(schedule.Starts[i], schedule.Starts[i] + prep.Minutes(schedule, i));
            foreach (string key in prep.Codes[i][schedule.Modes[i]])
            {
                string[] may = [.. prep.Groups[key].Select(k => k.Code).Where(c => !work.Tasks[i].NotOn.Contains(c))];
                string[] wanted = [.. may.Where(work.Tasks[i].OnlyOn.Contains)];
                string[] from = wanted.Length > 0 ? wanted : may.Length > 0 ? may : [key];
                string code = from.FirstOrDefault(c => taken.GetValueOrDefault(c, []).TrueForAll(s => s.End <= span.Start || span.End <= s.Start)) ?? from[0];
                (taken.TryGetValue(code, out List<Stretch>? spans) ? spans : taken[code] = []).Add(span);
                codes.Add(code);
            }

            kit[i] = codes.ToImmutable();
        }

        return kit;
    }

    // What is heated is the very kit that what goes in will be on; while something else is on it the hands alone are told.
    private static void Heated(PrepWork work, PrepProblem prep, EngineSchedule schedule, int[] present, Dictionary<int, ImmutableArray<string>> kit)
    {
        foreach (int i in present.Where(i => work.Tasks[i].Kind == TaskKind.Preheat))
        {
            if (work.Links.FirstOrDefault(l => l.From == i && l.Because == StepTasks.HeatFor && kit.ContainsKey(l.To)) is not { } use || kit[use.To] is not [var code, ..])
            {
                continue;
            }

            Stretch span = new(schedule.Starts[i], schedule.Starts[i] + prep.Minutes(schedule, i));
            bool free = present.All(j => j == i || work.Tasks[j].Within is not null || !kit[j].Contains(code) || schedule.Starts[j] + prep.Minutes(schedule, j) <= span.Start || span.End <= schedule.Starts[j]);
            kit[i] = free ? [code] : [];
        }
    }

    /// <summary>How long a task could be later by the lags alone, what it follows staying where it is.</summary>
    private static int Slack(PrepWork work, PrepProblem prep, EngineSchedule schedule, int i)
    {
        int Start(int t) => schedule.Starts[t];
        int End(int t) => schedule.Starts[t] + prep.Minutes(schedule, t);
        int due = work.Tasks[i].DoneBy is { } db ? (int)Period.Between(prep.Zero, db, PeriodUnits.Minutes).Minutes : prep.Problem.Horizon;
        int slack = Math.Max(0, due - End(i));
        foreach (PrepLink l in work.Links.Where(l => l.From == i && Start(l.To) >= 0))
        {
            slack = Math.Min(slack, (l.ToEnd ? End(l.To) : Start(l.To)) - (l.FromStart ? Start(i) : End(i)) - l.Least);
        }

        // What must follow another within a time cannot be later than that: what is due out of the oven does not wait for Thursday.
        foreach (PrepLink l in work.Links.Where(l => l.To == i && l.Most is not null && Start(l.From) >= 0))
        {
            slack = Math.Min(slack, (l.FromStart ? Start(l.From) : End(l.From)) + l.Most!.Value - (l.ToEnd ? End(i) : Start(i)));
        }

        return Math.Max(0, slack);
    }

    /// <summary>What binds a task where it is; of several things the one that leads to another task.</summary>
    private static string Because(OneMove move, HoldWords words, int i)
    {
        ImmutableArray<Hold> holds = move.Holds(i, -1);
        return holds.IsEmpty ? "as late as it may be" : words.Of(holds.FirstOrDefault(h => h.Other >= 0) ?? holds[0], -1);
    }

    private static void Meals(Occasion occasion, ImmutableArray<PlannedTask>.Builder tasks)
    {
        foreach (SheetWindow m in occasion.Meals)
        {
            string[] there = [.. occasion.People.Where(p => p.Hours.Any(h => h.Start <= m.Start && h.End >= m.End)).Select(p => p.Name)];
            if (there.Length > 0)
            {
                tasks.Add(new PlannedTask { Id = "meal-" + m.Start.ToString("ddd-HHmm", CultureInfo.InvariantCulture), Text = "meal", Kind = TaskKind.Meal, Start = m.Start, End = m.End, People = [.. there] });
            }
        }
    }
}
