using System.Globalization;
using Coulisse.Kitchen.Planning.Edits;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>The work with what a person fixed, forbade and put in order written into it.</summary>
internal static class EditedWork
{
    /// <summary>Applies the edits the work carries; those of work that is not there bind nothing.</summary>
    public static PrepWork Of(PrepWork work)
    {
        if (work.Edits.IsEmpty)
        {
            return work;
        }

        PrepTask[] tasks = [.. work.Tasks.Select(t => Edited(t, work.Edits))];
        Dictionary<string, int> at = Enumerable.Range(0, tasks.Length).ToDictionary(i => tasks[i].Key, StringComparer.Ordinal);
        IEnumerable<PrepLink> orders = work.Edits.Sequences
            .Where(s => at.ContainsKey(s.First) && at.ContainsKey(s.Then))
            .Select(s => new PrepLink(at[s.First], false, at[s.Then], false, 0, null, false, Words(s, work)));
        return work with { Tasks = [.. tasks], Links = [.. work.Links, .. orders] };
    }

    /// <summary>A pin in words.</summary>
    public static string Words(Pin pin, PrepWork work) => "you pinned " + Name(pin.Task, work) + (pin.Start is { } s ? " to " + Moment(s) : "") + (pin.Person is { } p ? " to " + p : "") + (pin.Kit is { } k ? " to " + k : "");

    /// <summary>A ban in words.</summary>
    public static string Words(Forbid f, PrepWork work) => "you forbade " + Name(f.Task, work)
        + (f is { From: { } from, To: { } to } ? " from " + Moment(from) + " to " + Moment(to) : "") + (f.Person is { } p ? " to " + p : "") + (f.Kit is { } k ? " on " + k : "");

    /// <summary>An order in words.</summary>
    public static string Words(Sequence s, PrepWork work) => "you put " + Name(s.First, work) + " before " + Name(s.Then, work);

    private static PrepTask Edited(PrepTask task, PlanEdits edits)
    {
        foreach (Pin pin in edits.Pins.Where(p => p.Task == task.Key))
        {
            task = task with
            {
                PinnedAt = pin.Start ?? task.PinnedAt,
                Pinned = pin.Person is { } who ? task.Pinned.Add(who) : task.Pinned,
                OnlyOn = pin.Kit is { } kit ? task.OnlyOn.Add(kit) : task.OnlyOn,
                Optional = false,
            };
        }

        foreach (Forbid f in edits.Forbids.Where(f => f.Task == task.Key))
        {
            task = task with
            {
                NotDuring = f is { From: { } from, To: { } to } ? task.NotDuring.Add((from, to)) : task.NotDuring,
                NotBy = f.Person is { } who ? task.NotBy.Add(who) : task.NotBy,
                NotOn = f.Kit is { } kit ? task.NotOn.Add(kit) : task.NotOn,
            };
        }

        return task;
    }

    private static string Name(string key, PrepWork work)
        => work.Tasks.FirstOrDefault(t => t.Key == key) is { } t ? $"“{(t.ForStage ? "for the stage: " : "")}{Slot.TwinStage.Clause(t.Text)}” ({key})" : key;

    private static string Moment(LocalDateTime t) => t.ToString("ddd HH:mm", CultureInfo.InvariantCulture);
}
