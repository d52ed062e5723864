using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Papers;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Gauge.Papers;

/// <summary>gauge memory: what planning and printing hold at their peak, each in a process of its own that does nothing else.</summary>
internal static class MemoryGauge
{
    public static int Run(string[] rest)
    {
        if (PapersGauge.Root() is not { } root)
        {
            Console.Error.WriteLine("gauge memory: the examples folder is not here; run it from the project's folder.");
            return 2;
        }

        return rest switch
        {
            ["plan", var file] => Planned(root, file),
            ["print", var file, var form] => Kept(root, file, form == "one"),
            _ => Both(root),
        };
    }

    private static int Both(string root)
    {
        string file = Path.Combine(Path.GetTempPath(), "coulisse-memory-plan.json");
        Console.WriteLine("| process | stage | peak of the stage | resident after it | managed heap committed | held |");
        Console.WriteLine("|---|---|---|---|---|---|");
        string[][] parts = [["plan", file], ["print", file, "each"], ["print", file, "one"]];
        return parts.Max(p => Child(root, p));
    }

    private static int Child(string root, string[] args)
    {
        using Process child = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, ["memory", .. args]) { WorkingDirectory = root })!;
        child.WaitForExit();
        return child.ExitCode;
    }

    /// <summary>Plans, keeps the plan, prints.</summary>
    private static int Planned(string root, string file)
    {
        Stages stages = new("plan and print");
        Occasion occasion = Occasion(root);
        stages.Note("read");
        PlannedOccasion planned = PlanFlow.Plan(occasion, new PlanOptions(6), "au").Match(p => p, p => throw new InvalidOperationException(p[0].Message));
        if (planned.Outcome is not Plan plan)
        {
            Console.Error.WriteLine("gauge memory: no plan in six seconds; run it again on a quieter machine.");
            return 1;
        }

        stages.Note("planned, six seconds");
        File.WriteAllText(file, TravelJson.Write(plan));
        stages.Note("kept");
        Print(stages, root, planned, false);
        return 0;
    }

    /// <summary>Opens a kept plan as the bench does, and prints.</summary>
    private static int Kept(string root, string file, bool one)
    {
        Stages stages = new(one ? "print a kept plan, one file" : "print a kept plan, a file a sheet");
        Occasion occasion = Occasion(root);
        ImmutableArray<Batch> batches = OccasionBatches.Make(occasion).Match(b => b, p => throw new InvalidOperationException(p[0].Message));
        Plan plan = TravelJson.Read<Plan>(File.ReadAllText(file));
        stages.Note("read");
        PlannedOccasion planned = PlanFlow.Of(occasion, batches, plan, "au");
        stages.Note("checked");
        Print(stages, root, planned, one);
        return 0;
    }

    private static void Print(Stages stages, string root, PlannedOccasion planned, bool one)
    {
        PriceList prices = PriceList.Read(File.ReadAllText(Path.Combine(root, "examples", "demo", "prices.csv"))).Match(l => l, p => throw new InvalidOperationException(p[0].Message));
        PaperBundle bundle = PrintFlow.Bundle(planned, new LocalDateTime(2026, 10, 7, 18, 20), new PrintWish { Prices = prices });
        stages.Note("bundle");
        string folder = Directory.CreateTempSubdirectory("coulisse-memory").FullName;
        try
        {
            PrintOut.Write(bundle, PaperChoice.All with { OneFile = one }, folder);
            stages.Note("printed");
        }
        finally
        {
            Directory.Delete(folder, true);
        }

        stages.Whole();
    }

    private static Occasion Occasion(string root)
        => OccasionFiles.Load(Path.Combine(root, "examples", "demo", "occasion.md"), new LocalDate(2026, 10, 1)).Match(o => o, p => throw new InvalidOperationException(p[0].Message));

    /// <summary>The system's own count of resident memory, its peak set back after every stage.</summary>
    private sealed class Stages(string process)
    {
        private double _peak;

        public void Note(string stage)
        {
            (double peak, double now) = (Status("VmHWM"), Status("VmRSS"));
            _peak = Math.Max(_peak, peak);
            GCMemoryInfo heap = GC.GetGCMemoryInfo();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {process} | {stage} | {peak:0} MB | {now:0} MB | {heap.TotalCommittedBytes / 1048576.0:0} MB | {GC.GetTotalMemory(false) / 1048576.0:0} MB |"));
            if (File.Exists("/proc/self/clear_refs"))
            {
                File.WriteAllText("/proc/self/clear_refs", "5");
            }
        }

        public void Whole() => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {process} | **whole** | **{_peak:0} MB** | {Status("VmRSS"):0} MB | | {GC.GetTotalMemory(true) / 1048576.0:0} MB after collecting |"));

        private static double Status(string what)
            => File.ReadLines("/proc/self/status").First(l => l.StartsWith(what, StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries) is [.., var kilobytes, "kB"]
                ? double.Parse(kilobytes, CultureInfo.InvariantCulture) / 1024 : double.NaN;
    }
}
