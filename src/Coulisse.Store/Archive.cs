using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;

namespace Coulisse.Store;

/// <summary>Export and import: one zip of texts a person can read, every version, with an index for machines.</summary>
public static class Archive
{
    /// <summary>Most a text in an archive may hold; the same as the most a card may.</summary>
    private const long MostBytes = 20L * 1024 * 1024;
    private const int MostEntries = 2_000_000;

    /// <summary>A document. A trial names its card and version, a record its occasion; both may have files.</summary>
    private sealed record Entry(string Id, string Kind, string Title, IReadOnlyList<EntryVersion> Versions, string? Of = null, int OfVersion = 0, string? Json = null, IReadOnlyList<EntryFile>? Files = null);

    private sealed record EntryFile(string Name, string Type, string File, string Hash);

    private sealed record EntryVersion(int Version, string File, string Who, string Why, long SavedMs, string Hash);

    /// <summary>What an import did.</summary>
    /// <param name="Added">Documents that were new here.</param>
    /// <param name="Same">Documents that were here with the same newest text.</param>
    /// <param name="Conflicts">Documents that differ: both texts are kept, the imported one as a further version.</param>
    public sealed record Import(int Added, int Same, IReadOnlyList<string> Conflicts);

    /// <summary>Writes every document with all its versions.</summary>
    /// <param name="store">Whose.</param>
    /// <param name="zip">Where to.</param>
    /// <param name="forms">Writes the newest texts as JSON too, with their schemas; null for texts alone.</param>
    /// <param name="cancel">Gives up.</param>
    public static async Task ExportAsync(KitchenStore store, Stream zip, ArchiveForms? forms = null, CancellationToken cancel = default)
    {
        using ZipArchive archive = new(zip, ZipArchiveMode.Create, leaveOpen: true);
        List<Entry> index = [];
        HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
        foreach (string kind in DocumentKind.All)
        {
            foreach (DocumentHead head in await store.DocumentsAsync(kind, int.MaxValue, cancel).ConfigureAwait(false))
            {
                string name = FileName(kind, head.Title, head.Id, names);
                List<EntryVersion> versions = [];
                foreach (DocumentVersion listed in await store.VersionsAsync(head.Id, cancel).ConfigureAwait(false))
                {
                    DocumentVersion v = (await store.VersionAsync(head.Id, listed.Version, cancel).ConfigureAwait(false))!;
                    string file = v.Version == head.Version ? name : string.Create(CultureInfo.InvariantCulture, $"earlier/{name}.v{v.Version}");
                    await WriteAsync(archive, file, v.Text, cancel).ConfigureAwait(false);
                    versions.Add(new EntryVersion(v.Version, file, v.Who, v.Why, v.Saved.ToUnixTimeMilliseconds(), v.Hash));
                }

                KeptTrial? trial = kind == DocumentKind.Trial ? await store.TrialAsync(head.Id, cancel).ConfigureAwait(false) : null;
                KeptRecord? record = kind == DocumentKind.Record ? await store.RecordAsync(head.Id, cancel).ConfigureAwait(false) : null;
                index.Add(new Entry(head.Id, kind, head.Title, versions, trial?.CardId ?? record?.OccasionId, trial?.CardVersion ?? 0, trial?.Json, await FilesAsync(store, archive, head.Id, cancel).ConfigureAwait(false)));
            }
        }

        await WriteAsync(archive, "index.json", JsonSerializer.Serialize(new { schema = 1, documents = index }, JsonSerializerOptions.Web), cancel).ConfigureAwait(false);
        await WriteAsync(archive, "control-log.json", JsonSerializer.Serialize(await store.ControlLogAsync(cancel).ConfigureAwait(false), JsonSerializerOptions.Web), cancel).ConfigureAwait(false);
        if (forms is not null)
        {
            await forms.WriteAsync(store, archive, cancel).ConfigureAwait(false);
        }
    }

    /// <summary>Merges an archive into the store. Nothing here is overwritten.</summary>
    /// <exception cref="StoreException">It is no archive of ours, or an entry is larger than it may be.</exception>
    public static async Task<Import> ImportAsync(KitchenStore store, Stream zip, string who, CancellationToken cancel = default)
    {
        try
        {
            using ZipArchive archive = new(zip, ZipArchiveMode.Read, leaveOpen: true);
            if (archive.Entries.Count > MostEntries)
            {
                throw new StoreException("The archive holds more entries than an export ever does; it was not read.");
            }

            // Entries are found by the index and read into memory: no name in the archive ever becomes a path on this machine.
            ZipArchiveEntry indexEntry = archive.GetEntry("index.json") ?? throw new StoreException("The archive has no index.json; it is not an export of this program.");
            using JsonDocument index = JsonDocument.Parse(await ReadAsync(indexEntry, cancel).ConfigureAwait(false), new JsonDocumentOptions { MaxDepth = 16 });
            int added = 0;
            int same = 0;
            List<string> conflicts = [];
            Entry[] entries = [.. index.RootElement.GetProperty("documents").EnumerateArray().Select(e => e.Deserialize<Entry>(JsonSerializerOptions.Web) ?? throw new StoreException("The archive's index is not readable."))];
            Dictionary<string, string> renamed = await TakenElsewhereAsync(store, entries, cancel).ConfigureAwait(false);
            foreach (Entry entry in entries.Select(e => Renamed(e, renamed)).OrderBy(e => Array.IndexOf(DocumentKind.All, e.Kind)))
            {
                if (!DocumentKind.All.Contains(entry.Kind))
                {
                    throw new StoreException($"The archive holds a document of a kind this program does not know ({entry.Kind}). Use a newer Coulisse; nothing of it was imported.");
                }

                Document? mine = await store.OpenDocumentAsync(entry.Id, cancel).ConfigureAwait(false);
                EntryVersion newest = entry.Versions.MaxBy(v => v.Version) ?? throw new StoreException($"The archive holds no text of \"{entry.Title}\".");
                if (mine is null)
                {
                    await AddAsync(store, archive, entry, cancel).ConfigureAwait(false);
                    added++;
                    continue;
                }

                string text = await TextAsync(archive, newest.File, cancel).ConfigureAwait(false);
                if (mine.Text == text)
                {
                    same++;
                    continue;
                }

                // Kept as a further version, then the kitchen's own text is put back on top: neither is lost.
                await store.SaveAsync(mine.Kind, mine.Id, mine.Version, mine.Title, text, who, "imported, differs", cancel).ConfigureAwait(false);
                await store.SaveAsync(mine.Kind, mine.Id, mine.Version + 1, mine.Title, mine.Text, who, "kept after import", cancel).ConfigureAwait(false);
                conflicts.Add(mine.Title);
            }

            return new Import(added, same, conflicts);
        }
        catch (Exception e) when (e is InvalidDataException or JsonException or KeyNotFoundException or InvalidOperationException)
        {
            throw new StoreException($"The archive cannot be read: {e.Message} Nothing more was imported.", e);
        }
    }

    /// <summary>Keys of the archive that another kitchen of this store has, each with a key of this kitchen's own: one kitchen's export can be imported by its neighbour.</summary>
    private static async Task<Dictionary<string, string>> TakenElsewhereAsync(KitchenStore store, Entry[] entries, CancellationToken cancel)
    {
        Dictionary<string, string> renamed = new(StringComparer.Ordinal);
        foreach (Entry entry in entries)
        {
            if (await store.IsElsewhereAsync(entry.Id, cancel).ConfigureAwait(false))
            {
                renamed[entry.Id] = store.Own(entry.Id);
            }
        }

        return renamed;
    }

    /// <summary>An occasion names its cards by key in the reason of each version, so the reasons are carried along.</summary>
    private static Entry Renamed(Entry entry, Dictionary<string, string> renamed) => renamed.Count == 0 ? entry : entry with
    {
        Id = renamed.GetValueOrDefault(entry.Id, entry.Id),
        Of = entry.Of is { } of ? renamed.GetValueOrDefault(of, of) : null,
        Versions = [.. entry.Versions.Select(v => v with { Why = string.Join("; ", v.Why.Split("; ").Select(part => part.LastIndexOf(" is ", StringComparison.Ordinal) is >= 0 and var at && renamed.TryGetValue(part[(at + 4)..], out string? key) ? part[..(at + 4)] + key : part)) })],
    };

    private static async Task AddAsync(KitchenStore store, ZipArchive archive, Entry entry, CancellationToken cancel)
    {
        int basedOn = 0;
        foreach (EntryVersion v in entry.Versions.OrderBy(v => v.Version))
        {
            string text = await TextAsync(archive, v.File, cancel).ConfigureAwait(false);
            if (await store.SaveAsync(entry.Kind, entry.Id, basedOn, entry.Title, text, v.Who, v.Why, cancel).ConfigureAwait(false) is SaveOutcome.Saved saved)
            {
                basedOn = saved.Version;
            }
        }

        if (entry.Of is { } of)
        {
            string newest = await TextAsync(archive, entry.Versions.MaxBy(v => v.Version)!.File, cancel).ConfigureAwait(false);
            await (entry.Kind == DocumentKind.Trial
                ? store.KeepTrialAsync(entry.Id, entry.Title, newest, "import", of, entry.OfVersion, entry.Json ?? "{}", cancel)
                : store.KeepRecordAsync(entry.Id, entry.Title, newest, "import", of, "", cancel)).ConfigureAwait(false);
        }

        foreach (EntryFile file in entry.Files ?? [])
        {
            byte[] bytes = await BytesAsync(archive.GetEntry(file.File) ?? throw new StoreException($"The archive lacks {file.File}."), cancel).ConfigureAwait(false);
            await store.AttachAsync(entry.Id, file.Name, file.Type, bytes, cancel).ConfigureAwait(false);
        }
    }

    private static async Task<List<EntryFile>> FilesAsync(KitchenStore store, ZipArchive archive, string id, CancellationToken cancel)
    {
        List<EntryFile> files = [];
        foreach (KeptFile f in await store.FilesAsync(id, cancel).ConfigureAwait(false))
        {
            // named by key: a file's own name is only shown
            string at = "files/" + f.Id;
            await using Stream stream = await archive.CreateEntry(at, CompressionLevel.Fastest).OpenAsync(cancel).ConfigureAwait(false);
            await stream.WriteAsync((await store.FileAsync(f.Id, cancel).ConfigureAwait(false))!.Value.Bytes, cancel).ConfigureAwait(false);
            files.Add(new EntryFile(f.Name, f.Type, at, f.Hash));
        }

        return files;
    }

    private static async Task<string> TextAsync(ZipArchive archive, string file, CancellationToken cancel)
        => await ReadAsync(archive.GetEntry(file) ?? throw new StoreException($"The archive lacks {file}."), cancel).ConfigureAwait(false);

    private static async Task<string> ReadAsync(ZipArchiveEntry entry, CancellationToken cancel) => Encoding.UTF8.GetString(await BytesAsync(entry, cancel).ConfigureAwait(false));

    private static async Task<byte[]> BytesAsync(ZipArchiveEntry entry, CancellationToken cancel)
    {
        // The stated length may lie: count what really comes out.
        await using Stream stream = await entry.OpenAsync(cancel).ConfigureAwait(false);
        using MemoryStream all = new();
        byte[] buffer = new byte[81920];
        int read;
        while ((read = await stream.ReadAsync(buffer, cancel).ConfigureAwait(false)) > 0)
        {
            if (all.Length + read > MostBytes)
            {
                throw new StoreException($"{entry.FullName} unpacks to more than {(MostBytes / 1024 / 1024).ToString(CultureInfo.InvariantCulture)} MB; it was not read.");
            }

            all.Write(buffer, 0, read);
        }

        return all.ToArray();
    }

    private static async Task WriteAsync(ZipArchive archive, string file, string text, CancellationToken cancel)
    {
        await using Stream stream = await archive.CreateEntry(file, CompressionLevel.Fastest).OpenAsync(cancel).ConfigureAwait(false);
        await stream.WriteAsync(Encoding.UTF8.GetBytes(text), cancel).ConfigureAwait(false);
    }

    private static string FileName(string kind, string title, string id, HashSet<string> taken)
    {
        string folded = string.Join('-', Folding.Words(title).Take(8));
        string stem = $"{kind}s/{(folded.Length == 0 ? "untitled" : folded)}";
        string ending = kind is DocumentKind.Prices or DocumentKind.Foods ? "csv" : kind == DocumentKind.Translation ? "txt" : "md";
        string name = $"{stem}.{ending}";
        return taken.Add(name) ? name : $"{stem}-{id[..Math.Min(8, id.Length)]}.{ending}";
    }
}
