using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Coulisse.Gauge.Start;

namespace Coulisse.Gauge.Web;

/// <summary>A bench in a process of its own, started as a person starts it.</summary>
internal sealed class ServedBench : IDisposable
{
    private readonly Process _process;

    private ServedBench(Process process, string address, double toFirstPage)
    {
        _process = process;
        Address = address;
        ToFirstPage = toFirstPage;
    }

    public string Address { get; }

    /// <summary>Milliseconds from start of the process to the whole first page.</summary>
    public double ToFirstPage { get; }

    /// <summary>Most memory the process ever held, MB; Linux only.</summary>
    public double PeakMegabytes => File.ReadLines(string.Create(CultureInfo.InvariantCulture, $"/proc/{_process.Id}/status")).Where(l => l.StartsWith("VmHWM", StringComparison.Ordinal))
        .Select(l => double.Parse(l.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024).FirstOrDefault();

    public static async Task<ServedBench> StartAsync(string folder)
    {
        string program = StartGauge.Program();
        int port = FreePort();
        string address = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}");
        using HttpClient client = new();
        long start = Stopwatch.GetTimestamp();
        Process process = Process.Start(new ProcessStartInfo("dotnet", [program, "serve", "--port", port.ToString(CultureInfo.InvariantCulture), "--data", folder]) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true })!;
        while (Stopwatch.GetElapsedTime(start) < TimeSpan.FromSeconds(60))
        {
            try
            {
                await client.GetStringAsync(address + "/");
                return new ServedBench(process, address, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            }
            catch (HttpRequestException)
            {
                await Task.Delay(5);
            }
        }

        process.Kill();
        throw new TimeoutException("The bench did not come up in a minute.");
    }

    public void Dispose()
    {
        _process.Kill();
        _process.WaitForExit();
        _process.Dispose();
    }

    private static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
