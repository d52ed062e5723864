namespace Coulisse.Web;

/// <summary>Starts the bench by itself, without the command line.</summary>
public static class Program
{
    /// <summary>Entry point when the web project is started by itself: port, then folder of the store.</summary>
    public static async Task Main(string[] args)
    {
        int port = args.Length > 0 && int.TryParse(args[0], System.Globalization.CultureInfo.InvariantCulture, out int p) ? p : WebBenchOptions.UsualPort;
        await using WebApplication app = await WebBench.BuildAsync(args is [_, var store, ..] ? new WebBenchOptions { Port = port, Store = store, Warm = true } : new WebBenchOptions { Port = port, Warm = true });
        await app.RunAsync();
    }
}
