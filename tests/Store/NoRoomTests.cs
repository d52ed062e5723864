using System.Diagnostics;
using Coulisse.Tests;
using Microsoft.Data.Sqlite;

namespace Coulisse.Store.Tests;

/// <summary>A disk that is full and a folder that may not be written: one clear sentence, and nothing that was kept is broken.</summary>
public sealed class NoRoomTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-room").FullName;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task When_no_more_can_be_written_it_says_so_and_every_acknowledged_card_is_there_and_more_can_be_written_once_there_is_room()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The limit on file size that stands for a full disk is Linux's.");
        string where = Path.Combine(_folder, "full");
        // A process may write files of 3 MB at most; the signal is ignored, so the write itself fails as on a full disk.
        (int exit, string[] lines) = await RunAsync("bash", "-c", "trap '' XFSZ; ulimit -f 3000; export DOTNET_EnableWriteXorExecute=0; exec dotnet \"$0\" \"$1\" fill", Writer, where);
        Assert.Equal(0, exit);
        string refused = Assert.Single(lines, l => l.StartsWith("refused ", StringComparison.Ordinal));
        Assert.Contains("could not be saved", refused);
        Assert.Contains("Nothing was half-written", refused);
        string[] cards = [.. lines.Where(l => l.StartsWith("card ", StringComparison.Ordinal))];
        Assert.InRange(cards.Length, 10, 4999);
        await using KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel);
        foreach (string[] words in cards.Select(c => c.Split(' ')))
        {
            Assert.StartsWith($"text {words[2]} ", (await store.OpenDocumentAsync(words[1], Cancel))!.Text);
        }

        Assert.Equal(cards.Length, (await store.DocumentsAsync(DocumentKind.Card, int.MaxValue, Cancel)).Count);
        Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Card, null, 0, "t", "room again", "w", "", Cancel));
    }

    [Fact]
    public async Task A_folder_that_may_not_be_written_is_named_and_what_lies_in_it_stays_as_it_was()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Rights of folders are Unix's here.");
        string where = Path.Combine(_folder, "readonly");
        await using (KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel))
        {
            await store.SaveAsync(DocumentKind.Card, null, 0, "t", "kept", "w", "", Cancel);
        }

        SqliteConnection.ClearAllPools();
        string file = Path.Combine(where, "coulisse.db");
        byte[] before = await File.ReadAllBytesAsync(file, Cancel);
        await RunAsync("chmod", "755", _folder);
        await RunAsync("chmod", "444", file);
        await RunAsync("chmod", "555", where);
        try
        {
            // who is root may write anywhere, so somebody else tries
            (int exit, string[] lines) = Environment.UserName == "root"
                ? await RunAsync("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", "env", "HOME=/tmp", "DOTNET_CLI_HOME=/tmp", "dotnet", Writer, where, "fill")
                : await RunAsync("dotnet", Writer, where, "fill");
            string refused = Assert.Single(lines);
            Assert.StartsWith("refused ", refused);
            Assert.Contains(where, refused);
            Assert.Contains("may be written", refused);
            Assert.Equal(0, exit);
            Assert.Equal(before, await File.ReadAllBytesAsync(file, Cancel));
        }
        finally
        {
            await RunAsync("chmod", "755", where);
        }
    }

    [Fact]
    public async Task A_name_that_is_a_file_where_a_folder_should_be_is_named()
    {
        string file = Path.Combine(_folder, "file");
        await File.WriteAllTextAsync(file, "x", Cancel);
        StoreException e = await Assert.ThrowsAsync<StoreException>(() => KitchenStore.OpenAsync(Path.Combine(file, "store"), TimeProvider.System, cancel: Cancel));
        Assert.Contains(file, e.Message);
    }

    [Fact]
    public async Task A_backup_that_cannot_be_written_leaves_no_half_file()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Path.Combine(_folder, "s"), TimeProvider.System, cancel: Cancel);
        string nowhere = Path.Combine(_folder, "nowhere", "b.db");
        StoreException e = await Assert.ThrowsAsync<StoreException>(() => store.BackupAsync(nowhere, Cancel));
        Assert.Contains(nowhere, e.Message);
        Assert.Empty(Directory.GetFiles(_folder, "*.part", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task A_store_with_a_torn_page_is_refused_at_start_and_left_as_it_is()
    {
        string where = Path.Combine(_folder, "torn");
        await using (KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel))
        {
            for (int i = 0; i < 50; i++)
            {
                await store.SaveAsync(DocumentKind.Card, null, 0, "t", new string('x', 5000) + i, "w", "", Cancel);
            }
        }

        SqliteConnection.ClearAllPools();
        string file = Path.Combine(where, "coulisse.db");
        byte[] bytes = await File.ReadAllBytesAsync(file, Cancel);
        for (int page = 8; page < 20; page++)
        {
            bytes.AsSpan(page * 4096, 64).Fill(0xEE);
        }

        await File.WriteAllBytesAsync(file, bytes, Cancel);
        StoreException e = await Assert.ThrowsAsync<StoreException>(() => KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel));
        Assert.Contains("coulisse restore", e.Message);
        SqliteConnection.ClearAllPools();
        Assert.Equal(bytes, await File.ReadAllBytesAsync(file, Cancel));
    }

    private static string Writer => Path.Combine(SharedData.Repository, "artifacts", "bin", "Coulisse.StoreWriter", "release", "Coulisse.StoreWriter.dll");

    private static async Task<(int Exit, string[] Lines)> RunAsync(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, UseShellExecute = false, WorkingDirectory = "/" })!;
        string all = await process.StandardOutput.ReadToEndAsync(Cancel);
        await process.WaitForExitAsync(Cancel);
        return (process.ExitCode, all.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }
}
