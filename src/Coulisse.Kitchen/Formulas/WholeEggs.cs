using Coulisse.Matter.Measures;

namespace Coulisse.Kitchen.Formulas;

/// <summary>Eggs to crack for a scaled line: whole ones, with what is over.</summary>
/// <param name="Eggs">Whole eggs.</param>
/// <param name="Over">Grams of the part that are left when the line is weighed out.</param>
/// <param name="Size">Class of the egg.</param>
public sealed record WholeEggs(int Eggs, double Over, string Size)
{
    /// <summary>Eggs of a line; null when it is not of fresh hen's egg in the shell.</summary>
    /// <param name="line">The scaled line.</param>
    /// <param name="measures">Size system of the card.</param>
    public static WholeEggs? Of(BatchLine line, string measures)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (line.Weighed.Food.FoodId is not ("egg" or "egg-yolk" or "egg-white") || line.Grams <= 0 || line.Weighed.Source.Text.Contains("pasteuri", StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        HenEgg egg = HenEgg.Of(measures, line.Weighed.Food.Grade);
        double one = egg.InShell.Grams * HenEgg.ShareOf(line.Weighed.Food.FoodId switch { "egg-yolk" => "yolk", "egg-white" => "white", _ => "egg" });
        int eggs = (int)Math.Ceiling((line.Grams / one) - 1e-9);
        return new WholeEggs(eggs, (eggs * one) - line.Grams, egg.Size);
    }
}
