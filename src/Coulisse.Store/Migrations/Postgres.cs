namespace Coulisse.Store.Migrations;

/// <summary>PostgreSQL's form of each migration.</summary>
internal static class Postgres
{
    public static IReadOnlyList<string> Statements(int number) => number switch
    {
        1 =>
        [
            .. Numbered.First,
            "CREATE TABLE search_text (document_id TEXT PRIMARY KEY, kind TEXT NOT NULL, title TEXT NOT NULL, body TEXT NOT NULL, words tsvector GENERATED ALWAYS AS (setweight(to_tsvector('simple', title), 'A') || to_tsvector('simple', body)) STORED)",
            "CREATE INDEX search_words ON search_text USING gin (words)",
        ],
        2 => ["CREATE TABLE setting (kitchen TEXT NOT NULL, key TEXT NOT NULL, value TEXT NOT NULL, PRIMARY KEY (kitchen, key))"],
        3 => [.. Numbered.Third, "CREATE TABLE attachment (id TEXT PRIMARY KEY, document_id TEXT NOT NULL REFERENCES document (id), name TEXT NOT NULL, type TEXT NOT NULL, bytes BYTEA NOT NULL, hash TEXT NOT NULL, made_ms BIGINT NOT NULL)", "CREATE INDEX attachment_of ON attachment (document_id, made_ms)"],
        4 =>
        [
            // the kind is one of the indexed words, so that ten thousand cards are found without reading a hundred thousand records; no word begins with a colon, so no beginning of a word finds it
            "DROP INDEX search_words",
            "ALTER TABLE search_text DROP COLUMN words",
            "ALTER TABLE search_text ADD COLUMN words tsvector GENERATED ALWAYS AS (setweight(to_tsvector('simple', title), 'A') || to_tsvector('simple', body) || array_to_tsvector(ARRAY[':' || kind])) STORED",
            "CREATE INDEX search_words ON search_text USING gin (words)",
        ],
        _ => throw new ArgumentOutOfRangeException(nameof(number), number, "There is no such migration."),
    };
}
