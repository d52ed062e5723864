using System.Text;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Matter.Foods;

namespace Coulisse.Cli;

/// <summary>The table of own foods that lies beside a card.</summary>
internal static class OwnFoodsFile
{
    /// <summary>Name of the file.</summary>
    public const string Name = OwnFoodsBeside.Name;

    /// <summary>A food by its name, the table in the folder one stands in before those that ship.</summary>
    /// <exception cref="ArgumentException">There is no such food, or that table cannot be used.</exception>
    public static Food Named(string name)
    {
        FoodTable table = OwnFoodsBeside.In(".").Match(t => t, problems => throw new ArgumentException($"{problems[0].Message} {problems[0].Hint}"));
        return table.Match(name, "en") is { } match ? table.Find(match.Id)! : throw new ArgumentException($"\"{name}\" is not in our food table.");
    }

    /// <summary>Foods to weigh a card with: those that ship, with the table beside the card laid over when there is one; null, with the exit code, when it cannot be used.</summary>
    public static FoodTable? Beside(string card, out int exit)
    {
        exit = Exit.Done;
        string file = Path.Combine(card == "-" ? "." : Path.GetDirectoryName(Path.GetFullPath(card)) ?? ".", Name);
        if (!File.Exists(file))
        {
            return FoodTable.Default;
        }

        if (Input.Bytes(file, out exit) is not { } bytes)
        {
            return null;
        }

        int failed = Exit.Done;
        FoodTable? table = OwnFoods.Read(Encoding.UTF8.GetString(bytes), AllergenNames.Codes).Match<FoodTable?>(t => t, problems =>
        {
            failed = Input.Fail(file, problems);
            return null;
        });
        exit = failed;
        return table;
    }
}
