using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Coulisse.Tests;

namespace Coulisse.Commands.Tests;

/// <summary>What a command gave: exit code, standard output, standard error.</summary>
internal sealed record Ran(int Exit, string Out, string Error)
{
    /// <summary>Standard output as the one JSON document it must be.</summary>
    public JsonElement Json => JsonDocument.Parse(Out).RootElement;
}

/// <summary>Runs the built command line as a person does: a process with arguments, in a folder.</summary>
internal static class Bench
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "coulisse.dll");

    public static string Demo(string path) => Path.Combine(SharedData.Repository, "examples", "demo", path);

    public static Ran Run(params string[] arguments) => In(AppContext.BaseDirectory, arguments);

    public static Ran In(string folder, params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add(Program);
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using Process process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start");
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Ran(process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}

/// <summary>The demo occasion planned once for all tests that look at the answer.</summary>
public sealed class PlannedDemo
{
    private readonly Lazy<(int Exit, JsonElement Json)> _plan = new(() =>
    {
        Ran ran = Bench.Run("plan", Bench.Demo("occasion.md"), "--seconds", "10", "--json");
        return (ran.Exit, ran.Out.Length > 0 ? ran.Json : throw new InvalidOperationException(ran.Error));
    });

    public int Exit => _plan.Value.Exit;

    public JsonElement Json => _plan.Value.Json;
}
