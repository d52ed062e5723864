using System.Diagnostics;
using System.Text.Json;

namespace Coulisse.Commands.Tests;

/// <summary>Log lines of a running bench, for machines that gather them.</summary>
public sealed class ServeLog : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-log").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task With_json_log_a_backup_that_fails_is_one_object_a_line_with_moment_level_and_what_happened()
    {
        string file = Path.Combine(_folder, "a-file");
        await File.WriteAllTextAsync(file, "x", TestContext.Current.CancellationToken);
        // a folder for backups that cannot be made, since a file has its name
        using Process process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "coulisse.dll"), "serve", "--port", "0", "--data", Path.Combine(_folder, "kitchen"), "--json-log", "--backup-to", Path.Combine(file, "backups")]) { UseShellExecute = false, RedirectStandardOutput = true })!;
        try
        {
            JsonElement? found = null;
            while (found is null && await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
            {
                found = line.StartsWith('{') ? JsonDocument.Parse(line).RootElement : null;
            }

            JsonElement log = Assert.NotNull(found);
            Assert.Equal("Error", log.GetProperty("LogLevel").GetString());
            Assert.Contains("The backup failed", log.GetProperty("Message").GetString(), StringComparison.Ordinal);
            Assert.EndsWith("Z", log.GetProperty("Timestamp").GetString(), StringComparison.Ordinal);
            Assert.Contains(file, log.GetProperty("Exception").GetString(), StringComparison.Ordinal);
        }
        finally
        {
            process.Kill(true);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        }
    }
}
