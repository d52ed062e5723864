namespace Coulisse.Cards.Reading;

/// <summary>"5分おきに混ぜる", "30分ごとに返す": how often one looks at it, and not how long. "30分おきに2回" is waited twice, "30分おき、焼く" lets it stand.</summary>
internal static class Intervals
{
    private const int Near = 8;
    private static readonly string[] Every = ["おきに", "ごとに", "毎に"];

    /// <summary>True where the words behind a time make it such an interval.</summary>
    /// <param name="tail">What stands behind it.</param>
    public static bool Told(string tail)
    {
        foreach (string every in Every)
        {
            if (tail.StartsWith(every, StringComparison.Ordinal))
            {
                // Counted, it is waited so many times.
                string count = tail[every.Length..Math.Min(tail.Length, every.Length + Near)];
                return !count.Contains('回') && !count.Contains('度');
            }
        }

        return false;
    }
}
