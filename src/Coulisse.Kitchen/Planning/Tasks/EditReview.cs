using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Edits;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Finds edits that speak of nothing in the occasion, before anything is solved.</summary>
public static class EditReview
{
    /// <summary>Every problem, each with what would be right.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="work">Its work, with the edits it carries.</param>
    public static ImmutableArray<Problem> Check(Occasion occasion, PrepWork work)
    {
        ImmutableArray<Problem>.Builder found = ImmutableArray.CreateBuilder<Problem>();
        HashSet<string> keys = [.. work.Tasks.Select(t => t.Key)];
        foreach (string key in work.Edits.Pins.Select(p => p.Task).Concat(work.Edits.Forbids.Select(f => f.Task)).Concat(work.Edits.Sequences.SelectMany(s => new[] { s.First, s.Then })).Distinct())
        {
            if (!keys.Contains(key))
            {
                string[] near = [.. keys.OrderByDescending(k => Alike(k, key)).ThenBy(k => k, StringComparer.Ordinal).Take(3)];
                found.Add(new Problem("PLN010", 0, $"No task is called “{key}”.", $"Name a task by its key as plan prints it; the nearest are {string.Join(", ", near)}."));
            }
        }

        foreach (string who in work.Edits.Pins.Select(p => p.Person).Concat(work.Edits.Forbids.Select(f => f.Person)).OfType<string>().Distinct().Where(n => occasion.People.All(p => p.Name != n)))
        {
            found.Add(new Problem("PLN012", 0, $"Nobody of this occasion is called “{who}”.", $"Name one of {string.Join(", ", occasion.People.Select(p => p.Name))}."));
        }

        foreach (Pin pin in work.Edits.Pins.Where(p => p.Kit is not null && keys.Contains(p.Task)))
        {
            PrepTask task = work.Tasks.First(t => t.Key == pin.Task);
            string[] legal = [.. occasion.Kit.Where(k => k.Code.Length > 0 && task.Kit.Any(u => u.Type == k.Type)).Select(k => k.Code)];
            if (!legal.Contains(pin.Kit))
            {
                found.Add(new Problem("PLN012", 0, $"{pin.Task} cannot be on “{pin.Kit}”.", legal.Length == 0 ? "It takes no kit that is planned." : $"It can be on {string.Join(", ", legal)}."));
            }
        }

        foreach (Pin pin in work.Edits.Pins.Where(p => p.Start > occasion.SlotStart))
        {
            found.Add(new Problem("PLN012", 0, $"{pin.Task} is pinned to {pin.Start!.Value.ToString("ddd HH:mm", CultureInfo.InvariantCulture)}, after the slot begins.", "Prep tasks end before the slot: pin it earlier."));
        }

        return found.ToImmutable();
    }

    private static int Alike(string one, string other) => one.Split('-', '.').Intersect(other.Split('-', '.'), StringComparer.OrdinalIgnoreCase).Count();
}
