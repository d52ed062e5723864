using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Coulisse.Store;
using Coulisse.Web;
using Coulisse.Web.Hosting;
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
        Option<string?> certificate = new("--certificate") { Description = "HTTPS by this certificate: a PEM file with the key in it or in --key, or a .pfx file." };
        Option<string?> key = new("--key") { Description = "PEM file of the certificate's key." };
        Option<string?> kitchen = new("--kitchen") { Description = "Which kitchen of the store (default: main)." };
        Option<string[]> ownCertificate = new("--own-certificate") { Description = "HTTPS by a certificate of the kitchen's own, made here and kept beside the store; add the names this machine is reached by besides its own.", Arity = ArgumentArity.ZeroOrMore, AllowMultipleArgumentsPerToken = true };
        command.Options.Add(certificate);
        command.Options.Add(ownCertificate);
        command.Options.Add(key);
        command.Options.Add(kitchen);
        Option<string?> backupTo = new("--backup-to") { Description = "Folder for backups while the bench runs: one at once, then one every --backup-every hours, each restored to prove it" };
        Option<double> backupEvery = new("--backup-every") { Description = "Hours between backups", DefaultValueFactory = _ => 24 };
        Option<int> backupKeep = new("--backup-keep") { Description = "How many are kept", DefaultValueFactory = _ => 14 };
        Option<bool> jsonLog = new("--json-log") { Description = "Log lines as JSON" };
        command.Options.Add(backupTo);
        command.Options.Add(backupEvery);
        command.Options.Add(backupKeep);
        command.Options.Add(jsonLog);
        Option<bool> open = new("--open") { Description = "Open the browser." };
        Option<bool> demo = new("--demo") { Description = "Have the example occasion ready." };
        command.Options.Add(open);
        command.Options.Add(demo);
        command.SetAction((parsed, cancel) =>
        {
            WebBenchOptions options = new() { Port = parsed.GetValue(port), Network = parsed.GetValue(network), Warm = true };
            return RunAsync(options with { Store = parsed.GetValue(store) ?? parsed.GetValue(data) ?? options.Store, Kitchen = parsed.GetValue(kitchen) ?? options.Kitchen, BackupTo = parsed.GetValue(backupTo), BackupEvery = TimeSpan.FromHours(Math.Clamp(parsed.GetValue(backupEvery), 0.01, 1000)), BackupKeep = Math.Max(1, parsed.GetValue(backupKeep)), JsonLog = parsed.GetValue(jsonLog) }, parsed.GetValue(certificate), parsed.GetValue(key), parsed.GetResult(ownCertificate) is null ? null : parsed.GetValue(ownCertificate) ?? [], parsed.GetValue(open), parsed.GetValue(demo), cancel);
        });
        return command;
    }

    private static async Task<int> RunAsync(WebBenchOptions options, string? certificate, string? key, string[]? ownNames, bool open, bool demo, CancellationToken cancel)
    {
        int port = options.Port;
        if (port is < 0 or > 65535)
        {
            return Input.Fail(Exit.Usage, string.Create(CultureInfo.InvariantCulture, $"--port {port} is no port; give 1 to 65535, or 0 for any free one."));
        }

        if (certificate is not null && ownNames is not null)
        {
            return Input.Fail(Exit.Usage, "--certificate and --own-certificate are two answers to one question; give one.");
        }

        try
        {
            if (certificate is not null)
            {
                options = options with { Certificate = Certificate(certificate, key) };
            }
            else if (ownNames?.FirstOrDefault(n => Uri.CheckHostName(n) is not UriHostNameType.Dns) is { } odd)
            {
                return Input.Fail(Exit.Usage, $"--own-certificate {odd} is no name of a machine; give names such as bench.kitchen.lan (private addresses are covered by themselves).");
            }
            else if (ownNames is not null)
            {
                options = WithOwn(options, ownNames);
            }

            await using WebApplication app = await WebBench.BuildAsync(options, cancel);
            await app.StartAsync(cancel);
            Console.Error.WriteLine("The bench is open at " + string.Join(" and ", app.Urls) + ". Stop it with Ctrl+C.");
            string? owner = await WebBench.OwnerLinkAsync(app, cancel);
            if (owner is not null)
            {
                Console.Error.WriteLine("This kitchen has no owner yet. Within the hour, open " + Here(app.Urls.First()) + owner + " and set a name and a password. The link works once.");
            }

            if (options.Network && !options.Secure)
            {
                Console.Error.WriteLine("Passwords travel in the clear on this network: give --own-certificate (or --certificate) for HTTPS wherever others share it.");
            }

            string page = demo ? await WebBench.OpenExampleAsync(app, cancel) : "/";
            if (open)
            {
                // a kitchen without an owner opens where one sets a name and a password: any other page would ask for them
                Browse(Here(app.Urls.First()) + (owner ?? page));
            }

            await app.WaitForShutdownAsync(cancel);
            return Exit.Done;
        }
        catch (StoreException e)
        {
            return Input.Fail(Exit.Storage, e.Message);
        }
        catch (CryptographicException e)
        {
            return ownNames is not null
                ? Input.Fail(Exit.Storage, $"The kitchen's own certificate cannot be read: {e.Message} Take the folder \"certificate\" beside the store away and a new one is made; devices then trust the new root once.")
                : Input.Fail(Exit.Usage, $"--certificate {certificate} cannot be used: {e.Message} Give a PEM file with its key in it or in --key, or a .pfx file without a password.");
        }
        catch (IOException e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Input.Fail(Exit.Storage, e.Message);
        }
        catch (IOException e)
        {
            return Input.Fail(Exit.Storage, string.Create(CultureInfo.InvariantCulture, $"Port {port} cannot be opened ({e.Message}) Name another with --port."));
        }
    }

    private static WebBenchOptions WithOwn(WebBenchOptions options, string[] names)
    {
        // keys never go into a database that others read: with PostgreSQL they lie in the usual folder of this machine
        string home = options.Store.Contains("Host=", StringComparison.OrdinalIgnoreCase) ? new WebBenchOptions().Store : options.Store;
        string folder = Path.Combine(home, "certificate");
        OwnCertificate own = OwnCertificate.InFolder(folder, names, options.Clock);
        if (own.NewRoot)
        {
            Console.Error.WriteLine("A root of this kitchen's own was made: " + Path.Combine(folder, OwnCertificate.RootFile) + ". Trust it once on each device (also at /" + OwnCertificate.RootFile + " of the bench), after its SHA-256 there is found to be");
            Console.Error.WriteLine(own.Fingerprint);
        }

        return options with { Certificate = own.Server, Root = own.RootPem };
    }

    private static string Here(string url) => url.Replace("[::]", "127.0.0.1", StringComparison.Ordinal).Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal);

    private static X509Certificate2 Certificate(string file, string? key)
    {
        if (file.EndsWith(".pfx", StringComparison.OrdinalIgnoreCase) || file.EndsWith(".p12", StringComparison.OrdinalIgnoreCase))
        {
            return X509CertificateLoader.LoadPkcs12FromFile(file, null);
        }

        return X509Certificate2.CreateFromPemFile(file, key);
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
