using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Needs;

/// <summary>At what temperature goods may be taken in.</summary>
/// <param name="Celsius">Warmest; null where no temperature is asked for.</param>
/// <param name="Frozen">Must come frozen.</param>
/// <param name="Known">False when the food is not known: its label decides.</param>
public sealed record ReceivingLimits(double? Celsius, bool Frozen, bool Known)
{
    private const double FrozenCelsius = -18;

    // Food that spoils warm, by what it is made of: milk, egg, fish, meat and shellfish; a dried or sour one is not told apart, which is cautious.
    private static readonly string[] Spoils = ["milk", "egg", "fish", "meat", "crustacean", "mollusc"];

    /// <summary>The limit for an item of an order by a code of practice.</summary>
    /// <param name="line">The item.</param>
    /// <param name="code">au, nz, uk, eu, us.</param>
    /// <remarks>Cold limit of the code for foods of milk, egg, fish and meat that hold more than 15 % water; −18 °C for what is called frozen (Codex CAC/RCP 8-1976).</remarks>
    public static ReceivingLimits For(OrderLine line, string code)
    {
        ArgumentNullException.ThrowIfNull(line);
        PracticeCode practice = PracticeCode.Find(code) ?? throw new ArgumentException($"\"{code}\" is no code of practice known here; use au, nz, uk, eu or us.", nameof(code));
        if (line.Item.Contains("frozen", StringComparison.OrdinalIgnoreCase) || line.Packs.Any(p => p.Row.Note.Contains("frozen", StringComparison.OrdinalIgnoreCase)))
        {
            return new(FrozenCelsius, true, true);
        }

        Food?[] foods = [.. line.Needs.Select(n => n.Known ?? (n.FoodId is { } id ? FoodTable.Default.Find(id) : null))];
        if (foods.OfType<Food>().Any(f => f.Contains.Any(c => Spoils.Contains(c)) && f.Composition.Water is not <= 15))
        {
            return new(practice.Cold, false, true);
        }

        return new(null, false, foods.All(f => f is not null));
    }
}
