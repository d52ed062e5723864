using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Flows;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Risk;
using Coulisse.Kitchen.Planning.Edits;
using Coulisse.Kitchen.Planning.Watch;
using Coulisse.Kitchen.Safety;
using Coulisse.Views;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>Prints a planned occasion, as text or as one JSON document.</summary>
internal static class PlanOutput
{
    public static int Json(PlannedOccasion p, PlanAnswers answers)
    {
        Plan? plan = p.Outcome as Plan;
        RiskReport? risk = plan is null ? null : RiskOfPlan.Simulate(p.Occasion, plan);
        Input.Json(new
        {
            schema = "coulisse/plan/1",
            status = p.Outcome switch { Kitchen.Planning.Plan => "planned", NoPlan => "impossible", _ => "notYet" },
            title = p.Occasion.Title,
            objective = plan?.Objective.Select(o => new { o.Level, o.Value, o.Bound, o.Unit, o.Proven }),
            tasks = plan?.Tasks.Select(t => new { t.Id, t.Key, t.Component, step = t.Line, t.Text, kind = t.Kind, start = Iso(t.Start), end = Iso(t.End), t.People, t.Kit, t.Shelves, t.Celsius, t.Within, slackMinutes = t.Slack.TotalMinutes, t.Because }),
            twins = plan?.Twins.Select(t => new { id = "W" + t.Number.ToString(CultureInfo.InvariantCulture), t.Component, stage = t.State, t.Count, t.Grams, t.MadeBy, readyBy = Iso(t.ReadyBy), keeps = t.Holds, t.Place, t.SetOutBy, t.BroughtBy, cue = t.CueSecond, t.Replaces, t.Afterwards }),
            runSheet = plan?.RunSheet.Select(s => new { segment = s.Number, start = s.StartSecond, s.Seconds, s.Show, s.Who, s.Kit, s.Twins, s.DroppableSeconds, s.DropRank, s.Gate, s.Silence }),
            fallbacks = plan?.Fallbacks,
            assumed = plan?.Assumed ?? p.Occasion.Assumed,
            reasons = answers.WhyJson,
            worth = answers.WorthJson,
            ifThen = answers.IfThenJson,
            frontier = answers.FrontierJson,
            robust = answers.RobustJson,
            slotRisk = answers.SlotJson,
            edits = plan is { Edits.IsEmpty: false } ? EditsJson(plan.Edits) : null,
            conflicts = (p.Outcome as NoPlan)?.Conflicts,
            remedies = (p.Outcome as NoPlan)?.Remedies,
            why = (p.Outcome as NotYet)?.Why,
            risk = risk is null ? null : new { risk.Runs, risk.Seed, risk.OnTime, risk.OnTimeLow, risk.OnTimeHigh, lateMedianMinutes = risk.LateMedian, lateNinetyMinutes = risk.LateNinety, risk.Dangerous, risk.Buffers, risk.Assumed },
            safety = p.Findings.SelectMany((f, i) => f.All.Where(x => x.Severity > Severity.Note || x.Rule.StartsWith("SAF04", StringComparison.Ordinal)).Select(x => new { dish = p.Occasion.Dishes[i].Name, rule = x.Rule, severity = x.Severity, component = x.Component, line = x.Line, what = x.What, value = x.Value, limit = x.Limit, margin = x.Margin, remedy = x.Remedy, source = x.Source })),
            judgedAgain = p.Findings.SelectMany((f, i) => f.Again.Select(a => new { dish = p.Occasion.Dishes[i].Name, a.Component, a.Line, a.Limit, minutesGiven = a.Minutes, minutesNeeded = a.Needed, minutesNeededOff = a.Off, a.Kept })),
            timeOut = plan is null ? null : TimesOut.Of(p.Occasion, p.Batches, plan).Select(t => new { t.Dish, t.Part, minutes = t.Minutes, backInTheColdAfterMinutes = t.BackAfter, stretches = t.Stretches.Select(s => new { from = Iso(s.From), to = Iso(s.To), s.Minutes, s.What, s.Stood, s.Task }), unsaid = t.Unsaid.Select(u => new { from = Iso(u.From), to = Iso(u.To), u.Line, u.After }), t.Assumed }),
            faults = p.Faults.Select(f => new { f.Code, f.TaskIds, f.By, f.Unit, f.Words }),
        });
        return plan is not null && p.Faults.IsEmpty ? Exit.Done : Exit.Problems;
    }

    private static object EditsJson(PlanEdits e) => new
    {
        pins = e.Pins.Select(p => new { p.Task, start = p.Start is { } s ? Iso(s) : null, p.Person, p.Kit }),
        forbids = e.Forbids.Select(f => new { f.Task, from = f.From is { } a ? Iso(a) : null, to = f.To is { } b ? Iso(b) : null, f.Person, f.Kit }),
        sequences = e.Sequences.Select(q => new { q.First, q.Then }),
    };

    public static int Text(PlannedOccasion p, PlanAnswers answers)
    {
        StringBuilder b = new();
        switch (p.Outcome)
        {
            case NoPlan no:
                b.AppendLine("No plan exists. These cannot hold together:");
                no.Conflicts.ToList().ForEach(c => b.Append("  - ").AppendLine(c));
                b.AppendLine(no.Remedies.IsEmpty ? "" : "Each of these would make it possible (solved):");
                no.Remedies.ToList().ForEach(c => b.Append("  - ").AppendLine(c));
                break;
            case NotYet yet:
                b.AppendLine(yet.Why);
                break;
            case Plan plan:
                Write(b, plan);
                Write(b, p, plan);
                Write(b, plan, RiskOfPlan.Simulate(p.Occasion, plan));
                answers.Write(b);
                break;
        }

        foreach (var f in p.Faults)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"FAULT {f.Code} by {f.By:0.#} {f.Unit}: {f.Words} ({string.Join(", ", f.TaskIds)})");
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.Write(b);
        return p.Outcome is Plan && p.Faults.IsEmpty ? Exit.Done : Exit.Problems;
    }

    private static void Write(StringBuilder b, Plan plan)
    {
        b.AppendLine(plan.Title);
        foreach (IGrouping<LocalDate, PlannedTask> day in plan.Tasks.GroupBy(t => t.Start.Date))
        {
            b.AppendLine().AppendLine(day.Key.ToString("dddd d MMMM uuuu", CultureInfo.InvariantCulture));
            foreach (PlannedTask t in day)
            {
                string kit = string.Join(" ", t.Kit) + (t.Celsius is { } c ? string.Create(CultureInfo.InvariantCulture, $" {c:0.#} °C") : "");
                b.AppendLine(CultureInfo.InvariantCulture, $"  {(t.Kind == TaskKind.Moment ? "  · " : "")}{Clock(t.Start)}–{Clock(t.End)}  {t.Id}  {t.Key,-18} {(t.People.IsEmpty ? "nobody" : string.Join(", ", t.People)),-14} {kit,-12} {(t.Component is null ? "" : t.Component + ": ")}{Short(t.Text)}");
            }
        }

        b.AppendLine().AppendLine("Twins");
        foreach (Twin t in plan.Twins)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  W{t.Number,-2} in at {Mmss(t.CueSecond)}  {t.Component}: {t.State}{(t.Grams is { } g ? $", {g:0.#} g" : "")}; {t.Holds}; {t.Place}, set out by {t.SetOutBy ?? "–"}; {(t.Stands ? "stands there" : t.BroughtBy + " brings it")}; made by {t.MadeBy ?? "–"}");
        }

        b.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"Run sheet, {Mmss((int)plan.SlotLength.TotalSeconds)}");
        foreach (RunSegment s in plan.RunSheet)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  {s.Number,2}  {Mmss(s.StartSecond)}  {Mmss(s.Seconds)}{(s.Gate ? "  GATE" : "")}{(s.Silence ? "  no talking" : "")}{(s.DroppableSeconds > 0 ? $"  drop {s.DropRank}: {Mmss(s.DroppableSeconds)}" : "")}  {Short(s.Show)}");
        }

        b.AppendLine().AppendLine("How good");
        foreach (ObjectiveLevel o in plan.Objective)
        {
            b.Append("  ").AppendLine(LevelWords.Of(o, CultureInfo.InvariantCulture));
        }

        b.AppendLine().AppendLine("Assumed");
        plan.Assumed.ToList().ForEach(a => b.Append("  - ").AppendLine(a));
    }

    private static void Write(StringBuilder b, PlannedOccasion p, Plan plan)
    {
        ImmutableArray<TimeOut> times = TimesOut.Of(p.Occasion, p.Batches, plan);
        b.AppendLine().AppendLine("Out of the cold, in all, until it is eaten");
        foreach (TimeOut t in times.Take(5))
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  {(int)t.Minutes / 60} h {(int)t.Minutes % 60:00}  {t.Part}{(t.Unsaid.IsEmpty ? "" : "; a wait whose place the card does not say comes to it")}");
        }

        foreach ((Finding f, string dish) in p.Findings.SelectMany((f, i) => f.All.Where(x => x.Severity > Severity.Note || x.Rule == "SAF042").Select(x => (x, p.Occasion.Dishes[i].Name))))
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToUpperInvariant()} {f.Rule} {dish}, {f.Component}: {f.What} {f.Value}; limit {f.Limit}. {f.Remedy}");
        }

        foreach ((JudgedAgain a, string dish) in p.Findings.SelectMany((f, i) => f.Again.Select(x => (x, p.Occasion.Dishes[i].Name))))
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  judged again: {dish}, {a.Words}");
        }
    }

    private static void Write(StringBuilder b, Plan plan, RiskReport risk)
    {
        b.AppendLine().AppendLine("Risk");
        b.AppendLine(CultureInfo.InvariantCulture, $"  ready on time in {risk.OnTime:0.0%} of {risk.Runs} runs under chance (95 % interval {risk.OnTimeLow:0.0%} to {risk.OnTimeHigh:0.0%}); nine runs of ten are at most {risk.LateNinety:0.#} min late");
        foreach (TaskDanger d in risk.Dangerous.Take(3))
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  {d.Share:0%} of the lateness: {d.TaskId} {Short(plan.Tasks.First(t => t.Id == d.TaskId).Text)}");
        }

        foreach (BufferGain g in risk.Buffers.Take(1))
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  {g.Minutes:0} min kept free before {g.BeforeTaskId} would make it {g.OnTime:0.0%}");
        }
    }

    /// <summary>A moment as JSON has it: ISO 8601, local, to the second.</summary>
    internal static string Iso(LocalDateTime t) => t.ToString("uuuu-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture);

    private static string Clock(LocalDateTime t) => t.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Mmss(int s) => string.Create(CultureInfo.InvariantCulture, $"{s / 60:00}:{s % 60:00}");

    private static string Short(string s) => s.Length <= 90 ? s : s[..87] + "…";
}
