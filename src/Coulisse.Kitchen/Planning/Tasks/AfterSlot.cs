using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Work;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>What begins when the slot is over, each with its names: plates to the seats, what was begun live out of its kit, clearing down.</summary>
internal static class AfterSlot
{
    /// <summary>Adds its tasks; nothing where nobody is there after the slot.</summary>
    public static void Add(Occasion occasion, SlotPlan slot, ImmutableArray<PlannedTask>.Builder tasks)
    {
        LocalDateTime over = occasion.SlotEnd;
        foreach (SheetWindow w in occasion.Windows.Where(w => w.Start >= over))
        {
            Person[] there = [.. occasion.People.Where(p => p.Hours.Any(h => h.Start <= w.Start && h.End >= w.End))];
            if (there.Length == 0)
            {
                continue;
            }

            PlannedTask? serve = w.Start == over && slot.Segments.Length > 0 ? Serve(occasion, there, w) : null;
            if (serve is not null)
            {
                tasks.Add(serve);
            }

            foreach (IGrouping<LocalDateTime, Person> clear in there.GroupBy(p => serve is not null && serve.People.Contains(p.Name) ? serve.End : w.Start))
            {
                tasks.Add(new PlannedTask { Id = Id("clear", clear.Key), Text = "clear down: what goes on in ovens and bath comes out at its time; left-overs weighed, to the cold or the bin", Kind = TaskKind.House, Start = clear.Key, End = w.End, People = [.. clear.Select(p => p.Name)] });
            }
        }

        GoesOn(occasion, slot, tasks);
    }

    // Everybody but who presents carries: the plates are finished and the guests sit. Nothing without plates, hands or time.
    private static PlannedTask? Serve(Occasion occasion, Person[] there, SheetWindow window)
    {
        SlotCrew crew = SlotCrew.Of(occasion);
        string[] carry = [.. there.Where(p => p != crew.Presenter).Select(p => p.Name)];
        int plates = occasion.Dishes.Where(d => d.Unit == "plates").Select(d => Math.Min(d.Count, occasion.Guests)).DefaultIfEmpty().Max();
        if (carry.Length == 0 || plates == 0)
        {
            return null;
        }

        double minutes = WorkStandards.Find("serve")!.For(plates).Hands.Best / carry.Length;
        LocalDateTime end = window.Start.PlusMinutes(Math.Max(1, (long)Math.Ceiling(minutes)));
        if (end >= window.End)
        {
            return null;
        }

        int[] seats = [.. occasion.Diets.SelectMany(d => d.Seats).Distinct().Order()];
        return new PlannedTask
        {
            Id = Id("serve", window.Start),
            Text = string.Create(CultureInfo.InvariantCulture, $"serve {plates} plates to the seats{(seats.Length > 0 ? "; by name, before the others: seats " + string.Join(", ", seats) : "")}"),
            Kind = TaskKind.House,
            Start = window.Start,
            End = end,
            People = [.. carry],
            Because = "eaten when the slot is over",
        };
    }

    // What was begun live runs on in its kit; somebody with a name takes it out, done or not, before the room must be empty.
    private static void GoesOn(Occasion occasion, SlotPlan slot, ImmutableArray<PlannedTask>.Builder tasks)
    {
        SlotCrew crew = SlotCrew.Of(occasion);
        foreach ((KitNeed need, int n) in slot.Kit.Where(k => k.Minutes > 0).Select((k, n) => (k, n + 1)))
        {
            if (need.Out(occasion) is not { } leaves || occasion.Kit.FirstOrDefault(k => k.Code == need.Kit) is not { } kit)
            {
                continue;
            }

            Person who = kit.Place == occasion.SlotPlace ? crew.Assistant : crew.Washes;
            string number = n.ToString(CultureInfo.InvariantCulture);
            PlannedTask? clear = tasks.FirstOrDefault(t => t.Id.StartsWith("clear-", StringComparison.Ordinal) && t.People.Contains(who.Name) && t.Start <= leaves.At && t.End > leaves.At);
            LocalDateTime from = occasion.SlotStart.PlusMinutes((long)Math.Ceiling(need.FromSecond / 60.0));
            tasks.Add(new PlannedTask { Id = "live-" + number, Text = $"{need.What}, begun live, goes on", Kind = TaskKind.Unattended, Start = from, End = LocalDateTime.Max(from, leaves.At), Kit = [need.Kit], Celsius = need.Celsius, Shelves = kit.Type == "oven" ? 1 : 0 });
            if (clear is not null)
            {
                tasks.Add(new PlannedTask { Id = "live-" + number + "-out", Text = $"out of {need.Kit}: {need.What}, begun live{(leaves.Done ? "" : ", not done")}; weighed, to no guest", Kind = TaskKind.Moment, Start = leaves.At, End = leaves.At.PlusMinutes(1), People = [who.Name], Within = clear.Id });
            }
        }
    }

    private static string Id(string what, LocalDateTime at) => what + "-" + at.ToString("ddd-HHmm", CultureInfo.InvariantCulture);
}
