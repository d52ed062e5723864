using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Labels;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Needs;

/// <summary>What only the diets table names: it is bought although no card states it.</summary>
public static class DietNeeds
{
    /// <summary>One need for each food of a diets row with a weight. A food that the table does not know ("the plain reduction") is made from a card, not bought, and stays out.</summary>
    /// <param name="diets">The diets of the sheet.</param>
    /// <param name="language">ISO 639-1 code of the sheet.</param>
    /// <param name="foods">Foods of the house; null for those that ship.</param>
    public static ImmutableArray<Need> Of(ImmutableArray<SheetDiet> diets, string language = "en", FoodTable? foods = null) =>
    [.. Guests.Foods(diets, language, foods).Where(f => f.Food.FoodId is not null && f.GramsEach is > 0)
        .Select(f => new Need(f.Food.Food, f.GramsEach!.Value * f.Seats.Length, string.Create(CultureInfo.InvariantCulture, $"{f.Dish}, seat {string.Join(", ", f.Seats)}")))];
}
