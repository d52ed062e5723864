using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>What arithmetic alone shows to be impossible, found before anything is solved; each named by the lines of card and sheet, with its remedy.</summary>
public static class WorkReview
{
    /// <summary>Every problem; empty when only a search can tell.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="work">Its work.</param>
    public static ImmutableArray<Problem> Check(Occasion occasion, PrepWork work)
    {
        PrepWork edited = EditedWork.Of(work);
        return [.. Slot(occasion), .. Kit(occasion), .. Reach(occasion, edited), .. Hands(occasion, edited), .. Windows(occasion, edited), .. Contradiction(occasion, edited)];
    }

    private const int MostNamed = 12;

    private static IEnumerable<Problem> Slot(Occasion o)
    {
        if (o.SlotLength <= Duration.Zero && o.Sheet.Shows.FirstOrDefault() is { } show)
        {
            yield return new Problem("PLN026", show.Line, $"The slot is 0 s long, and line {N(show.Line)} of the sheet wants “{show.Component}” shown in it.", "Give the slot a start and an end (\"live 14:00 to 14:25\"), or take the table of what is shown away.");
        }

        if (o.SlotLength <= Duration.Zero)
        {
            yield break;
        }

        List<SheetShow> unknown = [];
        ShowMatching.Match(o, o.Sheet.Shows, unknown);
        foreach (SheetShow none in unknown)
        {
            yield return new Problem("PLN027", none.Line, $"Line {N(none.Line)} of the sheet wants “{none.Component}” shown, which is no dish and no part of one.", $"Write a dish, one of its parts or “whole plate”: {string.Join(", ", o.Dishes.SelectMany(d => d.Dish.Components.Where(c => c.Name.Length > 0).Select(c => c.Name).Prepend(d.Name)).Distinct(StringComparer.Ordinal).Take(MostNamed))}.");
        }
    }

    private static IEnumerable<Problem> Kit(Occasion o)
    {
        foreach (SheetKit k in o.Kit.Where(k => k.Code.Length > 0 && (k.Number < 1 || k.Shelves < 1)))
        {
            yield return new Problem("PLN024", k.Line, $"Line {N(k.Line)} of the sheet: {k.Code} ({k.What.Split(',')[0]}) takes less than one tray.", $"Write its number and shelves as at least 1, or take {k.Code} off the sheet.");
        }
    }

    private static IEnumerable<Problem> Reach(Occasion o, PrepWork work)
    {
        foreach (PrepTask t in Leading(work).Where(t => t.Celsius is not null))
        {
            foreach (KitUse use in t.Kit)
            {
                SheetKit[] kind = [.. o.Kit.Where(k => k.Code.Length > 0 && k.Type == use.Type)];
                if (kind.Length > 0 && kind.All(k => k.CelsiusMax < t.Celsius))
                {
                    SheetKit hottest = kind.MaxBy(k => k.CelsiusMax)!;
                    yield return new Problem("PLN025", t.Line, string.Create(CultureInfo.InvariantCulture, $"{Where(o, t)} needs {t.Celsius:0.#} °C; the hottest {use.Type}, {hottest.Code} on line {hottest.Line} of the sheet, reaches {hottest.CelsiusMax:0.#} °C."), $"Add a {use.Type} that reaches it, correct the temperature on the card, or correct {hottest.Code}.");
                }
            }
        }
    }

    private static IEnumerable<Problem> Hands(Occasion o, PrepWork work)
    {
        foreach (PrepTask t in Leading(work).Where(t => t.People > 0 && !t.Optional))
        {
            Person[] able = [.. Skills.Able(o.People, t).Select(i => o.People[i])];
            string who = string.Join(", ", o.People.Select(p => p.Name));
            if (able.Length == 0)
            {
                yield return new Problem("PLN023", t.Line, $"{Where(o, t)}: nobody of {who} {(t.Skill is null ? "is in the kitchen" : "can do " + t.Skill)}.", $"Give somebody {(t.Skill is null ? "more than floor work" : "the skill “" + t.Skill + "”")} in the Hands table{Line(o.Sheet.People.FirstOrDefault()?.Line ?? 0)}, or add a person.");
            }
            else if (o.Windows.Length > 0 && !able.Any(p => Together(o, p).Any(w => Period.Between(w.Start, w.End, PeriodUnits.Minutes).Minutes >= Math.Min(t.Minutes, 1))))
            {
                yield return new Problem("PLN023", t.Line, $"{Where(o, t)}: {string.Join(" and ", able.Select(p => p.Name))} could do it, but {(able.Length == 1 ? "is" : "are")} there in no prep window.", $"Move their hours in the Hands table{Line(o.Sheet.People.FirstOrDefault(p => p.Name == able[0].Name)?.Line ?? 0)} into a prep window.");
            }
        }
    }

    private static IEnumerable<Problem> Windows(Occasion o, PrepWork work)
    {
        foreach (PrepTask t in Leading(work).Where(t => t.People > 0 && t.At is null && !t.Optional && o.Windows.Length > 0))
        {
            SheetWindow longest = o.Windows.Where(w => w.Start < o.SlotStart).Select(w => w with { End = w.End < o.SlotStart ? w.End : o.SlotStart })
                .DefaultIfEmpty(new SheetWindow(o.SlotStart, o.SlotStart, 0)).MaxBy(Minutes)!;
            if (t.Minutes > Minutes(longest))
            {
                yield return new Problem("PLN022", t.Line, $"{Where(o, t)} takes {N(t.Minutes)} min of hands ({t.MinutesWhy}); the longest prep window before the slot{Line(longest.Line)} has {N(Minutes(longest))} min.", "Lengthen the window, split the step on the card, or put more people on it.");
            }
        }

        long span = o.Windows.Length == 0 ? 0 : Period.Between(o.Windows[0].Start, o.SlotStart, PeriodUnits.Minutes).Minutes;
        foreach (PrepTask t in Leading(work).Where(t => t.People == 0 && o.Windows.Length > 0 && t.Minutes > span))
        {
            yield return new Problem("PLN022", t.Line, $"{Where(o, t)} runs {N(t.Minutes)} min; from the first prep window{Line(o.Windows[0].Line)} to the slot there are {N((int)span)} min.", "Begin the prep days earlier, or make it beforehand and keep it.");
        }
    }

    // Longest paths over least and most waits: a cycle that lengthens itself can never be kept.
    private static IEnumerable<Problem> Contradiction(Occasion o, PrepWork work)
    {
        int n = work.Tasks.Length;
        List<(int From, int To, long Least, PrepLink Link, bool Most)> edges = [];
        foreach (PrepLink l in work.Links.Where(l => !work.Tasks[l.From].Optional && !work.Tasks[l.To].Optional))
        {
            long shift = (l.FromStart ? 0 : work.Tasks[l.From].Minutes) - (l.ToEnd ? work.Tasks[l.To].Minutes : 0);
            edges.Add((l.From, l.To, l.Least + shift, l, false));
            if (l is { Most: { } most, Soft: false })
            {
                edges.Add((l.To, l.From, -(most + shift), l, true));
            }
        }

        long[] reach = new long[n];
        int[] by = [.. Enumerable.Repeat(-1, n)];
        int changed = -1;
        for (int round = 0; round <= n; round++)
        {
            changed = -1;
            for (int e = 0; e < edges.Count; e++)
            {
                if (reach[edges[e].From] + edges[e].Least > reach[edges[e].To])
                {
                    (reach[edges[e].To], by[edges[e].To], changed) = (reach[edges[e].From] + edges[e].Least, e, edges[e].To);
                }
            }

            if (changed < 0)
            {
                yield break;
            }
        }

        int at = changed;
        for (int i = 0; i < n; i++)
        {
            at = edges[by[at]].From;
        }

        List<int> circle = [];
        for (int x = at; circle.Count == 0 || x != at; x = edges[by[x]].From)
        {
            circle.Add(by[x]);
        }

        circle.Reverse();
        bool waits = circle.Exists(e => edges[e].Most);
        string words = string.Join("; ", circle.Select(e => $"{Where(o, work.Tasks[edges[e].From])} and {Where(o, work.Tasks[edges[e].To])}: {edges[e].Link.Because}{(edges[e].Most ? $", {N(edges[e].Link.Most ?? 0)} min at most" : edges[e].Link.Least > 0 ? $", {N(edges[e].Link.Least)} min at least" : "")}"));
        int line = circle.Select(e => work.Tasks[edges[e].To].Line).FirstOrDefault(l => l > 0);
        yield return waits
            ? new Problem("PLN021", line, $"These waits contradict each other: {words}.", "Lengthen the longest wait or shorten the least one on the card.")
            : new Problem("PLN020", line, $"These wait for each other in a circle: {words}.", "Take one of them away.");
    }

    // The first task of a step speaks for it; its moments have no lines of their own.
    private static IEnumerable<PrepTask> Leading(PrepWork work) => work.Tasks.Where(t => t.Kind != TaskKind.Moment).DistinctBy(t => (t.Dish, t.Component, t.Line, t.Text, t.Kind, t.ForStage));

    private static IEnumerable<SheetWindow> Together(Occasion o, Person p) => p.Hours.SelectMany(h => o.Windows.Select(w => new SheetWindow(h.Start > w.Start ? h.Start : w.Start, h.End < w.End ? h.End : w.End, w.Line))).Where(w => w.End > w.Start);

    private static string Where(Occasion o, PrepTask t)
    {
        string card = t.Line > 0 && o.Dishes.FirstOrDefault(d => d.Name == t.Dish) is { CardPath.Length: > 0 } dish ? $" (line {N(t.Line)} of {dish.CardPath})" : t.Line > 0 ? $" (card line {N(t.Line)})" : "";
        return $"“{Planning.Slot.TwinStage.Clause(t.Text)}”{card}";
    }

    private static int Minutes(SheetWindow w) => (int)Math.Max(0, Period.Between(w.Start, w.End, PeriodUnits.Minutes).Minutes);

    private static string Line(int line) => line > 0 ? $" (line {N(line)} of the sheet)" : "";

    private static string N(int n) => n.ToString(CultureInfo.InvariantCulture);
}
