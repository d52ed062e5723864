using System.Data.Common;

namespace Coulisse.Store;

/// <content>Who may come in: people, passkeys, sessions.</content>
public sealed partial class KitchenStore
{
    private const string PersonColumns = "id, name, role, owner, password, stamp, failed, locked_until_ms, made_ms";

    /// <summary>Which kitchen's documents this store sees.</summary>
    public string Kitchen => _kitchen;

    /// <summary>Adds a person.</summary>
    /// <returns>False when somebody of that name, or an owner, is there already.</returns>
    public Task<bool> AddPersonAsync(KeptPerson person, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            long there = await ScalarAsync<long>(connection, transaction, "SELECT COUNT(*) FROM person WHERE kitchen = @kitchen AND gone = 0 AND (folded = @folded OR (owner = 1 AND @owner = 1))", cancel, ("kitchen", _kitchen), ("folded", Folding.Fold(person.Name)), ("owner", person.Owner ? 1 : 0)).ConfigureAwait(false);
            return there == 0 && await ExecuteAsync(connection, transaction, "INSERT INTO person (id, kitchen, name, folded, role, owner, password, stamp, failed, locked_until_ms, made_ms) VALUES (@id, @kitchen, @name, @folded, @role, @owner, @password, @stamp, 0, 0, @now)", cancel,
                ("id", person.Id), ("kitchen", _kitchen), ("name", person.Name), ("folded", Folding.Fold(person.Name)), ("role", person.Role), ("owner", person.Owner ? 1 : 0), ("password", person.Password), ("stamp", person.Stamp), ("now", NowMs)).ConfigureAwait(false) == 1;
        }, cancel);

    /// <summary>Writes what may change of a person: role, password, stamp, wrong tries.</summary>
    /// <param name="person">As it shall be.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<bool> ChangePersonAsync(KeptPerson person, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
            await ExecuteAsync(connection, transaction, "UPDATE person SET role = @role, password = @password, stamp = @stamp, failed = @failed, locked_until_ms = @locked WHERE id = @id AND kitchen = @kitchen AND gone = 0", cancel,
                ("role", person.Role), ("password", person.Password), ("stamp", person.Stamp), ("failed", person.Failed), ("locked", person.LockedUntil?.ToUnixTimeMilliseconds() ?? 0), ("id", person.Id), ("kitchen", _kitchen)).ConfigureAwait(false) == 1, cancel);

    /// <summary>Counts a wrong password. Counted in the database, so that tries at two processes add up.</summary>
    /// <returns>Wrong tries in a row now.</returns>
    public Task<int> CountFailureAsync(string id, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            await ExecuteAsync(connection, transaction, "UPDATE person SET failed = failed + 1 WHERE id = @id AND kitchen = @kitchen", cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false);
            return await ScalarAsync<int>(connection, transaction, "SELECT failed FROM person WHERE id = @id AND kitchen = @kitchen", cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false);
        }, cancel);

    /// <summary>Takes a person out: no sign-in, no session, no passkey, no link. What they saved stays under their name.</summary>
    public Task<bool> RemovePersonAsync(string id, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            bool gone = await ExecuteAsync(connection, transaction, "UPDATE person SET gone = 1, password = '' WHERE id = @id AND kitchen = @kitchen AND owner = 0 AND gone = 0", cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false) == 1;
            if (gone)
            {
                await ExecuteAsync(connection, transaction, "DELETE FROM session WHERE person_id = @id", cancel, ("id", id)).ConfigureAwait(false);
                await ExecuteAsync(connection, transaction, "DELETE FROM passkey WHERE person_id = @id", cancel, ("id", id)).ConfigureAwait(false);
                await ExecuteAsync(connection, transaction, "UPDATE link SET ended_ms = @now WHERE kitchen = @kitchen AND subject = @id AND ended_ms = 0", cancel, ("now", NowMs), ("kitchen", _kitchen), ("id", id)).ConfigureAwait(false);
            }

            return gone;
        }, cancel);

    /// <summary>A person by key; null when this kitchen has none.</summary>
    public async Task<KeptPerson?> PersonAsync(string id, CancellationToken cancel = default)
        => (await ListAsync($"SELECT {PersonColumns} FROM person WHERE id = @id AND kitchen = @kitchen AND gone = 0", PersonRow, cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>A person by name, whatever its case and accents.</summary>
    public async Task<KeptPerson?> PersonByNameAsync(string name, CancellationToken cancel = default)
        => (await ListAsync($"SELECT {PersonColumns} FROM person WHERE folded = @folded AND kitchen = @kitchen AND gone = 0", PersonRow, cancel, ("folded", Folding.Fold(name)), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>Everybody, the owner first.</summary>
    public Task<List<KeptPerson>> PeopleAsync(CancellationToken cancel = default)
        => ListAsync($"SELECT {PersonColumns} FROM person WHERE kitchen = @kitchen AND gone = 0 ORDER BY owner DESC, folded", PersonRow, cancel, ("kitchen", _kitchen));

    /// <summary>Keeps a passkey, or what changed of it.</summary>
    public Task<int> KeepPasskeyAsync(string personId, string credential, string json, CancellationToken cancel = default)
        => WriteAsync((connection, transaction) => ExecuteAsync(connection, transaction, "INSERT INTO passkey (credential, person_id, json, made_ms) VALUES (@c, @p, @json, @now) ON CONFLICT (credential) DO UPDATE SET json = @json WHERE passkey.person_id = @p", cancel, ("c", credential), ("p", personId), ("json", json), ("now", NowMs)), cancel);

    /// <summary>A person's passkeys.</summary>
    public Task<List<string>> PasskeysAsync(string personId, CancellationToken cancel = default)
        => ListAsync("SELECT k.json FROM passkey k JOIN person p ON p.id = k.person_id WHERE k.person_id = @p AND p.kitchen = @kitchen ORDER BY k.made_ms", r => r.GetString(0), cancel, ("p", personId), ("kitchen", _kitchen));

    /// <summary>Whose passkey it is; null for nobody here.</summary>
    public async Task<KeptPerson?> PersonByPasskeyAsync(string credential, CancellationToken cancel = default)
        => (await ListAsync("SELECT k.person_id FROM passkey k JOIN person p ON p.id = k.person_id WHERE k.credential = @c AND p.kitchen = @kitchen AND p.gone = 0", r => r.GetString(0), cancel, ("c", credential), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault() is { } id
            ? await PersonAsync(id, cancel).ConfigureAwait(false)
            : null;

    /// <summary>Forgets a passkey.</summary>
    public Task<bool> RemovePasskeyAsync(string personId, string credential, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) => await ExecuteAsync(connection, transaction, "DELETE FROM passkey WHERE person_id = @p AND credential = @c", cancel, ("p", personId), ("c", credential)).ConfigureAwait(false) == 1, cancel);

    /// <summary>Keeps a session under the hash of its secret.</summary>
    public Task<int> KeepSessionAsync(string id, string personId, string ticket, DateTimeOffset expires, CancellationToken cancel = default)
        => WriteAsync((connection, transaction) => ExecuteAsync(connection, transaction, "INSERT INTO session (id, person_id, ticket, made_ms, expires_ms) VALUES (@id, @p, @t, @now, @until) ON CONFLICT (id) DO UPDATE SET ticket = @t, expires_ms = @until", cancel, ("id", id), ("p", personId), ("t", ticket), ("now", NowMs), ("until", expires.ToUnixTimeMilliseconds())), cancel);

    /// <summary>A session's ticket; null when it has ended or belongs to another kitchen.</summary>
    public async Task<string?> SessionAsync(string id, CancellationToken cancel = default)
        => (await ListAsync("SELECT s.ticket FROM session s JOIN person p ON p.id = s.person_id WHERE s.id = @id AND s.expires_ms > @now AND p.kitchen = @kitchen AND p.gone = 0", r => r.GetString(0), cancel, ("id", id), ("now", NowMs), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>Ends a session.</summary>
    public Task<int> EndSessionAsync(string id, CancellationToken cancel = default)
        => WriteAsync((connection, transaction) => ExecuteAsync(connection, transaction, "DELETE FROM session WHERE id = @id OR expires_ms <= @now", cancel, ("id", id), ("now", NowMs)), cancel);

    /// <summary>Ends every session of a person.</summary>
    public Task<int> EndSessionsAsync(string personId, CancellationToken cancel = default)
        => WriteAsync((connection, transaction) => ExecuteAsync(connection, transaction, "DELETE FROM session WHERE person_id = @p", cancel, ("p", personId)), cancel);

    private static KeptPerson PersonRow(DbDataReader r)
        => new(r.GetString(0), r.GetString(1), r.GetString(2), r.GetInt32(3) == 1, r.GetString(4), r.GetString(5), r.GetInt32(6), r.GetInt64(7) is > 0 and var ms ? FromMs(ms) : null, FromMs(r.GetInt64(8)));
}
