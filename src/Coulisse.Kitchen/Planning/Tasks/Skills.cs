using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Who can do what. A list of skills says what somebody is good at; only a stated lack, or skills of the floor alone, keep them from work.</summary>
internal static class Skills
{
    private static readonly HashSet<string> Floor = new(["carrying", "boxes", "service", "wash-up", "washing up", "floor", "cleaning", "doors"], StringComparer.OrdinalIgnoreCase);
    private static readonly HashSet<string> Pastry = new(["rub_in", "cream_butter", "laminate", "roll_out", "line_with_pastry", "mix_batter", "whisk_ribbon", "blind_bake", "crumb_coat", "score_glaze", "temper_chocolate"], StringComparer.Ordinal);

    /// <summary>The skill a step asks for; null for anyone in the kitchen. Which operations are whose is knowledge of the trade, no source.</summary>
    public static string? Of(Step step) => step.Operations.Append(step.Operation).OfType<string>().Select(o => Pastry.Contains(o) ? "pastry"
        : o switch { "pipe" => "piping", "plate_fine" or "plate_component" => "plating", _ => null }).FirstOrDefault(s => s is not null);

    /// <summary>People able to do a task, those whose list names the skill first.</summary>
    public static ImmutableArray<int> Able(ImmutableArray<Person> people, PrepTask task)
    {
        int[] may = [.. Enumerable.Range(0, people.Length).Where(i => !task.NotBy.Contains(people[i].Name)).Where(i => task.Named.IsEmpty ? May(people[i], task) : task.Named.Contains(people[i].Name))];
        return [.. may.OrderByDescending(i => task.Skill is not null && people[i].Skills.Contains(task.Skill, StringComparer.OrdinalIgnoreCase)).ThenBy(i => i)];
    }

    private static bool May(Person person, PrepTask task)
    {
        bool floor = person.Skills.Length > 0 && person.Skills.All(Floor.Contains);
        return task.Kind is TaskKind.House or TaskKind.Carry or TaskKind.Meal || (!floor && (task.Skill is null || !person.Without.Contains(task.Skill, StringComparer.OrdinalIgnoreCase)));
    }
}
