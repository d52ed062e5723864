using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Views.Papers;

/// <summary>Who puts a twin where it stands in the slot, and when: read from the plan, so that list, label, kit sheet and brief say the same.</summary>
internal static class TwinPlaces
{
    /// <summary>The work that leaves a twin in its place, with the people who do it; null when the plan names none.</summary>
    public static (PlannedTask Task, ImmutableArray<string> People)? Of(Plan plan, Twin twin)
    {
        if (twin.SetOutBy is not { } id || plan.Tasks.FirstOrDefault(t => t.Id == id) is not { } task)
        {
            return null;
        }

        // What cooks where it stands is put there by whoever puts it in.
        return (task, task.People.IsEmpty ? plan.Tasks.FirstOrDefault(t => t.Within == id && !t.People.IsEmpty)?.People ?? [] : task.People);
    }

    /// <summary>The twins a piece of work puts in their places, by number.</summary>
    public static Twin[] Of(Plan plan, PlannedTask task) => [.. plan.Twins.Where(t => t.SetOutBy == task.Id && task.Kind == TaskKind.Carry).OrderBy(t => t.Number)];

    /// <summary>Twins to a row: a row of all of them is half a page that no page before it has room for.</summary>
    private const int ToARow = 6;

    /// <summary>The twins a piece of work puts in their places, in as many rows as they take; none for other work.</summary>
    public static string[] Rows(Plan plan, PlannedTask task) => [.. Of(plan, task).Chunk(ToARow).Select(Lines)];

    /// <summary>"№1 Buckwheat slice → shelf, stage", a line each.</summary>
    private static string Lines(Twin[] twins) => string.Join("\n", twins.Select(t => $"{RunSheetPaper.Number(t.Number)} {t.Component} → {t.Place}"));
}
