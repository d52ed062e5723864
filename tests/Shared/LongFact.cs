namespace Coulisse.Tests;

/// <summary>For the slow tests that only './test --long' runs.</summary>
internal static class LongRun
{
    public static bool On => Environment.GetEnvironmentVariable("COULISSE_LONG") == "1";

    public static void Only() => Assert.SkipUnless(On, "slow: runs under ./test --long");
}
