namespace Coulisse.Store.Migrations;

/// <summary>SQLite's form of each migration.</summary>
internal static class Sqlite
{
    public static IReadOnlyList<string> Statements(int number) => number switch
    {
        1 =>
        [
            .. Numbered.First,
            // Titles and bodies arrive folded (accents and case), so the tokenizer needs no rules of its own.
            "CREATE VIRTUAL TABLE search_text USING fts5 (document_id UNINDEXED, kind UNINDEXED, title, body, tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3')",
        ],
        2 => ["CREATE TABLE setting (kitchen TEXT NOT NULL, key TEXT NOT NULL, value TEXT NOT NULL, PRIMARY KEY (kitchen, key))"],
        3 => [.. Numbered.Third, "CREATE TABLE attachment (id TEXT PRIMARY KEY, document_id TEXT NOT NULL REFERENCES document (id), name TEXT NOT NULL, type TEXT NOT NULL, bytes BLOB NOT NULL, hash TEXT NOT NULL, made_ms BIGINT NOT NULL)", "CREATE INDEX attachment_of ON attachment (document_id, made_ms)"],
        _ => throw new ArgumentOutOfRangeException(nameof(number), number, "There is no such migration."),
    };
}
