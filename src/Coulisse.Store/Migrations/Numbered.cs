namespace Coulisse.Store.Migrations;

/// <summary>The numbered steps of the store's form. A number, once released, never changes; a new need is a new number.</summary>
internal static class Numbered
{
    /// <summary>The newest form this program knows.</summary>
    public const int Newest = 4;

    /// <summary>What both databases share of migration 1: cards, occasions, plans, runs, trials, the control log.</summary>
    public static readonly string[] First =
    [
        "CREATE TABLE document (id TEXT PRIMARY KEY, kind TEXT NOT NULL, kitchen TEXT NOT NULL, title TEXT NOT NULL, version INTEGER NOT NULL, changed_ms BIGINT NOT NULL, archived INTEGER NOT NULL DEFAULT 0)",
        "CREATE INDEX document_kind ON document (kitchen, kind, archived, changed_ms)",
        "CREATE TABLE document_version (document_id TEXT NOT NULL REFERENCES document (id), version INTEGER NOT NULL, text TEXT NOT NULL, who TEXT NOT NULL, why TEXT NOT NULL, saved_ms BIGINT NOT NULL, hash TEXT NOT NULL, PRIMARY KEY (document_id, version))",
        "CREATE TABLE plan (id TEXT PRIMARY KEY, occasion_id TEXT NOT NULL REFERENCES document (id), occasion_version INTEGER NOT NULL, made_ms BIGINT NOT NULL, json TEXT NOT NULL, versions TEXT NOT NULL)",
        "CREATE INDEX plan_occasion ON plan (occasion_id, made_ms)",
        "CREATE TABLE run (id TEXT PRIMARY KEY, plan_id TEXT NOT NULL REFERENCES plan (id), started_ms BIGINT NOT NULL, rehearsal INTEGER NOT NULL)",
        "CREATE TABLE live_event (run_id TEXT NOT NULL REFERENCES run (id), id TEXT NOT NULL, at_ms BIGINT NOT NULL, kind TEXT NOT NULL, subject TEXT NOT NULL, who TEXT NOT NULL, text TEXT NOT NULL, PRIMARY KEY (run_id, id))",
        "CREATE INDEX live_event_order ON live_event (run_id, at_ms, id)",
        "CREATE TABLE trial (id TEXT PRIMARY KEY, card_id TEXT NOT NULL REFERENCES document (id), card_version INTEGER NOT NULL, made_ms BIGINT NOT NULL, json TEXT NOT NULL)",
        "CREATE TABLE control_log (kitchen TEXT NOT NULL, seq BIGINT NOT NULL, at_ms BIGINT NOT NULL, who TEXT NOT NULL, json TEXT NOT NULL, previous TEXT NOT NULL, hash TEXT NOT NULL, PRIMARY KEY (kitchen, seq))",
    ];

    /// <summary>What both databases share of migration 3: people, their sessions and passkeys, links, the audit log, records and photographs.</summary>
    public static readonly string[] Third =
    [
        "CREATE TABLE person (id TEXT PRIMARY KEY, kitchen TEXT NOT NULL, name TEXT NOT NULL, folded TEXT NOT NULL, role TEXT NOT NULL, owner INTEGER NOT NULL, password TEXT NOT NULL, stamp TEXT NOT NULL, failed INTEGER NOT NULL, locked_until_ms BIGINT NOT NULL, made_ms BIGINT NOT NULL, gone INTEGER NOT NULL DEFAULT 0)",
        // A name is one person's as long as that person is there; a kitchen has one owner. The database holds both, whichever process writes.
        "CREATE UNIQUE INDEX person_name ON person (kitchen, folded) WHERE gone = 0",
        "CREATE UNIQUE INDEX person_owner ON person (kitchen) WHERE owner = 1 AND gone = 0",
        "CREATE TABLE passkey (credential TEXT PRIMARY KEY, person_id TEXT NOT NULL REFERENCES person (id), json TEXT NOT NULL, made_ms BIGINT NOT NULL)",
        "CREATE TABLE session (id TEXT PRIMARY KEY, person_id TEXT NOT NULL REFERENCES person (id), ticket TEXT NOT NULL, made_ms BIGINT NOT NULL, expires_ms BIGINT NOT NULL)",
        "CREATE TABLE link (id TEXT PRIMARY KEY, kitchen TEXT NOT NULL, purpose TEXT NOT NULL, subject TEXT NOT NULL, who TEXT NOT NULL, made_ms BIGINT NOT NULL, expires_ms BIGINT NOT NULL, ended_ms BIGINT NOT NULL DEFAULT 0)",
        "CREATE INDEX link_subject ON link (kitchen, purpose, subject)",
        "CREATE TABLE audit_log (kitchen TEXT NOT NULL, seq BIGINT NOT NULL, at_ms BIGINT NOT NULL, who TEXT NOT NULL, json TEXT NOT NULL, previous TEXT NOT NULL, hash TEXT NOT NULL, PRIMARY KEY (kitchen, seq))",
        "CREATE TABLE record (id TEXT PRIMARY KEY REFERENCES document (id), occasion_id TEXT NOT NULL REFERENCES document (id), plan_id TEXT NOT NULL, made_ms BIGINT NOT NULL)",
        "CREATE INDEX record_occasion ON record (occasion_id, made_ms)",
        "CREATE INDEX trial_card ON trial (card_id, made_ms)",
    ];
}
