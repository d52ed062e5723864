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
        _ => throw new ArgumentOutOfRangeException(nameof(number), number, "There is no such migration."),
    };
}
