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
public sealed record Remedy(string Kind, string Words, Occasion Changed, PlanEdits Edits);

/// <summary>Changes that could make an impossible occasion possible, the least of a change first. None of them is tried here.</summary>
public static class RemedyCandidates
{
    /// <summary>The changes, in the order in which a kitchen would rather make them.</summary>
    /// <param name="o">The occasion.</param>
    /// <param name="edits">What a person has fixed.</param>
    public static IEnumerable<Remedy> Of(Occasion o, PlanEdits edits)
        => Fixings(o, edits).Concat(Earlier(o).Concat(Shows(o)).Concat(LaterService(o)).Concat(Borrowed(o)).Concat(Hands(o)).Concat(Longer(o)).Concat(Fewer(o)).Concat(Dishes(o)).Select(c => new Remedy(c.Kind, c.Words, c.Changed, edits)));

    private static IEnumerable<Remedy> Fixings(Occasion o, PlanEdits edits)
    {
        foreach (Pin p in edits.Pins)
        {
            yield return new Remedy("pin", $"Do not pin {p.Task}.", o, edits with { Pins = edits.Pins.Remove(p) });
        }

        foreach (Forbid f in edits.Forbids)
        {
            yield return new Remedy("forbid", $"Allow again what {f.Task} was forbidden.", o, edits with { Forbids = edits.Forbids.Remove(f) });
        }

        foreach (Sequence s in edits.Sequences)
        {
            yield return new Remedy("order", $"Do not put {s.First} before {s.Then}.", o, edits with { Sequences = edits.Sequences.Remove(s) });
        }
    }

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
        foreach (int minutes in new[] { 30, 60, 120 })
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
        }
    }

    // A window that ends in the evening can go on; a day before can be added.
    private static IEnumerable<(string Kind, string Words, Occasion Changed)> Longer(Occasion o)
    {
        if (o.Windows.Length == 0 || o.Windows[0].Start >= o.SlotStart)
        {
            yield break;
        }

        LocalDate before = o.Windows[0].Start.Date.PlusDays(-1);
        SheetWindow more = new(before.At(new LocalTime(13, 0)), before.At(new LocalTime(18, 0)), 0);
        yield return ("day", "Prepare on the day before too, 13:00 to 18:00, everybody.", o with
        {
            Windows = [more, .. o.Windows],
            People = [.. o.People.Select(p => p with { Hours = [more, .. p.Hours] })],
        });
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
    public static Occasion WithHands(Occasion o) => o with { People = o.People.Add(Ablest(o) with { Name = "one more", Hours = [.. o.Windows] }) };

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
