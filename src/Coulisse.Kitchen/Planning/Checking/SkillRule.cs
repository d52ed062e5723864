using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>Somebody on a task can do it; where the card wants two, two are there; work is not done by nobody.</summary>
/// <remarks>
/// A sheet's list of skills says what a person is good at, not all they may touch: only a stated lack ("no pastry"), and skills
/// that are all of the floor, keep a person from a task. Which operations are pastry is knowledge of the trade, no source.
/// </remarks>
internal static class SkillRule
{
    private static readonly ImmutableHashSet<string> Floor = ["carrying", "boxes", "service", "wash-up", "washing up", "floor", "cleaning", "doors"];

    private static readonly ImmutableDictionary<string, ImmutableHashSet<string>> Operations = new Dictionary<string, ImmutableHashSet<string>>
    {
        ["pastry"] = ["rub_in", "cream_butter", "laminate", "roll_out", "line_with_pastry", "mix_batter", "whisk_ribbon", "blind_bake", "crumb_coat", "score_glaze", "temper_chocolate"],
        ["knife"] = ["dice", "brunoise", "julienne", "slice_by_hand", "chop_herbs", "chop_rough", "fillet_fish", "debone_bird", "joint_bird", "portion_meat"],
        ["piping"] = ["pipe"],
        ["plating"] = ["plate_fine", "plate_component"],
    }.ToImmutableDictionary();

    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (CardStep step in CardStep.ByComponent(occasion, plan).SelectMany(c => c))
        {
            string[] wanted = [.. Operations.Where(o => step.Step.Operation is { } op && o.Value.Contains(op)).Select(o => o.Key)];
            foreach (PlannedTask task in step.Tasks.Where(t => !t.People.IsEmpty && t.Kind is TaskKind.Work or TaskKind.Plate))
            {
                Person[] people = [.. occasion.People.Where(p => task.People.Contains(p.Name))];
                foreach (string skill in wanted.Where(w => people.Length > 0 && people.All(p => Lacks(p, w))))
                {
                    yield return new("skill-lacking", [task.Id], people.Length, "people", $"Nobody on {task.Id} has the skill: {skill}.", people[0].Name);
                }

                if (people.Length > 0 && people.All(OnlyFloor))
                {
                    yield return new("skill-lacking", [task.Id], people.Length, "people", $"{task.Id} is kitchen work; {people[0].Name} works on the floor.", people[0].Name);
                }
            }

            PlannedTask[] work = [.. step.Tasks.Where(t => t.Kind == TaskKind.Work)];
            if (step.Step.People > 1 && work.Length > 0 && work.Max(t => t.People.Length) is var most && most < step.Step.People)
            {
                yield return new("too-few-hands", [.. work.Select(t => t.Id)], step.Step.People - most, "people", $"{step.Name} wants {step.Step.People.ToString(System.Globalization.CultureInfo.InvariantCulture)} people at once.", work[0].Id);
            }
        }

        foreach (PlannedTask task in plan.Tasks.Where(t => t.People.IsEmpty && t.Kind is TaskKind.Work or TaskKind.Moment or TaskKind.Wash or TaskKind.Carry or TaskKind.Plate))
        {
            yield return new("nobody-on-it", [task.Id], Overlap.Between(task.Start, task.End), "min", $"{task.Id} needs hands and has none.", task.Id);
        }
    }

    private static bool Lacks(Person p, string skill) => p.Without.Contains(skill, StringComparer.OrdinalIgnoreCase);

    private static bool OnlyFloor(Person p) => !p.Skills.IsEmpty && p.Skills.All(s => Floor.Contains(s.ToLowerInvariant()));
}
