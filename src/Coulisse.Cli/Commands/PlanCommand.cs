using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse plan OCCASION, or coulisse plan CARD… --for "one sentence".</summary>
internal static class PlanCommand
{
    public static Command Create()
    {
        Argument<string[]> what = new("WHAT") { Description = "An occasion sheet, or one or more cards with --for", Arity = ArgumentArity.OneOrMore };
        Option<string?> sentence = new("--for") { Description = "\"53 plates, Saturday 14:00, 25 minutes, Ada and two others\": plans cards on the default kitchen" };
        Option<double> seconds = new("--seconds") { Description = "Time to look for a better plan", DefaultValueFactory = _ => 10 };
        Option<int> seed = new("--seed") { Description = "Equal seed and effort give equal plans", DefaultValueFactory = _ => 1 };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("plan", "Plans prep days, twins and the live slot.\nExample: coulisse plan examples/demo/occasion.md") { what, sentence, seconds, seed, json };
        command.SetAction((parsed, cancel) => Task.FromResult(Run(parsed.GetRequiredValue(what), parsed.GetValue(sentence), parsed.GetValue(seconds), parsed.GetValue(seed), parsed.GetValue(json), cancel)));
        return command;
    }

    /// <summary>Loads what was named; prints what is wrong and returns null when it cannot.</summary>
    public static Occasion? Load(string[] what, string? sentence, out int exit)
    {
        int code = Exit.Done;
        LocalDate today = LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().Date);
        List<(string, string)> texts = [];
        foreach (string path in what)
        {
            if (Input.Bytes(path, out exit) is not { } bytes)
            {
                return null;
            }

            texts.Add((path, Encoding.UTF8.GetString(bytes)));
        }

        Parsed<Occasion> built = sentence is not null
            ? OccasionFiles.Sentence(sentence, today, [.. texts])
            : what is ["-"] ? OccasionFiles.Build(texts[0].Item2, today, _ => null) : OccasionFiles.Load(what[0], today);
        Occasion? occasion = built.Match<Occasion?>(o => o, p => { code = Input.Fail(sentence is null ? what[0] : "--for", p); return null; });
        exit = code;
        return occasion;
    }

    private static int Run(string[] what, string? sentence, double seconds, int seed, bool json, CancellationToken cancel)
    {
        if (Load(what, sentence, out int exit) is not { } occasion)
        {
            return exit;
        }

        long start = Stopwatch.GetTimestamp();
        bool first = true;
        Heard progress = new(plan =>
        {
            if (first || !json)
            {
                Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(first ? "first valid plan" : "better plan")} after {Stopwatch.GetElapsedTime(start).TotalSeconds:0.0} s: {string.Join(", ", plan.Objective.Select(o => $"{o.Level} {o.Value:0.#}"))}"));
                first = false;
            }
        });
        return PlanFlow.Plan(occasion, new PlanOptions(seconds, seed), "au", progress, cancel).Match(
            p => json ? Json(p) : Text(p),
            problems => Input.Fail(what[0], problems));
    }

    /// <summary>Hears of better plans at once, on the thread that found them.</summary>
    public sealed class Heard(Action<Plan> heard) : IProgress<Plan>
    {
        public void Report(Plan value) => heard(value);
    }

    private static int Json(PlannedOccasion p)
    {
        Plan? plan = p.Outcome as Plan;
        Input.Json(new
        {
            schema = 1,
            status = p.Outcome switch { Kitchen.Planning.Plan => "planned", NoPlan => "impossible", _ => "notYet" },
            title = p.Occasion.Title,
            objective = plan?.Objective.Select(o => new { o.Level, o.Value, bound = double.IsFinite(o.Bound) ? o.Bound : (double?)null, o.Unit, o.Proven }),
            tasks = plan?.Tasks.Select(t => new { t.Id, t.Component, step = t.Line, t.Text, kind = t.Kind, start = Iso(t.Start), end = Iso(t.End), t.People, t.Kit, t.Celsius, t.Within, slackMinutes = t.Slack.TotalMinutes, t.Because }),
            twins = plan?.Twins.Select(t => new { id = "W" + t.Number.ToString(CultureInfo.InvariantCulture), t.Component, stage = t.State, t.Count, t.Grams, t.MadeBy, readyBy = Iso(t.ReadyBy), keeps = t.Holds, t.Place, t.BroughtBy, cue = t.CueSecond, t.Replaces, t.Afterwards }),
            runSheet = plan?.RunSheet.Select(s => new { segment = s.Number, start = s.StartSecond, s.Seconds, s.Show, s.Who, s.Kit, s.Twins, s.DroppableSeconds, s.DropRank, s.Gate, s.Silence }),
            fallbacks = plan?.Fallbacks,
            assumed = plan?.Assumed ?? p.Occasion.Assumed,
            conflicts = (p.Outcome as NoPlan)?.Conflicts,
            remedies = (p.Outcome as NoPlan)?.Remedies,
            why = (p.Outcome as NotYet)?.Why,
            faults = p.Faults.Select(f => new { f.Code, f.TaskIds, f.By, f.Unit, f.Words }),
        });
        return plan is not null && p.Faults.IsEmpty ? Exit.Done : Exit.Problems;
    }

    private static int Text(PlannedOccasion p)
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
                b.AppendLine(CultureInfo.InvariantCulture, $"  {(t.Kind == TaskKind.Moment ? "  · " : "")}{Clock(t.Start)}–{Clock(t.End)}  {t.Id}  {(t.People.IsEmpty ? "nobody" : string.Join(", ", t.People)),-14} {kit,-12} {(t.Component is null ? "" : t.Component + ": ")}{Short(t.Text)}");
            }
        }

        b.AppendLine().AppendLine("Twins");
        foreach (Twin t in plan.Twins)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  W{t.Number,-2} in at {Mmss(t.CueSecond)}  {t.Component}: {t.State}{(t.Grams is { } g ? $", {g:0.#} g" : "")}; {t.Holds}; {t.Place}; {t.BroughtBy}; made by {t.MadeBy ?? "–"}");
        }

        b.AppendLine().AppendLine(CultureInfo.InvariantCulture, $"Run sheet, {Mmss((int)plan.SlotLength.TotalSeconds)}");
        foreach (RunSegment s in plan.RunSheet)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  {s.Number,2}  {Mmss(s.StartSecond)}  {Mmss(s.Seconds)}{(s.Gate ? "  GATE" : "")}{(s.Silence ? "  no talking" : "")}{(s.DroppableSeconds > 0 ? $"  drop {s.DropRank}: {Mmss(s.DroppableSeconds)}" : "")}  {Short(s.Show)}");
        }

        b.AppendLine().AppendLine("How good");
        foreach (ObjectiveLevel o in plan.Objective)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"  {o.Level}: {o.Value:0.##} {o.Unit}{(o.Proven ? ", proven best" : double.IsFinite(o.Bound) ? $", no plan can be better than {o.Bound:0.##}" : "")}");
        }

        b.AppendLine().AppendLine("Assumed");
        plan.Assumed.ToList().ForEach(a => b.Append("  - ").AppendLine(a));
    }

    private static string Iso(LocalDateTime t) => t.ToString("uuuu-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture);

    private static string Clock(LocalDateTime t) => t.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Mmss(int s) => string.Create(CultureInfo.InvariantCulture, $"{s / 60:00}:{s % 60:00}");

    private static string Short(string s) => s.Length <= 90 ? s : s[..87] + "…";
}
