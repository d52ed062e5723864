using System.Data.Common;

namespace Coulisse.Store;

/// <content>Trials and production records: sheets by version, as cards are, tied to the card or occasion they are of.</content>
public sealed partial class KitchenStore
{
    /// <summary>Keeps a trial's sheet as a new version and ties it to the version of the card that was made, both or neither.</summary>
    /// <param name="id">Trial, or null for a new one.</param>
    /// <param name="title">Title for lists.</param>
    /// <param name="text">The sheet.</param>
    /// <param name="who">Who keeps it.</param>
    /// <param name="cardId">Card.</param>
    /// <param name="cardVersion">Version that was made.</param>
    /// <param name="json">The sheet as it was read.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="StoreException">This kitchen has no such version of the card.</exception>
    public Task<string> KeepTrialAsync(string? id, string title, string text, string who, string cardId, int cardVersion, string json, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            if (await ScalarAsync<int?>(connection, transaction, "SELECT v.version FROM document_version v JOIN document d ON d.id = v.document_id WHERE d.id = @c AND v.version = @v AND d.kitchen = @kitchen", cancel, ("c", cardId), ("v", cardVersion), ("kitchen", _kitchen)).ConfigureAwait(false) is null)
            {
                throw new StoreException($"There is no version {cardVersion.ToString(System.Globalization.CultureInfo.InvariantCulture)} of that card; the trial was not kept.");
            }

            string key = await SavedIdAsync(connection, transaction, DocumentKind.Trial, id, title, text, who, cancel).ConfigureAwait(false);
            await ExecuteAsync(connection, transaction, "INSERT INTO trial (id, card_id, card_version, made_ms, json) VALUES (@id, @c, @v, @now, @json) ON CONFLICT (id) DO UPDATE SET card_version = @v, json = @json", cancel, ("id", key), ("c", cardId), ("v", cardVersion), ("now", NowMs), ("json", json)).ConfigureAwait(false);
            return key;
        }, cancel);

    /// <summary>Trials of a card, the newest first.</summary>
    public Task<List<KeptTrial>> TrialsAsync(string cardId, CancellationToken cancel = default)
        => ListAsync("SELECT t.id, t.card_id, t.card_version, t.made_ms, t.json FROM trial t JOIN document d ON d.id = t.card_id WHERE t.card_id = @c AND d.kitchen = @kitchen ORDER BY t.made_ms DESC, t.id", TrialRow, cancel, ("c", cardId), ("kitchen", _kitchen));

    /// <summary>A trial by key; null when this kitchen has none.</summary>
    public async Task<KeptTrial?> TrialAsync(string id, CancellationToken cancel = default)
        => (await ListAsync("SELECT t.id, t.card_id, t.card_version, t.made_ms, t.json FROM trial t JOIN document d ON d.id = t.card_id WHERE t.id = @id AND d.kitchen = @kitchen", TrialRow, cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>Keeps a production record's sheet and ties it to its occasion and, when there is one, its plan.</summary>
    /// <exception cref="StoreException">This kitchen has no such occasion.</exception>
    public Task<string> KeepRecordAsync(string? id, string title, string text, string who, string occasionId, string planId, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            if (await ScalarAsync<string>(connection, transaction, "SELECT id FROM document WHERE id = @o AND kind = 'occasion' AND kitchen = @kitchen", cancel, ("o", occasionId), ("kitchen", _kitchen)).ConfigureAwait(false) is null)
            {
                throw new StoreException("There is no such occasion; the record was not kept.");
            }

            string key = await SavedIdAsync(connection, transaction, DocumentKind.Record, id, title, text, who, cancel).ConfigureAwait(false);
            await ExecuteAsync(connection, transaction, "INSERT INTO record (id, occasion_id, plan_id, made_ms) VALUES (@id, @o, @p, @now) ON CONFLICT (id) DO NOTHING", cancel, ("id", key), ("o", occasionId), ("p", planId), ("now", NowMs)).ConfigureAwait(false);
            return key;
        }, cancel);

    /// <summary>Records of an occasion, the newest first.</summary>
    public Task<List<KeptRecord>> RecordsAsync(string occasionId, CancellationToken cancel = default)
        => ListAsync("SELECT r.id, r.occasion_id, r.plan_id, r.made_ms FROM record r JOIN document d ON d.id = r.occasion_id WHERE r.occasion_id = @o AND d.kitchen = @kitchen ORDER BY r.made_ms DESC, r.id", RecordRow, cancel, ("o", occasionId), ("kitchen", _kitchen));

    /// <summary>A record by key; null when this kitchen has none.</summary>
    public async Task<KeptRecord?> RecordAsync(string id, CancellationToken cancel = default)
        => (await ListAsync("SELECT r.id, r.occasion_id, r.plan_id, r.made_ms FROM record r JOIN document d ON d.id = r.occasion_id WHERE r.id = @id AND d.kitchen = @kitchen", RecordRow, cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    private async Task<string> SavedIdAsync(DbConnection connection, DbTransaction transaction, string kind, string? id, string title, string text, string who, CancellationToken cancel)
    {
        int newest = id is null ? 0 : await ScalarAsync<int?>(connection, transaction, "SELECT version FROM document WHERE id = @id AND kitchen = @kitchen AND kind = @kind", cancel, ("id", id), ("kitchen", _kitchen), ("kind", kind)).ConfigureAwait(false) ?? 0;
        return await SaveInAsync(connection, transaction, new Writing(kind, id, newest, title, text, who, ""), cancel).ConfigureAwait(false) is SaveOutcome.Saved(var key, _)
            ? key
            : throw new StoreException("The sheet could not be kept.");
    }

    private static KeptTrial TrialRow(DbDataReader r) => new(r.GetString(0), r.GetString(1), r.GetInt32(2), FromMs(r.GetInt64(3)), r.GetString(4));

    private static KeptRecord RecordRow(DbDataReader r) => new(r.GetString(0), r.GetString(1), r.GetString(2), FromMs(r.GetInt64(3)));
}
