using System.Data.Common;
using System.Security.Cryptography;
using System.Text;

namespace Coulisse.Store;

/// <content>Cards, occasion sheets and price lists: every saved text is a version.</content>
public sealed partial class KitchenStore
{
    /// <summary>Saves a text as a new version.</summary>
    /// <param name="kind">One of <see cref="DocumentKind"/>.</param>
    /// <param name="id">Document, or null for a new one.</param>
    /// <param name="basedOn">Version the writer had before them; 0 for a new document.</param>
    /// <param name="title">Title for lists.</param>
    /// <param name="text">The whole text.</param>
    /// <param name="who">Who saved it.</param>
    /// <param name="why">Why, in the writer's words; may be empty.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<SaveOutcome> SaveAsync(string kind, string? id, int basedOn, string title, string text, string who, string why, CancellationToken cancel = default)
        => WriteAsync((connection, transaction) => SaveInAsync(connection, transaction, new Writing(kind, id, basedOn, title, text, who, why), cancel), cancel);

    /// <summary>The newest version of a document; null when this kitchen has none of that id.</summary>
    public async Task<Document?> OpenDocumentAsync(string id, CancellationToken cancel = default)
        => (await ListAsync(
            "SELECT d.id, d.kind, d.title, d.version, v.text, v.who, v.why, v.saved_ms FROM document d JOIN document_version v ON v.document_id = d.id AND v.version = d.version WHERE d.id = @id AND d.kitchen = @kitchen",
            r => new Document(r.GetString(0), r.GetString(1), r.GetString(2), r.GetInt32(3), r.GetString(4), r.GetString(5), r.GetString(6), FromMs(r.GetInt64(7))),
            cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>One version; null when there is none.</summary>
    public async Task<DocumentVersion?> VersionAsync(string id, int version, CancellationToken cancel = default)
    {
        await using DbConnection connection = await _dialect.OpenAsync(cancel).ConfigureAwait(false);
        bool mine = await ScalarAsync<string>(connection, null, "SELECT id FROM document WHERE id = @id AND kitchen = @kitchen", cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false) is not null;
        return mine ? await VersionAsync(connection, null, id, version, cancel).ConfigureAwait(false) : null;
    }

    /// <summary>All versions of a document, newest first, without their texts.</summary>
    public Task<List<DocumentVersion>> VersionsAsync(string id, CancellationToken cancel = default)
        => ListAsync(
            "SELECT v.document_id, v.version, v.who, v.why, v.saved_ms, v.hash FROM document_version v JOIN document d ON d.id = v.document_id WHERE v.document_id = @id AND d.kitchen = @kitchen ORDER BY v.version DESC",
            r => new DocumentVersion(r.GetString(0), r.GetInt32(1), "", r.GetString(2), r.GetString(3), FromMs(r.GetInt64(4)), r.GetString(5)),
            cancel, ("id", id), ("kitchen", _kitchen));

    /// <summary>Documents of a kind, last changed first.</summary>
    public Task<List<DocumentHead>> DocumentsAsync(string kind, int most = 200, CancellationToken cancel = default)
        => ListAsync(
            "SELECT id, kind, title, version, changed_ms FROM document WHERE kitchen = @kitchen AND kind = @kind AND archived = 0 ORDER BY changed_ms DESC, id LIMIT @most",
            Head, cancel, ("kitchen", _kitchen), ("kind", kind), ("most", most));

    /// <summary>Documents that hold all the words, each as the beginning of a word; best first.</summary>
    public Task<List<DocumentHead>> SearchAsync(string kind, string query, int most = 50, CancellationToken cancel = default)
    {
        List<string> words = Folding.Words(query);
        return words.Count == 0
            ? DocumentsAsync(kind, most, cancel)
            : ListAsync(
                $"SELECT d.id, d.kind, d.title, d.version, d.changed_ms FROM {_dialect.SearchFrom} JOIN document d ON d.id = search_text.document_id WHERE {_dialect.SearchWhere} AND d.kitchen = @kitchen AND d.kind = @kind AND d.archived = 0 ORDER BY {_dialect.SearchOrder}, d.id LIMIT @most",
                Head, cancel, ("q", _dialect.SearchQuery(kind, words)), ("kitchen", _kitchen), ("kind", kind), ("most", most));
    }

    /// <summary>Takes a document out of the lists; its versions stay.</summary>
    public Task<bool> ArchiveAsync(string id, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
            await ExecuteAsync(connection, transaction, "UPDATE document SET archived = 1 WHERE id = @id AND kitchen = @kitchen", cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false) == 1, cancel);

    /// <summary>Whether a key is another kitchen's, so that this one cannot have it.</summary>
    public async Task<bool> IsElsewhereAsync(string id, CancellationToken cancel = default)
    {
        await using DbConnection connection = await _dialect.OpenAsync(cancel).ConfigureAwait(false);
        return await IsElsewhereAsync(connection, null, id, cancel).ConfigureAwait(false);
    }

    private async Task<bool> IsElsewhereAsync(DbConnection connection, DbTransaction? transaction, string id, CancellationToken cancel)
        => await ScalarAsync<string>(connection, transaction, "SELECT kitchen FROM document WHERE id = @id", cancel, ("id", id)).ConfigureAwait(false) is { } kitchen && kitchen != _kitchen;

    private sealed record Writing(string Kind, string? Id, int BasedOn, string Title, string Text, string Who, string Why);

    private async Task<SaveOutcome> SaveInAsync(DbConnection connection, DbTransaction transaction, Writing w, CancellationToken cancel)
    {
        string hash = Hash(w.Text);
        string key = w.Id ?? Guid.NewGuid().ToString("N");
        int newest = await ScalarAsync<int?>(connection, transaction, "SELECT version FROM document WHERE id = @id AND kitchen = @kitchen AND kind = @kind", cancel, ("id", key), ("kitchen", _kitchen), ("kind", w.Kind)).ConfigureAwait(false) ?? 0;
        if (newest == 0)
        {
            if (w.Id is not null && await IsElsewhereAsync(connection, transaction, key, cancel).ConfigureAwait(false))
            {
                throw new StoreException("That key is another kitchen's; nothing was kept.");
            }

            await ExecuteAsync(connection, transaction, "INSERT INTO document (id, kind, kitchen, title, version, changed_ms) VALUES (@id, @kind, @kitchen, @title, 0, @now)", cancel, ("id", key), ("kind", w.Kind), ("kitchen", _kitchen), ("title", w.Title), ("now", NowMs)).ConfigureAwait(false);
        }
        else if (await ScalarAsync<string>(connection, transaction, "SELECT hash FROM document_version WHERE document_id = @id AND version = @v", cancel, ("id", key), ("v", newest)).ConfigureAwait(false) == hash)
        {
            return new SaveOutcome.Saved(key, newest);
        }

        int next = newest + 1;
        await ExecuteAsync(connection, transaction, "INSERT INTO document_version (document_id, version, text, who, why, saved_ms, hash) VALUES (@id, @v, @text, @who, @why, @now, @hash)", cancel, ("id", key), ("v", next), ("text", w.Text), ("who", w.Who), ("why", w.Why), ("now", NowMs), ("hash", hash)).ConfigureAwait(false);
        await ExecuteAsync(connection, transaction, "UPDATE document SET version = @v, title = @title, changed_ms = @now, archived = 0 WHERE id = @id", cancel, ("id", key), ("v", next), ("title", w.Title), ("now", NowMs)).ConfigureAwait(false);
        await ExecuteAsync(connection, transaction, "DELETE FROM search_text WHERE document_id = @id", cancel, ("id", key)).ConfigureAwait(false);
        await ExecuteAsync(connection, transaction, "INSERT INTO search_text (document_id, kind, title, body) VALUES (@id, @kind, @title, @body)", cancel, ("id", key), ("kind", w.Kind), ("title", Folding.Fold(w.Title)), ("body", Folding.Fold(w.Text))).ConfigureAwait(false);
        if (newest > 0 && w.BasedOn != newest)
        {
            DocumentVersion theirs = (await VersionAsync(connection, transaction, key, newest, cancel).ConfigureAwait(false))!;
            return new SaveOutcome.Conflict(key, next, theirs);
        }

        return new SaveOutcome.Saved(key, next);
    }

    private static DocumentHead Head(DbDataReader r) => new(r.GetString(0), r.GetString(1), r.GetString(2), r.GetInt32(3), FromMs(r.GetInt64(4)));

    private static async Task<DocumentVersion?> VersionAsync(DbConnection connection, DbTransaction? transaction, string id, int version, CancellationToken cancel)
    {
        await using DbCommand command = Command(connection, transaction, "SELECT document_id, version, text, who, why, saved_ms, hash FROM document_version WHERE document_id = @id AND version = @v", [("id", id), ("v", version)]);
        await using DbDataReader r = await command.ExecuteReaderAsync(cancel).ConfigureAwait(false);
        return await r.ReadAsync(cancel).ConfigureAwait(false)
            ? new DocumentVersion(r.GetString(0), r.GetInt32(1), r.GetString(2), r.GetString(3), r.GetString(4), FromMs(r.GetInt64(5)), r.GetString(6))
            : null;
    }

    private static string Hash(string text) => Hash(Encoding.UTF8.GetBytes(text));

    private static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
