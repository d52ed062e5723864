using Coulisse.Cards;

namespace Coulisse.Kitchen.Method;

/// <summary>What a step does to the weight of what is in hand.</summary>
public enum StepChangeKind
{
    /// <summary>Nothing that is stated.</summary>
    None,

    /// <summary>Water driven off by heat or dry air.</summary>
    Evaporates,

    /// <summary>Water taken up.</summary>
    TakesUp,

    /// <summary>Liquid poured off; what stays is kept.</summary>
    Drains,

    /// <summary>Passed through a sieve; what stays behind is not known.</summary>
    Strains,

    /// <summary>Fat lifted off.</summary>
    Skims,

    /// <summary>A piece cut off.</summary>
    Trims,

    /// <summary>Oil taken up, water lost.</summary>
    Fries,
}

/// <summary>The change a step makes, with the weight it states.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="Left">Weight after it, g; the weight before when the step states none.</param>
public readonly record struct StepChange(StepChangeKind Kind, double Left)
{
    private static readonly string[] Straining = ["strain", "sieve_fine"];
    private static readonly string[] Heating = ["reduce", "simmer", "bake", "dehydrate", "roast", "boil_food"];
    private static readonly string[] Swelling = ["soak", "boil_food", "simmer", "cook_rice", "cook_pasta", "steam", "poach", "soak_gelatine"];

    /// <summary>Of a step.</summary>
    /// <param name="step">The step.</param>
    /// <param name="before">Weight before it, g.</param>
    public static StepChange Of(Step step, double before)
    {
        ArgumentNullException.ThrowIfNull(step);
        string[] done = [.. step.Operations.Append(step.Operation).OfType<string>()];
        double? end = step.EndGrams ?? (step.LossPercent is { } percent and > 0 and < 100 ? before * (1 - (percent / 100)) : null);
        if (done.Contains("deep_fry"))
        {
            return new StepChange(StepChangeKind.Fries, end ?? before);
        }

        if (end is not { } left || left <= 0 || left == before)
        {
            return new StepChange(StepChangeKind.None, before);
        }

        if (left > before)
        {
            return new StepChange(done.Any(Swelling.Contains) ? StepChangeKind.TakesUp : StepChangeKind.None, done.Any(Swelling.Contains) ? left : before);
        }

        StepChangeKind kind = Says(step, "skim", "dégraiss", "abschöpf", "desgras", "sgrass", "あくを") ? StepChangeKind.Skims
            : done.Any(o => o is "drain" or "hang_drain") || Says(step, "drain", "égoutt", "abtropf", "escurr", "scola", "水気を切") ? StepChangeKind.Drains
            : done.Any(Straining.Contains) ? StepChangeKind.Strains
            : done.Any(o => o.StartsWith("trim_", StringComparison.Ordinal)) || Says(step, "trim", "parer", "parez", "zuschneiden", "recort", "rifila") ? StepChangeKind.Trims
            : step.Temperatures.Any(t => t.Of is TemperatureOf.Oven or TemperatureOf.Dryer or TemperatureOf.Pan || t.Celsius >= 60) || done.Any(Heating.Contains) ? StepChangeKind.Evaporates
            : StepChangeKind.None;

        // Where nothing is driven off or taken away, only a part of it is spoken of ("press 485 g of it into the tin").
        return new StepChange(kind, kind == StepChangeKind.None ? before : left);
    }

    private static bool Says(Step step, params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (step.Text.Contains(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
