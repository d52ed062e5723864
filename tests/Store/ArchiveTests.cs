using System.IO.Compression;
using System.Text;

namespace Coulisse.Store.Tests;

public sealed class ArchiveTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-archive").FullName;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task An_export_imported_into_an_empty_store_gives_every_version_back()
    {
        await using KitchenStore a = await Open("a");
        string id = await Save(a, null, 0, "Leek press", "one");
        await Save(a, id, 1, "Leek press", "two");
        using MemoryStream zip = new();
        await Archive.ExportAsync(a, zip, cancel: Cancel);
        zip.Position = 0;
        await using KitchenStore b = await Open("b");
        Archive.Import done = await Archive.ImportAsync(b, zip, "w", Cancel);
        Assert.Equal(1, done.Added);
        Assert.Equal("one", (await b.VersionAsync(id, 1, Cancel))!.Text);
        Assert.Equal("two", (await b.OpenDocumentAsync(id, Cancel))!.Text);
    }

    [Fact]
    public async Task Importing_a_text_that_differs_keeps_both_and_names_it()
    {
        await using KitchenStore a = await Open("a");
        string id = await Save(a, null, 0, "Leek press", "theirs");
        using MemoryStream zip = new();
        await Archive.ExportAsync(a, zip, cancel: Cancel);
        await Save(a, id, 1, "Leek press", "mine");
        zip.Position = 0;
        Archive.Import done = await Archive.ImportAsync(a, zip, "w", Cancel);
        Assert.Equal(["Leek press"], done.Conflicts);
        Assert.Equal("mine", (await a.OpenDocumentAsync(id, Cancel))!.Text);
        Assert.Equal("theirs", (await a.VersionAsync(id, 3, Cancel))!.Text);
    }

    [Fact]
    public async Task What_one_kitchen_exports_its_neighbour_in_the_same_store_imports_with_keys_of_its_own()
    {
        await using KitchenStore north = await KitchenStore.OpenAsync(Path.Combine(_folder, "school"), TimeProvider.System, "north", Cancel);
        await using KitchenStore south = await KitchenStore.OpenAsync(Path.Combine(_folder, "school"), TimeProvider.System, "south", Cancel);
        string card = await Save(north, null, 0, "Leek press", "theirs");
        SaveOutcome.Saved occasion = Assert.IsType<SaveOutcome.Saved>(await north.SaveAsync(DocumentKind.Occasion, null, 0, "Lunch", "8 plates", "w", $"read on 2026-11-29; card is {card}; sentence", Cancel));
        string trial = await north.KeepTrialAsync(null, "Trial", "sheet", "w", card, 1, "{}", Cancel);
        using MemoryStream zip = new();
        await Archive.ExportAsync(north, zip, cancel: Cancel);
        zip.Position = 0;
        Archive.Import done = await Archive.ImportAsync(south, zip, "w", Cancel);
        Assert.Equal(3, done.Added);
        string mine = Assert.Single(await south.DocumentsAsync(DocumentKind.Card, cancel: Cancel)).Id;
        Assert.NotEqual(card, mine);
        Assert.Equal($"read on 2026-11-29; card is {mine}; sentence", (await south.OpenDocumentAsync(south.Own(occasion.Id), Cancel))!.Why);
        Assert.Equal(mine, (await south.TrialAsync(south.Own(trial), Cancel))!.CardId);
        Assert.Equal("theirs", (await north.OpenDocumentAsync(card, Cancel))!.Text);
        zip.Position = 0;
        Assert.Equal(3, (await Archive.ImportAsync(south, zip, "w", Cancel)).Same);
    }

    [Fact]
    public async Task A_key_of_another_kitchen_is_refused_in_words_and_changes_nothing()
    {
        await using KitchenStore north = await KitchenStore.OpenAsync(Path.Combine(_folder, "school"), TimeProvider.System, "north", Cancel);
        await using KitchenStore south = await KitchenStore.OpenAsync(Path.Combine(_folder, "school"), TimeProvider.System, "south", Cancel);
        string card = await Save(north, null, 0, "Leek press", "theirs");
        StoreException refused = await Assert.ThrowsAsync<StoreException>(() => Save(south, card, 1, "Leek press", "taken over"));
        Assert.Contains("another kitchen's", refused.Message, StringComparison.Ordinal);
        Assert.Equal("theirs", (await north.OpenDocumentAsync(card, Cancel))!.Text);
        Assert.Empty(await south.DocumentsAsync(DocumentKind.Card, cancel: Cancel));
    }

    [Fact]
    public async Task A_name_that_climbs_out_of_the_archive_writes_no_file()
    {
        using MemoryStream zip = Zip(("index.json", """{"schema":1,"documents":[{"id":"x","kind":"card","title":"t","versions":[{"version":1,"file":"../../evil.md","who":"","why":"","savedMs":0,"hash":""}]}]}"""), ("../../evil.md", "text"));
        await using KitchenStore store = await Open("c");
        await Archive.ImportAsync(store, zip, "w", Cancel);
        Assert.False(File.Exists(Path.Combine(_folder, "evil.md")));
        Assert.False(File.Exists(Path.Combine(_folder, "..", "evil.md")));
        Assert.Equal("text", (await store.OpenDocumentAsync("x", Cancel))!.Text);
    }

    [Fact]
    public async Task An_entry_that_unpacks_without_end_is_refused()
    {
        using MemoryStream zip = Zip(("index.json", new string(' ', 30 * 1024 * 1024)));
        await using KitchenStore store = await Open("d");
        StoreException e = await Assert.ThrowsAsync<StoreException>(() => Archive.ImportAsync(store, zip, "w", Cancel));
        Assert.Contains("MB", e.Message);
    }

    [Theory]
    [InlineData("not a zip at all")]
    [InlineData("")]
    public async Task What_is_no_archive_is_refused_with_a_sentence(string bytes)
    {
        await using KitchenStore store = await Open("e");
        await Assert.ThrowsAsync<StoreException>(() => Archive.ImportAsync(store, new MemoryStream(Encoding.UTF8.GetBytes(bytes)), "w", Cancel));
    }

    [Fact]
    public async Task A_backup_taken_while_others_write_restores_to_the_same_rows()
    {
        await using KitchenStore store = await Open("f");
        string id = await Save(store, null, 0, "t", "0");
        using CancellationTokenSource stop = new();
        Task writer = Task.Run(async () =>
        {
            for (int i = 1; !stop.IsCancellationRequested; i++)
            {
                await store.SaveAsync(DocumentKind.Card, id, i, "t", $"text {i}", "w", "", Cancel);
            }
        }, Cancel);
        string file = Path.Combine(_folder, "backup.db");
        string hash = await store.BackupAsync(file, Cancel);
        await stop.CancelAsync();
        await writer;

        string elsewhere = Path.Combine(_folder, "restored");
        Assert.Equal(hash, await KitchenStore.RestoreAsync(elsewhere, file, DateTimeOffset.UnixEpoch, Cancel));
        await using KitchenStore restored = await KitchenStore.OpenAsync(elsewhere, TimeProvider.System, cancel: Cancel);
        Assert.Equal(hash, await restored.RowHashAsync(Cancel));
        Assert.NotEqual(hash, await store.RowHashAsync(Cancel));
    }

    [Fact]
    public async Task A_backup_never_overwrites()
    {
        await using KitchenStore store = await Open("g");
        string file = Path.Combine(_folder, "there.db");
        await File.WriteAllTextAsync(file, "precious", Cancel);
        await Assert.ThrowsAsync<StoreException>(() => store.BackupAsync(file, Cancel));
        Assert.Equal("precious", await File.ReadAllTextAsync(file, Cancel));
    }

    private Task<KitchenStore> Open(string name) => KitchenStore.OpenAsync(Path.Combine(_folder, name), TimeProvider.System, cancel: Cancel);

    private static async Task<string> Save(KitchenStore store, string? id, int basedOn, string title, string text)
        => Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Card, id, basedOn, title, text, "w", "", Cancel)).Id;

    private static MemoryStream Zip(params (string Name, string Text)[] entries)
    {
        MemoryStream zip = new();
        using (ZipArchive archive = new(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, string text) in entries)
            {
                using Stream s = archive.CreateEntry(name).Open();
                s.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        zip.Position = 0;
        return zip;
    }
}
