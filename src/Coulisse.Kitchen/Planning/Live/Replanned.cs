using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>A plan re-made from where things stand.</summary>
/// <param name="Outcome">The plan, or why there is none.</param>
/// <param name="Changes">What changed, one sentence for each person it concerns, and what concerns nobody by name.</param>
/// <param name="Warnings">Limits that have passed and what was taken to be so.</param>
/// <param name="QuickSeconds">Seconds to the first answer; null when only the search found one.</param>
/// <param name="Seconds">Seconds in all.</param>
public sealed record Replanned(PlanOutcome Outcome, ImmutableArray<string> Changes, ImmutableArray<string> Warnings, double? QuickSeconds, double Seconds);

/// <summary>Says what a new plan changes, person by person.</summary>
public static class PlanChanges
{
    /// <summary>The sentences.</summary>
    /// <param name="before">The plan followed so far.</param>
    /// <param name="after">The new plan; equal ids are the same task.</param>
    public static ImmutableArray<string> Between(Plan before, Plan after) => Between(before, after, t => $"{t.Id} {t.Text}");

    /// <summary>The sentences for two plans of which nobody knows whether one was made from the other: a plan made afresh numbers its tasks afresh, so where the numbers do not agree tasks are told by the name that lasts.</summary>
    /// <param name="before">The plan somebody has in hand.</param>
    /// <param name="after">The plan followed now.</param>
    public static ImmutableArray<string> Since(Plan before, Plan after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        Dictionary<string, string> ids = before.Tasks.Where(t => t.Key.Length > 0).DistinctBy(t => t.Key).ToDictionary(t => t.Key, t => t.Id, StringComparer.Ordinal);
        return ids.Count == 0 || after.Tasks.Where(t => t.Key.Length > 0).DistinctBy(t => t.Key).All(t => !ids.TryGetValue(t.Key, out string? id) || id == t.Id)
            ? Between(before, after)
            : Between(ByName(before), ByName(after), t => t.Text);
    }

    private static Plan ByName(Plan plan) => plan with { Tasks = [.. plan.Tasks.Where(t => t.Key.Length > 0).DistinctBy(t => t.Key).Select(t => t with { Id = t.Key })] };

    private static ImmutableArray<string> Between(Plan before, Plan after, Func<PlannedTask, string> name)
    {
        Dictionary<string, PlannedTask> old = before.Tasks.ToDictionary(t => t.Id, StringComparer.Ordinal);
        Dictionary<string, PlannedTask> now = after.Tasks.ToDictionary(t => t.Id, StringComparer.Ordinal);
        SortedDictionary<string, List<string>> said = new(StringComparer.Ordinal);
        void Say(string who, string what) => (said.TryGetValue(who, out List<string>? list) ? list : said[who] = []).Add(what);
        foreach (PlannedTask t in after.Tasks)
        {
            PlannedTask? was = old.GetValueOrDefault(t.Id);
            foreach (string who in Named(t))
            {
                if (was is null)
                {
                    Say(who, $"new at {Clock(t)}: {name(t)}");
                }
                else if (!Named(was).Contains(who))
                {
                    Say(who, $"takes over {name(t)} at {Clock(t)} from {string.Join(" and ", was.People.Except(t.People))}");
                }
                else if (was.Start != t.Start)
                {
                    Say(who, $"{name(t)} at {Clock(t)} instead of {Clock(was)}");
                }
                else if (!was.Kit.SequenceEqual(t.Kit))
                {
                    Say(who, $"{name(t)} on {string.Join(" and ", t.Kit)} instead of {string.Join(" and ", was.Kit)}");
                }
            }
        }

        foreach (PlannedTask t in before.Tasks)
        {
            foreach (string who in Named(t).Where(w => !now.TryGetValue(t.Id, out PlannedTask? after) || !Named(after).Contains(w)))
            {
                Say(who, now.ContainsKey(t.Id) ? $"no longer on {name(t)}" : $"leaves out {name(t)}");
            }
        }

        return [.. said.Select(s => $"{(s.Key.Length > 0 ? s.Key : "By itself")}: {string.Join("; ", s.Value)}.")];
    }

    private static ImmutableArray<string> Named(PlannedTask task) => task.People.IsEmpty ? [""] : task.People;

    private static string Clock(PlannedTask t) => t.Start.ToString("ddd HH:mm", CultureInfo.InvariantCulture);
}
