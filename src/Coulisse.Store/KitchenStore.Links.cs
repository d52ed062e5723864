using System.Data.Common;

namespace Coulisse.Store;

/// <content>Links that open one thing for a short time, and the files beside documents.</content>
public sealed partial class KitchenStore
{
    /// <summary>Makes a link.</summary>
    /// <returns>Its key.</returns>
    public Task<string> MakeLinkAsync(string purpose, string subject, string who, DateTimeOffset expires, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            string id = Guid.NewGuid().ToString("N");
            await ExecuteAsync(connection, transaction, "INSERT INTO link (id, kitchen, purpose, subject, who, made_ms, expires_ms) VALUES (@id, @kitchen, @purpose, @subject, @who, @now, @until)", cancel, ("id", id), ("kitchen", _kitchen), ("purpose", purpose), ("subject", subject), ("who", who), ("now", NowMs), ("until", expires.ToUnixTimeMilliseconds())).ConfigureAwait(false);
            return id;
        }, cancel);

    /// <summary>A link that still holds; null when it has run out, was used up, taken back, or is another kitchen's.</summary>
    public async Task<KeptLink?> LinkAsync(string id, CancellationToken cancel = default)
        => (await ListAsync("SELECT id, purpose, subject, who, made_ms, expires_ms, ended_ms FROM link WHERE id = @id AND kitchen = @kitchen AND ended_ms = 0 AND expires_ms > @now", LinkRow, cancel, ("id", id), ("kitchen", _kitchen), ("now", NowMs)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>Links of a purpose and subject that still hold, the newest first.</summary>
    public Task<List<KeptLink>> LinksAsync(string purpose, string subject, CancellationToken cancel = default)
        => ListAsync("SELECT id, purpose, subject, who, made_ms, expires_ms, ended_ms FROM link WHERE kitchen = @kitchen AND purpose = @purpose AND subject = @subject AND ended_ms = 0 AND expires_ms > @now ORDER BY made_ms DESC, id", LinkRow, cancel, ("kitchen", _kitchen), ("purpose", purpose), ("subject", subject), ("now", NowMs));

    /// <summary>Uses up or takes back a link.</summary>
    /// <returns>True for the one who ended it; false when it had ended before, so a link that may be used once is used once.</returns>
    public Task<bool> EndLinkAsync(string id, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) => await ExecuteAsync(connection, transaction, "UPDATE link SET ended_ms = @now WHERE id = @id AND kitchen = @kitchen AND ended_ms = 0 AND expires_ms > @now", cancel, ("now", NowMs), ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false) == 1, cancel);

    /// <summary>Puts a file beside a document of this kitchen.</summary>
    /// <exception cref="StoreException">There is no such document.</exception>
    public Task<string> AttachAsync(string documentId, string name, string type, byte[] bytes, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            if (await ScalarAsync<string>(connection, transaction, "SELECT id FROM document WHERE id = @id AND kitchen = @kitchen", cancel, ("id", documentId), ("kitchen", _kitchen)).ConfigureAwait(false) is null)
            {
                throw new StoreException($"There is no document {documentId} to put {name} beside; nothing was kept.");
            }

            string id = Guid.NewGuid().ToString("N");
            await ExecuteAsync(connection, transaction, "INSERT INTO attachment (id, document_id, name, type, bytes, hash, made_ms) VALUES (@id, @d, @name, @type, @bytes, @hash, @now)", cancel, ("id", id), ("d", documentId), ("name", name), ("type", type), ("bytes", bytes), ("hash", Hash(bytes)), ("now", NowMs)).ConfigureAwait(false);
            return id;
        }, cancel);

    /// <summary>Files beside a document.</summary>
    public Task<List<KeptFile>> FilesAsync(string documentId, CancellationToken cancel = default)
        => ListAsync("SELECT a.id, a.document_id, a.name, a.type, LENGTH(a.bytes), a.hash, a.made_ms FROM attachment a JOIN document d ON d.id = a.document_id WHERE a.document_id = @d AND d.kitchen = @kitchen ORDER BY a.made_ms, a.id", r => new KeptFile(r.GetString(0), r.GetString(1), r.GetString(2), r.GetString(3), r.GetInt32(4), r.GetString(5), FromMs(r.GetInt64(6))), cancel, ("d", documentId), ("kitchen", _kitchen));

    /// <summary>A file's bytes and type; null when this kitchen has none of that key.</summary>
    public async Task<(byte[] Bytes, string Type)?> FileAsync(string id, CancellationToken cancel = default)
    {
        List<(byte[], string)> found = await ListAsync("SELECT a.bytes, a.type FROM attachment a JOIN document d ON d.id = a.document_id WHERE a.id = @id AND d.kitchen = @kitchen", r => ((byte[])r.GetValue(0), r.GetString(1)), cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false);
        return found.Count == 0 ? null : found[0];
    }

    private static KeptLink LinkRow(DbDataReader r)
        => new(r.GetString(0), r.GetString(1), r.GetString(2), r.GetString(3), FromMs(r.GetInt64(4)), FromMs(r.GetInt64(5)), r.GetInt64(6) is > 0 and var ms ? FromMs(ms) : null);
}
