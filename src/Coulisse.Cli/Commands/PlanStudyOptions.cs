using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Flows;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Why;

namespace Coulisse.Cli.Commands;

/// <summary>Questions asked of a plan once it is made, by options of plan.</summary>
internal sealed class PlanStudyOptions
{
    public Option<bool> Why { get; } = new("--why") { Description = "For each task what binds it, what binds that, and how much later it could be" };

    public Option<bool> Worth { get; } = new("--worth") { Description = "What one more pair of hands, oven, shelf, blender or quarter of an hour would save, each solved" };

    public Option<bool> IfThen { get; } = new("--if-then") { Description = "Every single failure of kit, absence of a person and delay of 1 to 3 minutes, each solved" };

    /// <summary>Asks what was wanted.</summary>
    public Func<PlannedOccasion, Plan, PlanAnswers> Asker(ParseResult parsed, PlanOptions options, CancellationToken cancel)
    {
        bool why = parsed.GetValue(Why);
        bool worth = parsed.GetValue(Worth);
        bool ifThen = parsed.GetValue(IfThen);
        return (planned, plan) => new PlanAnswers(
            why ? PlanStudy.Why(planned, plan) : [],
            worth ? PlanStudy.Worth(planned, plan, options, cancel) : [],
            ifThen ? PlanStudy.IfThen(planned, plan, options with { Seconds = Math.Min(options.Seconds, 2) }, c => Console.Error.WriteLine($"{c.WhatFails}: {c.Answer}"), cancel) : []);
    }
}

/// <summary>Answers to the questions that were asked; empty where none was.</summary>
internal sealed record PlanAnswers(ImmutableArray<TaskReason> Why, ImmutableArray<Worth> Worth, ImmutableArray<IfThen> IfThen)
{
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
}
