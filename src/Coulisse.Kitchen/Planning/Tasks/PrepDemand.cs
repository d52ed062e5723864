using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Edits;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>Something the plan must keep, that a person could give up: taken away it leaves less work.</summary>
/// <param name="Words">In words, as it stands in a conflict.</param>
/// <param name="Without">The occasion and the work without it.</param>
public sealed record PrepDemand(string Words, Func<Occasion, PrepWork, (Occasion, PrepWork)> Without)
{
    /// <summary>What a person would do who gives it up, as an order; null for what nobody may give up (keeping, limits of a card, what is fixed by hand).</summary>
    public string? GiveUp { get; init; }

    /// <summary>Every demand of an occasion, the ones a person would give up last first.</summary>
    public static ImmutableArray<PrepDemand> Of(Occasion occasion, PrepWork work)
    {
        ImmutableArray<PrepDemand>.Builder demands = ImmutableArray.CreateBuilder<PrepDemand>();
        foreach ((string? dish, string component) in work.Tasks.Where(t => t.Component is not null && !t.ForStage && t.Kind != TaskKind.Plate).Select(t => (t.Dish, t.Component!)).Distinct())
        {
            demands.Add(new PrepDemand($"{component} is made", (o, w) => (o, Drop(w, t => t.Dish == dish && t.Component == component && !t.ForStage && t.Kind != TaskKind.Plate))) { GiveUp = $"Buy {component} in ready made, or leave it out." });
        }

        foreach (string component in work.Tasks.Where(t => t.ForStage).Select(t => t.Component!).Distinct())
        {
            demands.Add(new PrepDemand($"a twin of {component} is made for the slot", (o, w) => (o, Drop(w, t => t.ForStage && t.Component == component))) { GiveUp = $"Make no twin of {component}: tell what would be shown with it." });
        }

        foreach (PrepTask plate in work.Tasks.Where(t => t.Kind == TaskKind.Plate))
        {
            demands.Add(new PrepDemand($"{plate.Text}, {plate.People.ToString(CultureInfo.InvariantCulture)} people, {plate.Minutes.ToString(CultureInfo.InvariantCulture)} min", (o, w) => (o, Drop(w, t => t.Text == plate.Text))) { GiveUp = $"Plate {plate.Dish} as it is served instead of ahead." });
        }

        foreach (PrepTask house in work.Tasks.Where(t => t.Kind is TaskKind.House or TaskKind.Carry && !t.Optional))
        {
            demands.Add(new PrepDemand(house.Text + (house.At is { } at ? " at " + at.ToString("ddd HH:mm", CultureInfo.InvariantCulture) : ""), (o, w) => (o, Drop(w, t => t.Text == house.Text))) { GiveUp = $"Have somebody else do: {house.Text}." });
        }

        foreach (string component in work.Tasks.Where(t => t.NotBefore is not null && t.Component is not null && !t.ForStage).Select(t => t.Component!).Distinct())
        {
            demands.Add(new PrepDemand($"{component} is made no earlier than it keeps", (o, w) => (o, w with { Tasks = [.. w.Tasks.Select(t => t.Component == component && !t.ForStage ? t with { NotBefore = null } : t)] })));
        }

        foreach (PrepLink link in work.Links.Where(l => l is { Most: not null, Soft: false } && work.Tasks[l.To].Kind != TaskKind.Moment))
        {
            (string from, string to) = (work.Tasks[link.From].Key, work.Tasks[link.To].Key);
            demands.Add(new PrepDemand($"{work.Tasks[link.To].Component}: {link.Because}", (o, w) => (o, w with { Links = [.. w.Links.Select(l => l.Most == link.Most && l.Because == link.Because && w.Tasks[l.To].Key == to && w.Tasks[l.From].Key == from ? l with { Most = null } : l)] })));
        }

        foreach (Pin pin in work.Edits.Pins)
        {
            demands.Add(new PrepDemand(EditedWork.Words(pin, work), (o, w) => (o, w with { Edits = w.Edits with { Pins = w.Edits.Pins.Remove(pin) } })));
        }

        foreach (Forbid forbid in work.Edits.Forbids)
        {
            demands.Add(new PrepDemand(EditedWork.Words(forbid, work), (o, w) => (o, w with { Edits = w.Edits with { Forbids = w.Edits.Forbids.Remove(forbid) } })));
        }

        foreach (Sequence sequence in work.Edits.Sequences)
        {
            demands.Add(new PrepDemand(EditedWork.Words(sequence, work), (o, w) => (o, w with { Edits = w.Edits with { Sequences = w.Edits.Sequences.Remove(sequence) } })));
        }

        if (!occasion.Meals.IsEmpty)
        {
            demands.Add(new PrepDemand("nobody works at meals", (o, w) => (o with { Meals = [] }, w)) { GiveUp = "Let people eat in turns instead of all at once." });
        }

        return demands.ToImmutable();
    }

    /// <summary>The work without some of its tasks; links and twins that spoke of them go too.</summary>
    public static PrepWork Drop(PrepWork work, Func<PrepTask, bool> gone)
    {
        int[] map = new int[work.Tasks.Length];
        List<PrepTask> kept = [];
        for (int i = 0; i < map.Length; i++)
        {
            bool drop = gone(work.Tasks[i]) || (work.Tasks[i].Within is { } w && map[w] < 0);
            map[i] = drop ? -1 : kept.Count;
            if (!drop)
            {
                kept.Add(work.Tasks[i]);
            }
        }

        return work with
        {
            Tasks = [.. kept.Select(t => t.Within is { } w ? t with { Within = map[w] } : t)],
            Links = [.. work.Links.Where(l => map[l.From] >= 0 && map[l.To] >= 0).Select(l => l with { From = map[l.From], To = map[l.To] })],
            TwinTasks = [.. work.TwinTasks.Select(t => t < 0 ? -1 : map[t])],
        };
    }
}
