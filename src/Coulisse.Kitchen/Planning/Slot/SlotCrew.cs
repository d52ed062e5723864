using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Who is who in the slot: one presents, some assist at the same place, the others work behind.</summary>
internal sealed record SlotCrew(Person Presenter, ImmutableArray<Person> Assistants, ImmutableArray<Person> Behind)
{
    /// <summary>Who hands the twins in: somebody whose role says so, else an assistant, else somebody behind, else the presenter.</summary>
    public Person HandsIn => Assistants.Concat(Behind).FirstOrDefault(p => new[] { "swap", "twin" }.Any(w => p.Role.Contains(w, StringComparison.OrdinalIgnoreCase))) ?? Assistant;

    /// <summary>The pair of hands beside the presenter: an assistant, else somebody behind, else the presenter.</summary>
    public Person Assistant => Assistants.FirstOrDefault() ?? Behind.FirstOrDefault() ?? Presenter;

    /// <summary>Who washes up and carries to the back: somebody behind with cold-kitchen or wash-up hands, else an assistant.</summary>
    public Person Washes => Behind.FirstOrDefault(p => !p.Role.Contains("floor", StringComparison.OrdinalIgnoreCase) && !p.Role.Contains("lead", StringComparison.OrdinalIgnoreCase)) ?? Behind.FirstOrDefault() ?? HandsIn;

    /// <summary>Who goes round to the guests with diets: somebody there whose role says so; null when nobody's does.</summary>
    public Person? Allergies => Assistants.Concat(Behind).FirstOrDefault(p => p.Role.Contains("allerg", StringComparison.OrdinalIgnoreCase));

    public static SlotCrew Of(Occasion occasion)
    {
        Person[] there = [.. occasion.People.Where(p => p.Hours.Any(h => h.Start <= occasion.SlotStart && h.End >= occasion.SlotEnd))];
        if (there.Length == 0)
        {
            there = [.. occasion.People];
        }

        Person presenter = there.FirstOrDefault(p => p.Role.Contains("present", StringComparison.OrdinalIgnoreCase))
            ?? there.FirstOrDefault(p => p.Role.Contains("chef", StringComparison.OrdinalIgnoreCase))
            ?? there.FirstOrDefault(p => p.Place == occasion.SlotPlace) ?? there[0];
        return new SlotCrew(
            presenter,
            [.. there.Where(p => p != presenter && p.Place == occasion.SlotPlace)],
            [.. there.Where(p => p != presenter && p.Place != occasion.SlotPlace)]);
    }
}
