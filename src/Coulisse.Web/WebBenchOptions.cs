namespace Coulisse.Web;

/// <summary>How the bench is started.</summary>
public sealed record WebBenchOptions
{
    /// <summary>The port when none is named.</summary>
    public const int UsualPort = 5080;

    /// <summary>Port; 0 lets the system choose.</summary>
    public int Port { get; init; } = UsualPort;

    /// <summary>False: this machine only. True: every address of this machine, so that tablets on the kitchen's network reach it.</summary>
    public bool Network { get; init; }

    /// <summary>Folder of the embedded store, or a PostgreSQL connection string.</summary>
    public string Store { get; init; } = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "coulisse");

    /// <summary>The clock; tests put their own in its place.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
