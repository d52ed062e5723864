using System.Collections.Immutable;

namespace Coulisse.Web.House;

/// <summary>Which columns of the kit table a kind of kit has no use for: a scale has no set point, a ring no shelf that cools. A kind that is not known may need any of them.</summary>
internal static class KitFields
{
    private static readonly ImmutableArray<string> Heat = [BookText.Temperatures, BookText.Rates];
    private static readonly ImmutableArray<string> Electric = [BookText.Power, BookText.Circuit];

    /// <summary>Columns without use for the kind.</summary>
    /// <param name="kind">Type of kit as a sheet reads it.</param>
    public static ImmutableArray<string> Useless(string kind) => kind switch
    {
        "hob" or "blender" or "sealer" or "mixer" => Heat,
        "fridge" or "freezer" or "chiller" => [BookText.Rates],
        "scale" or "probe" => [BookText.Capacity, .. Heat, .. Electric],
        "tin" or "tray" or "frame" or "mould" or "plate" or "cloth" => [.. Heat, .. Electric],
        _ => [],
    };
}
