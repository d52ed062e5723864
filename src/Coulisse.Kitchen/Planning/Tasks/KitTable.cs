using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Like kit taken together: rings of one place, or one oven by itself.</summary>
/// <param name="Key">Code of the first.</param>
/// <param name="Type">Kit type.</param>
/// <param name="Kit">The pieces.</param>
/// <param name="Capacity">Shelves, rings or pieces in all.</param>
internal sealed record KitGroup(string Key, string Type, ImmutableArray<SheetKit> Kit, int Capacity);

/// <summary>The kit of an occasion as resources: what holds a set point by itself, the rest grouped by type and place.</summary>
internal sealed class KitTable
{
    private static readonly string[] Alone = ["oven", "bath", "dehydrator", "chiller", "blender", "sealer", "fridge"];

    public KitTable(Occasion occasion)
    {
        foreach (SheetKit k in occasion.Kit.Where(k => k.Code.Length > 0))
        {
            int each = k.Type is "oven" or "dehydrator" or "chiller" or "fridge" ? k.Shelves ?? 1 : 1;
            if (Alone.Contains(k.Type))
            {
                // A dehydrator load or a chiller load is one load here; trays within it are the shapes' business.
                Groups.Add(new KitGroup(k.Code, k.Type, [k], k.Type == "oven" ? each * k.Number : k.Number));
            }
            else if (Groups.FindIndex(g => g.Type == k.Type && g.Kit[0].Place == k.Place) is >= 0 and int at)
            {
                Groups[at] = Groups[at] with { Kit = Groups[at].Kit.Add(k), Capacity = Groups[at].Capacity + k.Number };
            }
            else
            {
                Groups.Add(new KitGroup(k.Code, k.Type, [k], k.Number));
            }
        }
    }

    public List<KitGroup> Groups { get; } = [];

    /// <summary>Every way to find kit for a task, one group for each kit it needs; kit the sheet does not list is not planned.</summary>
    public IEnumerable<ImmutableArray<KitGroup>> Ways(PrepTask task)
    {
        List<ImmutableArray<KitGroup>> ways = [[]];
        foreach (KitUse use in task.Kit)
        {
            KitGroup[] fit = [.. Groups.Where(g => g.Type == use.Type && (task.Celsius is null || g.Kit[0].CelsiusMax is null || g.Kit[0].CelsiusMax >= task.Celsius) && Allowed(g, task))];
            // What needs four shelves does not go into an oven of two, unless there is no larger one (then it was cut into loads for the largest).
            int roomiest = fit.Select(g => g.Capacity).DefaultIfEmpty().Max();
            fit = [.. fit.Where(g => g.Capacity >= Math.Min(use.Amount, roomiest))];

            // Kit the sheet does not list is not planned; kit that a person has forbidden leaves no way.
            if (fit.Length > 0 || Groups.Any(g => g.Type == use.Type && !Allowed(g, task)))
            {
                ways = [.. ways.SelectMany(w => fit.Select(g => w.Add(g)))];
            }
        }

        return ways;
    }

    // A pin speaks of the kit of its own type only; of a group of like kit, one of the group is enough.
    private bool Allowed(KitGroup group, PrepTask task)
    {
        string[] pinned = [.. task.OnlyOn.Where(code => Groups.Any(g => g.Type == group.Type && g.Kit.Any(k => k.Code == code)))];
        return (pinned.Length == 0 || group.Kit.Any(k => pinned.Contains(k.Code))) && !group.Kit.All(k => task.NotOn.Contains(k.Code));
    }
}
