namespace Coulisse.Solver;

/// <summary>Which solver finds the plans.</summary>
public static class SolverVersion
{
    /// <summary>Version of OR-Tools.</summary>
    public static string Text { get; } = typeof(Google.OrTools.Sat.CpModel).Assembly.GetName().Version?.ToString(3) ?? "unknown";
}
