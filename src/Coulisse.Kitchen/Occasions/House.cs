using System.Collections.Immutable;
using Coulisse.Cards.Occasions;

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

        ImmutableArray<SheetPerson> people = sheet.People;
        if (people.IsEmpty && !house.People.IsEmpty)
        {
            people = house.People;
            assumed.Add("Nobody is named: the people of this kitchen were taken, there in every window.");
        }

        return sheet with
        {
            Kit = kit ? house.Kit : sheet.Kit,
            Circuits = kit && sheet.Circuits.IsEmpty ? house.Circuits : sheet.Circuits,
            People = [.. people.Select(p => Known(p, house))],
            Assumed = [.. assumed],
        };
    }

    // Somebody named in a sentence only (no line of a table) brings nothing but the name; a row of a table keeps what it says.
    private static SheetPerson Known(SheetPerson person, OccasionSheet house)
    {
        if (house.People.FirstOrDefault(h => h.Name.Equals(person.Name, StringComparison.OrdinalIgnoreCase)) is not { } known)
        {
            return person;
        }

        bool bare = person.Line == 0;
        bool able = (bare && !(known.Skills.IsEmpty && known.Without.IsEmpty)) || (person.Skills.IsEmpty && person.Without.IsEmpty);
        return person with
        {
            Role = person.Role.Length > 0 ? person.Role : known.Role,
            Place = (bare && known.Place.Length > 0) || person.Place.Length == 0 ? known.Place : person.Place,
            Skills = able ? known.Skills : person.Skills,
            Without = able ? known.Without : person.Without,
            Languages = (bare && !known.Languages.IsEmpty) || person.Languages.IsEmpty ? known.Languages : person.Languages,
            Speed = person.Speed is 1 ? known.Speed : person.Speed,
        };
    }
}
