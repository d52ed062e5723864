using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Edits;
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
        PlanEditOptions edits = new();
        PlanStudyOptions study = new();
        Option<string[]> trials = TrialFiles.Option();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("plan", "Plans prep days, twins and the live slot.\nExample: coulisse plan examples/demo/occasion.md") { what, sentence, seconds, seed, edits.File, edits.Pin, edits.Forbid, edits.Before, study.Why, study.Worth, study.IfThen, study.Frontier, study.Point, study.Robust, study.Buffer, study.Rehearsal, trials, json };
        command.SetAction((parsed, cancel) =>
        {
            PlanOptions options = new(parsed.GetValue(seconds), parsed.GetValue(seed)) { Buffer = parsed.GetValue(study.Buffer) };
            return Task.FromResult(Run(parsed.GetRequiredValue(what), parsed.GetValue(sentence), options, o => TrialFiles.Learnt(o, parsed.GetValue(trials) ?? []) is { } learnt ? study.Picked(parsed, learnt) : null, edits.Reader(parsed), study.Asker(parsed, options, cancel), parsed.GetValue(json), cancel));
        });
        return command;
    }

    /// <summary>Loads what was named; prints what is wrong and returns null when it cannot.</summary>
    /// <param name="what">A sheet, or cards with a sentence.</param>
    /// <param name="sentence">The sentence; null for a sheet.</param>
    /// <param name="exit">Exit code when it cannot be loaded.</param>
    /// <param name="trials">Filled trial sheets to learn from.</param>
    public static Occasion? Load(string[] what, string? sentence, out int exit, string[]? trials = null)
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
            ? OccasionFiles.Sentence(sentence, today, [.. texts], null, path => OwnFoodsBeside.In(Path.GetDirectoryName(Path.GetFullPath(path)) ?? "."))
            : what is ["-"] ? OccasionFiles.Build(texts[0].Item2, today, _ => null) : OccasionFiles.Load(what[0], today);
        Occasion? occasion = built.Match<Occasion?>(o => o, p => { code = Input.Fail(sentence is null ? what[0] : "--for", p); return null; });
        exit = code;
        if (occasion is not null && trials is { Length: > 0 })
        {
            occasion = TrialFiles.Learnt(occasion, trials);
            exit = occasion is null ? Exit.Problems : code;
        }

        return occasion;
    }

    private static int Run(string[] what, string? sentence, PlanOptions options, Func<Occasion, Occasion?> pick, Func<Occasion, PlanEdits?> edits, Func<PlannedOccasion, Plan, PlanAnswers> ask, bool json, CancellationToken cancel)
    {
        if (Load(what, sentence, out int exit) is not { } loaded)
        {
            return exit;
        }

        if (pick(loaded) is not { } occasion)
        {
            return Exit.Problems;
        }

        if (edits(occasion) is not { } fixedByHand)
        {
            return Exit.Problems;
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
        return PlanFlow.Plan(occasion, options with { Edits = fixedByHand }, "au", progress, cancel).Match(
            p => json ? PlanOutput.Json(p, Answers(p, ask)) : PlanOutput.Text(p, Answers(p, ask)),
            problems => Input.Fail(what[0], problems));
    }

    /// <summary>Hears of better plans at once, on the thread that found them.</summary>
    public sealed class Heard(Action<Plan> heard) : IProgress<Plan>
    {
        public void Report(Plan value) => heard(value);
    }

    private static PlanAnswers Answers(PlannedOccasion p, Func<PlannedOccasion, Plan, PlanAnswers> ask) => p.Outcome is Plan plan ? ask(p, plan) : PlanAnswers.None;
}
