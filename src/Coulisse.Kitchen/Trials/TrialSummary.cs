using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Kitchen.Trials;

/// <summary>Mean and spread of one figure over repeats.</summary>
/// <param name="What">What was measured.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Count">How many figures.</param>
/// <param name="Mean">Their mean.</param>
/// <param name="Deviation">Sample standard deviation; null for one figure, which tells no spread.</param>
/// <param name="Least">Smallest.</param>
/// <param name="Most">Largest.</param>
public sealed record Repeated(string What, string Unit, int Count, double Mean, double? Deviation, double Least, double Most)
{
    /// <summary>Of figures.</summary>
    /// <param name="what">What.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="figures">One or more.</param>
    public static Repeated Of(string what, string unit, IReadOnlyList<double> figures)
    {
        double mean = figures.Average();
        // about the mean, not by squares less the squared mean, which loses digits (Welford 1962 says why)
        double? deviation = figures.Count > 1 ? Math.Sqrt(figures.Sum(f => (f - mean) * (f - mean)) / (figures.Count - 1)) : null;
        return new Repeated(what, unit, figures.Count, mean, deviation, figures.Min(), figures.Max());
    }
}

/// <summary>What repeats of one version of a card say together.</summary>
public sealed record TrialSummary
{
    /// <summary>Good runs that a standardised recipe needs: it has been tried, adapted and retried at least three times with the same good results and yield (USDA/Institute of Child Nutrition, "USDA Recipe Standardization Guide", definition of a standardized recipe).</summary>
    public const int GoodRuns = 3;

    /// <summary>Farthest a yield may lie from the mean of the good runs and still be "the same yield". Common practice, no source.</summary>
    public const double SameYield = 0.05;

    /// <summary>Trials taken together.</summary>
    public required int Trials { get; init; }

    /// <summary>Good ones among them.</summary>
    public required int Good { get; init; }

    /// <summary>True when the version may be called standardised.</summary>
    public required bool Standardised { get; init; }

    /// <summary>Why, or why not yet.</summary>
    public required string Why { get; init; }

    /// <summary>Minutes by step, yields by part (share of what went in, and grams for the card's amount), marks by scale.</summary>
    public ImmutableArray<Repeated> Figures { get; init; } = [];

    /// <summary>Takes trials of one version together.</summary>
    /// <param name="trials">Trials of the same version of the same card.</param>
    public static TrialSummary Of(IReadOnlyList<Trial> trials)
    {
        List<Repeated> figures = [];
        figures.AddRange(trials.SelectMany(t => t.Times).GroupBy(t => (t.Part, t.Step)).Select(g => Repeated.Of((g.Key.Part.Length > 0 ? g.Key.Part + ": " : "") + g.Key.Step, "min", [.. g.Select(t => t.Minutes)])));
        figures.AddRange(trials.SelectMany(t => t.Yields.Select(y => (y.Part, Grams: y.OutGrams / t.Factor))).GroupBy(y => y.Part).Select(g => Repeated.Of(g.Key + " came out", "g", [.. g.Select(y => y.Grams)])));
        figures.AddRange(trials.SelectMany(t => t.Yields).Where(y => y.InGrams > 0).GroupBy(y => y.Part).Select(g => Repeated.Of(g.Key + " yield", "%", [.. g.Select(y => 100 * y.OutGrams / y.InGrams!.Value)])));
        figures.AddRange(trials.SelectMany(t => t.Cores).Where(c => c.Watts > 0).GroupBy(c => (c.Part, c.Step)).Select(g => Repeated.Of((g.Key.Part.Length > 0 ? g.Key.Part + ": " : "") + "h, " + g.Key.Step, "W/(m²·K)", [.. g.Select(c => c.Watts!.Value)])));
        figures.AddRange(Tasting.Scales.Select(s => (Scale: s, Marks: trials.SelectMany(t => t.Tastings).Where(t => t.Marks.ContainsKey(s)).Select(t => (double)t.Marks[s]).ToArray())).Where(m => m.Marks.Length > 0).Select(m => Repeated.Of(m.Scale, "of 5", m.Marks)));
        Trial[] good = [.. trials.Where(t => t.Good == true)];
        (bool standardised, string why) = Judge(trials, good);
        return new TrialSummary { Trials = trials.Count, Good = good.Length, Standardised = standardised, Why = why, Figures = [.. figures] };
    }

    private static (bool, string) Judge(IReadOnlyList<Trial> trials, Trial[] good)
    {
        if (good.Length < GoodRuns)
        {
            return (false, string.Create(CultureInfo.InvariantCulture, $"{good.Length} of {trials.Count} trials {(good.Length == 1 ? "is a good run" : "are good runs")}; a standardised card needs {GoodRuns}."));
        }

        if (trials.Select(t => t.CardVersion).Distinct().Count() > 1)
        {
            return (false, "The trials are of different versions; only repeats of one count.");
        }

        foreach (IGrouping<string, double> part in good.SelectMany(t => t.Yields.Select(y => (y.Part, Grams: y.OutGrams / t.Factor))).GroupBy(y => y.Part, y => y.Grams))
        {
            double mean = part.Average();
            double off = part.Max(g => Math.Abs(g - mean)) / mean;
            if (off > SameYield)
            {
                return (false, string.Create(CultureInfo.InvariantCulture, $"{part.Key} came out up to {100 * off:0.#} % off its mean; the same yield is within {100 * SameYield:0} %."));
            }
        }

        return good.Any(t => t.Yields.IsEmpty)
            ? (false, "A good run says nothing of what came out; weigh it.")
            : (true, string.Create(CultureInfo.InvariantCulture, $"{good.Length} good runs with the same yield."));
    }
}
