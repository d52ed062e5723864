using System.CommandLine;

namespace Coulisse.Cli.Commands;

/// <summary>The commands, one file each, by the word that calls them.</summary>
internal static class All
{
    // Made only when asked for: thirty commands with all their options are a third of a second of a card's reading.
    private static readonly (string Name, Func<Command> Create)[] Commands =
    [
        ("read", ReadCommand.Create),
        ("foods", FoodsCommand.Create),
        ("weigh", WeighCommand.Create),
        ("scale", ScaleCommand.Create),
        ("label", LabelCommand.Create),
        ("mixture", MixtureCommand.Create),
        ("substitute", SubstituteCommand.Create),
        ("reach", ReachCommand.Create),
        ("diets", DietsCommand.Create),
        ("safety", SafetyCommand.Create),
        ("heat", HeatCommand.Create),
        ("backup", BackupCommand.Create),
        ("restore", RestoreCommand.Create),
        ("export", ExportCommand.Create),
        ("import", ImportCommand.Create),
        ("fit", FitCommand.Create),
        ("plan", PlanCommand.Create),
        ("demo", DemoCommand.Create),
        ("order", OrderCommand.Create),
        ("cost", CostCommand.Create),
        ("prices", PricesCommand.Create),
        ("balance", BalanceCommand.Create),
        ("loads", LoadsCommand.Create),
        ("line", LineCommand.Create),
        ("replan", ReplanCommand.Create),
        ("print", PrintCommand.Create),
        ("translate", TranslateCommand.Create),
        ("trial", TrialCommand.Create),
        ("record", RecordCommand.Create),
        ("serve", ServeCommand.Create),
    ];

    /// <summary>The commands a call may mean: the one its first word names, or all of them, so that help and a slip of the pen see the whole list.</summary>
    public static IEnumerable<Command> For(string? first)
    {
        foreach ((string name, Func<Command> create) in Commands)
        {
            if (name == first)
            {
                return [create()];
            }
        }

        return Commands.Select(c => c.Create());
    }
}
