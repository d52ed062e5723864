using System.CommandLine;

namespace Coulisse.Cli.Commands;

/// <summary>The commands, one file each.</summary>
internal static class All
{
    public static IEnumerable<Command> Create() =>
    [
        ReadCommand.Create(),
        FoodsCommand.Create(),
        WeighCommand.Create(),
        ScaleCommand.Create(),
        LabelCommand.Create(),
        MixtureCommand.Create(),
        SubstituteCommand.Create(),
        ReachCommand.Create(),
        DietsCommand.Create(),
        SafetyCommand.Create(),
        HeatCommand.Create(),
        BackupCommand.Create(),
        RestoreCommand.Create(),
        ExportCommand.Create(),
        ImportCommand.Create(),
        FitCommand.Create(),
        PlanCommand.Create(),
        DemoCommand.Create(),
        OrderCommand.Create(),
        CostCommand.Create(),
        PricesCommand.Create(),
        BalanceCommand.Create(),
        LoadsCommand.Create(),
        LineCommand.Create(),
        ReplanCommand.Create(),
        PrintCommand.Create(),
        TranslateCommand.Create(),
        TrialCommand.Create(),
        RecordCommand.Create(),
        ServeCommand.Create(),
    ];
}
