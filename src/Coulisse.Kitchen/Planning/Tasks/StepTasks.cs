using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Work;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Turns one step of a card into the tasks it is made of: hands before, what runs by itself, moments inside it, a wait after it.</summary>
/// <remarks>
/// Minutes come from the card: a time in brackets for hands, the stated times for what runs. Where the card gives none, hands take
/// <see cref="HandsWithoutTime"/>, marked as assumed. Hands scale with the batch here; what runs by itself takes the minutes that power, load and thickness give it (<see cref="RunMinutes"/>), where they are worked out.
/// </remarks>
internal sealed class StepTasks(List<PrepTask> tasks, List<PrepLink> links, ImmutableArray<LearntTime> learnt, RunMinutes physical)
{
    /// <summary>Minutes of hands for a step that states none. Common practice, no source.</summary>
    public const int HandsWithoutTime = 8;

    /// <summary>Why kit is heated when it is, in words.</summary>
    public const string HeatFor = "the heat is for it";

    /// <summary>Minutes to fill what the card only bakes. Common practice, no source.</summary>
    public const int FillMinutes = 5;

    /// <summary>Minutes heated kit may stand empty before it is wanted. Common practice, no source.</summary>
    public const int HeatStands = 20;

    /// <summary>Share of a limit to be cold by that the cooling itself gets; the rest is for getting the food there. Common practice, no source.</summary>
    public const double CoolingShare = 0.5;

    /// <summary>First and last task of a step.</summary>
    /// <param name="First">Starts the step.</param>
    /// <param name="Last">Ends it.</param>
    /// <param name="Wait">Least minutes from the start of <paramref name="First"/> before the next step may begin; 0 for none.</param>
    public readonly record struct Span(int First, int Last, int Wait);

    /// <summary>Adds the tasks of a step.</summary>
    /// <param name="step">The step.</param>
    /// <param name="plain">Dish, component, allergens and the like, copied to every task.</param>
    /// <param name="factor">How many times the card's amount is made.</param>
    /// <param name="vessels">Vessels (tins, loads) of it.</param>
    public Span Add(Step step, PrepTask plain, double factor, int vessels)
    {
        StepTime[] runs = [.. step.Times.Where(t => RunsAlone(step, t))];
        ImmutableArray<string> kit = KitTypes.Of(step);
        bool heats = step.Operation is "fill_bath" or "preheat_oven";
        if (heats)
        {
            // "About 27 min from hot tap water, 64 min from cold": alternatives, the first is the one meant.
            runs = [.. runs.Take(1)];
        }

        double? stated = Hands(step);
        PrepTask named = plain with { Line = step.Span.Line, Skill = Skills.Of(step) };
        if (runs.Length == 0)
        {
            // What three trials or more took stands for what is assumed or written, but never for less than a heat the card states.
            (double usual, string why) = LearntTime.Of(learnt, step) is { } took ? (Math.Max(took.Median, LeastHeat(step)), took.Why) : stated is { } given ? (given, "the card") : Usual(step);
            int minutes = Scale(usual, stated is null && LearntTime.Of(learnt, step) is null ? 1 : factor);
            if (step.HandsMinutes is null && physical.Of(step, vessels) is { } worked)
            {
                // A pot that is stirred throughout: its minutes grow with the heat it takes, not with the grams.
                (minutes, why) = (Math.Max(1, (int)Math.Ceiling(worked.Minutes - 1e-9)), worked.Why);
            }

            return One(Push(named with
            {
                Text = step.Text,
                Kind = TaskKind.Work,
                Minutes = minutes,
                MinutesWhy = why,
                People = step.People,
                Kit = [.. kit.Where(k => k is not "oven" and not "bath" and not "dehydrator" and not "chiller").Select(k => new KitUse(k, 1))],
            }), 0);
        }

        int first = -1;
        int last = -1;
        if (step.HandsMinutes is { } before && !heats)
        {
            first = last = Push(named with
            {
                Text = step.Text,
                Kind = TaskKind.Work,
                Minutes = Scale(before, factor),
                MinutesWhy = "the card",
                People = step.People,
                Kit = [.. kit.Where(k => k is "blender" or "sealer").Select(k => new KitUse(k, 1))],
            });
        }

        int wait = 0;
        StepTime? longest = runs.MaxBy(r => (r.MinutesMin ?? r.MinutesMax ?? 0) * r.Repeats);
        foreach (StepTime run in runs)
        {
            string? on = heats ? (step.Operation == "fill_bath" ? "bath" : "oven") : On(step, run, kit);
            double minutes = (run.MinutesMin ?? run.MinutesMax ?? 0) * run.Repeats;
            // Cold within 90 min of the heat: in the chiller by half of them, cold by the other half, or the limit is missed.
            minutes *= run.Kind == TimeKind.Limit && on is "chiller" ? CoolingShare : 1;
            if (on is null or "fridge" && step.HandsMinutes >= minutes && run.Kind != TimeKind.Limit)
            {
                // "Stir over ice, about 15 min (hands 25 min)": the wait lies inside the work.
                continue;
            }

            if (on is null or "fridge")
            {
                // Standing, setting, cooling by itself: no kit is planned for it, only the wait.
                int at = last >= 0 ? last : Push(named with { Text = step.Text, Kind = TaskKind.Work, Minutes = Scale(Math.Min(stated ?? 3, 30), factor), MinutesWhy = stated is null ? "assumed: setting it to stand" : "the card", People = Math.Max(1, step.People) });
                first = first < 0 ? at : first;
                last = at;
                wait += (int)Math.Ceiling(minutes);
                continue;
            }

            // More of it than the card's: what the kit's physics adds falls on the longest run of the step.
            (double Minutes, string Why)? grown = heats || run != longest || run.Kind == TimeKind.Limit ? null : physical.Of(step, vessels);
            minutes = grown is { } g ? Math.Max(minutes, g.Minutes - runs.Where(r => r != longest).Sum(r => (r.MinutesMin ?? r.MinutesMax ?? 0) * r.Repeats)) : minutes;
            PrepTask running = named with
            {
                Text = step.Text,
                Kind = heats ? TaskKind.Preheat : TaskKind.Unattended,
                Minutes = Math.Max(1, (int)Math.Ceiling(minutes - 1e-9)),
                MinutesWhy = grown?.Why ?? (run.Kind == TimeKind.Limit ? "half of the card's limit, the other half is to get it there" : "the card"),
                // Which piece is heated is known once it is known what goes into which: the planner need not hold one for it.
                Kit = heats ? [] : [new KitUse(on, 1)],
                Celsius = Celsius(step, run, on),
                People = 0,
                Watched = on is "hob",
            };
            int[] loads = on is "oven" && !heats ? Loads(vessels) : [1];
            List<int> begun = [];
            for (int i = 0; i < loads.Length; i++)
            {
                string which = loads.Length == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"load {i + 1} of {loads.Length}, {loads[i]} {(loads[i] == 1 ? "tin" : "tins")}: ");
                int task = Push(running with { Text = which + step.Text, Kit = heats ? [] : [new KitUse(on, loads[i])] });
                if (last >= 0)
                {
                    links.Add(new PrepLink(last, false, task, false, wait, on is "oven" or "bath" ? wait + 45 + (i * running.Minutes) : null, true, "goes straight on"));
                }

                begun.Add(task);
                first = first < 0 ? task : first;
            }

            // The first load goes in first and the last comes out last: what follows waits for it.
            for (int i = 0; i + 1 < begun.Count; i++)
            {
                links.Add(new PrepLink(begun[i], true, begun[i + 1], false, 0, null, false, "load after load"));
                links.Add(new PrepLink(begun[i], false, begun[^1], true, 0, null, false, "load after load"));
            }

            wait = last >= 0 ? 0 : wait;
            foreach ((int task, int i) in begun.Select((t, i) => (t, i)))
            {
                last = Moments(step, run, task, named, on, begun.Count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"load {i + 1}, "));
            }
        }

        return new Span(first, last, wait > 0 ? wait + tasks[last].Minutes : 0);
    }

    // Tins by the load: the largest oven full as often as it takes, the rest last.
    private int[] Loads(int vessels) => [.. Enumerable.Range(0, physical.Loads(Math.Max(1, vessels))).Select(i => (int)Math.Min(physical.Shelves, Math.Max(1L, vessels) - ((long)i * physical.Shelves)))];

    private int Moments(Step step, StepTime run, int task, PrepTask named, string on, string load)
    {
        if (tasks[task].Kind == TaskKind.Preheat)
        {
            Moment(task, named, "start it: " + TwinLabel(step, run), 0, 5);
            return task;
        }

        Moment(task, named, "in: " + load + TwinLabel(step, run), 0, 2);
        foreach (double at in step.TendAt)
        {
            Moment(task, named, string.Create(CultureInfo.InvariantCulture, $"at {at:0} min: {load}{TwinLabel(step, run)}"), (int)at, 2);
        }

        // A dryer that stops itself and a chiller hold what is in them; from an oven, a bath or a ring it must come at once.
        bool atOnce = on is "oven" or "bath" or "hob";
        int end = Push(named with { Text = TaskWords.Out + load + TwinLabel(step, run), Kind = atOnce ? TaskKind.Moment : TaskKind.Work, Minutes = 2, MinutesWhy = "assumed (common practice, no source)", People = 1, Within = atOnce ? task : null, Skill = null, Line = atOnce ? named.Line : 0 });
        links.Add(new PrepLink(task, false, end, false, 0, atOnce ? 0 : null, false, "comes out"));
        return atOnce ? task : end;
    }

    private void Moment(int task, PrepTask named, string text, int at, int minutes)
    {
        int moment = Push(named with { Text = text, Kind = TaskKind.Moment, Minutes = Math.Min(minutes, Math.Max(1, tasks[task].Minutes)), People = 1, Within = task, Skill = null });
        links.Add(new PrepLink(task, true, moment, false, at, at, false, "at its minute"));
    }

    private int Push(PrepTask task)
    {
        tasks.Add(task);
        return tasks.Count - 1;
    }

    private static Span One(int task, int wait) => new(task, task, wait);

    // The work standard's fixed part and one unit of it; the batch's own quantity is not read from the step.
    private static (double Minutes, string Why) Usual(Step step)
        => WorkStandards.Find(step.Operation) is { } standard && standard.For(1) is var estimate && estimate.Hands.Best > 0
            ? (Math.Clamp(estimate.Hands.Best, 2, 30), "assumed: " + estimate.Assumed)
            : (HandsWithoutTime, "assumed: the card gives no time");

    /// <summary>Minutes of cooking a step states, and the hold of a temperature: trials never shorten them.</summary>
    private static double LeastHeat(Step step) => Math.Max(
        step.Times.Where(t => t.Kind is TimeKind.Cook or TimeKind.Oven && t.Bound != Bound.AtMost).Sum(t => (t.MinutesMin ?? t.MinutesMax ?? 0) * t.Repeats),
        step.Temperatures.Select(t => t.HoldMinutes ?? 0).DefaultIfEmpty().Max());

    private static int Scale(double minutes, double factor) => Math.Max(1, (int)Math.Ceiling(minutes * Math.Max(factor, 0.2) - 1e-9));

    /// <summary>Hands minutes: those in brackets, else the stated times that need hands.</summary>
    private static double? Hands(Step step)
    {
        if (step.HandsMinutes is { } hands)
        {
            return hands;
        }

        double stated = step.Times.Where(t => t.Kind is TimeKind.Hands or TimeKind.Machine or TimeKind.Cook && t.Bound != Bound.AtMost).Sum(t => (t.MinutesMax ?? t.MinutesMin ?? 0) * t.Repeats);
        return stated > 0 ? Math.Max(stated, 2) + (stated < 10 ? 3 : 0) : null;
    }

    /// <summary>Long enough, and of a kind, to go on without hands.</summary>
    public static bool RunsAlone(Step step, StepTime t) => (t.MinutesMin ?? t.MinutesMax ?? 0) * t.Repeats >= 10
        && (t.Kind is TimeKind.Oven or TimeKind.Chill or TimeKind.Rest
            || (t.Kind is TimeKind.Cook or TimeKind.Machine && step.Tending != Tending.All)
            || (t.Kind == TimeKind.Limit && Cools(step)));

    /// <summary>A limit to cool within is also how long it may take: until the heat is reckoned, all of it is waited for.</summary>
    private static bool Cools(Step step) => step.Operation is "blast_chill" or "cool_rack" or "chill_ice" or "chill_fridge" && step.Temperatures.Any(t => t.Bound == Bound.AtMost || t.Celsius <= 25);

    // Which kit a running time is on. "Blast chill … hold there 6 h": the chiller runs for the limit, the rest is a hold in the cold.
    private static string? On(Step step, StepTime run, ImmutableArray<string> kit) => run.Kind switch
    {
        TimeKind.Oven => "oven",
        TimeKind.Limit when step.Operation == "blast_chill" => "chiller",
        TimeKind.Limit => null,
        TimeKind.Chill => "fridge",
        TimeKind.Rest => null,
        _ when step.Operation is "blast_chill" or "chill_fridge" or "chill_ice" => "fridge",
        TimeKind.Machine => kit.FirstOrDefault(k => k is "dehydrator") ?? kit.FirstOrDefault(k => k is not "oven" and not "bath"),
        TimeKind.Cook => step.Temperatures.Any(t => t.Of == TemperatureOf.Bath && t.Bound == Bound.At) ? "bath" : kit.FirstOrDefault(k => k is "bath" or "hob") ?? "hob",
        _ => null,
    };

    private static double? Celsius(Step step, StepTime run, string on) => (on switch
    {
        "oven" => StepHeats.At(step, run, TemperatureOf.Oven),
        "bath" => StepHeats.At(step, run, TemperatureOf.Bath),
        "dehydrator" => StepHeats.At(step, run, TemperatureOf.Dryer),
        _ => null,
    })?.Celsius;

    private static string TwinLabel(Step step, StepTime run) => Slot.TwinStage.ClauseWith(step.Text, run.Words);
}
