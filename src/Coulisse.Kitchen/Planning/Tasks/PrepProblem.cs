using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>The prep days as a scheduling problem in minutes, with what is needed to read a schedule back.</summary>
/// <param name="Problem">The problem; activity i is task i.</param>
/// <param name="Zero">Moment of step 0.</param>
/// <param name="Codes">For each task and mode, the kit codes it means; a code of a group of like kit is the group's first.</param>
/// <param name="Groups">Groups of like kit by their first code.</param>
public sealed record PrepProblem(SchedulingProblem Problem, LocalDateTime Zero, ImmutableArray<ImmutableArray<ImmutableArray<string>>> Codes, ImmutableDictionary<string, ImmutableArray<SheetKit>> Groups)
{
    /// <summary>Kit types that hold one set point at a time.</summary>
    private static readonly string[] Stateful = ["oven", "bath", "dehydrator"];

    /// <summary>Minutes before the slot by which hand work is done where it can be: common practice, no source; the risk of the plan says what they are worth.</summary>
    private const int SpareMinutes = 45;

    /// <summary>Kelvin a minute that kit gains and loses. Common practice, no source; a measured rate of the kit replaces them.</summary>
    private static (double Rise, double Fall) Rates(SheetKit kit)
    {
        (double rise, double fall) = kit.Type switch { "oven" => (10, 5), "bath" => (1, 0.2), _ => (5.0, 5.0) };
        return (kit.RisePerMinute ?? rise, kit.FallPerMinute ?? fall);
    }

    /// <summary>Minutes a task has in a schedule: those of the way it is done there.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="task">Position of the task.</param>
    public int Minutes(EngineSchedule schedule, int task) => Problem.Activities[task].Modes[schedule.Modes[task]].Duration;

    /// <summary>Writes the problem.</summary>
    public static PrepProblem Write(Occasion occasion, PrepWork work)
    {
        work = EditedWork.Of(work);
        LocalDateTime zero = occasion.Windows.IsEmpty ? occasion.SlotStart.PlusHours(-24) : occasion.Windows[0].Start;
        int Step(LocalDateTime t) => (int)Math.Round(Period.Between(zero, t, PeriodUnits.Minutes).Minutes / 1.0);
        int horizon = Step(occasion.SlotStart);
        KitTable kit = new(occasion);
        List<Resource> resources = [.. occasion.People.Select(p => new Resource(p.Name, 1) { Closed = Closed(occasion, p, Step, horizon) })];
        int firstKit = resources.Count;
        resources.AddRange(kit.Groups.Select(g => new Resource(g.Key, g.Capacity)));
        int firstCircuit = resources.Count;
        resources.AddRange(occasion.Circuits.Select(c => new Resource(c.Code, (int)(c.LimitKilowatts * 1000))));
        List<StateKit> states = [.. kit.Groups.Where(g => Stateful.Contains(g.Type)).Select(g => new StateKit(g.Key, Rates(g.Kit[0]).Rise, Rates(g.Kit[0]).Fall) { Initial = g.Type == "bath" ? null : 20 })];
        string[] stateKeys = [.. states.Select(s => s.Name)];

        ImmutableArray<Activity>.Builder activities = ImmutableArray.CreateBuilder<Activity>();
        ImmutableArray<ImmutableArray<ImmutableArray<string>>>.Builder codes = ImmutableArray.CreateBuilder<ImmutableArray<ImmutableArray<string>>>();
        foreach (PrepTask task in work.Tasks)
        {
            List<Mode> modes = [];
            List<ImmutableArray<string>> modeCodes = [];
            (int Minutes, Choice[] Who)[] hands = Hands(occasion, task);
            foreach (ImmutableArray<KitGroup> on in kit.Ways(task))
            {
                List<Demand> demands = [];
                for (int k = 0; k < on.Length; k++)
                {
                    int amount = Math.Min(on[k].Capacity, task.Kit.First(u => u.Type == on[k].Type).Amount);
                    demands.Add(new Demand(firstKit + kit.Groups.IndexOf(on[k]), Math.Max(1, amount)));
                    int circuit = occasion.Circuits.ToList().FindIndex(c => on[k].Kit.Any(x => x.Circuit == c.Code));
                    if (circuit >= 0 && on[k].Kit.Length == 1 && on[k].Kit[0].Kilowatts is { } kw)
                    {
                        demands.Add(new Demand(firstCircuit + circuit, (int)(kw * 1000)));
                    }
                }

                KitGroup? hot = on.FirstOrDefault(g => stateKeys.Contains(g.Key));
                foreach ((int minutes, Choice[] who) in hands)
                {
                    modes.Add(new Mode(minutes, [.. demands.GroupBy(d => d.Resource).Select(g => new Demand(g.Key, g.Sum(d => d.Amount)))])
                    {
                        Choices = [.. who],
                        State = hot is not null && task.Celsius is { } c ? new StateUse(Array.IndexOf(stateKeys, hot.Key), (int)Math.Round(c)) : null,
                    });
                    modeCodes.Add([.. on.Select(g => g.Key)]);
                }
            }

            if (modes.Count == 0)
            {
                // Every kit it could be on is forbidden: no way at all, said by nobody being able to.
                modes.Add(new Mode(task.Minutes, []) { Choices = [new Choice([], 1)] });
                modeCodes.Add([]);
            }

            int from = task.NotBefore is { } nb ? Math.Max(0, Step(nb)) : 0;
            int to = task.DoneBy is { } db ? Math.Min(horizon, Step(db)) : horizon;
            activities.Add(new Activity(task.Text, [.. modes])
            {
                Optional = task.Optional,
                FixedStart = task.At is { } at ? Step(at) : null,
                Windows = task.At is not null && task is { PinnedAt: null, NotDuring.IsEmpty: true } ? [] : Edited(task, task.People > 0 ? Open(occasion, from, to, Step) : task.Watched ? Attended(occasion, from, to, modes.Max(m => m.Duration), Step) : [new Stretch(from, to)], modes.Max(m => m.Duration), Step),
            });
            codes.Add([.. modeCodes]);
        }

        ImmutableArray<Lag> lags = [.. work.Links.Select(l =>
        {
            int way = l is { FromStart: false, ToEnd: false } ? CarryMinutes.Between(occasion, kit, work.Tasks[l.From], work.Tasks[l.To]) : 0;
            bool fits = way > l.Least && (l.Most is null || l.Soft || way <= l.Most);
            return new Lag(l.From, l.FromStart ? Edge.Start : Edge.End, l.To, l.ToEnd ? Edge.End : Edge.Start, fits ? way : l.Least) { Most = l.Most, Soft = l.Soft, Because = l.Because };
        })];
        return new PrepProblem(
            new SchedulingProblem
            {
                Name = occasion.Title,
                Horizon = horizon,
                Activities = activities.ToImmutable(),
                Lags = lags,
                Resources = [.. resources],
                StateKits = [.. states],
                Cleans = Cleans(work, kit, firstKit),
                Goals = Goals(work, lags, horizon),
            },
            zero, codes.ToImmutable(), kit.Groups.ToImmutableDictionary(g => g.Key, g => g.Kit));
    }

    // Somebody pinned to a task serves it for certain; whoever else it needs comes from the rest. The slowest of those who serve sets the minutes.
    private static (int Minutes, Choice[] Who)[] Hands(Occasion occasion, PrepTask task)
    {
        if (task.People == 0)
        {
            return [(task.Minutes, [])];
        }

        ImmutableArray<int> able = Skills.Able(occasion.People, task);
        int count = Math.Max(1, Math.Min(task.People, able.Length));
        int[] pinned = [.. able.Where(i => task.Pinned.Contains(occasion.People[i].Name))];
        if (pinned.Length == 0 && task.Pinned.IsEmpty)
        {
            return Paces.Of(occasion.People, task, able, count);
        }

        ImmutableArray<int> rest = [.. able.Except(pinned)];
        int minutes = Paces.Slowest(occasion.People, task, pinned.Length >= count ? [.. pinned] : able);
        return pinned.Length < task.Pinned.Distinct().Count() ? [(minutes, [new Choice([], count)])]
            : pinned.Length >= count ? [(minutes, [new Choice([.. pinned], pinned.Length)])]
            : [(minutes, [new Choice([.. pinned], pinned.Length), new Choice(rest, count - pinned.Length)])];
    }

    // A pinned start is a window just as long as the task: outside its own windows nothing is left, and the conflict is named.
    private static ImmutableArray<Stretch> Edited(PrepTask task, ImmutableArray<Stretch> open, int longest, Func<LocalDateTime, int> step)
    {
        IEnumerable<Stretch> left = open;
        foreach ((LocalDateTime from, LocalDateTime to) in task.NotDuring)
        {
            Stretch no = new(step(from), step(to));
            left = [.. left.SelectMany(w => w.Without(no))];
        }

        if (task.PinnedAt is { } at)
        {
            Stretch only = new(step(at), step(at) + longest);
            left = [.. left.Where(w => w.Start <= only.Start && only.End <= w.End).Take(1).Select(_ => only)];
        }

        ImmutableArray<Stretch> kept = [.. left];
        return kept.IsEmpty ? [new Stretch(0, 0)] : kept;
    }

    private static ImmutableArray<Goal> Goals(PrepWork work, ImmutableArray<Lag> lags, int horizon)
    {
        int[] soft = [.. Enumerable.Range(0, lags.Length).Where(i => lags[i].Soft && lags[i].Most is not null)];
        int[] optional = [.. Enumerable.Range(0, work.Tasks.Length).Where(i => work.Tasks[i].Optional)];
        int[] fresh = [.. Enumerable.Range(0, work.Tasks.Length).Where(i => work.Tasks[i].Perishable)];
        List<Goal> goals = [new Goal("quality kept", "minutes over", [.. soft.Select(i => new Term(TermKind.LagExcess, i, 1))])];
        if (optional.Length > 0)
        {
            int through = optional.Count(i => work.Tasks[i].Cleans is null);
            goals.Add(new Goal("run-through held, washes few", "in all, a wash counted 1, a run-through left out 10", [.. optional.Select(i => new Term(TermKind.Present, i, work.Tasks[i].Cleans is null ? -10 : 1))]) { Offset = 10 * through });
        }

        // Hand work that the slot waits for is done a while before it: a day runs late by minutes here and there, and the slot does not wait.
        int[] waited = [.. Enumerable.Range(0, work.Tasks.Length).Where(i => work.Tasks[i] is { People: > 0, At: null, Optional: false })];
        if (waited.Length > 0 && horizon > SpareMinutes)
        {
            goals.Add(new Goal("spare before the slot", $"minutes of hand work short of {SpareMinutes} min spare", [.. waited.Select(i => new Term(TermKind.EndAfter, i, 1, horizon - SpareMinutes))]));
        }

        if (fresh.Length > 0)
        {
            goals.Add(new Goal("made as late as it keeps", "hours before the slot, on average", [.. fresh.Select(i => new Term(TermKind.Start, i, -1))]) { Offset = (long)fresh.Length * horizon, Scale = 60.0 * fresh.Length });
        }

        return [.. goals];
    }

    private static ImmutableArray<CleanRule> Cleans(PrepWork work, KitTable kit, int firstKit)
    {
        ImmutableArray<CleanRule>.Builder rules = ImmutableArray.CreateBuilder<CleanRule>();
        string[] all = [.. work.Tasks.SelectMany(t => t.Allergens).Distinct().Order(StringComparer.Ordinal).Take(62)];
        foreach (string type in work.Tasks.Select(t => t.Cleans).OfType<string>().Distinct())
        {
            // Each piece by itself: what one jug held is no matter to the next.
            for (int group = 0; group < kit.Groups.Count; group++)
            {
                if (kit.Groups[group].Type == type && kit.Groups[group].Capacity == 1)
                {
                    rules.Add(new CleanRule(firstKit + group,
                        [.. Enumerable.Range(0, work.Tasks.Length).Where(i => work.Tasks[i].Cleans is null && work.Tasks[i].Component is not null && work.Tasks[i].Kit.Any(k => k.Type == type))
                            .Select(i => new CleanUse(i, work.Tasks[i].Allergens.Sum(a => 1L << Array.IndexOf(all, a))))],
                        [.. Enumerable.Range(0, work.Tasks.Length).Where(i => work.Tasks[i].Cleans == type)]));
                }
            }
        }

        return rules.ToImmutable();
    }

    private static ImmutableArray<Stretch> Open(Occasion occasion, int from, int to, Func<LocalDateTime, int> step)
    {
        ImmutableArray<Stretch> open = [.. occasion.Windows.Select(w => new Stretch(Math.Max(from, step(w.Start)), Math.Min(to, step(w.End)))).Where(s => s.End > s.Start)];
        return open.IsEmpty ? [new Stretch(from, from)] : open;
    }

    // Somebody is in the room in the windows of the sheet, but not at meals. What fits between no two meals runs on, and the validator says so.
    private static ImmutableArray<Stretch> Attended(Occasion occasion, int from, int to, int longest, Func<LocalDateTime, int> step)
    {
        IEnumerable<Stretch> open = Open(occasion, from, to, step);
        foreach (SheetWindow meal in occasion.Meals)
        {
            Stretch no = new(step(meal.Start), step(meal.End));
            open = [.. open.SelectMany(w => w.Without(no))];
        }

        return open.Any(s => s.End - s.Start >= longest) ? [.. open] : [new Stretch(from, to)];
    }

    // Closed: outside their hours, outside the windows, at meals.
    private static ImmutableArray<Stretch> Closed(Occasion occasion, Person person, Func<LocalDateTime, int> step, int horizon)
    {
        bool[] open = new bool[horizon + 1];
        foreach (SheetWindow h in person.Hours)
        {
            foreach (SheetWindow w in occasion.Windows)
            {
                for (int t = Math.Max(0, Math.Max(step(h.Start), step(w.Start))); t < Math.Min(horizon, Math.Min(step(h.End), step(w.End))); t++)
                {
                    open[t] = true;
                }
            }
        }

        foreach (SheetWindow m in occasion.Meals)
        {
            for (int t = Math.Max(0, step(m.Start)); t < Math.Min(horizon, step(m.End)); t++)
            {
                open[t] = false;
            }
        }

        ImmutableArray<Stretch>.Builder closed = ImmutableArray.CreateBuilder<Stretch>();
        for (int t = 0; t < horizon; t++)
        {
            if (!open[t])
            {
                int start = t;
                while (t < horizon && !open[t])
                {
                    t++;
                }

                closed.Add(new Stretch(start, t));
            }
        }

        return closed.ToImmutable();
    }
}
