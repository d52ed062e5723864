using System.Globalization;
using Coulisse.Gauge.Planning.Reading;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Solver;

namespace Coulisse.Gauge.Planning;

/// <summary>gauge planning: outside instance sets through the engine that plans dishes, beside the plain model in the same run.</summary>
internal static class PlanningGauge
{
    public const string Usage = """
        gauge planning --set SET [--limit N] [--seconds S] [--workers W] [--seed N] [--data FOLDER] [--only A,B] [--engine-only] [--list]
        gauge planning --set SET --budget MINUTES [--append FILE]   as many instances, spread over the set, as the minutes hold; the row goes to FILE
          SET: j30 j60 j90 j120 max-j10 max-j20 max-j30 max-ubo10 … max-ubo200 mm-j10 … mm-j30
          FOLDER holds instances/SET.tar.gz and known.tsv; default: COULISSE_SCHEDULING, or COULISSE_SHARED/data/scheduling.
        Example: coulisse gauge planning --set j30 --limit 10 --seconds 10
        """;

    public static int Run(string[] args)
    {
        Dictionary<string, string> options = [];
        for (int i = 0; i < args.Length; i++)
        {
            bool flag = args[i] is "--engine-only" or "--list";
            if (!args[i].StartsWith("--", StringComparison.Ordinal) || (!flag && i + 1 >= args.Length))
            {
                Console.Error.WriteLine($"gauge: {args[i]} is not understood.\n{Usage}");
                return 2;
            }

            options[args[i]] = flag ? "" : args[++i];
        }

        string? folder = options.GetValueOrDefault("--data") ?? Environment.GetEnvironmentVariable("COULISSE_SCHEDULING")
            ?? (Environment.GetEnvironmentVariable("COULISSE_SHARED") is { } beside ? Path.Combine(beside, "data", "scheduling") : null);
        string? set = options.GetValueOrDefault("--set");
        if (set is null || Number(options, "--limit", int.MaxValue) is not { } limit || Number(options, "--seconds", 10) is not { } seconds || Number(options, "--workers", 2) is not { } workers || Number(options, "--seed", 1) is not { } seed)
        {
            Console.Error.WriteLine(Usage);
            return 2;
        }

        string archive = Path.Combine(folder ?? "", "instances", set + ".tar.gz");
        if (folder is null || !File.Exists(archive))
        {
            Console.Error.WriteLine($"gauge: {(folder is null ? "no folder of instances is given" : archive + " is not there")}; the sets are not part of this repository. Give --data FOLDER.");
            return 3;
        }

        Dictionary<(string, string), Known> known = Known.Read(Path.Combine(folder, "known.tsv"));
        HashSet<string> sample = Sample(Path.Combine(folder, "samples.tsv"), set);
        List<SchedulingProblem> problems = [.. InstanceArchive.Read(archive, n => sample.Count == 0 || sample.Contains(n)).Select(Parse).OrderBy(p => p.Name, StringComparer.Ordinal)];
        problems = Spread(options.TryGetValue("--only", out string? only) ? [.. problems.Where(p => only.Split(',').Contains(p.Name))] : problems, limit);

        int ways = options.ContainsKey("--engine-only") ? 1 : 3;
        if (options.ContainsKey("--budget"))
        {
            if (Number(options, "--budget", 0) is not { } minutes || minutes < 1)
            {
                Console.Error.WriteLine(Usage);
                return 2;
            }

            // At worst every instance takes all its seconds in every way.
            problems = Spread(problems, Math.Max(1, minutes * 60 / (seconds * ways)));
        }

        Effort effort = new(seconds, seed, workers);
        List<(Tally Tally, ISchedulingEngine Engine)> all = [(new Tally("engine"), new CpSatEngine())];
        if (!options.ContainsKey("--engine-only"))
        {
            all.Add((new Tally("plain"), new PlainModel("")));
            all.Add((new Tally("plain, no LP"), new PlainModel("subsolvers:\"no_lp\"")));
        }

        foreach (SchedulingProblem p in problems)
        {
            Known? k = known.GetValueOrDefault((set, p.Name));
            string[] said = [.. all.Select(w => w.Tally.Add(p, w.Engine.Solve(p, effort), k))];
            if (options.ContainsKey("--list"))
            {
                Console.WriteLine($"{p.Name}: known {k?.Lower}..{k?.Upper} {k?.Status}; {string.Join("; ", all.Zip(said, (w, s) => $"{w.Tally.Name} {s}"))}");
            }
        }

        string[] report =
        [
            string.Create(CultureInfo.InvariantCulture, $"{set}, {problems.Count} instances, {seconds} s an instance, {workers} workers, seed {seed}, {Environment.ProcessorCount} cores, one run, {TimeProvider.System.GetUtcNow():yyyy-MM-dd HH:mm} UTC:"),
            "",
            "| way | instances | settled in 2 s | settled | at or below best known | mean above, % | mean own gap of the rest, % | nothing | seconds | bugs |",
            "|---|---|---|---|---|---|---|---|---|---|",
            .. all.Select(w => w.Tally.Row(problems.Count)),
            .. all.SelectMany(w => w.Tally.Bugs.Select(b => $"BUG in {w.Tally.Name}: {b}")),
        ];
        Array.ForEach(report, Console.WriteLine);
        if (options.GetValueOrDefault("--append") is { } file)
        {
            File.AppendAllText(file, "\n" + string.Join("\n", report) + "\n");
        }

        return all.Any(w => w.Tally.Bugs.Count > 0) ? 1 : 0;
    }

    internal static SchedulingProblem Parse((string Name, string Text) file) => Path.GetExtension(file.Name).ToLowerInvariant() switch
    {
        ".sm" or ".mm" => ProGenReader.Read(file.Name, file.Text),
        ".sch" => ProGenMaxReader.Read(file.Name, file.Text),
        string other => throw new InvalidDataException($"{file.Name}: no reader for {other} files."),
    };

    private static List<SchedulingProblem> Spread(List<SchedulingProblem> all, int limit)
        => limit >= all.Count ? all : [.. Enumerable.Range(0, limit).Select(i => all[(int)((long)i * all.Count / limit)])];

    private static HashSet<string> Sample(string path, string set) => !File.Exists(path) ? []
        : [.. File.ReadLines(path).Select(l => l.Split('\t')).Where(c => c.Length > 1 && c[0] == set).Select(c => c[1])];

    private static int? Number(Dictionary<string, string> options, string name, int otherwise)
        => !options.TryGetValue(name, out string? text) ? otherwise : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int v) && v > 0 ? v : null;
}
