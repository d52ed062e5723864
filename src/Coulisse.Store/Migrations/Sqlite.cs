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
        4 =>
        [
            // The words stand in a table of their own, found by document, and the index over it: in the index alone, finding a document to take it out meant reading every one.
            "ALTER TABLE search_text RENAME TO search_earlier",
            "CREATE TABLE search_text (row INTEGER PRIMARY KEY, document_id TEXT NOT NULL UNIQUE, kind TEXT NOT NULL, title TEXT NOT NULL, body TEXT NOT NULL)",
            "CREATE VIRTUAL TABLE search_words USING fts5 (kind, title, body, content = 'search_text', content_rowid = 'row', tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3')",
            "CREATE TRIGGER search_added AFTER INSERT ON search_text BEGIN INSERT INTO search_words (rowid, kind, title, body) VALUES (new.row, new.kind, new.title, new.body); END",
            "CREATE TRIGGER search_removed AFTER DELETE ON search_text BEGIN INSERT INTO search_words (search_words, rowid, kind, title, body) VALUES ('delete', old.row, old.kind, old.title, old.body); END",
            "INSERT INTO search_text (document_id, kind, title, body) SELECT document_id, kind, title, body FROM search_earlier",
            "DROP TABLE search_earlier",
        ],
        _ => throw new ArgumentOutOfRangeException(nameof(number), number, "There is no such migration."),
    };
}
