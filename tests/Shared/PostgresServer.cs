using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Coulisse.Tests;

/// <summary>A PostgreSQL of Debian's packages, started on loopback as an unprivileged user for the length of the tests.</summary>
public sealed class PostgresServer : IDisposable
{
    private readonly string? _bin = new[] { 17, 16, 15, 14 }.Select(v => string.Create(CultureInfo.InvariantCulture, $"/usr/lib/postgresql/{v}/bin")).FirstOrDefault(Directory.Exists);
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-pg").FullName;
    private readonly int _port;
    private int _databases;

    public PostgresServer()
    {
        if (_bin is null)
        {
            return;
        }

        using (TcpListener free = new(IPAddress.Loopback, 0))
        {
            free.Start();
            _port = ((IPEndPoint)free.LocalEndpoint).Port;
        }

        // initdb refuses to run as root
        if (Environment.UserName == "root")
        {
            Run("chown", "postgres:", _folder);
        }

        AsServer($"{_bin}/initdb", "-D", _folder + "/data", "-A", "trust", "-E", "UTF8", "--locale=C.UTF-8", "--no-sync");
        AsServer($"{_bin}/pg_ctl", "-D", _folder + "/data", "-w", "-l", _folder + "/log", "-o", string.Create(CultureInfo.InvariantCulture, $"-c listen_addresses=127.0.0.1 -p {_port} -c unix_socket_directories={_folder} -c fsync=off"), "start");
    }

    public bool Present => _bin is not null;

    /// <summary>Connection string of a fresh, empty database.</summary>
    public string Fresh()
    {
        Assert.SkipUnless(Present, "PostgreSQL is not installed (./test installs it where it may)");
        string name = string.Create(CultureInfo.InvariantCulture, $"t{Interlocked.Increment(ref _databases)}");
        AsServer($"{_bin}/createdb", "-h", "127.0.0.1", "-p", _port.ToString(CultureInfo.InvariantCulture), name);
        return string.Create(CultureInfo.InvariantCulture, $"Host=127.0.0.1;Port={_port};Database={name};Username={User};Maximum Pool Size=10");
    }

    public void Dispose()
    {
        if (_bin is not null)
        {
            AsServer($"{_bin}/pg_ctl", "-D", _folder + "/data", "-m", "immediate", "stop");
        }

        Directory.Delete(_folder, true);
    }

    private static string User => Environment.UserName == "root" ? "postgres" : Environment.UserName;

    private void AsServer(string program, params string[] arguments)
    {
        if (Environment.UserName == "root")
        {
            Run("runuser", ["-u", "postgres", "--", program, .. arguments]);
        }
        else
        {
            Run(program, arguments);
        }
    }

    private void Run(string program, params string[] arguments)
    {
        // No pipes: the server would inherit them and keep them open.
        ProcessStartInfo info = new(program, arguments) { WorkingDirectory = "/tmp", RedirectStandardOutput = false, UseShellExecute = false };
        using Process process = Process.Start(info)!;
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} exited with {process.ExitCode.ToString(CultureInfo.InvariantCulture)}");
        }
    }
}
