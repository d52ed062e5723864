using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Coulisse.Store;
using Coulisse.Web;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Hosting;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse serve: the bench in a browser.</summary>
internal static class ServeCommand
{
    public static Command Create()
    {
        Option<int> port = new("--port") { Description = "Port to listen on.", DefaultValueFactory = _ => WebBenchOptions.UsualPort };
        Option<string?> data = new("--data") { Description = "Folder of the embedded store." };
        Option<string?> store = new("--store") { Description = "PostgreSQL connection string (Host=…), in place of a folder." };
        Option<bool> network = new("--network") { Description = "Let tablets on this kitchen's network in. Without it only this machine sees the bench." };
        Command command = new("serve", "The bench in a browser. Example: coulisse serve --port 5080 --data ./kitchen");
        command.Options.Add(port);
        command.Options.Add(data);
        command.Options.Add(store);
        command.Options.Add(network);
        Option<bool> open = new("--open") { Description = "Open the browser." };
        Option<bool> demo = new("--demo") { Description = "Have the example occasion ready." };
        command.Options.Add(open);
        command.Options.Add(demo);
        command.SetAction((parsed, cancel) => RunAsync(parsed.GetValue(port), parsed.GetValue(store) ?? parsed.GetValue(data), parsed.GetValue(network), parsed.GetValue(open), parsed.GetValue(demo), cancel));
        return command;
    }

    private static async Task<int> RunAsync(int port, string? where, bool network, bool open, bool demo, CancellationToken cancel)
    {
        if (port is < 0 or > 65535)
        {
            return Input.Fail(Exit.Usage, string.Create(CultureInfo.InvariantCulture, $"--port {port} is no port; give 1 to 65535, or 0 for any free one."));
        }

        try
        {
            WebBenchOptions options = new() { Port = port, Network = network };
            await using WebApplication app = await WebBench.BuildAsync(where is null ? options : options with { Store = where }, cancel);
            await app.StartAsync(cancel);
            Console.Error.WriteLine("The bench is open at " + string.Join(" and ", app.Urls) + ". Stop it with Ctrl+C.");
            string page = demo ? await WebBench.OpenExampleAsync(app, cancel) : "/";
            if (open)
            {
                Browse(app.Urls.First().Replace("[::]", "127.0.0.1", StringComparison.Ordinal).Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal) + page);
            }

            await app.WaitForShutdownAsync(cancel);
            return Exit.Done;
        }
        catch (StoreException e)
        {
            return Input.Fail(Exit.Storage, e.Message);
        }
        catch (IOException e)
        {
            return Input.Fail(Exit.Storage, string.Create(CultureInfo.InvariantCulture, $"Port {port} cannot be opened ({e.Message}) Name another with --port."));
        }
    }

    // a machine without a browser is no fault: the address stands on the screen
    private static void Browse(string address)
    {
        try
        {
            using Process? started = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception e) when (e is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            Console.Error.WriteLine("No browser could be opened; open " + address + " yourself.");
        }
    }
}
