using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Views.Web;

/// <summary>A plan as the time plan draws it and as its tables say it: rows of people, then of kit, with seconds from the first task.</summary>
public sealed record PlanView
{
    /// <summary>Title of the occasion.</summary>
    public required string Title { get; init; }

    /// <summary>The sentence under the title.</summary>
    public required string Says { get; init; }

    /// <summary>Moment that second 0 stands for, ISO.</summary>
    public required string Origin { get; init; }

    /// <summary>Start of the slot, seconds from the origin.</summary>
    public required long SlotStart { get; init; }

    /// <summary>Length of the slot, seconds.</summary>
    public required int SlotSeconds { get; init; }

    /// <summary>Rows, people first.</summary>
    public ImmutableArray<PlanRow> Rows { get; init; } = [];

    /// <summary>Stretches with work, in order; what lies between them is drawn as a break.</summary>
    public ImmutableArray<PlanStretch> Stretches { get; init; } = [];

    /// <summary>One thread for each component, from weighing to plate.</summary>
    public ImmutableArray<PlanThread> Threads { get; init; } = [];

    /// <summary>Tasks in order of start.</summary>
    public ImmutableArray<PlanBar> Bars { get; init; } = [];

    /// <summary>Twins in the order they come in.</summary>
    public ImmutableArray<TwinRow> Twins { get; init; } = [];

    /// <summary>The slot by segments.</summary>
    public ImmutableArray<SegmentRow> Segments { get; init; } = [];

    /// <summary>What was minimised, in words.</summary>
    public ImmutableArray<string> Reached { get; init; } = [];

    /// <summary>What was assumed.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>Fallbacks.</summary>
    public ImmutableArray<string> Fallbacks { get; init; } = [];

    /// <summary>What the checking room still finds wrong; empty for a good plan.</summary>
    public ImmutableArray<string> Faults { get; init; } = [];

    /// <summary>Sum of the segments, as a clock.</summary>
    public string Sum => Figures.Clock(Segments.Sum(s => s.Seconds));

    /// <summary>What a person fixed, each with the words that say it.</summary>
    public ImmutableArray<FixedView> Fixed { get; init; } = [];

    /// <summary>Work of hands whose minutes a person may know better.</summary>
    public ImmutableArray<TimedView> Timed { get; init; } = [];

    /// <summary>What moved against the plan before, a sentence for each person; empty when it was not made from one.</summary>
    public ImmutableArray<string> Moved { get; init; } = [];

    /// <summary>Document of the occasion; empty when it no longer reads.</summary>
    public string Occasion { get; init; } = "";

    /// <summary>Loads of circuits, shelves and trays against their limits.</summary>
    public ImmutableArray<PlanLoad> Loads { get; init; } = [];

    /// <summary>The same with the words that explain each code of kit.</summary>
    public PlanView Explained(IEnumerable<SheetKit> kit)
    {
        Dictionary<string, string> words = kit.Where(k => k.Code.Length > 0).GroupBy(k => k.Code, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().What, StringComparer.Ordinal);
        return this with { Rows = [.. Rows.Select(r => r.Kind == "kit" ? r with { What = words.GetValueOrDefault(r.Name, "") } : r)] };
    }

    /// <summary>Loads on the plan's own clock.</summary>
    public static ImmutableArray<PlanLoad> LoadsOf(IEnumerable<LoadProfile> profiles, LocalDateTime origin, CultureInfo culture)
        => [.. profiles.Where(p => !p.Stretches.IsEmpty).Select(p => new PlanLoad(
            p.Title, p.Unit, p.Limit,
            [.. p.Stretches.Where(s => s.Amount > 0).Select(s => new LoadStep((long)Period.Between(origin, s.Start, PeriodUnits.Seconds).Seconds, (long)Period.Between(origin, s.End, PeriodUnits.Seconds).Seconds, s.Amount, string.Join(", ", s.What.Distinct())))],
            p.Peak is { } peak ? string.Create(culture, $"most {Even(peak.Amount, p.Limit, culture)} {p.Unit}, {peak.Start:ddd HH:mm} to {peak.End:HH:mm}") : "",
            !p.Over.IsEmpty))];

    // both figures of a row with as many decimals, so that they can be compared by eye
    private static string Even(double amount, double limit, CultureInfo culture)
    {
        int decimals = Enumerable.Range(0, 3).FirstOrDefault(d => Math.Abs(amount - Math.Round(amount, d)) < 0.005 && Math.Abs(limit - Math.Round(limit, d)) < 0.005, 2);
        string form = "F" + decimals.ToString(CultureInfo.InvariantCulture);
        return $"{amount.ToString(form, culture)} of {limit.ToString(form, culture)}";
    }

    /// <summary>Lays a plan out.</summary>
    public static PlanView From(Plan plan, IEnumerable<string> faults, CultureInfo culture)
    {
        ImmutableArray<PlannedTask> tasks = [.. plan.Tasks.OrderBy(t => t.Start).ThenBy(t => t.End).ThenBy(t => t.Id, StringComparer.Ordinal)];
        LocalDateTime origin = tasks.IsEmpty || tasks[0].Start > plan.SlotStart ? plan.SlotStart : tasks[0].Start;
        long At(LocalDateTime t) => (long)Period.Between(origin, t, PeriodUnits.Seconds).Seconds;
        ImmutableArray<string> people = [.. tasks.SelectMany(t => t.People).Concat(plan.RunSheet.SelectMany(s => s.Who.Keys)).Distinct(StringComparer.Ordinal)];
        ImmutableArray<string> kit = [.. tasks.SelectMany(t => t.Kit).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        HashSet<string> pins = [.. plan.Edits.Pins.Select(p => p.Task)];
        ILookup<string, PlannedTask> moments = tasks.Where(t => t.Within is not null).ToLookup(t => t.Within!, StringComparer.Ordinal);
        ImmutableArray<PlanBar> bars = [.. tasks.Select(t => Bar(t, At, moments[t.Id], pins, culture))];
        int slot = (int)plan.SlotLength.TotalSeconds;
        return new PlanView
        {
            Title = plan.Title,
            Says = string.Create(culture, $"{plan.SlotStart:dddd d MMMM yyyy, HH:mm}, {Figures.Lasting(slot, culture)}; {people.Length} {(people.Length == 1 ? "person" : "people")}, {tasks.Length} tasks, {plan.Twins.Length} {(plan.Twins.Length == 1 ? "twin" : "twins")}."),
            Origin = origin.ToString("uuuu-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture),
            SlotStart = At(plan.SlotStart),
            SlotSeconds = slot,
            Rows = [.. people.Select(p => new PlanRow("p:" + p, p, "person")), .. kit.Select(k => new PlanRow("k:" + k, k, "kit"))],
            Stretches = Stretch(bars, At(plan.SlotStart), slot),
            Threads = [.. tasks.Where(t => !string.IsNullOrEmpty(t.Component)).GroupBy(t => t.Component!, StringComparer.Ordinal).Select(g => new PlanThread(g.Key, [.. g.Where(t => t.Within is null).Select(t => t.Id)]))],
            Bars = bars,
            Twins = [.. plan.Twins.OrderBy(t => t.Number).Select(t => Twin(t, plan, culture))],
            Segments = [.. plan.RunSheet.OrderBy(s => s.Number).Select(s => Segment(s, plan.SlotStart))],
            Reached = [.. plan.Objective.Select(o => LevelWords.Of(o, culture))],
            Assumed = plan.Assumed,
            Fallbacks = plan.Fallbacks,
            Faults = [.. faults],
            Timed = [.. tasks.Where(t => t is { Kind: TaskKind.Work, Line: > 0, Key.Length: > 0 } && t.People.Length > 0 && !t.ForStage).Select(t => new TimedView(t.Key, $"{t.Component ?? t.Dish}: {t.Text}", (int)Period.Between(t.Start, t.End, PeriodUnits.Minutes).Minutes))],
            Fixed = [.. plan.Edits.Pins.Select(p => new FixedView(p.Task, $"{tasks.FirstOrDefault(t => t.Key == p.Task)?.Text ?? p.Task}: {string.Join(", ", new[] { p.Start?.ToString("ddd HH:mm", culture), p.Person, p.Kit }.OfType<string>())}"))],
        };
    }

    private static PlanBar Bar(PlannedTask t, Func<LocalDateTime, long> at, IEnumerable<PlannedTask> moments, HashSet<string> pins, CultureInfo culture)
    {
        long start = at(t.Start);
        long end = at(t.End);
        List<string> facts = [];
        if (t.Grams is { } g)
        {
            facts.Add(Figures.Grams(g, culture));
        }

        if (t.Slack > Duration.Zero)
        {
            facts.Add("can wait " + Figures.Lasting(t.Slack.TotalSeconds, culture));
        }

        if (t.Removes.Length > 0)
        {
            facts.Add("removes " + string.Join(", ", t.Removes));
        }

        return new PlanBar(
            t.Id,
            t.Text,
            t.Kind switch { TaskKind.Unattended => "alone", TaskKind.Moment => "moment", TaskKind.Wash => "wash", TaskKind.Preheat => "heat", TaskKind.Carry => "carry", TaskKind.Meal => "meal", TaskKind.House => "house", TaskKind.Plate => "plate", _ => "work" },
            start, end,
            [.. t.People.Select(p => "p:" + p), .. t.Kit.Select(k => "k:" + k)],
            string.Create(culture, $"{t.Start:ddd HH:mm} to {(t.End.Date == t.Start.Date ? t.End.ToString("HH:mm", culture) : t.End.ToString("ddd HH:mm", culture))}"),
            Figures.Lasting(end - start, culture),
            string.Join(", ", t.People), string.Join(", ", t.Kit),
            t.Celsius is { } c ? Figures.Celsius(c, culture) : "",
            t.Component ?? t.Dish ?? "", t.Because, string.Join("; ", facts), t.Line,
            (long)t.Slack.TotalSeconds,
            [.. moments.Select(m => at(m.Start) - start)])
        {
            Key = t.Kind is TaskKind.Moment or TaskKind.Meal or TaskKind.House ? "" : t.Key,
            Pinned = t.Key.Length > 0 && pins.Contains(t.Key),
        };
    }

    private static TwinRow Twin(Twin t, Plan plan, CultureInfo culture) => new(
        t.Number, t.Component, t.State,
        t.Grams is { } g ? string.Create(culture, $"{t.Count:0.##} × {Figures.Grams(g / (t.Count > 0 ? t.Count : 1), culture)}") : t.Count.ToString("0.##", culture),
        t.ReadyBy.ToString("ddd HH:mm", culture), t.Holds, t.Place, t.Stands ? "" : t.BroughtBy, t.CueSecond, Figures.Clock(t.CueSecond),
        t.Replaces, t.Afterwards, t.MadeBy,
        Figures.Lasting((plan.SlotStart.PlusSeconds(t.CueSecond) - t.ReadyBy).ToDuration().TotalSeconds, culture))
    {
        SetOut = Papers.TwinPlaces.Of(plan, t) is { } sets ? $"{string.Join(", ", sets.People)}, {sets.Task.End.ToString("ddd HH:mm", culture)}" : "",
    };

    private static SegmentRow Segment(RunSegment s, LocalDateTime slot) => new(
        s.Number, s.StartSecond, s.Seconds, Figures.Clock(s.StartSecond), Figures.Clock(s.Seconds),
        slot.PlusSeconds(s.StartSecond).ToString("HH:mm:ss", CultureInfo.InvariantCulture),
        s.Show, s.Component, [.. s.Who.Select(w => new SaidOf(w.Key, w.Value))], string.Join(", ", s.Kit), s.Twins, s.DroppableSeconds, s.DropRank, s.Gate, s.Silence);

    /// <summary>Work that lies less than three quarters of an hour apart is one stretch; a quarter of an hour of air on both sides.</summary>
    private static ImmutableArray<PlanStretch> Stretch(ImmutableArray<PlanBar> bars, long slot, int seconds)
    {
        const long near = 45 * 60;
        const long air = 15 * 60;
        List<(long From, long To)> all = [];
        // what runs alone for more than four hours (a night in the fridge) does not keep the drawing open
        foreach ((long from, long to) in bars.SelectMany(b => b.Kind == "alone" && b.End - b.Start > 4 * 3600 ? new[] { (b.Start, b.Start + 600), (b.End - 600, b.End) } : [(b.Start, b.End)]).Append((slot, slot + seconds)).Order())
        {
            if (all.Count > 0 && from - all[^1].To <= near)
            {
                all[^1] = (all[^1].From, Math.Max(all[^1].To, to));
            }
            else
            {
                all.Add((from, to));
            }
        }

        return [.. all.Select(s => new PlanStretch(s.From - air, s.To + air))];
    }
}

/// <summary>Something a person fixed.</summary>
/// <param name="Task">Name of the task that lasts.</param>
/// <param name="Says">What is fixed.</param>
public sealed record FixedView(string Task, string Says);

/// <summary>A load under the rows.</summary>
/// <param name="Title">What is loaded.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Limit">Limit.</param>
/// <param name="Steps">Load, where there is any.</param>
/// <param name="Peak">The most of it, in words.</param>
/// <param name="Over">True when it is ever above its limit.</param>
public sealed record PlanLoad(string Title, string Unit, double Limit, ImmutableArray<LoadStep> Steps, string Peak, bool Over);

/// <summary>A stretch with one load.</summary>
public sealed record LoadStep(long From, long To, double Amount, string What);

/// <summary>A row of the drawing.</summary>
/// <param name="Id">"p:name" or "k:code".</param>
/// <param name="Name">What stands left of it.</param>
/// <param name="Kind">person or kit.</param>
public sealed record PlanRow(string Id, string Name, string Kind)
{
    /// <summary>What the code stands for; empty for a person, and for kit no sheet explains.</summary>
    public string What { get; init; } = "";
}

/// <summary>A stretch of time with work.</summary>
/// <param name="From">Second it starts.</param>
/// <param name="To">Second it ends.</param>
public sealed record PlanStretch(long From, long To);

/// <summary>A component's way through the rows.</summary>
/// <param name="Component">Component.</param>
/// <param name="Tasks">Its tasks in order.</param>
public sealed record PlanThread(string Component, ImmutableArray<string> Tasks);

/// <summary>A task, drawn once in every row it holds.</summary>
public sealed record PlanBar(
    string Id, string Text, string Kind, long Start, long End, ImmutableArray<string> Rows, string When, string Lasts, string People, string Kit,
    string Celsius, string Component, string Because, string Facts, int Line, long Slack, ImmutableArray<long> Moments)
{
    /// <summary>Name that lasts from plan to plan, for pins; empty when it cannot be pinned.</summary>
    public string Key { get; init; } = "";

    /// <summary>True when a person fixed it.</summary>
    public bool Pinned { get; init; }
}

/// <summary>A line of the swap-out table.</summary>
public sealed record TwinRow(int Number, string Component, string State, string Amount, string Ready, string Holds, string Place, string BroughtBy, int CueSecond, string Cue, string Replaces, string Afterwards, string? MadeBy, string Age)
{
    /// <summary>Who puts it in its place before the slot, and when; empty when the plan does not say.</summary>
    public string SetOut { get; init; } = "";
}

/// <summary>A line of the run sheet.</summary>
public sealed record SegmentRow(int Number, int StartSecond, int Seconds, string At, string Lasts, string Clock, string Show, string Component, ImmutableArray<SaidOf> Who, string Kit, ImmutableArray<int> Twins, int DroppableSeconds, int DropRank, bool Gate, bool Silence);

/// <summary>What one person does in a segment.</summary>
/// <param name="Name">Who.</param>
/// <param name="Does">What.</param>
public sealed record SaidOf(string Name, string Does);

/// <summary>Work of hands with the minutes the plan gives it.</summary>
/// <param name="Task">Its lasting name.</param>
/// <param name="Says">What is done.</param>
/// <param name="Minutes">Minutes in this plan.</param>
public sealed record TimedView(string Task, string Says, int Minutes);
