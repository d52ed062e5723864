namespace Coulisse.Cards.Tests;

/// <summary>Shares reached; raised as the reader grows, never lowered.</summary>
internal static class Floors
{
    public const double LineAmounts = 0.98;
    public const double LineFoods = 0.97;
    public const double StepMinutes = 0.95;
    public const double StepDegrees = 1.0;
    public const double LineComponent = 0.98;
}
