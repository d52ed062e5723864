using System.Collections.Immutable;
using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;
using Coulisse.Papers;
using Coulisse.Views;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse demo: the demo occasion from its sheet to its papers.</summary>
internal static class DemoCommand
{
    // The first card of the demo folder that is called a draft: the program knows no dish by name.
    private const string Draft = "*draft*.md";

    public static Command Create()
    {
        Option<string> folder = new("--out") { Description = "Where the papers go", DefaultValueFactory = _ => "demo-out" };
        Option<double> seconds = new("--seconds") { Description = "Time to look for a better plan", DefaultValueFactory = _ => 15 };
        Command command = new("demo", "Plans the demo occasion end to end, writes its papers, says how to open the bench.\nExample: coulisse demo") { folder, seconds };
        command.SetAction((parsed, cancel) => Task.FromResult(Run(parsed.GetRequiredValue(folder), parsed.GetValue(seconds), cancel)));
        return command;
    }

    private static int Run(string folder, double seconds, CancellationToken cancel)
    {
        if (Examples() is not { } examples)
        {
            return Input.Fail(Exit.Storage, "The examples folder is not beside the program or in this folder. Run it from the project's folder.");
        }

        long start = Stopwatch.GetTimestamp();
        Say("The draft card first: what does the safety review say to it?");
        SafetyOfDraft(examples);
        Occasion? occasion = PlanCommand.Load([Path.Combine(examples, "demo", "occasion.md")], null, out int exit);
        if (occasion is null)
        {
            return exit;
        }

        Say($"{occasion.Title}: {N(occasion.Dishes.Length)} dishes, {N(occasion.Covers)} covers, {N(occasion.People.Length)} people, slot {N((int)occasion.SlotLength.TotalMinutes)} min. Planning for {seconds.ToString("0", CultureInfo.InvariantCulture)} s …");
        bool first = true;
        PlanCommand.Heard progress = new(plan =>
        {
            if (first)
            {
                Say($"first valid plan after {Seconds(start)}");
                first = false;
            }
        });
        return PlanFlow.Plan(occasion, new PlanOptions(seconds), "au", progress, cancel).Match(planned => Finish(planned, folder, start), problems => Input.Fail("examples/demo/occasion.md", problems));
    }

    private static int Finish(PlannedOccasion planned, string folder, long start)
    {
        if (planned.Outcome is not Plan plan)
        {
            return Input.Fail(Exit.Problems, planned.Outcome is NoPlan no ? "No plan exists: " + string.Join("; ", no.Conflicts) : "No plan was found in the time given; try --seconds 60.");
        }

        foreach (ObjectiveLevel o in plan.Objective)
        {
            Say("  " + LevelWords.Of(o, CultureInfo.InvariantCulture));
        }

        Say($"  {N(plan.Tasks.Length)} tasks, {N(plan.Twins.Length)} twins, run sheet {N(plan.RunSheet.Sum(s => s.Seconds) / 60)}:{(plan.RunSheet.Sum(s => s.Seconds) % 60).ToString("00", CultureInfo.InvariantCulture)}; the independent validator found {(planned.Faults.IsEmpty ? "no fault" : N(planned.Faults.Length) + " faults")}");
        planned.Faults.ToList().ForEach(f => Say("  FAULT " + f.Words));
        ImmutableArray<string> names;
        try
        {
            names = [.. PrintOut.Write(PrintFlow.Bundle(planned, LocalDateTime.FromDateTime(TimeProvider.System.GetLocalNow().DateTime), Prices(planned)), PaperChoice.All, folder).Files.Select(f => Path.GetFileName(f.File))];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Input.Fail(Exit.Storage, $"The papers could not be written to {folder}: {e.Message}");
        }

        Say($"{N(names.Length)} papers in {folder}/: {string.Join(", ", names.Take(6))}{(names.Length > 6 ? " …" : "")}");
        Say($"done in {Seconds(start)}. Open the bench with this occasion on it: ./coulisse serve --demo --open   (http://localhost:5080)");
        return planned.Faults.IsEmpty ? Exit.Done : Exit.Problems;
    }

    /// <summary>The price list that the sheet names, beside it.</summary>
    private static PrintWish Prices(PlannedOccasion planned)
    {
        string? file = planned.Occasion.Sheet.PricesFile is { } name && Examples() is { } examples ? Path.Combine(examples, "demo", name) : null;
        return file is not null && File.Exists(file) && Coulisse.Kitchen.Needs.PriceList.Read(File.ReadAllText(file), planned.Occasion.Sheet.Currency) is Coulisse.Cards.Parsed<Coulisse.Kitchen.Needs.PriceList>.Ok(var list) ? new PrintWish { Prices = list } : new PrintWish();
    }

    private static void SafetyOfDraft(string examples)
    {
        if (Directory.EnumerateFiles(Path.Combine(examples, "demo", "cards"), Draft).Order(StringComparer.Ordinal).FirstOrDefault() is { } draft)
        {
            Coulisse.Cards.Reading.CardReader.Read(new Coulisse.Cards.CardText(File.ReadAllText(draft), draft)).Match(
                dish => AssessFlow.Assess(dish, null, null, "au").Match(
                    a =>
                    {
                        foreach (Finding f in a.Findings.All.Where(f => f.Severity == Severity.Stop))
                        {
                            Say($"  STOP, line {N(f.Line)}: {f.What}");
                            Say($"        remedy: {f.Remedy}");
                        }

                        return 0;
                    },
                    _ => 0),
                _ => 0);
        }
    }

    /// <summary>The examples, beside the working folder or the program.</summary>
    public static string? Examples()
    {
        foreach (string? from in new[] { Directory.GetCurrentDirectory(), AppContext.BaseDirectory })
        {
            for (DirectoryInfo? d = new(from); d is not null; d = d.Parent)
            {
                if (File.Exists(Path.Combine(d.FullName, "examples", "demo", "occasion.md")))
                {
                    return Path.Combine(d.FullName, "examples");
                }
            }
        }

        return null;
    }

    private static void Say(string line) => Console.Out.WriteLine(line);

    private static string N(int n) => n.ToString(CultureInfo.InvariantCulture);

    private static string Seconds(long start) => Stopwatch.GetElapsedTime(start).TotalSeconds.ToString("0.0", CultureInfo.InvariantCulture) + " s";
}
