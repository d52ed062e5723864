using System.Collections.Immutable;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>From the words a card uses for kit to the types a sheet lists. Small kit that every kitchen has enough of is not planned.</summary>
internal static class KitTypes
{
    private static readonly (string Word, string Type)[] Known =
    [
        ("blender", "blender"), ("water bath", "bath"), ("sealer", "sealer"), ("blast chiller", "chiller"), ("chiller", "chiller"),
        ("dehydrator", "dehydrator"), ("hob", "hob"), ("ring", "hob"), ("oven", "oven"), ("mixer", "mixer"), ("freezer", "freezer"),
    ];

    /// <summary>Planned kit types a step names, in the order of the list above.</summary>
    public static ImmutableArray<string> Of(Step step)
        => [.. Known.Where(k => step.Kit.Any(n => n.Contains(k.Word, StringComparison.OrdinalIgnoreCase))).Select(k => k.Type).Distinct()];
}
