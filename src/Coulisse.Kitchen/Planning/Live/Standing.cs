using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Kitchen.Planning.Live;

/// <summary>The rest of the work as a problem: what is past is frozen, what runs is kept, what is lost is made again.</summary>
/// <param name="Work">The work, with the minutes that tasks really took.</param>
/// <param name="Prep">Its problem from now on.</param>
/// <param name="Old">The plan as a schedule of that problem.</param>
/// <param name="Trace">The plan's task of each piece of work.</param>
/// <param name="Fate">What became of each piece of work.</param>
/// <param name="Warnings">Limits that have passed and what was taken to be so, in words.</param>
public sealed record Standing(PrepWork Work, PrepProblem Prep, EngineSchedule Old, PlanTrace Trace, ImmutableArray<Fate> Fate, ImmutableArray<string> Warnings)
{
    /// <summary>Where things stand.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="work">Its work.</param>
    /// <param name="plan">The plan that was followed.</param>
    /// <param name="state">What happened.</param>
    public static Standing Of(Occasion occasion, PrepWork work, Plan plan, LiveState state)
    {
        PrepProblem prep = PrepProblem.Write(occasion, work);
        PlanTrace trace = PlanTrace.Of(work, plan);
        EngineSchedule old = trace.Schedule(prep, [.. occasion.People.Select(p => p.Name)]);
        List<string> warnings = [];
        Fate[] fate = Fates(work, trace, state, prep, old, warnings);
        StandingWriter writer = new(occasion, work, prep, old, trace, state, fate, warnings);
        return writer.Write();
    }

    private static Fate[] Fates(PrepWork work, PlanTrace trace, LiveState state, PrepProblem prep, EngineSchedule old, List<string> warnings)
    {
        Fate[] fate = [.. work.Tasks.Select((t, i) => trace.Tasks[i] is not { } p ? Live.Fate.ToDo
            : state.Skipped.Contains(p.Id) ? Live.Fate.LeftOut
            : state.Lost.ContainsKey(p.Id) ? Live.Fate.ToDo
            : state.Done.ContainsKey(p.Id) ? Live.Fate.Done
            : !state.Started.ContainsKey(p.Id) ? Live.Fate.ToDo
            : p.Kit.Any(state.Broken.ContainsKey) ? Live.Fate.ToDo
            : t.Kind is not TaskKind.Unattended && p.People.Any(state.Gone.ContainsKey) ? Live.Fate.ToDo
            : Live.Fate.Runs)];
        foreach (int i in Enumerable.Range(0, fate.Length).Where(i => trace.Tasks[i] is { } p && state.Running(p.Id) && fate[i] == Live.Fate.ToDo))
        {
            warnings.Add($"{trace.Tasks[i]!.Id} was under way and is begun again in full: {(trace.Tasks[i]!.Kit.Any(state.Broken.ContainsKey) ? "its kit broke" : "its hands went")}.");
        }

        // What was lost had been through everything before it in its component: all of that is made again.
        Queue<int> again = new(Enumerable.Range(0, fate.Length).Where(i => trace.Tasks[i] is { } p && state.Lost.ContainsKey(p.Id)));
        HashSet<int> seen = [.. again];
        while (again.TryDequeue(out int i))
        {
            foreach (PrepLink link in work.Links.Where(l => l.To == i && seen.Add(l.From)))
            {
                PrepTask from = work.Tasks[link.From];
                if (from.Component == work.Tasks[i].Component && from.Dish == work.Tasks[i].Dish && from.ForStage == work.Tasks[i].ForStage && from.Kind != TaskKind.House)
                {
                    fate[link.From] = Live.Fate.ToDo;
                    again.Enqueue(link.From);
                }
                else if (from.Component is not null && from.Component != work.Tasks[i].Component)
                {
                    warnings.Add($"{work.Tasks[i].Component} is made again: taken to be so that enough of {from.Component} is left for it.");
                }
            }
        }

        return fate;
    }
}

/// <summary>What became of a piece of work.</summary>
public enum Fate
{
    /// <summary>Still to be done, or to be done again.</summary>
    ToDo,

    /// <summary>Under way.</summary>
    Runs,

    /// <summary>Ended.</summary>
    Done,

    /// <summary>Left out.</summary>
    LeftOut,
}
