namespace Coulisse.Cli;

/// <summary>Exit codes, the same for every command.</summary>
internal static class Exit
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The input has problems; they were printed.</summary>
    public const int Problems = 1;

    /// <summary>Wrong usage.</summary>
    public const int Usage = 2;

    /// <summary>A file or the database could not be read or written.</summary>
    public const int Storage = 3;

    /// <summary>Our own fault.</summary>
    public const int OurFault = 70;
}
