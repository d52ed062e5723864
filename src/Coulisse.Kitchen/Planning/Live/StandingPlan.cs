using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Reads the schedule of the rest back into a plan in which every task keeps the name people know it by.</summary>
public static class StandingPlan
{
    /// <summary>Makes the plan.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="slot">The slot as decided.</param>
    /// <param name="standing">Where things stand.</param>
    /// <param name="schedule">A schedule of the rest.</param>
    /// <param name="before">The plan followed so far.</param>
    public static Plan Write(Occasion occasion, SlotPlan slot, Standing standing, EngineSchedule schedule, Plan before)
    {
        Plan made = PlanWriter.Write(occasion, slot, standing.Work, standing.Prep, schedule);
        PlanTrace traced = PlanTrace.Of(standing.Work, made);
        HashSet<string> used = new(before.Tasks.Select(t => t.Id), StringComparer.Ordinal);
        Dictionary<string, string> names = new(StringComparer.Ordinal);
        Dictionary<string, PlannedTask> fact = new(StringComparer.Ordinal);
        int added = 0;
        for (int i = 0; i < traced.Tasks.Length; i++)
        {
            if (traced.Tasks[i] is not { } t)
            {
                continue;
            }

            string name = standing.Trace.Tasks[i]?.Id ?? Fresh(used, ref added);
            names[t.Id] = name;
            if (standing.Fate[i] is Fate.Done or Fate.Runs or Fate.LeftOut && standing.Trace.Tasks[i] is { } was)
            {
                fact[name] = was;
            }
        }

        HashSet<string> leftOut = [.. Enumerable.Range(0, standing.Fate.Length).Where(i => standing.Fate[i] == Fate.LeftOut).Select(i => standing.Trace.Tasks[i]?.Id ?? "")];
        return made with
        {
            Tasks = [.. made.Tasks
                .Select(t => t with { Id = names.GetValueOrDefault(t.Id, t.Id), Within = t.Within is { } w ? names.GetValueOrDefault(w, w) : null, Because = Renamed(t.Because, names) })
                .Select(t => fact.TryGetValue(t.Id, out PlannedTask? was) ? t with { People = was.People, Kit = was.Kit, Because = "as it happened" } : t)
                .Where(t => !leftOut.Contains(t.Id))],
            Twins = [.. made.Twins.Select(t => t with { MadeBy = t.MadeBy is { } by ? names.GetValueOrDefault(by, by) : null, SetOutBy = t.SetOutBy is { } sets && names.GetValueOrDefault(sets, sets) is var set && !leftOut.Contains(set) ? set : null })],
            Assumed = [.. made.Assumed, .. standing.Warnings],
            Versions = before.Versions,
        };
    }

    // Reasons speak of tasks by their numbers, which are words of their own.
    private static string Renamed(string because, Dictionary<string, string> names)
        => string.Concat(Words(because).Select(w => names.GetValueOrDefault(w, w)));

    private static IEnumerable<string> Words(string text)
    {
        int from = 0;
        for (int i = 1; i <= text.Length; i++)
        {
            if (i == text.Length || char.IsLetterOrDigit(text[i]) != char.IsLetterOrDigit(text[i - 1]))
            {
                yield return text[from..i];
                from = i;
            }
        }
    }

    private static string Fresh(HashSet<string> used, ref int added)
    {
        string name;
        do
        {
            name = "New" + (++added).ToString(System.Globalization.CultureInfo.InvariantCulture);
        }
        while (!used.Add(name));
        return name;
    }
}
