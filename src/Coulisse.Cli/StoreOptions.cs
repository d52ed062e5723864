using System.CommandLine;
using Coulisse.Store;

namespace Coulisse.Cli;

/// <summary>Where the store is: the same two options on every command that keeps something.</summary>
internal static class StoreOptions
{
    public static readonly Option<string?> Data = new("--data") { Description = "Folder of the embedded store (default: your own data folder)" };

    public static readonly Option<string?> Connection = new("--store") { Description = "PostgreSQL connection string (\"Host=…\") instead of the embedded store" };

    public static readonly Option<string?> Kitchen = new("--kitchen") { Description = "Which kitchen of the store (default: main)" };

    /// <summary>The folder or connection string that was asked for.</summary>
    public static string Where(ParseResult parsed) => parsed.GetValue(Connection) ?? parsed.GetValue(Data) ?? DefaultFolder;

    public static string DefaultFolder => Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "coulisse");

    /// <summary>Opens the store, does the work, and turns a store's refusal into one sentence and exit code 3.</summary>
    public static async Task<int> WithStoreAsync(ParseResult parsed, Func<KitchenStore, Task<int>> work, CancellationToken cancel)
    {
        try
        {
            await using KitchenStore store = await KitchenStore.OpenAsync(Where(parsed), TimeProvider.System, parsed.GetValue(Kitchen) ?? "main", cancel).ConfigureAwait(false);
            return await work(store).ConfigureAwait(false);
        }
        catch (Exception e) when (e is StoreException or IOException or UnauthorizedAccessException)
        {
            return Input.Fail(Exit.Storage, e.Message);
        }
    }
}
