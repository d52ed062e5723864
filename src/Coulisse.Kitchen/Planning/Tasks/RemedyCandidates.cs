using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Edits;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>A change to an occasion that may make it possible.</summary>
/// <param name="Kind">Kind of change; of one kind the least comes first.</param>
/// <param name="Words">In words, as an order.</param>
/// <param name="Changed">The occasion so changed.</param>
/// <param name="Edits">What a person has fixed, so changed.</param>
public sealed record Remedy(string Kind, string Words, Occasion Changed, PlanEdits Edits)
{
    /// <summary>The demand that is given up; null when the occasion or the edits change instead.</summary>
    public PrepDemand? Given { get; init; }
}

/// <summary>Changes that could make an impossible occasion possible, the least of a change first. None of them is tried here.</summary>
public static class RemedyCandidates
{
    /// <summary>The changes, in the order in which a kitchen would rather make them.</summary>
    /// <param name="o">The occasion.</param>
    /// <param name="edits">What a person has fixed.</param>
    /// <param name="conflict">Demands that cannot hold together; giving one of them up is a remedy, unless it is one of safety.</param>
    public static IEnumerable<Remedy> Of(Occasion o, PlanEdits edits, ImmutableArray<PrepDemand> conflict) =>
    [
        .. Fixings(o, edits),
        .. Earlier(o).Concat(Shows(o)).Concat(LaterService(o)).Concat(Borrowed(o)).Concat(Hands(o)).Concat(There(o)).Concat(Longer(o)).Concat(Fewer(o)).Select(c => new Remedy(c.Kind, c.Words, c.Changed, edits)),
        .. conflict.Where(d => d.GiveUp is not null).Select(d => new Remedy("give up " + d.Words, d.GiveUp!, o, edits) { Given = d }),
        .. Dishes(o).Select(c => new Remedy(c.Kind, c.Words, c.Changed, edits)),
    ];

    private static IEnumerable<Remedy> Fixings(Occasion o, PlanEdits edits)
    {
        foreach (Pin p in edits.Pins)
        {
            yield return new Remedy("pin " + p.Task, $"Do not pin {p.Task}.", o, edits with { Pins = edits.Pins.Remove(p) });
        }

        if (edits.Pins.Length > 1)
        {
            yield return new Remedy("pins", "Pin nothing.", o, edits with { Pins = [] });
            yield return new Remedy("pinned times", "Let the pinned tasks keep their people and kit, and move in time.", o, edits with { Pins = [.. edits.Pins.Select(p => p with { Start = null })] });
            yield return new Remedy("pinned people", "Let the pinned tasks keep their times, and others do them.", o, edits with { Pins = [.. edits.Pins.Select(p => p with { Person = null })] });
        }

        foreach (Forbid f in edits.Forbids)
        {
            yield return new Remedy("forbid " + f.Task, $"Allow again what {f.Task} was forbidden.", o, edits with { Forbids = edits.Forbids.Remove(f) });
        }

        foreach (Sequence s in edits.Sequences)
        {
            yield return new Remedy("order " + s.First, $"Do not put {s.First} before {s.Then}.", o, edits with { Sequences = edits.Sequences.Remove(s) });
        }
    }

    // Hours of those who are on the sheet: one of them, else everybody, in every prep window.
    private static IEnumerable<(string Kind, string Words, Occasion Changed)> There(Occasion o)
    {
        foreach (Person p in o.People.Where(p => Absent(o, p)))
        {
            yield return ("attend " + p.Name, $"Have {p.Name} there in every prep window.", o with { People = o.People.Replace(p, p with { Hours = [.. o.Windows] }) });
        }

        Person[] away = [.. o.People.Where(p => Absent(o, p))];
        foreach (Person[] some in Enumerable.Range(2, Math.Max(0, Math.Min(away.Length, 6) - 2)).SelectMany(n => Sets(away, n)))
        {
            yield return ("attend some", $"Have {string.Join(", ", some[..^1].Select(p => p.Name))} and {some[^1].Name} there in every prep window.", o with { People = [.. o.People.Select(p => some.Contains(p) ? p with { Hours = [.. o.Windows] } : p)] });
        }

        if (away.Length > 1)
        {
            yield return ("attend", "Have everybody there in every prep window.", o with { People = [.. o.People.Select(p => p with { Hours = [.. o.Windows] })] });
        }
    }

    private static IEnumerable<Person[]> Sets(Person[] from, int count)
        => count == 0 ? [[]] : Enumerable.Range(0, Math.Max(0, from.Length - count + 1)).SelectMany(i => Sets(from[(i + 1)..], count - 1).Select(s => (Person[])[from[i], .. s]));

    private static bool Absent(Occasion o, Person p) => o.Windows.Any(w => w.Start < o.SlotStart && !p.Hours.Any(h => h.Start <= w.Start && h.End >= w.End));

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Earlier(Occasion o)
    {
        foreach (int minutes in new[] { 15, 30, 60, 120 }.Where(_ => o.Windows.Length > 0 && o.Windows[0].Start < o.SlotStart))
        {
            yield return ("early", string.Create(CultureInfo.InvariantCulture, $"Begin {minutes} min earlier on every day."), BeginEarlier(o, minutes));
        }
    }

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Shows(Occasion o)
    {
        foreach (SheetShow show in o.Shows.OrderBy(s => s.Weight))
        {
            yield return ("show", $"Do not show “{(show.StepText.Length > 1 ? show.StepText : show.Component)}”.", o with { Shows = o.Shows.Remove(show) });
        }
    }

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> LaterService(Occasion o)
    {
        foreach (int minutes in new[] { 30, 60, 120, 240, 360 })
        {
            yield return ("late", string.Create(CultureInfo.InvariantCulture, $"Serve {minutes} min later."), Later(o, minutes));
        }
    }

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Borrowed(Occasion o)
    {
        foreach (SheetKit kit in o.Kit.Where(k => k.Code.Length > 0 && k.Type is not "fridge").DistinctBy(k => k.Type))
        {
            yield return ("kit " + kit.Type, $"Borrow one more {kit.Type} like {kit.Code} ({kit.What.Split(',')[0]}).", WithKit(o, kit));
        }
    }

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Hands(Occasion o)
    {
        if (o.People.Length > 0)
        {
            yield return ("hands", "One more pair of hands, as able as " + Ablest(o).Name + ", in every window.", WithHands(o));
            yield return ("hands", "Two more pairs of hands, as able as " + Ablest(o).Name + ", in every window.", WithHands(WithHands(o)));
            yield return ("hands", "Three more pairs of hands, as able as " + Ablest(o).Name + ", in every window.", WithHands(WithHands(WithHands(o))));
        }
    }

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Longer(Occasion o)
    {
        if (o.Windows.Length == 0 || o.Windows[0].Start >= o.SlotStart)
        {
            yield break;
        }

        yield return ("next day", "Serve a day later, with the same hours on the day between.", NextDay(o));
        foreach (int days in new[] { 1, 2 })
        {
            SheetWindow[] more = [.. Enumerable.Range(1, days).Reverse().Select(d => o.Windows[0].Start.Date.PlusDays(-d)).Select(d => new SheetWindow(d.At(new LocalTime(13, 0)), d.At(new LocalTime(18, 0)), 0))];
            yield return (days == 1 ? "day" : "days", days == 1 ? "Prepare on the day before too, 13:00 to 18:00, everybody." : "Prepare on the two days before too, 13:00 to 18:00, everybody.", o with
            {
                Windows = [.. more, .. o.Windows],
                People = [.. o.People.Select(p => p with { Hours = [.. more, .. p.Hours] })],
            });
        }
    }

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Fewer(Occasion o)
    {
        foreach (double share in new[] { 0.9, 0.75, 0.5 }.Where(_ => o.Dishes.Any(d => d.Unit == "plates" && d.Count > 4)))
        {
            OccasionDish[] dishes = [.. o.Dishes.Select(d => d.Unit == "plates" ? d with { Count = Math.Max(1, (int)(d.Count * share)) } : d)];
            int covers = dishes.Where(d => d.Unit == "plates").Max(d => d.Count);
            yield return ("covers", $"Make {covers.ToString(CultureInfo.InvariantCulture)} plates instead of {o.Covers.ToString(CultureInfo.InvariantCulture)}.", o with { Dishes = [.. dishes], Covers = covers, Guests = Math.Min(o.Guests, covers), PlatedLive = Math.Min(o.PlatedLive, covers) });
        }
    }

    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Dishes(Occasion o)
    {
        foreach (OccasionDish dish in o.Dishes.Where(_ => o.Dishes.Length > 1).OrderBy(d => d.Unit == "plates").ThenBy(d => d.Count))
        {
            yield return ("dish", $"Leave out {dish.Name}.", o with { Dishes = o.Dishes.Remove(dish) });
        }
    }

    /// <summary>The occasion with one more piece of kit like one it has, on no circuit of its own.</summary>
    public static Occasion WithKit(Occasion o, SheetKit like) => o with { Kit = o.Kit.Add(like with { Code = like.Code + "+", Circuit = null }) };

    /// <summary>The person whose skills and hours reach furthest.</summary>
    public static Person Ablest(Occasion o) => o.People.MaxBy(p => (p.Skills.Contains("all"), p.Hours.Length))!;

    /// <summary>The occasion with one more person in every window, as able as the ablest.</summary>
    public static Occasion WithHands(Occasion o) => o with { People = o.People.Add(Ablest(o) with { Name = "one more" + new string('+', o.People.Count(p => p.Name.StartsWith("one more", StringComparison.Ordinal))), Hours = [.. o.Windows] }) };

    /// <summary>Every day begins earlier, for everybody who begins with it.</summary>
    public static Occasion BeginEarlier(Occasion o, int minutes)
    {
        HashSet<LocalDateTime> firsts = [.. o.Windows.GroupBy(w => w.Start.Date).Select(g => g.Min(w => w.Start)).Where(s => s < o.SlotStart)];
        SheetWindow Moved(SheetWindow w) => firsts.Contains(w.Start) ? w with { Start = w.Start.PlusMinutes(-minutes) } : w;
        return o with
        {
            Windows = [.. o.Windows.Select(Moved)],
            People = [.. o.People.Select(p => p with { Hours = [.. p.Hours.Select(Moved)] })],
        };
    }

    // The slot's day is lived twice: once to prepare, once to serve.
    private static Occasion NextDay(Occasion o)
    {
        IEnumerable<SheetWindow> Twice(SheetWindow w) => w.Start.Date != o.SlotStart.Date ? [w]
            : w.Start < o.SlotStart ? [w, w with { Start = w.Start.PlusDays(1), End = w.End.PlusDays(1) }] : [w with { Start = w.Start.PlusDays(1), End = w.End.PlusDays(1) }];
        ImmutableArray<SheetWindow> Days(IEnumerable<SheetWindow> windows) => [.. windows.SelectMany(Twice).OrderBy(w => w.Start)];
        return o with
        {
            SlotStart = o.SlotStart.PlusDays(1),
            Windows = Days(o.Windows),
            Meals = Days(o.Meals),
            People = [.. o.People.Select(p => p with { Hours = Days(p.Hours) })],
        };
    }

    // Everything of the day that hangs on the slot moves with it; what is before it stays.
    private static Occasion Later(Occasion o, int minutes)
    {
        SheetWindow Moved(SheetWindow w) => w.Start >= o.SlotStart ? w with { Start = w.Start.PlusMinutes(minutes), End = w.End.PlusMinutes(minutes) }
            : w.End >= o.SlotStart ? w with { End = w.End.PlusMinutes(minutes) } : w;
        return o with
        {
            SlotStart = o.SlotStart.PlusMinutes(minutes),
            Windows = [.. o.Windows.Select(Moved)],
            People = [.. o.People.Select(p => p with { Hours = [.. p.Hours.Select(Moved)] })],
        };
    }
}
