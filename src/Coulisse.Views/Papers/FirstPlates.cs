using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Views.Papers;

/// <summary>Who plates the plates that are not like the others: one name, on every sheet the same. Of those on the plating it is the one whose role leads it, else the first.</summary>
internal static class FirstPlates
{
    /// <summary>The person and the seats; null when no plan plates the dish or no plate differs.</summary>
    public static (string Who, int[] Seats)? Of(PaperBundle bundle, Batch batch)
    {
        int[] seats = [.. Plates(bundle, batch).SelectMany(p => p.Row.Seats).Distinct().Order()];
        PlannedTask? plating = bundle.Plan?.Tasks.FirstOrDefault(t => t.Kind == TaskKind.Plate && !t.People.IsEmpty && (t.Dish is null || t.Dish == bundle.NameOf(batch) || t.Dish == batch.Weighed.Dish.Title));
        if (seats.Length == 0 || plating is null)
        {
            return null;
        }

        bool Role(string name, string word) => bundle.Occasion?.People.FirstOrDefault(p => p.Name == name)?.Role.Contains(word, StringComparison.OrdinalIgnoreCase) == true;
        return (plating.People.FirstOrDefault(n => Role(n, "plating lead")) ?? plating.People.FirstOrDefault(n => Role(n, "plating")) ?? plating.People.FirstOrDefault(n => Role(n, "lead")) ?? plating.People[0], seats);
    }

    /// <summary>Plates of guests with a declared diet that differ from the others.</summary>
    public static (GuestRow Row, GuestPlate Plate)[] Plates(PaperBundle bundle, Batch batch) => bundle.Occasion is not { } occasion ? [] : [.. Guests.Of(occasion, AllergenNames.RegimeOf(bundle.Code))
        .SelectMany(r => r.Plates.Where(p => p.Dish == bundle.NameOf(batch) && p.Text.Length > 0 && !p.Text.Equals("as the others", StringComparison.OrdinalIgnoreCase)).Select(p => (r, p)))];

    /// <summary>What stands under the plating: on the sheets of that person which plates are first, on everybody's where the plates then stand.</summary>
    public static string Line(PaperBundle bundle, PlannedTask task, string person, BriefPhrases say)
    {
        if (task.Kind != TaskKind.Plate || bundle.Batches.FirstOrDefault(b => task.Dish == bundle.NameOf(b) || task.Dish == b.Weighed.Dish.Title) is not { } batch)
        {
            return "";
        }

        string first = Of(bundle, batch) is { } plates && plates.Who == person ? say.Say("dietsFirst", string.Join(", ", plates.Seats)) + "." : "";
        string stand = PlateFridge.Of(bundle, batch) is { Length: > 0 } fridge ? say.Say("platesStand", fridge) + "." : "";
        return string.Join("\n", new[] { first, stand }.Where(l => l.Length > 0));
    }
}
