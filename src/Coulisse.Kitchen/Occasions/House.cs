using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Occasions;

/// <summary>Lays a kitchen's own hands and kit under a sheet: what the sheet says stays; what it is silent on comes from the house, and is named.</summary>
public static class House
{
    /// <summary>The sheet with its gaps filled.</summary>
    /// <param name="sheet">Sheet of the occasion.</param>
    /// <param name="house">The kitchen's own sheet: hands, kit and circuits.</param>
    public static OccasionSheet Under(OccasionSheet sheet, OccasionSheet house)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(house);
        List<string> assumed = [.. sheet.Assumed];
        bool kit = sheet.Kit.IsEmpty && !house.Kit.IsEmpty;
        if (kit)
        {
            assumed.Add("No kit is listed: the kit of this kitchen was taken.");
        }

        ImmutableArray<SheetWindow> days = Days(sheet);
        ImmutableArray<SheetPerson> people = sheet.People.IsEmpty && !house.People.IsEmpty ? There(house.People, days, assumed) : [.. sheet.People.Select(p => Known(p, house, sheet, days, assumed))];
        return sheet with
        {
            Kit = kit ? house.Kit : sheet.Kit,
            Circuits = kit && sheet.Circuits.IsEmpty ? house.Circuits : sheet.Circuits,
            People = people,
            Assumed = [.. assumed],
        };
    }

    // Windows and slot of the sheet; those that will be assumed for it when it gives none.
    private static ImmutableArray<SheetWindow> Days(OccasionSheet sheet)
    {
        if (sheet.SlotStart is not { } start)
        {
            return sheet.Windows;
        }

        Duration length = sheet.SlotLength ?? Duration.Zero;
        ImmutableArray<SheetWindow> windows = sheet.Windows.IsEmpty ? DefaultKitchen.Windows(start, length) : sheet.Windows;
        return [.. windows, new SheetWindow(start, start.PlusSeconds((long)length.TotalSeconds), 0)];
    }

    // Who works here is there by the usual week; where the week has nothing to do with these days, somebody has to cook all the same.
    private static ImmutableArray<SheetPerson> There(ImmutableArray<SheetPerson> all, ImmutableArray<SheetWindow> days, List<string> assumed)
    {
        SheetPerson[] there = [.. all.Where(p => p.Week.IsEmpty || !WeekHours.On(p.Week, days, 0).IsEmpty)];
        if (there.Length == 0)
        {
            assumed.Add("Nobody is named, and by their usual weeks nobody of this kitchen works on these days: all of them were taken, there in every window.");
            return [.. all.Select(p => p with { Week = [] })];
        }

        assumed.Add(there.Any(p => !p.Week.IsEmpty) ? "Nobody is named: the people of this kitchen were taken, there by their usual weeks." : "Nobody is named: the people of this kitchen were taken, there in every window.");
        if (there.Length < all.Length)
        {
            assumed.Add($"Not there on these days by their usual week: {string.Join(", ", all.Except(there).Select(p => p.Name))}.");
        }

        return [.. there.Select(p => p.Week.IsEmpty ? p : p with { Hours = WeekHours.On(p.Week, days, p.Line) })];
    }

    // Somebody named in a sentence only (no line of a table) brings nothing but the name; a row of a table keeps what it says.
    private static SheetPerson Known(SheetPerson person, OccasionSheet house, OccasionSheet sheet, ImmutableArray<SheetWindow> days, List<string> assumed)
    {
        if (house.People.FirstOrDefault(h => h.Name.Equals(person.Name, StringComparison.OrdinalIgnoreCase)) is not { } known)
        {
            return person;
        }

        bool bare = person.Line == 0;
        ImmutableArray<SheetWindow> hours = person.Hours;
        if (bare && !known.Week.IsEmpty)
        {
            // the sentence names them, so they come: a usual week keeps them away from no day of it, and not from the slot
            ImmutableArray<SheetWindow> usual = WeekHours.On(known.Week, days, 0);
            LocalDateTime slot = sheet.SlotStart ?? default;
            hours = usual.IsEmpty ? hours : usual.Any(h => h.Start <= slot && slot < h.End) ? usual : [.. usual, .. hours.Where(h => h.Start == slot)];
            assumed.Add(usual.IsEmpty ? $"{known.Name} is named, though not there on these days by the usual week ({WeekHours.Words(known.Week)}): taken to be there in every window." : $"{known.Name} is there by the usual week: {WeekHours.Words(known.Week)}{(hours.Length > usual.Length ? "; and in the slot" : "")}.");
        }

        bool able = (bare && !(known.Skills.IsEmpty && known.Without.IsEmpty)) || (person.Skills.IsEmpty && person.Without.IsEmpty);
        return person with
        {
            Role = person.Role.Length > 0 ? person.Role : known.Role,
            Place = (bare && known.Place.Length > 0) || person.Place.Length == 0 ? known.Place : person.Place,
            Skills = able ? known.Skills : person.Skills,
            Without = able ? known.Without : person.Without,
            Languages = (bare && !known.Languages.IsEmpty) || person.Languages.IsEmpty ? known.Languages : person.Languages,
            Hours = hours,
            Week = person.Hours.IsEmpty && person.Week.IsEmpty && !bare ? known.Week : person.Week,
            Speed = person.Speed is 1 ? known.Speed : person.Speed,
        };
    }
}
