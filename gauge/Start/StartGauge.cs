using System.Diagnostics;

namespace Coulisse.Gauge.Start;

/// <summary>How long the command line takes from start to exit, as a person feels it.</summary>
internal static class StartGauge
{
    private const int Rounds = 10;

    public static int Run()
    {
        string program = Program();
        if (!File.Exists(program))
        {
            Console.Error.WriteLine("gauge: build first (./coulisse --version)");
            return 3;
        }

        Console.WriteLine($"measured: {Path.GetRelativePath(Root(), program)}");
        (string Name, string[] Arguments)[] starts =
        [
            ("--version", ["--version"]),
            ("read a card of 41 lines", ["read", Card("slice-buckwheat-plum.md")]),
            ("read the same as JSON", ["read", Card("slice-buckwheat-plum.md"), "--json"]),
            ("read starter (171 lines)", ["read", Card("starter.md")]),
            ("weigh starter", ["weigh", Card("starter.md")]),
            ("weigh one loose card", ["weigh", Card("slice-buckwheat-plum-loose.md")]),
            ("scale starter", ["scale", Card("starter.md"), "--covers", "40"]),
            ("safety draft", ["safety", Card("royale-draft.md")]),
        ];
        foreach ((string name, string[] arguments) in starts)
        {
            (double median, double p95) = Stopwatches.Milliseconds(Rounds, _ =>
            {
                using Process p = Process.Start(new ProcessStartInfo("dotnet", [program, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!;
                p.StandardOutput.ReadToEnd();
                p.WaitForExit();
            });
            Console.WriteLine($"{name}: median {median:0} ms, worst of ten {p95:0} ms");
        }

        return 0;
    }

    /// <summary>The program that ./coulisse runs, compiled ahead of time; where only the tests built one, theirs, which is translated at every start.</summary>
    internal static string Program()
    {
        string published = Path.Combine(Root(), "artifacts", "publish", "Coulisse.Cli", "release", "coulisse.dll");
        return File.Exists(published) ? published : Path.Combine(Root(), "artifacts", "bin", "Coulisse.Cli", "release", "coulisse.dll");
    }

    private static string Card(string name) => Path.Combine(Root(), "examples", "demo", "cards", name);

    internal static string Root()
    {
        DirectoryInfo? d = new(AppContext.BaseDirectory);
        while (d is not null && !File.Exists(Path.Combine(d.FullName, "Coulisse.slnx")))
        {
            d = d.Parent;
        }

        return d?.FullName ?? throw new InvalidOperationException("the gauge runs inside the repository");
    }
}
