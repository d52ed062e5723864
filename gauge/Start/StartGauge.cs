using System.Diagnostics;

namespace Coulisse.Gauge.Start;

/// <summary>How long the command line takes from start to exit, as a person feels it.</summary>
internal static class StartGauge
{
    public static int Run()
    {
        string root = Root();
        string program = Path.Combine(root, "artifacts", "bin", "Coulisse.Cli", "release", "coulisse.dll");
        if (!File.Exists(program))
        {
            Console.Error.WriteLine("gauge: build first (./coulisse --version)");
            return 3;
        }

        foreach ((string name, string[] arguments) in new (string, string[])[]
        {
            ("read starter (80 lines)", ["read", Card(root, "starter.md")]),
            ("weigh starter (80 lines)", ["weigh", Card(root, "starter.md")]),
            ("weigh one loose card", ["weigh", Card(root, "slice-buckwheat-plum-loose.md")]),
            ("scale starter", ["scale", Card(root, "starter.md"), "--covers", "40"]),
            ("safety draft", ["safety", Card(root, "royale-draft.md")]),
        })
        {
            (double median, double p95) = Stopwatches.Milliseconds(10, _ =>
            {
                using Process p = Process.Start(new ProcessStartInfo("dotnet", [program, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!;
                p.StandardOutput.ReadToEnd();
                p.WaitForExit();
            });
            Console.WriteLine($"{name}: median {median:0} ms, worst of ten {p95:0} ms");
        }

        return 0;
    }

    private static string Card(string root, string name) => Path.Combine(root, "examples", "demo", "cards", name);

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
