using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Substance;

/// <summary>Alcohol by volume and what cooking leaves of it.</summary>
public static class Spirit
{
    /// <summary>Density of ethanol at 20 °C, g/mL (OIML R 22).</summary>
    public const double EthanolDensity = 0.78924;

    private static readonly Lazy<(string Process, double? Minutes, double Percent)[]> Left = new(() =>
        [.. ReferenceTable.Load("measures/alcohol-left.tsv").Rows.Select(r => (r[0], ReferenceTable.Number(r[1]), ReferenceTable.Number(r[2])!.Value))]);

    private static readonly Lazy<(double Minutes, double Percent)[]> Simmered = new(() => [(0, 85), .. Left.Value.Where(p => p.Process == "simmered").Select(p => (p.Minutes!.Value, p.Percent)).OrderBy(p => p.Item1)]);

    /// <summary>Grams of ethanol in a volume of a given strength.</summary>
    public static double EthanolGrams(double millilitres, double percentVolume) => percentVolume is >= 0 and <= 100 && millilitres >= 0
        ? millilitres * percentVolume / 100 * EthanolDensity
        : throw new ArgumentOutOfRangeException(nameof(percentVolume), percentVolume, "A strength is 0 to 100 % by volume.");

    /// <summary>Strength of a mixture, percent by volume.</summary>
    public static double PercentVolume(double ethanolGrams, double millilitres) => millilitres > 0 ? 100 * ethanolGrams / EthanolDensity / millilitres : throw new ArgumentOutOfRangeException(nameof(millilitres), millilitres, "A volume is above 0.");

    /// <summary>Share of the alcohol left by a process that the table gives without minutes, 0 to 1: "flamed", "off the heat", "stood overnight", "baked" (25 min, not stirred in).</summary>
    /// <exception cref="ArgumentOutOfRangeException">A process that is not in the table.</exception>
    /// <remarks>USDA retention factors, release 6.</remarks>
    public static double LeftBy(string process) => process != "simmered" && Left.Value.FirstOrDefault(p => p.Process == process) is { Process: not null } found
        ? found.Percent / 100
        : throw new ArgumentOutOfRangeException(nameof(process), process, "A process is flamed, off the heat, stood overnight or baked.");

    /// <summary>Share of the alcohol left after simmering or baking it stirred in, 0 to 1, with the range of the study behind the table (wide pans lose more).</summary>
    /// <remarks>USDA retention factors, release 6; between its times on the logarithm of the share (common practice). It is no claim that a dish is free of alcohol.</remarks>
    public static (double Best, double Low, double High) LeftAfter(double minutes)
    {
        if (minutes is not >= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(minutes), minutes, "Minutes are 0 or more.");
        }

        (double Minutes, double Percent)[] points = Simmered.Value;
        double best = points[^1].Percent;
        for (int i = 1; i < points.Length; i++)
        {
            if (minutes <= points[i].Minutes)
            {
                double share = (minutes - points[i - 1].Minutes) / (points[i].Minutes - points[i - 1].Minutes);
                best = Math.Exp(Math.Log(points[i - 1].Percent) + (share * (Math.Log(points[i].Percent) - Math.Log(points[i - 1].Percent))));
                break;
            }
        }

        return (best / 100, Math.Max(0.04, best / 100 * 0.5), Math.Min(0.95, best / 100 * 1.5));
    }
}
