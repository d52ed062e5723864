using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Measures;

namespace Coulisse.Kitchen.Formulas;

/// <summary>Whose spoons and cups a card means, and how sure that is.</summary>
/// <param name="System">au, nz, uk, us, jp or metric.</param>
/// <param name="Settled">True when the card or the caller says so; false when it was inferred or assumed.</param>
/// <param name="Because">What it rests on, in words.</param>
internal sealed record CardMeasures(string System, bool Settled, string Because)
{
    public static CardMeasures Of(Dish dish, string? given)
    {
        if (given is not null)
        {
            return Household.Systems.Contains(given)
                ? new CardMeasures(given, true, $"measures {given}, as asked")
                : throw new ArgumentOutOfRangeException(nameof(given), given, "Measures are au, nz, uk, us, jp or metric.");
        }

        return new CardMeasures(dish.Measures.System, dish.Measures.Settled, dish.Measures.Because);
    }

    /// <summary>Systems worth asking about beside the one taken: those that hold another size of a unit the card uses.</summary>
    public ImmutableArray<string> Others => System switch
    {
        "au" => ["metric"],
        "metric" or "uk" or "nz" => ["au", "us"],
        "us" => ["metric"],
        _ => ["metric"],
    };

    /// <summary>The words for a system's spoon ("Australian tablespoon, 20 mL").</summary>
    public static string SpoonOf(string system) => string.Create(CultureInfo.InvariantCulture, $"{Adjective(system)} tablespoon, {Household.SizeOf("tbsp", system)!.Value.Size.Millilitres:0.#} mL, and cup, {Household.SizeOf("cup", system)!.Value.Size.Millilitres:0.#} mL");

    /// <summary>The sentence that, written into the card, settles it.</summary>
    public static string Plain(string system) => $"Measures are {Adjective(system)}.";

    private static string Adjective(string system) => system switch
    {
        "au" => "Australian",
        "nz" => "New Zealand",
        "uk" => "British",
        "us" => "American",
        "jp" => "Japanese",
        _ => "metric",
    };
}
