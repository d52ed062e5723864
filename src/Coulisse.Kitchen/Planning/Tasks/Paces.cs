using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Who may do a task and how long it takes them: minutes are those of a usual hand times the factor of the slowest who serves.</summary>
/// <remarks>What only lasts two minutes inside something that runs by itself, and what the house does (receive, bring, move), takes everybody the same.</remarks>
internal static class Paces
{
    /// <summary>One way for each pace at which it can be done: somebody of that pace and no slower serves.</summary>
    public static (int Minutes, Choice[] Who)[] Of(ImmutableArray<Person> people, PrepTask task, ImmutableArray<int> able, int count)
    {
        double[] paces = Alike(task) ? [1] : [.. able.Select(i => people[i].Speed).Distinct().Order()];
        if (paces.Length <= 1)
        {
            return [(Minutes(task, paces.FirstOrDefault(1)), [new Choice(able, count)])];
        }

        List<(int, Choice[])> ways = [];
        foreach (double pace in paces)
        {
            ImmutableArray<int> no = [.. able.Where(i => people[i].Speed <= pace)];
            ImmutableArray<int> just = [.. able.Where(i => people[i].Speed == pace)];
            if (no.Length >= count)
            {
                ways.Add((Minutes(task, pace), count == 1 ? [new Choice(just, 1)] : [new Choice(just, 1), new Choice(no, count - 1)]));
            }
        }

        return [.. ways];
    }

    /// <summary>Minutes when the slowest of these serves.</summary>
    public static int Slowest(ImmutableArray<Person> people, PrepTask task, ImmutableArray<int> serve) => Minutes(task, Alike(task) ? 1 : serve.Select(i => people[i].Speed).DefaultIfEmpty(1).Max());

    private static bool Alike(PrepTask task) => task.Within is not null || task.Kind is not (TaskKind.Work or TaskKind.Plate or TaskKind.Wash);

    private static int Minutes(PrepTask task, double pace) => Math.Max(1, (int)Math.Ceiling((task.Minutes * pace) - 1e-9));
}
