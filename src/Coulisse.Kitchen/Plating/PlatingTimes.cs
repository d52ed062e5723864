using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Planning.Work;

namespace Coulisse.Kitchen.Plating;

/// <summary>Seconds a plate for each part, from the work standards, and what else a plating line needs to be reckoned.</summary>
/// <remarks>One piece or a weighed part: plate_component; several pieces laid one by one: plate_fine. The standards are common practice without a source: time the first ten plates and put the house's own seconds in.</remarks>
public static class PlatingTimes
{
    /// <summary>Longest working time of a wave of cold plates out of the fridge, minutes. Common practice, no source.</summary>
    public const double WaveMinutes = 20;

    /// <summary>Parts in the order of the plate with their seconds.</summary>
    /// <param name="dish">A card that states one plate.</param>
    /// <param name="own">The house's own seconds by part; a part it names is not taken from the standards.</param>
    public static ImmutableArray<PlatingTask> Of(Dish dish, IReadOnlyDictionary<string, double>? own = null)
    {
        ArgumentNullException.ThrowIfNull(dish);
        return [.. dish.Plate.Select(p =>
        {
            string name = p.Component is { Length: > 0 } c ? c : p.Text;
            double each = WorkStandards.Find(p.Pieces is > 1 ? "plate_fine" : "plate_component")!.Each.Best * 60;
            double? said = own?.FirstOrDefault(o => name.Equals(o.Key, StringComparison.OrdinalIgnoreCase) || name.StartsWith(o.Key + " ", StringComparison.OrdinalIgnoreCase) || name.EndsWith(o.Key, StringComparison.OrdinalIgnoreCase)).Value;
            return new PlatingTask(name, said is > 0 ? said.Value : each);
        })];
    }
}
