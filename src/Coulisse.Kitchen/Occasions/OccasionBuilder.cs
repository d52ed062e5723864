using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Occasions;

/// <summary>Makes an occasion of a sheet: fills what it is silent on from the default kitchen, names each default, and refuses what cannot be.</summary>
public static class OccasionBuilder
{
    /// <summary>Builds the occasion.</summary>
    /// <param name="sheet">The sheet as read.</param>
    /// <param name="cardByPath">Finds a card by the path or name the sheet gives; null when there is none.</param>
    /// <param name="alone">Cards to plan when the sheet lists no dishes (one sentence over a card).</param>
    public static Parsed<Occasion> Build(OccasionSheet sheet, Func<string, Dish?> cardByPath, ImmutableArray<(string Path, Dish Dish)> alone = default)
    {
        List<Problem> problems = [];
        List<string> assumed = [.. sheet.Assumed, .. sheet.Remarks.Select(r => r.What)]; // what is odd but may be meant is said where the rest is
        if (sheet.SlotStart is not { } start)
        {
            return new Parsed<Occasion>.Failed([new Problem("OCC020", 1, "The sheet does not say when the food is served or shown.", "Write for example \"Saturday 10 October 2026, live 14:00 to 14:25\".")]);
        }

        Duration length = sheet.SlotLength ?? Duration.Zero;
        if (length < Duration.Zero || length > Duration.FromHours(12))
        {
            problems.Add(new Problem("OCC021", 1, "The slot is longer than 12 hours or ends before it starts.", "Write start and end of the slot on one day."));
        }

        string place = sheet.SlotPlace ?? "stage";
        int guests = sheet.Guests ?? 0;
        int over = sheet.Over ?? 0;
        ImmutableArray<OccasionDish> dishes = Dishes(sheet, cardByPath, alone, guests + over, problems);
        int plates = dishes.Where(d => d.Unit == "plates").Select(d => d.Count).DefaultIfEmpty(0).Max();
        if (guests == 0)
        {
            guests = Math.Max(1, plates);
            assumed.Add($"The number of guests is not said; {guests.ToString(CultureInfo.InvariantCulture)} taken from the plates.");
        }

        ImmutableArray<SheetWindow> windows = sheet.Windows;
        if (windows.IsEmpty)
        {
            windows = DefaultKitchen.Windows(start, length);
            assumed.Add("No prep windows are given: two afternoons and a day before, and the morning of the day, were assumed.");
        }

        ImmutableArray<SheetKit> kit = sheet.Kit;
        if (kit.IsEmpty)
        {
            kit = DefaultKitchen.Kit(place);
            assumed.Add("No kit is listed: a usual small kitchen was assumed (" + string.Join(", ", kit.Where(k => k.Code.Length > 0).Select(k => $"{k.Code} {k.What}")) + "). Write a Kit table to change it.");
        }

        ImmutableArray<Person> people = People(sheet, windows, start, length, place, assumed, problems);
        int live = sheet.PlatedLive ?? (plates > 0 && length > Duration.Zero ? 1 : 0);
        if (sheet.PlatedLive is null && live == 1)
        {
            assumed.Add("One plate is finished live; the others stand ready before the slot.");
        }

        return problems.Count > 0
            ? new Parsed<Occasion>.Failed([.. problems.OrderBy(p => p.Line)])
            : new Parsed<Occasion>.Ok(new Occasion
            {
                Title = sheet.Title,
                Sheet = sheet,
                SlotStart = start,
                SlotLength = length,
                SlotPlace = place,
                Guests = guests,
                Covers = Math.Max(guests + over, plates),
                PlatedLive = Math.Min(live, Math.Max(plates, 0)),
                Dishes = dishes,
                People = people,
                Kit = kit,
                Circuits = sheet.Circuits,
                Windows = [.. windows.OrderBy(w => w.Start)],
                Meals = sheet.Meals,
                Diets = sheet.Diets,
                Shows = sheet.Shows,
                Assumed = [.. assumed],
            });
    }

    private static ImmutableArray<OccasionDish> Dishes(OccasionSheet sheet, Func<string, Dish?> cardByPath, ImmutableArray<(string Path, Dish Dish)> alone, int covers, List<Problem> problems)
    {
        if (sheet.Dishes.IsEmpty)
        {
            if (alone.IsDefaultOrEmpty)
            {
                problems.Add(new Problem("OCC022", 1, "The sheet lists no dishes.", "Write a Dishes table with Dish, Card and How many, or name a card beside the sentence."));
                return [];
            }

            return [.. alone.Select(a => Whole(a.Path, a.Dish, covers))];
        }

        ImmutableArray<OccasionDish>.Builder dishes = ImmutableArray.CreateBuilder<OccasionDish>();
        foreach (SheetDish row in sheet.Dishes)
        {
            if (cardByPath(row.CardPath) is { } dish)
            {
                dishes.Add(new OccasionDish(row.Name, dish, row.Count, Unit(row.Unit), row.For, row.CardPath));
            }
            else
            {
                problems.Add(new Problem("OCC023", row.Line, $"There is no card {row.CardPath}.", "Name a card file beside the sheet, or a card that is kept."));
            }
        }

        return dishes.ToImmutable();
    }

    // A card alone: plates when it serves, else as many of its pieces.
    private static OccasionDish Whole(string path, Dish dish, int covers)
    {
        bool pieces = dish.Plate.IsEmpty && dish.Yields.Concat(dish.Components.SelectMany(c => c.Makes)).Any(y => y.Unit == "pieces") && !dish.Yields.Any(y => y.Unit == "portions");
        return new OccasionDish(dish.Title, dish, Math.Max(1, covers), pieces ? "pieces" : "plates", "", path);
    }

    private static string Unit(string unit) => unit switch { "plate" or "portion" or "portions" or "cover" or "covers" => "plates", "piece" => "pieces", _ => unit };

    private static ImmutableArray<Person> People(OccasionSheet sheet, ImmutableArray<SheetWindow> windows, LocalDateTime start, Duration length, string place, List<string> assumed, List<Problem> problems)
    {
        LocalDateTime end = start.PlusSeconds((long)length.TotalSeconds);
        ImmutableArray<SheetWindow> always = [.. windows, new SheetWindow(start, end.PlusMinutes(25), 0)];
        if (sheet.People.IsEmpty)
        {
            assumed.Add("Nobody is named: a chef and two helpers were assumed, there in every window.");
            return [.. new[] { "Chef", "Helper 1", "Helper 2" }.Select((n, i) => new Person(n, i == 0 ? "chef, presents" : "helper", i < 2 ? place : "back", always, ["all"], [], ["English"], 1))];
        }

        ImmutableArray<Person>.Builder people = ImmutableArray.CreateBuilder<Person>();
        foreach (SheetPerson p in sheet.People)
        {
            ImmutableArray<SheetWindow> hours = p.Hours.IsEmpty && !p.Week.IsEmpty ? WeekHours.On(p.Week, always, p.Line) : p.Hours;
            if (hours.IsEmpty && !p.Week.IsEmpty)
            {
                problems.Add(new Problem("OCC027", p.Line, $"{p.Name} works {WeekHours.Words(p.Week)}: none of it falls on the days of this occasion.", "Write the hours of these days, or take the row out."));
            }
            else if (hours.IsEmpty)
            {
                assumed.Add($"{p.Name}'s hours are not given: there in every window and in the slot.");
            }

            foreach (SheetWindow h in hours.Where(h => !always.Any(w => w.Start < h.End && h.Start < w.End)))
            {
                problems.Add(new Problem("OCC024", h.Line, $"{p.Name} is booked {Words(h)}, outside every prep window and the slot.", "Move the hours into a window, or add a prep window."));
            }

            people.Add(new Person(p.Name, p.Role.Length > 0 ? p.Role : people.Count == 0 ? "chef, presents" : "helper", p.Place.Length > 0 ? p.Place : people.Count < 2 ? place : "back",
                hours.IsEmpty ? always : hours, p.Skills.IsEmpty ? ["all"] : p.Skills, p.Without, p.Languages.IsEmpty ? ["English"] : p.Languages, p.Speed));
        }

        foreach (IGrouping<string, Person> same in people.GroupBy(p => p.Name).Where(g => g.Count() > 1))
        {
            problems.Add(new Problem("OCC025", sheet.People.First(p => p.Name == same.Key).Line, $"Two people are called {same.Key}.", "Give each their own name."));
        }

        return people.ToImmutable();
    }

    private static string Words(SheetWindow w) => w.Start.ToString("ddd HH:mm", CultureInfo.InvariantCulture) + " to " + w.End.ToString("HH:mm", CultureInfo.InvariantCulture);
}
