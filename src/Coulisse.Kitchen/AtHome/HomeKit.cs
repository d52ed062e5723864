using System.Collections.Immutable;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.AtHome;

/// <summary>What a reader of a handout has at home.</summary>
/// <param name="Measures">Size system of the spoons and cups: au, nz, uk, us, jp, metric.</param>
public sealed record HomeKit(string Measures)
{
    /// <summary>Division of the kitchen scale, g.</summary>
    public double ScaleStepGrams { get; init; } = 5;

    /// <summary>A pan of water watched with a thermometer keeps its setting to this, K either way.</summary>
    public double PanSwing { get; init; } = 3;

    /// <summary>Least a jug blender works through, g. Common practice, no source.</summary>
    public double BlenderLeastGrams { get; init; } = 200;

    /// <summary>Plates a handout is for, when the card counts plates.</summary>
    public int Plates { get; init; } = 6;

    /// <summary>No ratio of two ingredients of a part may move by more than this share.</summary>
    public double RatioLimit { get; init; } = 0.02;

    /// <summary>Division of a pocket scale for what neither scale nor spoon measures, g; null when there is none. A handout that needs it says so.</summary>
    public double? PocketStepGrams { get; init; } = 0.1;

    /// <summary>Least that is asked of the kitchen scale, g: five divisions. What it shows may still be half a division out.</summary>
    public double LeastShown => 5 * ScaleStepGrams;
}

/// <summary>What stands in at home for kit of the trade.</summary>
/// <param name="Kit">Kit as a card names it.</param>
/// <param name="AtHome">What is used instead.</param>
/// <param name="Source">Source.</param>
public sealed record HomeSubstitute(string Kit, string AtHome, string Source)
{
    private static readonly Lazy<ImmutableArray<HomeSubstitute>> Table = new(() => [.. ReferenceTable.Load("work/home-kit.tsv").Rows.Select(r => new HomeSubstitute(r[0], r[1], r[2]))]);

    /// <summary>Substitutes for the kit that some texts name, each once.</summary>
    /// <param name="texts">Steps as written.</param>
    public static ImmutableArray<HomeSubstitute> For(IEnumerable<string> texts)
    {
        string all = string.Join('\n', texts);
        return [.. Table.Value.Where(s => all.Contains(s.Kit, StringComparison.OrdinalIgnoreCase)).DistinctBy(s => s.AtHome)];
    }
}
