using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Risk;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Why;

namespace Coulisse.Cli.Commands;

/// <summary>Questions asked of a plan once it is made, by options of plan.</summary>
internal sealed class PlanStudyOptions
{
    public Option<bool> Why { get; } = new("--why") { Description = "For each task what binds it, what binds that, and how much later it could be" };

    public Option<bool> Worth { get; } = new("--worth") { Description = "What one more pair of hands, oven, shelf, blender or quarter of an hour would save, each solved" };

    public Option<bool> IfThen { get; } = new("--if-then") { Description = "Every single failure of kit, absence of a person and delay of 1 to 3 minutes, each solved" };

    public Option<bool> Frontier { get; } = new("--frontier") { Description = "What could be shown instead: value against twins, food and risk" };

    public Option<int> Point { get; } = new("--point") { Description = "Plans the choice of that number of the frontier" };

    public Option<bool> Robust { get; } = new("--robust") { Description = "The same with everything due 10 to 45 minutes earlier: how fresh, how sure" };

    public Option<int> Buffer { get; } = new("--buffer") { Description = "Minutes by which everything is due earlier than it must be" };

    public Option<string[]> Rehearsal { get; } = new("--rehearsal") { Description = "Logs of rehearsals (the file that replan takes as state): spreads of the segments, and P(end on time)" };

    /// <summary>Asks what was wanted.</summary>
    public Func<PlannedOccasion, Plan, PlanAnswers> Asker(ParseResult parsed, PlanOptions options, CancellationToken cancel)
    {
        bool why = parsed.GetValue(Why);
        bool worth = parsed.GetValue(Worth);
        bool ifThen = parsed.GetValue(IfThen);
        bool frontier = parsed.GetValue(Frontier);
        bool robust = parsed.GetValue(Robust);
        string[] rehearsals = parsed.GetValue(Rehearsal) ?? [];
        return (planned, plan) => new PlanAnswers(
            why ? PlanStudy.Why(planned, plan) : [],
            worth ? PlanStudy.Worth(planned, plan, options, cancel) : [],
            ifThen ? PlanStudy.IfThen(planned, plan, options with { Seconds = Math.Min(options.Seconds, 2) }, c => Console.Error.WriteLine($"{c.WhatFails}: {c.Answer}"), cancel) : [])
        {
            Frontier = frontier ? PlanStudy.Frontier(planned, options with { Seconds = Math.Min(options.Seconds, 5) }, cancel: cancel) : [],
            Robust = robust ? PlanStudy.Robust(planned, options, cancel) : [],
            Slot = rehearsals.Length > 0 ? Rehearsed(planned, plan, rehearsals) : null,
        };
    }

    /// <summary>The occasion with the choice of the frontier that was picked; null after its problem was printed.</summary>
    public Occasion? Picked(ParseResult parsed, Occasion occasion)
    {
        int point = parsed.GetValue(Point);
        if (point == 0)
        {
            return occasion;
        }

        ImmutableArray<ShowPoint> points = ShowFrontier.Of(occasion);
        if (points.FirstOrDefault(p => p.Number == point) is { } picked)
        {
            return occasion with { Shows = picked.Shows };
        }

        Input.Fail("--point", [new Problem("PLN014", 0, string.Create(CultureInfo.InvariantCulture, $"There is no choice {point}."), string.Create(CultureInfo.InvariantCulture, $"plan --frontier lists choices 1 to {points.Length}."))]);
        return null;
    }

    private static SlotRiskReport? Rehearsed(PlannedOccasion planned, Plan plan, string[] files)
    {
        List<LiveLog> logs = [];
        foreach (string file in files)
        {
            if (Input.Bytes(file, out _) is not { } bytes || StateFile.Read(Encoding.UTF8.GetString(bytes), planned.Occasion).Match<LiveLog?>(s => s.Log, p => { Input.Fail(file, p); return null; }) is not { } log)
            {
                return null;
            }

            logs.Add(log);
        }

        return SlotRisk.Simulate(plan, Rehearsals.Seconds(plan, logs));
    }
}

/// <summary>Answers to the questions that were asked; empty where none was.</summary>
internal sealed record PlanAnswers(ImmutableArray<TaskReason> Why, ImmutableArray<Worth> Worth, ImmutableArray<IfThen> IfThen)
{
    public ImmutableArray<ShownChoice> Frontier { get; init; } = [];

    public ImmutableArray<BufferChoice> Robust { get; init; } = [];

    public SlotRiskReport? Slot { get; init; }

    public object? FrontierJson => Frontier.IsEmpty ? null : Frontier.Select(c => new { point = c.Point.Number, c.Point.Value, c.Point.Twins, c.Point.Grams, shows = c.Point.Shows.Select(s => new { s.Component, step = s.StepText, s.How, s.Weight, s.Line }), onTime = c.Risk?.OnTime });

    public object? RobustJson => Robust.IsEmpty ? null : Robust.Select(r => new { bufferMinutes = r.Minutes, onTime = r.Risk?.OnTime, onTimeLow = r.Risk?.OnTimeLow, onTimeHigh = r.Risk?.OnTimeHigh, objective = r.Objective.Select(o => new { o.Level, o.Value, o.Unit }) });

    public object? SlotJson => Slot is null ? null : new { Slot.Runs, Slot.OnTime, onTimeWithDrops = Slot.OnTimeWithDrops, Slot.Low, Slot.High, Slot.Segments, Slot.Assumed };

    public static PlanAnswers None { get; } = new([], [], []);

    public object? WhyJson => Why.IsEmpty ? null : Why.Select(w => new { w.Id, w.Key, w.NotEarlier, w.NotLater, slackMinutes = w.Slack.TotalMinutes, w.Chain });

    public object? WorthJson => Worth.IsEmpty ? null : Worth.Select(w => new { w.What, w.Words, w.Saves, levels = w.Levels.Select(l => new { l.Level, l.Without, l.With, bound = double.IsFinite(l.Bound) ? l.Bound : (double?)null, l.Unit }) });

    public object? IfThenJson => IfThen.IsEmpty ? null : IfThen.Select(c => new { @case = c.Case, c.Subject, whatFails = c.WhatFails, c.Answer, c.Holds, c.Changes });

    public void Write(StringBuilder b)
    {
        if (!Why.IsEmpty)
        {
            b.AppendLine().AppendLine("Why");
            foreach (TaskReason w in Why)
            {
                b.AppendLine(CultureInfo.InvariantCulture, $"  {w.Id} ({w.Key}), {(w.Slack > NodaTime.Duration.Zero ? $"could be up to {w.Slack.TotalMinutes:0} min later" : "cannot be later: " + string.Join("; ", w.NotLater))}");
                foreach (string link in w.Chain)
                {
                    b.AppendLine("    " + link);
                }
            }
        }

        if (!Worth.IsEmpty)
        {
            b.AppendLine().AppendLine("What more would be worth");
            Worth.ToList().ForEach(w => b.AppendLine("  - " + w.Words));
        }

        if (!Frontier.IsEmpty)
        {
            b.AppendLine().AppendLine("What could be shown (--point N plans it)");
            foreach (ShownChoice c in Frontier)
            {
                b.AppendLine(CultureInfo.InvariantCulture, $"  {c.Point.Number,3}  value {c.Point.Value:0}, {c.Point.Twins} twins, {c.Point.Grams:0} g of their own{(c.Risk is { } r ? $", ready on time in {100 * r.OnTime:0} of 100" : "")}; left out: {Left(c)}");
            }
        }

        if (!Robust.IsEmpty)
        {
            b.AppendLine().AppendLine("Due earlier (--buffer N plans it)");
            foreach (BufferChoice r in Robust)
            {
                b.AppendLine(CultureInfo.InvariantCulture, $"  {r.Minutes,2} min: {(r.Risk is { } risk ? $"ready on time in {100 * risk.OnTime:0.0} of 100 ({100 * risk.OnTimeLow:0.0} to {100 * risk.OnTimeHigh:0.0}); {string.Join(", ", r.Objective.Skip(1).Select(o => string.Create(CultureInfo.InvariantCulture, $"{o.Level} {o.Value:0.#}")))}" : "no plan was found")}");
            }
        }

        if (Slot is { } slot)
        {
            b.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"The slot by its rehearsals: ends on time in {100 * slot.OnTimeWithDrops:0.0} of 100 ({100 * slot.Low:0.0} to {100 * slot.High:0.0}) with drops, in {100 * slot.OnTime:0.0} without");
            foreach (SegmentRisk s in slot.Segments)
            {
                b.AppendLine(CultureInfo.InvariantCulture, $"  {s.Number,2}  {s.Median:0} s in half of the runs, {s.Ninety:0} s in nine of ten ({(s.Records >= 2 ? $"{s.Records} rehearsals" : "assumed")}); dropped in {100 * s.Dropped:0} of 100");
            }

            slot.Assumed.ToList().ForEach(a => b.AppendLine("  " + a));
        }

        if (!IfThen.IsEmpty)
        {
            b.AppendLine().AppendLine("If, then");
            foreach (IfThen c in IfThen)
            {
                b.AppendLine(CultureInfo.InvariantCulture, $"  If {c.WhatFails}: {c.Answer}");
                c.Changes.ToList().ForEach(x => b.AppendLine("      " + x));
            }
        }
    }

    private string Left(ShownChoice c)
    {
        string[] gone = [.. Frontier[0].Point.Shows.Except(c.Point.Shows).Select(s => s.StepText.Length > 1 ? s.StepText : s.Component)];
        return gone.Length == 0 ? "nothing" : string.Join("; ", gone);
    }
}
