using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Solver;

/// <summary>The night before: every single failure of kit and absence of a person solved by re-planning, every small delay in the slot by its droppable seconds.</summary>
/// <remarks>An answer is only given when the validator finds no fault in what is still to come.</remarks>
/// <param name="occasion">The occasion.</param>
/// <param name="batches">One batch for each dish.</param>
/// <param name="plan">The plan as it stands the night before.</param>
/// <param name="each">Effort for each case.</param>
public sealed class IfThens(Occasion occasion, ImmutableArray<Batch> batches, Plan plan, PlanOptions each)
{
    private readonly CpSatReplanner _replanner = new();
    private readonly LocalDateTime _night = Night(occasion);

    /// <summary>The moment from which things fail: the end of the last prep window before the day of the slot.</summary>
    public LocalDateTime From => _night;

    /// <summary>All cases: kit, people, then delays by segment.</summary>
    /// <param name="solved">Hears of each case as it is solved; may be null.</param>
    /// <param name="cancel">Stop and keep what was solved.</param>
    public ImmutableArray<IfThen> All(Action<IfThen>? solved = null, CancellationToken cancel = default)
    {
        ImmutableArray<IfThen>.Builder all = ImmutableArray.CreateBuilder<IfThen>();
        foreach (Func<IfThen> solve in Cases())
        {
            if (cancel.IsCancellationRequested)
            {
                break;
            }

            all.Add(solve());
            solved?.Invoke(all[^1]);
        }

        return all.ToImmutable();
    }

    private IEnumerable<Func<IfThen>> Cases()
    {
        foreach (SheetKit kit in occasion.Kit.Where(k => k.Code.Length > 0 && k.Type != "fridge"))
        {
            yield return () => Kit(kit);
        }

        foreach (Person person in occasion.People)
        {
            yield return () => Absent(person);
        }

        foreach (RunSegment segment in plan.RunSheet)
        {
            foreach (int minutes in new[] { 1, 2, 3 })
            {
                yield return () => Delay(segment, minutes);
            }
        }
    }

    private IfThen Kit(SheetKit kit)
    {
        string what = $"{kit.Code} ({kit.What.Split(',', ';')[0]}) fails {From.ToString("ddd", CultureInfo.InvariantCulture)} night";
        bool used = plan.Tasks.Any(t => t.End > _night && t.Kit.Contains(kit.Code)) || plan.RunSheet.Any(s => s.Kit.Contains(kit.Code));
        if (!used)
        {
            return new IfThen("kit", what, "Nothing changes: it is not needed any more.", []) { Subject = kit.Code, Holds = true };
        }

        LiveState state = State() is var s ? s with { Broken = s.Broken.Add(kit.Code, _night) } : s;
        bool last = kit.Number <= 1 && occasion.Kit.All(k => k == kit || k.Type != kit.Type);
        Occasion slotOnly = occasion with
        {
            Kit = occasion.Kit.Remove(kit),
            Circuits = [.. occasion.Circuits.Select(c => c with { Kit = c.Kit.Remove(kit.Code) })],
            // What would be shown on the only one of its kind is told over the twin.
            Shows = last && kit.Type == "blender" ? [.. occasion.Shows.Select(x => x.StepText.Contains("blend", StringComparison.OrdinalIgnoreCase) && x.How is ShowKind.Begin or ShowKind.Full ? x with { How = ShowKind.Tell } : x)] : occasion.Shows,
        };
        return Solved("kit", kit.Code, what, slotOnly, state, $"Go on without {kit.Code}",
            w => PrepDemand.Drop(w, t => ToDo(t) && w.Tasks.Any(n => n.Component == t.Component && n.ForStage == t.ForStage && ToDo(n) && n.Kit.Any(k => k.Type == kit.Type))),
            $"have another {kit.Type} there before {Clock(Morning())}; then nothing changes");
    }

    private IfThen Absent(Person person)
    {
        string what = $"{person.Name} does not come on {occasion.SlotStart.ToString("dddd", CultureInfo.InvariantCulture)}";
        LiveState state = State() is var s ? s with { Gone = s.Gone.Add(person.Name, _night) } : s;
        Occasion slotOnly = occasion.People.Length > 1 ? occasion with { People = occasion.People.Remove(person) } : occasion;
        return Solved("person", person.Name, what, slotOnly, state, $"Go on without {person.Name}", null,
            $"have one more pair of hands there by {Clock(Morning())}, as able as {person.Name}; they take over {person.Name}'s list as it is");
    }

    private IfThen Delay(RunSegment segment, int minutes)
    {
        LocalDateTime begun = plan.SlotStart.PlusSeconds(segment.StartSecond).PlusMinutes(minutes);
        LiveState state = new() { Now = begun, Gates = ImmutableSortedDictionary<int, LocalDateTime>.Empty.Add(segment.Number, begun) };
        ImmutableArray<WayOut> ways = SlotLateness.WaysOut(plan, state);
        string what = string.Create(CultureInfo.InvariantCulture, $"segment {segment.Number} begins {minutes}:00 late");
        WayOut way = ways[0];
        return new IfThen("delay", what, way.Sentence,
            [.. way.RunSheet.Select(r => (Now: r, Was: plan.RunSheet.First(x => x.Number == r.Number))).Where(r => r.Now.Number != segment.Number && r.Now.StartSecond != r.Was.StartSecond)
                .Select(r => $"segment {r.Now.Number.ToString(CultureInfo.InvariantCulture)} begins at {Mmss(r.Now.StartSecond)} instead of {Mmss(r.Was.StartSecond)}")])
        {
            Subject = segment.Number.ToString(CultureInfo.InvariantCulture),
            Holds = way.Late == 0,
        };
    }

    // As it is; then beginning earlier on the day; then giving up what cannot be; at last what must be fetched.
    private IfThen Solved(string kind, string subject, string what, Occasion slotOnly, LiveState state, string answer, Func<PrepWork, PrepWork>? without, string fetch)
    {
        if (Try(occasion, slotOnly, state, null) is { } made)
        {
            string slot = Differs(made.Plan) ? "; the run sheet changes" : "";
            string end = made.Changes.IsEmpty && slot.Length == 0 ? ": nothing changes." : $": all stands ready on time{slot}.";
            return new IfThen(kind, what, answer + end, [.. made.Changes, .. SlotChanges(made.Plan)]) { Subject = subject, Holds = true };
        }

        foreach (int minutes in new[] { 30, 60, 120 })
        {
            if (Try(Earlier(occasion, minutes), Earlier(slotOnly, minutes), state, null) is { } early)
            {
                return new IfThen(kind, what, string.Create(CultureInfo.InvariantCulture, $"{answer} and begin {minutes} min earlier on the day: all stands ready on time."), [.. early.Changes, .. SlotChanges(early.Plan)]) { Subject = subject, Holds = true };
            }
        }

        if (without is not null && Try(occasion, slotOnly, state, without) is { } less)
        {
            string[] gone = [.. plan.Tasks.Where(t => t.End > _night && t.Component is not null && less.Plan.Tasks.All(n => n.Key != t.Key))
                .Select(t => t.Key.StartsWith("stage-", StringComparison.Ordinal) ? "the twin of " + t.Component : t.Component!).Distinct()];
            if (gone.Length > 0)
            {
                return new IfThen(kind, what, $"Leave out {string.Join(" and ", gone)}, or {fetch}.", [.. less.Changes, .. SlotChanges(less.Plan)]) { Subject = subject };
            }
        }

        return new IfThen(kind, what, $"No plan was found without it: {fetch}.", []) { Subject = subject };
    }

    private (Plan Plan, ImmutableArray<string> Changes)? Try(Occasion with, Occasion slotOnly, LiveState state, Func<PrepWork, PrepWork>? change)
    {
        SlotPlan slot = LiveSlot.Decide(slotOnly);
        PrepWork work = TaskBuilder.Build(with, batches, slot) with { Edits = plan.Edits };
        Replanned made = _replanner.Replan(with, slot, change is null ? work : change(work), plan, state, each);
        if (made.Outcome is not Plan after)
        {
            return null;
        }

        // What was given up is no fault of the rest; what is past is past.
        HashSet<string> past = [.. state.Started.Keys];
        bool faultless = PlanValidator.Check(with, after)
            .Where(f => change is null || f.Code is not ("step-not-planned" or "twin-missing" or "twin-late"))
            .All(f => !f.TaskIds.IsEmpty && f.TaskIds.All(past.Contains));
        return faultless ? (after, made.Changes) : null;
    }

    private bool ToDo(PrepTask task) => task.Component is not null && plan.Tasks.Any(t => t.Key == task.Key && t.End > _night);

    private bool Differs(Plan after) => !after.RunSheet.Select(s => (s.Seconds, s.Show)).SequenceEqual(plan.RunSheet.Select(s => (s.Seconds, s.Show)));

    private IEnumerable<string> SlotChanges(Plan after) => !Differs(after) ? [] : after.RunSheet
        .Where(s => plan.RunSheet.All(o => o.Show != s.Show))
        .Select(s => $"segment {s.Number.ToString(CultureInfo.InvariantCulture)}, {Mmss(s.StartSecond)}: {s.Show}");

    private LiveState State()
    {
        PlannedTask[] real = [.. plan.Tasks.Where(t => t.Kind != TaskKind.Meal)];
        return new LiveState
        {
            Now = _night,
            Started = real.Where(t => t.Start < _night).ToImmutableSortedDictionary(t => t.Id, t => t.Start),
            Done = real.Where(t => t.End <= _night).ToImmutableSortedDictionary(t => t.Id, t => t.End),
        };
    }

    private Occasion Earlier(Occasion o, int minutes)
    {
        LocalDateTime first = Morning();
        SheetWindow Moved(SheetWindow w) => w.Start.Date == first.Date && w.Start < o.SlotStart && w.Start == first ? w with { Start = w.Start.PlusMinutes(-minutes) } : w;
        return o with { Windows = [.. o.Windows.Select(Moved)], People = [.. o.People.Select(p => p with { Hours = [.. p.Hours.Select(Moved)] })] };
    }

    private LocalDateTime Morning() => occasion.Windows.Where(w => w.Start >= _night && w.Start <= occasion.SlotStart).Select(w => w.Start).DefaultIfEmpty(occasion.SlotStart).Min();

    private static LocalDateTime Night(Occasion o) => o.Windows.Where(w => w.Start.Date < o.SlotStart.Date).Select(w => w.End)
        .DefaultIfEmpty(o.Windows.Where(w => w.Start < o.SlotStart).Select(w => w.Start).DefaultIfEmpty(o.SlotStart).Min()).Max();

    private static string Clock(LocalDateTime t) => t.ToString("ddd HH:mm", CultureInfo.InvariantCulture);

    private static string Mmss(int s) => string.Create(CultureInfo.InvariantCulture, $"{s / 60}:{s % 60:00}");
}
