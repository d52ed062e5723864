using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Matter.Foods;

namespace Coulisse.Flows;

/// <summary>The table of own foods that lies beside a card or an occasion sheet.</summary>
public static class OwnFoodsBeside
{
    /// <summary>Name of the file.</summary>
    public const string Name = "our-foods.csv";

    /// <summary>Foods of a folder: those that ship, with the table laid over when there is one.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="beneath">What it is laid over; null for the foods that ship.</param>
    /// <returns>The foods, or every problem with its line, the file named.</returns>
    public static Parsed<FoodTable> In(string folder, FoodTable? beneath = null)
    {
        string file = Path.Combine(folder, Name);
        try
        {
            return !File.Exists(file) ? new Parsed<FoodTable>.Ok(beneath ?? FoodTable.Default)
                : Read(File.ReadAllText(file, Encoding.UTF8), beneath).Match<Parsed<FoodTable>>(t => new Parsed<FoodTable>.Ok(t), p => new Parsed<FoodTable>.Failed([.. p.Select(x => x with { Message = $"{Name}: {x.Message}" })]));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Parsed<FoodTable>.Failed([new Problem("MIX009", 0, $"{file} cannot be read.", "See that this user may read it.")]);
        }
    }

    /// <summary>A text of own foods laid over those that ship.</summary>
    public static Parsed<FoodTable> Read(string text, FoodTable? beneath = null) => OwnFoods.Read(text, AllergenNames.Codes, beneath);
}
