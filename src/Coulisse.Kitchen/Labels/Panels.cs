using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Labels;

/// <summary>The nutrition panel of a dish in the form of each law, from its foods' compositions.</summary>
public static class Panels
{
    /// <summary>Works out a panel.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="regime">Whose form, factors and rounding.</param>
    /// <param name="finalGrams">Weight at the end, when it was weighed; null takes the dish as mixed.</param>
    /// <param name="servings">Servings, when the panel wants them; null for 100 g alone.</param>
    /// <remarks>A weighed food whose composition is not held makes the whole panel a guess, so there is none then.</remarks>
    public static Parsed<NutritionPanel> Of(WeighedDish dish, AllergenRegime regime, double? finalGrams = null, double? servings = null)
    {
        ArgumentNullException.ThrowIfNull(dish);
        if (Soundness.Of(dish) is { IsEmpty: false } faults)
        {
            return new Parsed<NutritionPanel>.Failed(faults);
        }

        WeighedLine[] lines = [.. dish.Components.SelectMany(c => c.Lines).Where(l => l.Food.FromComponent is null)];
        WeighedLine[] weighed = [.. lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        if (weighed.Length == 0)
        {
            return Refuse("MIX001", "Nothing on the card has a weight.", "Give grams, or measures of foods that are known.");
        }

        string[] unknown = [.. weighed.Where(l => l.Known is null).Select(l => l.Food.Food).Distinct(StringComparer.OrdinalIgnoreCase)];
        List<string> missing = [.. unknown.Select(u => $"“{u}” is not in the food table, so the panel cannot be worked out."), .. lines.Where(l => l.Grade == WeightGrade.Unknown).Select(l => $"“{l.Food.Food}” has no weight and is left out.")];
        if (unknown.Length > 0)
        {
            return new Parsed<NutritionPanel>.Ok(new NutritionPanel(regime, "as mixed", null, [], [.. missing]));
        }

        Blend blend = Blend.Of(weighed.Select(l => (l.Food.Food, l.Grams, LineComposition.Of(l)!)));
        string basis = "as mixed";
        if (finalGrams is { } final)
        {
            double least = blend.Grams * (1 - ((blend.Composition.Water ?? 0) / 100));
            if (final <= 0 || final > blend.Grams || final < least)
            {
                return Refuse("MIX002", string.Create(CultureInfo.InvariantCulture, $"A weight of {final:0.#} g at the end cannot be: {blend.Grams:0.#} g were mixed, {blend.Grams - least:0.#} g of it water."), string.Create(CultureInfo.InvariantCulture, $"Between {least:0.#} and {blend.Grams:0.#} g; what is drained or trimmed off is no loss of water."));
            }

            blend = blend.Reduced(final);
            basis = string.Create(CultureInfo.InvariantCulture, $"weighed at the end, {final:0.#} g");
        }

        missing.AddRange(blend.Lacking.Where(l => Stated(regime).Contains(l.Key)).OrderBy(l => Array.IndexOf(Stated(regime), l.Key)).Select(l => $"{l.Key}: not held for {string.Join(", ", l.Value)}."));
        double? serving = servings is > 0 ? blend.Grams / servings : null;
        return new Parsed<NutritionPanel>.Ok(new NutritionPanel(regime, basis, serving, Rows(blend.Composition, regime, serving), [.. missing]));
    }

    // Parts a panel of that law stands on: what else a food lacks is no news here.
    private static string[] Stated(AllergenRegime regime) => regime == AllergenRegime.Us
        ? ["water", "fat", "saturates", "trans fat", "cholesterol", "sodium", "carbohydrate", "sugars", "added sugars", "protein", "calcium", "iron", "potassium"]
        : ["water", "fat", "saturates", "carbohydrate", "sugars", "protein", "sodium"];

    /// <summary>Rows of a composition, in the order of the law.</summary>
    public static ImmutableArray<PanelRow> Rows(Composition c, AllergenRegime regime, double? servingGrams)
    {
        ArgumentNullException.ThrowIfNull(c);
        (string Name, string Unit, PanelItem Item, double? Value)[] rows = regime switch
        {
            AllergenRegime.Eu =>
            [
                ("Energy", "kJ", PanelItem.Kilojoules, FoodEnergy.EuKilojoules(c)), ("Energy", "kcal", PanelItem.Kilocalories, FoodEnergy.EuKilocalories(c)),
                ("Fat", "g", PanelItem.Fat, c.Fat), ("of which saturates", "g", PanelItem.Saturates, c.Saturates), ("Carbohydrate", "g", PanelItem.Macronutrient, c.Carbohydrate),
                ("of which sugars", "g", PanelItem.Macronutrient, c.Sugars), ("Fibre", "g", PanelItem.Macronutrient, c.Fibre), ("Protein", "g", PanelItem.Macronutrient, c.ProteinEu),
                ("Salt", "g", PanelItem.Salt, c.SodiumMilligrams * 2.5 / 1000),
            ],
            AllergenRegime.Us =>
            [
                ("Calories", "kcal", PanelItem.Kilocalories, FoodEnergy.UsKilocalories(c)), ("Total Fat", "g", PanelItem.Fat, c.Fat), ("Saturated Fat", "g", PanelItem.Saturates, c.Saturates),
                ("Trans Fat", "g", PanelItem.Saturates, c.TransFat), ("Cholesterol", "mg", PanelItem.Cholesterol, c.CholesterolMilligrams), ("Sodium", "mg", PanelItem.Sodium, c.SodiumMilligrams), ("Total Carbohydrate", "g", PanelItem.Macronutrient, FoodEnergy.TotalCarbohydrate(c)),
                ("Dietary Fiber", "g", PanelItem.Macronutrient, c.Fibre), ("Total Sugars", "g", PanelItem.Macronutrient, c.Sugars), ("Includes Added Sugars", "g", PanelItem.Macronutrient, c.AddedSugars), ("Protein", "g", PanelItem.Macronutrient, c.ProteinEu),
                ("Calcium", "mg", PanelItem.Mineral, c.CalciumMilligrams), ("Iron", "mg", PanelItem.Iron, c.IronMilligrams), ("Potassium", "mg", PanelItem.Mineral, c.PotassiumMilligrams),
            ],
            _ =>
            [
                ("Energy", "kJ", PanelItem.Kilojoules, FoodEnergy.AnzKilojoules(c)), ("Protein", "g", PanelItem.Macronutrient, c.ProteinEu), ("Fat, total", "g", PanelItem.Fat, c.Fat),
                ("– saturated", "g", PanelItem.Saturates, c.Saturates), ("Carbohydrate", "g", PanelItem.Macronutrient, c.Carbohydrate), ("– sugars", "g", PanelItem.Macronutrient, c.Sugars),
                ("Sodium", "mg", PanelItem.Sodium, c.SodiumMilligrams),
            ],
        };
        return [.. rows.Where(r => r.Value is not null).Select(r => new PanelRow(r.Name, r.Unit, r.Value!.Value, DeclaredFigure.Text(r.Item, Math.Max(0, r.Value.Value), regime),
            servingGrams is { } s ? DeclaredFigure.Text(r.Item, Math.Max(0, r.Value.Value) * s / 100, regime) : null))];
    }

    private static Parsed<NutritionPanel> Refuse(string code, string message, string hint) => new Parsed<NutritionPanel>.Failed([new Problem(code, 0, message, hint)]);
}
