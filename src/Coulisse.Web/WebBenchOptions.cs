using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;

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

    /// <summary>Further names this machine answers to when it is open to itself only; without them a name that was turned to point here is refused.</summary>
    public IReadOnlyCollection<string> Names { get; init; } = [];

    /// <summary>Certificate of the bench's own HTTPS; null for plain HTTP.</summary>
    public System.Security.Cryptography.X509Certificates.X509Certificate2? Certificate { get; init; }

    /// <summary>The kitchen's own root, as PEM, for tablets to fetch and trust; null when the certificate is not the bench's own.</summary>
    public string? Root { get; init; }

    /// <summary>Whether browsers reach it by HTTPS.</summary>
    public bool Secure => Certificate is not null;

    /// <summary>Which kitchen's documents are seen; one store may hold many.</summary>
    public string Kitchen { get; init; } = "main";

    /// <summary>Folder of the embedded store, or a PostgreSQL connection string.</summary>
    public string Store { get; init; } = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "coulisse");

    /// <summary>Folder for backups made while the bench runs; null for none.</summary>
    public string? BackupTo { get; init; }

    /// <summary>How often a backup is made.</summary>
    public TimeSpan BackupEvery { get; init; } = TimeSpan.FromHours(24);

    /// <summary>How many of them are kept.</summary>
    public int BackupKeep { get; init; } = 14;

    /// <summary>Log lines as JSON, one object a line, for machines that gather them.</summary>
    public bool JsonLog { get; init; }

    /// <summary>Whether the way of a card is walked once in the background after the first page, so that the first card opens as fast as the next.</summary>
    public bool Warm { get; init; }

    /// <summary>Seconds the planner may look for a better plan before it keeps what it has.</summary>
    public double PlanSeconds { get; init; } = 10;

    /// <summary>Who plans; tests put a slow or a failing planner in its place.</summary>
    public Func<Occasion, PlanOptions, IProgress<Plan>, CancellationToken, Parsed<PlannedOccasion>> Planner { get; init; }
        = (occasion, options, progress, cancel) => PlanFlow.Plan(occasion, options, "au", progress, cancel);

    /// <summary>Seconds the planner may look for each way to go on while a kitchen waits.</summary>
    public double ReplanSeconds { get; init; } = 2;

    /// <summary>Who plans again from where things stand; tests put another in its place.</summary>
    public Func<Occasion, Plan, StateFile.State, PlanOptions, CancellationToken, Parsed<ReplannedOccasion>> Replanner { get; init; }
        = (occasion, plan, state, options, cancel) => ReplanFlow.Replan(occasion, plan, state, options, null, cancel);

    /// <summary>The clock; tests put their own in its place.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
