using System.Data.Common;

namespace Coulisse.Store.Dialects;

/// <summary>What differs between the two databases; everything else is one SQL.</summary>
internal interface IDialect : IAsyncDisposable
{
    /// <summary>Name for messages: "SQLite" or "PostgreSQL".</summary>
    string Name { get; }

    /// <summary>Opens a connection ready to use.</summary>
    Task<DbConnection> OpenAsync(CancellationToken cancel);

    /// <summary>ORDER BY of columns that sorts the same on both databases, byte by byte.</summary>
    string Ordered(string columns);

    /// <summary>Query that counts the table in which the store's form is written: 0 in a new store.</summary>
    string MetaExists { get; }

    /// <summary>Tells the other processes of this store, once the transaction ends well, that a run has changed.</summary>
    Task TellAsync(DbConnection connection, DbTransaction transaction, string run, CancellationToken cancel);

    /// <summary>Runs that any process changed, as they change; ends with the line. A store of one process has none to tell.</summary>
    IAsyncEnumerable<string> ListenAsync(CancellationToken cancel);

    /// <summary>Statements of one numbered migration.</summary>
    IReadOnlyList<string> Migration(int number);

    /// <summary>Checks that the file or server is sound; throws <see cref="StoreException"/> when it is not.</summary>
    Task CheckAsync(DbConnection connection, CancellationToken cancel);

    /// <summary>Takes the lock under which only one process migrates; released when the connection closes or the transaction ends.</summary>
    Task LockForMigrationAsync(DbConnection connection, DbTransaction transaction, CancellationToken cancel);

    /// <summary>FROM clause of a search: the search table with its index.</summary>
    string SearchFrom { get; }

    /// <summary>WHERE clause that finds the words in <c>@q</c> in the search table, best first in <see cref="SearchOrder"/>.</summary>
    string SearchWhere { get; }

    /// <summary>ORDER BY of a search.</summary>
    string SearchOrder { get; }

    /// <summary>Turns folded words into the database's query text, each word as a beginning, among documents of one kind.</summary>
    string SearchQuery(string kind, IReadOnlyList<string> foldedWords);

    /// <summary>True when the error means that another writer was there first and a retry may succeed.</summary>
    bool IsBusy(DbException e);
}
