using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Minutes to carry food from the kit of one task to the kit of the next, where the two stand in different places whatever is chosen.</summary>
/// <remarks>Where it hangs on the kit chosen nothing is added here; a plan in which it then does not fit is tightened (<see cref="Tightened"/>).</remarks>
internal static class CarryMinutes
{
    /// <summary>Minutes, rounded up; 0 where the places may be one or the sheet gives no minutes.</summary>
    public static int Between(Occasion occasion, KitTable kit, PrepTask from, PrepTask to)
    {
        if (occasion.Sheet.Ways.IsEmpty || from.Kit.IsEmpty || to.Kit.IsEmpty)
        {
            return 0;
        }

        (string[] here, string[] there) = (Places(kit, from), Places(kit, to));
        return here.Length == 0 || there.Length == 0 || here.Any(p => there.Contains(p, StringComparer.OrdinalIgnoreCase)) ? 0
            : (int)Math.Ceiling(here.SelectMany(_ => there, (a, b) => Ways.Minutes(occasion, a, b) ?? 0).Max() - 1e-9);
    }

    private static string[] Places(KitTable kit, PrepTask task)
    {
        ImmutableArray<KitGroup>[] ways = [.. kit.Ways(task)];
        // Kit without a place can be anywhere.
        return ways.SelectMany(w => w).SelectMany(g => g.Kit).Any(k => k.Place.Length == 0) ? []
            : [.. ways.SelectMany(w => w).SelectMany(g => g.Kit).SelectMany(k => Ways.Stands(k, null)).Distinct(StringComparer.OrdinalIgnoreCase)];
    }
}
