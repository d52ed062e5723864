using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>Finds again, in a plan people hold in their hands, the pieces of work it was made from.</summary>
/// <param name="Tasks">For each piece of work, its task in the plan; null when the plan left it out.</param>
public sealed record PlanTrace(ImmutableArray<PlannedTask?> Tasks)
{
    /// <summary>Traces a plan. What is equal in words, line and component is paired in order of start.</summary>
    /// <param name="work">The work of the occasion.</param>
    /// <param name="plan">The plan.</param>
    public static PlanTrace Of(PrepWork work, Plan plan)
    {
        // A plan of our own carries the lasting names; one from elsewhere is recognised by its words.
        Dictionary<string, PlannedTask> named = plan.Tasks.Where(t => t.Key.Length > 0).DistinctBy(t => t.Key).ToDictionary(t => t.Key, StringComparer.Ordinal);
        Dictionary<string, Queue<PlannedTask>> held = plan.Tasks.Where(t => t.Key.Length == 0)
            .OrderBy(t => t.Start)
            .GroupBy(t => Key(t.Kind, t.Component, t.Line, t.Text, t.Celsius))
            .ToDictionary(g => g.Key, g => new Queue<PlannedTask>(g), StringComparer.Ordinal);
        PlannedTask?[] found = [.. work.Tasks.Select(t => named.TryGetValue(t.Key, out PlannedTask? own) ? own :
            held.TryGetValue(Key(t.Kind, t.Component, t.Line, t.ForStage ? PlannedTask.StageWords + t.Text : t.Text, t.Celsius), out Queue<PlannedTask>? same) && same.Count > 0 ? same.Dequeue() : null)];
        return new PlanTrace([.. found]);
    }

    /// <summary>The plan as a schedule of its problem: starts, ways and people.</summary>
    /// <param name="prep">The problem.</param>
    /// <param name="people">Names in the order of the problem's first resources.</param>
    public EngineSchedule Schedule(PrepProblem prep, ImmutableArray<string> people) => new(
        [.. Tasks.Select(t => t is null ? -1 : Step(prep, t.Start))],
        [.. Tasks.Select((t, i) => t is null ? 0 : Mode(prep, i, t))],
        [.. Tasks.Select(t => t is null ? [] : t.People.Select(p => people.IndexOf(p)).Where(p => p >= 0).Order().ToImmutableArray())],
        []);

    /// <summary>Step of a moment.</summary>
    internal static int Step(PrepProblem prep, LocalDateTime at) => (int)Math.Floor(Period.Between(prep.Zero, at, PeriodUnits.Minutes | PeriodUnits.Seconds).ToDuration().TotalMinutes);

    private static int Mode(PrepProblem prep, int i, PlannedTask task) =>
        Math.Max(0, prep.Codes[i].ToList().FindIndex(keys => keys.All(k => prep.Groups[k].Any(g => task.Kit.Contains(g.Code)))));

    private static string Key(TaskKind kind, string? component, int line, string text, double? celsius) =>
        string.Join('\u001f', kind, component, line.ToString(System.Globalization.CultureInfo.InvariantCulture), text, celsius?.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture));
}
