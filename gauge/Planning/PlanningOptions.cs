using System.Globalization;

namespace Coulisse.Gauge.Planning;

/// <summary>Options of gauge planning as written.</summary>
internal sealed record PlanningOptions
{
    public const string Usage = """
        gauge planning --set SET[,SET…] [--seconds S] [--workers W] [--seed N] [--limit N] [--only A,B] [--engine-only] [--list] [--data FOLDER]
                       [--log FILE] [--budget MINUTES] [--append FILE]
          SET       j30 j60 j90 j120 max-j10 max-j20 max-j30 max-ubo10 … max-ubo200 mm-j10 … mm-j30, or all: the sets of the published bars
          --log     a line an instance and way, written through at once; the same command goes on where it was cut off
          --budget  no instance is begun after so many minutes; what is done is spread evenly over every set
          --append  the tables go to the end of FILE as well
          FOLDER    holds instances/SET.tar.gz and known.tsv; default: COULISSE_SCHEDULING, or COULISSE_SHARED/data/scheduling
        Example: coulisse gauge planning --set all --seconds 10 --budget 40 --log planning.tsv
        """;

    private static readonly string[] All = ["j30", "j60", "j120", "max-ubo20", "max-ubo50", "max-j30", "mm-j10", "mm-j20", "mm-j30"];

    private static readonly string[] Flags = ["--engine-only", "--list"];

    private static readonly string[] Named = ["--set", "--seconds", "--workers", "--seed", "--limit", "--only", "--data", "--log", "--budget", "--append"];

    public required string[] Sets { get; init; }

    public required string Folder { get; init; }

    public int Seconds { get; init; } = 10;

    public int Workers { get; init; } = 2;

    public int Seed { get; init; } = 1;

    public int Limit { get; init; } = int.MaxValue;

    /// <summary>Minutes; null for as long as it takes.</summary>
    public int? Budget { get; init; }

    public string[] Only { get; init; } = [];

    public bool EngineOnly { get; init; }

    public bool List { get; init; }

    public string? Log { get; init; }

    public string? Append { get; init; }

    /// <summary>Options read; null when something is not understood or missing, which is said.</summary>
    public static PlanningOptions? Read(string[] args)
    {
        Dictionary<string, string> said = [];
        for (int i = 0; i < args.Length; i++)
        {
            bool flag = Flags.Contains(args[i]);
            if ((!flag && !Named.Contains(args[i])) || (!flag && i + 1 >= args.Length))
            {
                Console.Error.WriteLine($"gauge: {args[i]} is not understood.\n{Usage}");
                return null;
            }

            said[args[i]] = flag ? "" : args[++i];
        }

        string? folder = said.GetValueOrDefault("--data") ?? Environment.GetEnvironmentVariable("COULISSE_SCHEDULING")
            ?? (Environment.GetEnvironmentVariable("COULISSE_SHARED") is { } beside ? Path.Combine(beside, "data", "scheduling") : null);
        string[] numbers = ["--seconds", "--workers", "--seed", "--limit", "--budget"];
        if (!said.TryGetValue("--set", out string? sets) || numbers.Any(n => said.ContainsKey(n) && Number(said, n) is null))
        {
            Console.Error.WriteLine(Usage);
            return null;
        }

        return new PlanningOptions
        {
            Sets = sets == "all" ? All : sets.Split(','),
            Folder = folder ?? "",
            Seconds = Number(said, "--seconds") ?? 10,
            Workers = Number(said, "--workers") ?? 2,
            Seed = Number(said, "--seed") ?? 1,
            Limit = Number(said, "--limit") ?? int.MaxValue,
            Budget = Number(said, "--budget"),
            Only = said.TryGetValue("--only", out string? only) ? only.Split(',') : [],
            EngineOnly = said.ContainsKey("--engine-only"),
            List = said.ContainsKey("--list"),
            Log = said.GetValueOrDefault("--log"),
            Append = said.GetValueOrDefault("--append"),
        };
    }

    private static int? Number(Dictionary<string, string> said, string name)
        => said.TryGetValue(name, out string? text) && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int v) && v > 0 ? v : null;
}
