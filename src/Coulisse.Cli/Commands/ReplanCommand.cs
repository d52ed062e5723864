using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse replan OCCASION --state FILE.</summary>
internal static class ReplanCommand
{
    public static Command Create()
    {
        Argument<string> what = new("OCCASION") { Description = "The occasion sheet" };
        Option<string> state = new("--state") { Description = "What happened so far: {\"now\": \"2026-10-10T09:30\", \"events\": [{\"at\": …, \"kind\": \"done\", \"subject\": \"Sa003\"}]}", Required = true };
        Option<string?> plan = new("--plan") { Description = "The plan that was followed, as plan --json printed it (unless the state holds it under \"plan\")" };
        Option<double> seconds = new("--seconds") { Description = "Time to look for fewer changes", DefaultValueFactory = _ => 2 };
        Option<int> seed = new("--seed") { Description = "Equal seed and effort give equal plans", DefaultValueFactory = _ => 1 };
        Option<string[]> trials = TrialFiles.Option();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("replan", "Makes the plan again from where things stand, with as few changes as it can.\nExample: coulisse replan examples/demo/occasion.md --plan plan.json --state now.json") { what, state, plan, seconds, seed, trials, json };
        command.SetAction((parsed, cancel) => Task.FromResult(Run(parsed.GetRequiredValue(what), parsed.GetRequiredValue(state), parsed.GetValue(plan), new PlanOptions(parsed.GetValue(seconds), parsed.GetValue(seed)), parsed.GetValue(trials) ?? [], parsed.GetValue(json), cancel)));
        return command;
    }

    private static int Run(string what, string stateFile, string? planFile, PlanOptions options, string[] trials, bool json, CancellationToken cancel)
    {
        if (PlanCommand.Load([what], null, out int exit, trials) is not { } occasion || Input.Bytes(stateFile, out exit) is not { } state)
        {
            return exit;
        }

        byte[]? held = null;
        if (planFile is not null && (held = Input.Bytes(planFile, out exit)) is null)
        {
            return exit;
        }

        return StateFile.Read(Encoding.UTF8.GetString(state), occasion).Match(
            read => Followed(occasion, held, read).Match(
                plan => ReplanFlow.Replan(occasion, plan, read, options, null, cancel).Match(r => json ? Json(r) : Text(r), p => Input.Fail(stateFile, p)),
                p => Input.Fail(planFile ?? stateFile, p)),
            p => Input.Fail(stateFile, p));
    }

    private static Cards.Parsed<Plan> Followed(Occasion occasion, byte[]? held, StateFile.State read)
        => held is not null ? StateFile.ReadPlan(Encoding.UTF8.GetString(held), occasion)
            : read.Plan is { } plan ? new Cards.Parsed<Plan>.Ok(plan)
            : new Cards.Parsed<Plan>.Failed([new Cards.Problem("STA004", 0, "Neither --plan nor the state names the plan that was followed.", "Keep what plan --json printed and give it with --plan.")]);

    private static int Json(ReplannedOccasion r)
    {
        Plan? plan = r.Replanned.Outcome as Plan;
        Input.Json(new
        {
            schema = "coulisse/replan/1",
            status = Status(r),
            now = PlanOutput.Iso(r.State.Now),
            quickSeconds = r.Replanned.QuickSeconds,
            seconds = r.Replanned.Seconds,
            changes = r.Replanned.Changes,
            warnings = r.Replanned.Warnings,
            waysOut = r.WaysOut.Select(w => new { w.Sentence, lateSeconds = w.Late, runSheet = w.RunSheet.Select(s => new { segment = s.Number, start = s.StartSecond, s.Seconds, s.Show }) }),
            objective = plan?.Objective.Select(o => new { o.Level, o.Value, o.Bound, o.Unit, o.Proven }),
            title = r.Occasion.Title,
            tasks = plan?.Tasks.Select(t => new { t.Id, t.Component, step = t.Line, t.Text, kind = t.Kind, start = PlanOutput.Iso(t.Start), end = PlanOutput.Iso(t.End), t.People, t.Kit, t.Shelves, t.Celsius, t.Within, slackMinutes = t.Slack.TotalMinutes, t.Because }),
            runSheet = plan?.RunSheet.Select(s => new { segment = s.Number, start = s.StartSecond, s.Seconds, s.Show, s.DroppableSeconds, s.DropRank }),
            conflicts = (r.Replanned.Outcome as NoPlan)?.Conflicts,
            remedies = (r.Replanned.Outcome as NoPlan)?.Remedies,
            why = (r.Replanned.Outcome as NotYet)?.Why,
            faults = r.Faults.Select(f => new { f.Code, f.TaskIds, f.By, f.Unit, f.Words }),
        });
        return Code(r);
    }

    private static int Text(ReplannedOccasion r)
    {
        StringBuilder b = new();
        b.AppendLine(CultureInfo.InvariantCulture, $"{r.Occasion.Title}, from {r.State.Now.ToString("ddd HH:mm", CultureInfo.InvariantCulture)}: {Status(r)} after {r.Replanned.Seconds:0.0} s{(r.Replanned.QuickSeconds is { } q ? string.Create(CultureInfo.InvariantCulture, $" (first answer {q * 1000:0} ms)") : "")}");
        Lines(b, "Warnings", r.Replanned.Warnings);
        Lines(b, "The slot runs late; any one of", r.WaysOut.Select(w => w.Sentence));
        Lines(b, "What changes", r.Replanned.Changes.DefaultIfEmpty("Nothing changes for anybody."));
        Lines(b, "These cannot hold together", (r.Replanned.Outcome as NoPlan)?.Conflicts ?? []);
        Lines(b, "Each of these would make it possible (solved)", (r.Replanned.Outcome as NoPlan)?.Remedies ?? []);
        Lines(b, "Not yet", r.Replanned.Outcome is NotYet yet ? [yet.Why] : []);
        foreach (var f in r.Faults)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"FAULT {f.Code} by {f.By:0.#} {f.Unit}: {f.Words} ({string.Join(", ", f.TaskIds)})");
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.Write(b);
        return Code(r);
    }

    private static void Lines(StringBuilder b, string head, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length > 0)
        {
            b.AppendLine().AppendLine(head);
            Array.ForEach(all, l => b.Append("  - ").AppendLine(l));
        }
    }

    private static string Status(ReplannedOccasion r) => r.Replanned.Outcome switch { Plan => "planned", NoPlan => "impossible", _ => "notYet" };

    private static int Code(ReplannedOccasion r) => r.Replanned.Outcome is Plan && r.Faults.IsEmpty ? Exit.Done : Exit.Problems;
}
