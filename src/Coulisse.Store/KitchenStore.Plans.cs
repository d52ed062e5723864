using System.Data.Common;
using System.Runtime.CompilerServices;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Store;

/// <content>Plans, runs with their append-only events, and settings.</content>
public sealed partial class KitchenStore
{
    /// <summary>Keeps a plan; it names the versions that made it.</summary>
    public Task<string> KeepPlanAsync(string occasionId, int occasionVersion, string json, string versions, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            string id = Guid.NewGuid().ToString("N");
            await ExecuteAsync(connection, transaction, "INSERT INTO plan (id, occasion_id, occasion_version, made_ms, json, versions) VALUES (@id, @o, @v, @now, @json, @versions)", cancel, ("id", id), ("o", occasionId), ("v", occasionVersion), ("now", NowMs), ("json", json), ("versions", versions)).ConfigureAwait(false);
            return id;
        }, cancel);

    /// <summary>A plan by id; null when this kitchen has none.</summary>
    public async Task<KeptPlan?> PlanAsync(string id, CancellationToken cancel = default)
        => (await ListAsync("SELECT p.id, p.occasion_id, p.occasion_version, p.made_ms, p.json, p.versions FROM plan p JOIN document d ON d.id = p.occasion_id WHERE p.id = @id AND d.kitchen = @kitchen", KeptPlanRow, cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>The newest plan of an occasion; null when none was kept.</summary>
    public async Task<KeptPlan?> NewestPlanAsync(string occasionId, CancellationToken cancel = default)
        => (await ListAsync("SELECT p.id, p.occasion_id, p.occasion_version, p.made_ms, p.json, p.versions FROM plan p JOIN document d ON d.id = p.occasion_id WHERE p.occasion_id = @o AND d.kitchen = @kitchen ORDER BY p.made_ms DESC, p.id DESC LIMIT 1", KeptPlanRow, cancel, ("o", occasionId), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>Starts a run or a rehearsal of a plan.</summary>
    public Task<string> StartRunAsync(string planId, DateTimeOffset started, bool rehearsal, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            string id = Guid.NewGuid().ToString("N");
            await ExecuteAsync(connection, transaction, "INSERT INTO run (id, plan_id, started_ms, rehearsal) VALUES (@id, @p, @s, @r)", cancel, ("id", id), ("p", planId), ("s", started.ToUnixTimeMilliseconds()), ("r", rehearsal ? 1 : 0)).ConfigureAwait(false);
            return id;
        }, cancel);

    /// <summary>A run by id; null when there is none.</summary>
    public async Task<KeptRun?> RunAsync(string id, CancellationToken cancel = default)
        => (await ListAsync("SELECT r.id, r.plan_id, r.started_ms, r.rehearsal FROM run r JOIN plan p ON p.id = r.plan_id JOIN document d ON d.id = p.occasion_id WHERE r.id = @id AND d.kitchen = @kitchen", KeptRunRow, cancel, ("id", id), ("kitchen", _kitchen)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>Runs and rehearsals of a plan, the oldest first.</summary>
    public Task<List<KeptRun>> RunsAsync(string planId, CancellationToken cancel = default)
        => ListAsync("SELECT r.id, r.plan_id, r.started_ms, r.rehearsal FROM run r JOIN plan p ON p.id = r.plan_id JOIN document d ON d.id = p.occasion_id WHERE r.plan_id = @plan AND d.kitchen = @kitchen ORDER BY r.started_ms, r.id", KeptRunRow, cancel, ("plan", planId), ("kitchen", _kitchen));

    /// <summary>Appends events; one that is already there (same id) is left as it was, so a repeat is harmless.</summary>
    /// <returns>How many were new.</returns>
    public Task<int> AppendAsync(string runId, IReadOnlyCollection<LiveEvent> events, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            int added = 0;
            foreach (LiveEvent e in events)
            {
                added += await ExecuteAsync(connection, transaction, "INSERT INTO live_event (run_id, id, at_ms, kind, subject, who, text) VALUES (@r, @id, @at, @kind, @subject, @who, @text) ON CONFLICT (run_id, id) DO NOTHING", cancel, ("r", runId), ("id", e.Id), ("at", e.At.ToUnixTimeMilliseconds()), ("kind", e.Kind), ("subject", e.Subject), ("who", e.By), ("text", e.Text)).ConfigureAwait(false);
            }

            if (added > 0)
            {
                await _dialect.TellAsync(connection, transaction, runId, cancel).ConfigureAwait(false);
            }

            return added;
        }, cancel);

    /// <summary>Runs that any process of this store changed, this one too, as they change. Ends when the line to the database breaks, by an exception; ask again. A store of one process tells none.</summary>
    /// <exception cref="StoreException">The line to the database broke.</exception>
    public async IAsyncEnumerable<string> ChangedRunsAsync([EnumeratorCancellation] CancellationToken cancel = default)
    {
        await using IAsyncEnumerator<string> runs = _dialect.ListenAsync(cancel).GetAsyncEnumerator(cancel);
        while (true)
        {
            try
            {
                if (!await runs.MoveNextAsync().ConfigureAwait(false))
                {
                    yield break;
                }
            }
            catch (Exception e) when (e is DbException or IOException or TimeoutException)
            {
                throw new StoreException($"The line to the database broke: {e.Message}", e);
            }

            yield return runs.Current;
        }
    }

    /// <summary>All events of a run in order of their moment, then id.</summary>
    public async Task<LiveLog> LogAsync(string runId, CancellationToken cancel = default)
        => new(runId, [.. await ListAsync("SELECT id, at_ms, kind, subject, who, text FROM live_event WHERE run_id = @r ORDER BY at_ms, id", r => new LiveEvent(r.GetString(0), Instant.FromUnixTimeMilliseconds(r.GetInt64(1)), r.GetString(2), r.GetString(3), r.GetString(4), r.GetString(5)), cancel, ("r", runId)).ConfigureAwait(false)]);

    /// <summary>A setting of this kitchen; null when it was never set.</summary>
    public async Task<string?> SettingAsync(string key, CancellationToken cancel = default)
        => (await ListAsync("SELECT value FROM setting WHERE kitchen = @kitchen AND key = @key", r => r.GetString(0), cancel, ("kitchen", _kitchen), ("key", key)).ConfigureAwait(false)).FirstOrDefault();

    /// <summary>Sets a setting of this kitchen unless it is set; either way what holds is given back, the same to every process that asks at once.</summary>
    public Task<string> SetOnceAsync(string key, string value, CancellationToken cancel = default)
        => WriteAsync(async (connection, transaction) =>
        {
            await ExecuteAsync(connection, transaction, "INSERT INTO setting (kitchen, key, value) VALUES (@kitchen, @key, @value) ON CONFLICT (kitchen, key) DO NOTHING", cancel, ("kitchen", _kitchen), ("key", key), ("value", value)).ConfigureAwait(false);
            return (await ScalarAsync<string>(connection, transaction, "SELECT value FROM setting WHERE kitchen = @kitchen AND key = @key", cancel, ("kitchen", _kitchen), ("key", key)).ConfigureAwait(false))!;
        }, cancel);

    /// <summary>Settings whose key begins so.</summary>
    public Task<List<(string Key, string Value)>> SettingsAsync(string beginning, CancellationToken cancel = default)
        => ListAsync("SELECT key, value FROM setting WHERE kitchen = @kitchen AND substr(key, 1, @n) = @beginning ORDER BY key", r => (r.GetString(0), r.GetString(1)), cancel, ("kitchen", _kitchen), ("n", beginning.Length), ("beginning", beginning));

    /// <summary>Sets a setting of this kitchen.</summary>
    public Task<int> SetAsync(string key, string value, CancellationToken cancel = default)
        => WriteAsync((connection, transaction) => ExecuteAsync(connection, transaction, "INSERT INTO setting (kitchen, key, value) VALUES (@kitchen, @key, @value) ON CONFLICT (kitchen, key) DO UPDATE SET value = @value", cancel, ("kitchen", _kitchen), ("key", key), ("value", value)), cancel);

    private static KeptRun KeptRunRow(DbDataReader r) => new(r.GetString(0), r.GetString(1), FromMs(r.GetInt64(2)), r.GetInt32(3) == 1);

    private static KeptPlan KeptPlanRow(DbDataReader r) => new(r.GetString(0), r.GetString(1), r.GetInt32(2), FromMs(r.GetInt64(3)), r.GetString(4), r.GetString(5));
}
