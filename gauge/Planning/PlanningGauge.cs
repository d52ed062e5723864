using System.Diagnostics;
using System.Globalization;
using Coulisse.Gauge.Planning.Reading;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Solver;

namespace Coulisse.Gauge.Planning;

/// <summary>gauge planning: outside instance sets through the engine that plans dishes, beside the plain model in the same run.</summary>
internal static class PlanningGauge
{
    public static int Run(string[] args)
    {
        if (PlanningOptions.Read(args) is not { } options)
        {
            return 2;
        }

        foreach (string archive in options.Sets.Select(s => Archive(options, s)))
        {
            if (options.Folder.Length == 0 || !File.Exists(archive))
            {
                Console.Error.WriteLine($"gauge: {(options.Folder.Length == 0 ? "no folder of instances is given" : archive + " is not there")}; the sets are not part of this repository. Give --data FOLDER.");
                return 3;
            }
        }

        Dictionary<(string, string), Known> known = Known.Read(Path.Combine(options.Folder, "known.tsv"));
        (string Set, SchedulingProblem Problem)[] work = [.. options.Sets.SelectMany(s => Ranked(Instances(options, s)).Select(x => (s, x.Problem, x.Rank))).OrderBy(x => x.Rank).Select(x => (x.s, x.Problem))];
        (string Name, ISchedulingEngine Engine)[] ways = options.EngineOnly ? [("engine", new CpSatEngine())]
            : [("engine", new CpSatEngine()), ("plain", new PlainModel("")), ("plain, no LP", new PlainModel("subsolvers:\"no_lp\""))];
        Effort effort = new(options.Seconds, options.Seed, options.Workers);
        SolvedLog log = new(options.Log);
        List<Solved> done = [];
        long start = Stopwatch.GetTimestamp();
        foreach ((string set, SchedulingProblem problem) in work)
        {
            // An instance is run in every way or not at all: only what was run in one go may be compared.
            Solved?[] before = [.. ways.Select(w => log.Find(Solved.Of(set, w.Name, problem, effort, new EngineUnknown(null))))];
            if (before.Any(b => b is null))
            {
                if (options.Budget is { } minutes && Stopwatch.GetElapsedTime(start).TotalMinutes >= minutes)
                {
                    continue;
                }

                for (int w = 0; w < ways.Length; w++)
                {
                    before[w] = Solved.Of(set, ways[w].Name, problem, effort, ways[w].Engine.Solve(problem, effort));
                    log.Add(before[w]!);
                }
            }

            done.AddRange(before.OfType<Solved>());
            if (options.List)
            {
                Known? k = known.GetValueOrDefault((set, problem.Name));
                Console.WriteLine($"{problem.Name}: known {k?.Lower}..{k?.Upper} {k?.Status}; {string.Join("; ", before.Select(b => $"{b!.Way} {b.Words()}"))}");
            }
        }

        return Report(options, [.. ways.Select(w => w.Name)], work, done, known);
    }

    private static int Report(PlanningOptions options, string[] ways, (string Set, SchedulingProblem Problem)[] work, List<Solved> done, Dictionary<(string, string), Known> known)
    {
        List<string> report = [];
        int bugs = 0;
        foreach (string set in options.Sets)
        {
            Tally[] tallies = [.. ways.Select(w => new Tally(w))];
            foreach (Solved s in done.Where(s => s.Set == set))
            {
                tallies[Array.IndexOf(ways, s.Way)].Add(s, known.GetValueOrDefault((set, s.Instance)));
            }

            int all = work.Count(w => w.Set == set);
            int some = done.Count(s => s.Set == set) / ways.Length;
            report.AddRange(
            [
                "",
                string.Create(CultureInfo.InvariantCulture, $"{set}, {(some == all ? $"{all}" : $"{some} of {all}")} instances, {options.Seconds} s an instance, {options.Workers} workers, seed {options.Seed}, {Environment.ProcessorCount} cores, {TimeProvider.System.GetUtcNow():yyyy-MM-dd HH:mm} UTC:"),
                "",
                Tally.Head,
                .. tallies.Select(t => t.Row()),
                .. tallies.SelectMany((t, i) => t.Bugs.Select(b => $"BUG in {ways[i]}: {b}")),
            ]);
            bugs += tallies.Sum(t => t.Bugs.Count);
        }

        report.ForEach(Console.WriteLine);
        if (options.Append is { } file)
        {
            File.AppendAllText(file, string.Join("\n", report) + "\n");
        }

        return bugs > 0 ? 1 : 0;
    }

    internal static SchedulingProblem Parse((string Name, string Text) file) => Path.GetExtension(file.Name).ToLowerInvariant() switch
    {
        ".sm" or ".mm" => ProGenReader.Read(file.Name, file.Text),
        ".sch" => ProGenMaxReader.Read(file.Name, file.Text),
        string other => throw new InvalidDataException($"{file.Name}: no reader for {other} files."),
    };

    private static string Archive(PlanningOptions options, string set) => Path.Combine(options.Folder, "instances", set + ".tar.gz");

    private static List<SchedulingProblem> Instances(PlanningOptions options, string set)
    {
        HashSet<string> sample = Sample(Path.Combine(options.Folder, "samples.tsv"), set);
        List<SchedulingProblem> all = [.. InstanceArchive.Read(Archive(options, set), n => options.Only.Length > 0 ? options.Only.Contains(n) : sample.Count == 0 || sample.Contains(n)).Select(Parse).OrderBy(p => p.Name, StringComparer.Ordinal)];
        return options.Limit >= all.Count ? all : [.. Enumerable.Range(0, options.Limit).Select(i => all[(int)((long)i * all.Count / options.Limit)])];
    }

    /// <summary>Each with its place between 0 and 1: neighbours of a set lie far apart (van der Corput), so that whenever the time is over what is done is spread over it.</summary>
    private static IEnumerable<(SchedulingProblem Problem, double Rank)> Ranked(List<SchedulingProblem> all)
        => all.Select((p, i) => (Problem: p, Turned: Turned(i))).OrderBy(x => x.Turned).Select((x, i) => (x.Problem, (i + 0.5) / all.Count));

    private static double Turned(int i)
    {
        double turned = 0;
        for (double half = 0.5; i > 0; i >>= 1, half /= 2)
        {
            turned += (i & 1) * half;
        }

        return turned;
    }

    private static HashSet<string> Sample(string path, string set) => !File.Exists(path) ? []
        : [.. File.ReadLines(path).Select(l => l.Split('\t')).Where(c => c.Length > 1 && c[0] == set).Select(c => c[1])];
}
