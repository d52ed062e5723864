namespace Coulisse.Store;

/// <summary>The store cannot be used: one sentence that says what and what would help.</summary>
public sealed class StoreException : Exception
{
    public StoreException()
    {
    }

    public StoreException(string message)
        : base(message)
    {
    }

    public StoreException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
