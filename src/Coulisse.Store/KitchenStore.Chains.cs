using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Store;

/// <content>The two logs that only grow, the control log and the audit log: each entry carries the hash of the one before, so a later change shows.</content>
public sealed partial class KitchenStore
{
    private const string ControlLog = "control_log";
    private const string AuditLog = "audit_log";

    /// <summary>Appends a reading to the control log.</summary>
    public Task<ControlEntry> LogControlAsync(string who, string json, CancellationToken cancel = default) => ChainAsync(ControlLog, who, json, cancel);

    /// <summary>The control log in order.</summary>
    public Task<List<ControlEntry>> ControlLogAsync(CancellationToken cancel = default) => ChainOfAsync(ControlLog, cancel);

    /// <summary>Checks the chain of the control log.</summary>
    public async Task<ChainCheck> CheckControlLogAsync(CancellationToken cancel = default) => Check(await ChainOfAsync(ControlLog, cancel).ConfigureAwait(false));

    /// <summary>Notes who did what to the people, links and doors of the kitchen. Never a secret.</summary>
    /// <param name="who">Person, or "nobody".</param>
    /// <param name="json">One JSON object.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ControlEntry> AuditAsync(string who, string json, CancellationToken cancel = default) => ChainAsync(AuditLog, who, json, cancel);

    /// <summary>The audit log in order.</summary>
    public Task<List<ControlEntry>> AuditLogAsync(CancellationToken cancel = default) => ChainOfAsync(AuditLog, cancel);

    /// <summary>Checks the chain of the audit log.</summary>
    public async Task<ChainCheck> CheckAuditLogAsync(CancellationToken cancel = default) => Check(await ChainOfAsync(AuditLog, cancel).ConfigureAwait(false));

    private Task<ControlEntry> ChainAsync(string table, string who, string json, CancellationToken cancel)
        => WriteAsync(async (connection, transaction) =>
        {
            long last = await ScalarAsync<long?>(connection, transaction, $"SELECT MAX(seq) FROM {table} WHERE kitchen = @kitchen", cancel, ("kitchen", _kitchen)).ConfigureAwait(false) ?? 0;
            string previous = last == 0 ? "" : (await ScalarAsync<string>(connection, transaction, $"SELECT hash FROM {table} WHERE kitchen = @kitchen AND seq = @s", cancel, ("kitchen", _kitchen), ("s", last)).ConfigureAwait(false))!;
            // The clock is read once: the moment that is kept must be the moment that was hashed.
            long now = NowMs;
            ControlEntry entry = new(last + 1, FromMs(now), who, json, previous, Link(last + 1, now, who, json, previous));
            await ExecuteAsync(connection, transaction, $"INSERT INTO {table} (kitchen, seq, at_ms, who, json, previous, hash) VALUES (@kitchen, @s, @at, @who, @json, @p, @h)", cancel, ("kitchen", _kitchen), ("s", entry.Seq), ("at", now), ("who", who), ("json", json), ("p", previous), ("h", entry.Hash)).ConfigureAwait(false);
            return entry;
        }, cancel);

    private Task<List<ControlEntry>> ChainOfAsync(string table, CancellationToken cancel)
        => ListAsync($"SELECT seq, at_ms, who, json, previous, hash FROM {table} WHERE kitchen = @kitchen ORDER BY seq", r => new ControlEntry(r.GetInt64(0), FromMs(r.GetInt64(1)), r.GetString(2), r.GetString(3), r.GetString(4), r.GetString(5)), cancel, ("kitchen", _kitchen));

    private static ChainCheck Check(List<ControlEntry> entries)
    {
        ImmutableArray<long>.Builder broken = ImmutableArray.CreateBuilder<long>();
        string previous = "";
        long seq = 0;
        foreach (ControlEntry e in entries)
        {
            if (e.Seq != ++seq || e.Previous != previous || e.Hash != Link(e.Seq, e.At.ToUnixTimeMilliseconds(), e.Who, e.Json, e.Previous))
            {
                broken.Add(e.Seq);
            }

            previous = e.Hash;
            seq = e.Seq;
        }

        return new ChainCheck(entries.Count, broken.ToImmutable());
    }

    private static string Link(long seq, long atMs, string who, string json, string previous)
        => Hash(string.Create(CultureInfo.InvariantCulture, $"{seq}\n{atMs}\n{who}\n{json}\n{previous}"));
}
