using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Labels;

/// <summary>The nutrition panel of a dish in the form of each law, from its foods' compositions and what its method makes of them.</summary>
public static class Panels
{
    /// <summary>Works out a panel.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="regime">Whose form, factors and rounding.</param>
    /// <param name="finalGrams">Weight at the end, when it was weighed; it goes before what the method says.</param>
    /// <param name="servings">Servings, when the panel wants them; null for 100 g alone.</param>
    /// <param name="unstated">Where a loss comes from that the card does not state; null takes what its kind of bake loses. <see cref="UnstatedLoss.None"/> takes the card's own figures alone.</param>
    /// <param name="asMixed">True for the dish before any step.</param>
    /// <remarks>
    /// A weighed food whose composition is not held makes the whole panel a guess, so there is none then. A step that would take more than there is is refused by its line.
    /// Minerals and vitamins are what cooking keeps of them (<see cref="KeptInCooking"/>), but for a weight at the end, which says nothing of how it was cooked.
    /// </remarks>
    public static Parsed<NutritionPanel> Of(WeighedDish dish, AllergenRegime regime, double? finalGrams = null, double? servings = null, UnstatedLoss? unstated = null, bool asMixed = false)
    {
        ArgumentNullException.ThrowIfNull(dish);
        UnstatedLoss loss = unstated ?? UnstatedLoss.OfKind with { Title = dish.Dish.Title };
        if (MadeDish.Parts(dish, loss) is not Parsed<ImmutableArray<MadePart>>.Ok(var parts))
        {
            return new Parsed<NutritionPanel>.Failed(Soundness.Of(dish));
        }

        if (MadeDish.Faults(parts) is { IsEmpty: false } faults)
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
        if (finalGrams is { } final)
        {
            double least = blend.Grams * (1 - ((blend.Composition.Water ?? 0) / 100));
            return final <= 0 || final > blend.Grams || final < least
                ? Refuse("MIX002", string.Create(CultureInfo.InvariantCulture, $"A weight of {final:0.#} g at the end cannot be: {blend.Grams:0.#} g were mixed, {blend.Grams - least:0.#} g of it water."), string.Create(CultureInfo.InvariantCulture, $"Between {least:0.#} and {blend.Grams:0.#} g; what is drained or trimmed off is no loss of water."))
                : Panel(blend.Reduced(final), string.Create(CultureInfo.InvariantCulture, $"weighed at the end, {final:0.#} g"), null, null);
        }

        if (asMixed)
        {
            return Panel(blend, "as mixed", null, null);
        }

        MadeDish made = MadeDish.Of(parts, blend);
        missing.AddRange(made.AsMixed);
        if (made.Changes.IsEmpty)
        {
            return Panel(blend with { Composition = made.Composition }, "as mixed", null, null);
        }

        MadeDish dry = made.Ranged ? At(LossEnd.Most) : made;
        MadeDish moist = made.Ranged ? At(LossEnd.Least) : made;
        (Composition, Composition)? range = Math.Abs(dry.Grams - moist.Grams) > 0.5 ? (moist.Composition, dry.Composition) : null;
        string basis = string.Create(CultureInfo.InvariantCulture, $"as its method leaves it, {made.Grams:0.#} g{(range is null ? "" : string.Create(CultureInfo.InvariantCulture, $" ({dry.Grams:0.#} to {moist.Grams:0.#} g)"))} of {made.MixedGrams:0.#} g mixed");
        return Panel(blend with { Grams = made.Grams, Composition = made.Composition }, basis, range, made);

        MadeDish At(LossEnd end) => MadeDish.Of(MadeDish.Parts(dish, loss with { End = end }).Match(p => p, _ => parts), blend);

        Parsed<NutritionPanel> Panel(Blend of, string basis, (Composition Moist, Composition Dry)? range, MadeDish? made)
        {
            string[] stated = Stated(regime);
            missing.AddRange(blend.Lacking.Where(l => stated.Contains(l.Key)).OrderBy(l => Array.IndexOf(stated, l.Key)).Select(l => $"{l.Key}: not held for {string.Join(", ", l.Value)}."));
            double? serving = servings is > 0 ? of.Grams / servings : null;
            bool fibre = !blend.Lacking.ContainsKey("fibre");
            ImmutableArray<PanelRow> rows = Rows(of.Composition, regime, serving, fibre);
            if (range is { } r)
            {
                Dictionary<string, double> least = Rows(r.Moist, regime, null, fibre).ToDictionary(x => x.Name + x.Unit, x => x.Computed), most = Rows(r.Dry, regime, null, fibre).ToDictionary(x => x.Name + x.Unit, x => x.Computed);
                rows = [.. rows.Select(x => least.TryGetValue(x.Name + x.Unit, out double a) && most.TryGetValue(x.Name + x.Unit, out double b) ? x with { Range = (Math.Min(a, b), Math.Max(a, b)) } : x)];
            }

            return new Parsed<NutritionPanel>.Ok(new NutritionPanel(regime, basis, serving, rows, [.. missing.Distinct()])
            {
                Changes = made?.Changes ?? [], Grams = of.Grams, Grade = weighed.Max(l => l.Grade), NotStated = [.. Form(of.Composition, regime, fibre).Where(f => f.Asked && f.Value is null).Select(f => f.Name)],
            });
        }
    }

    // Parts a panel of that law stands on: what else a food lacks is no news here.
    private static string[] Stated(AllergenRegime regime) => regime == AllergenRegime.Us
        ? ["water", "fat", "saturates", "trans fat", "cholesterol", "sodium", "carbohydrate", "fibre", "sugars", "added sugars", "protein", "vitamin D", "calcium", "iron", "potassium"]
        : regime == AllergenRegime.Eu ? ["water", "fat", "saturates", "carbohydrate", "sugars", "fibre", "protein", "sodium"] : ["water", "fat", "saturates", "carbohydrate", "sugars", "protein", "sodium"];

    /// <summary>Rows of a composition, in the order of the law; what is not held is left out.</summary>
    /// <param name="c">Per 100 g.</param>
    /// <param name="regime">Whose form.</param>
    /// <param name="servingGrams">Grams of a serving; null without one.</param>
    /// <param name="fibreHeld">False when a food lacks its fibre, so that it cannot be stated.</param>
    public static ImmutableArray<PanelRow> Rows(Composition c, AllergenRegime regime, double? servingGrams, bool fibreHeld = true)
    {
        ArgumentNullException.ThrowIfNull(c);
        return [.. Form(c, regime, fibreHeld).Where(r => r.Value is not null).Select(r => new PanelRow(r.Name, r.Unit, r.Value!.Value, DeclaredFigure.Text(r.Item, Math.Max(0, r.Value.Value), regime),
            servingGrams is { } s ? DeclaredFigure.Text(r.Item, Math.Max(0, r.Value.Value) * s / 100, regime) : null)
        {
            DailyValue = regime == AllergenRegime.Us ? DailyValue.Percent(r.Name, Math.Max(0, r.Value.Value) * (servingGrams ?? 100) / 100) : null,
        })];
    }

    // "Asked" are the rows the law asks for: fibre is voluntary in the EU.
    private static (string Name, string Unit, PanelItem Item, double? Value, bool Asked)[] Form(Composition c, AllergenRegime regime, bool fibreHeld) => regime switch
    {
        AllergenRegime.Eu =>
        [
            ("Energy", "kJ", PanelItem.Kilojoules, FoodEnergy.EuKilojoules(c), true), ("Energy", "kcal", PanelItem.Kilocalories, FoodEnergy.EuKilocalories(c), true),
            ("Fat", "g", PanelItem.Fat, c.Fat, true), ("of which saturates", "g", PanelItem.Saturates, c.Saturates, true), ("Carbohydrate", "g", PanelItem.Macronutrient, c.Carbohydrate, true),
            ("of which sugars", "g", PanelItem.Macronutrient, c.Sugars, true), ("Fibre", "g", PanelItem.Macronutrient, fibreHeld ? c.Fibre : null, false), ("Protein", "g", PanelItem.Macronutrient, c.ProteinEu, true),
            ("Salt", "g", PanelItem.Salt, c.SodiumMilligrams * 2.5 / 1000, true),
        ],
        AllergenRegime.Us =>
        [
            ("Calories", "kcal", PanelItem.Kilocalories, FoodEnergy.UsKilocalories(c), true), ("Total Fat", "g", PanelItem.Fat, c.Fat, true), ("Saturated Fat", "g", PanelItem.Saturates, c.Saturates, true),
            ("Trans Fat", "g", PanelItem.Saturates, c.TransFat, true), ("Cholesterol", "mg", PanelItem.Cholesterol, c.CholesterolMilligrams, true), ("Sodium", "mg", PanelItem.Sodium, c.SodiumMilligrams, true),
            ("Total Carbohydrate", "g", PanelItem.Macronutrient, FoodEnergy.TotalCarbohydrate(c), true), ("Dietary Fiber", "g", PanelItem.Macronutrient, fibreHeld ? c.Fibre : null, true),
            ("Total Sugars", "g", PanelItem.Macronutrient, c.Sugars, true), ("Includes Added Sugars", "g", PanelItem.Macronutrient, c.AddedSugars, true), ("Protein", "g", PanelItem.Macronutrient, c.ProteinEu, true),
            ("Vitamin D", "µg", PanelItem.VitaminD, c.VitaminDMicrograms, true), ("Calcium", "mg", PanelItem.Mineral, c.CalciumMilligrams, true), ("Iron", "mg", PanelItem.Iron, c.IronMilligrams, true), ("Potassium", "mg", PanelItem.Mineral, c.PotassiumMilligrams, true),
        ],
        _ =>
        [
            ("Energy", "kJ", PanelItem.Kilojoules, FoodEnergy.AnzKilojoules(c), true), ("Protein", "g", PanelItem.Macronutrient, c.ProteinEu, true), ("Fat, total", "g", PanelItem.Fat, c.Fat, true),
            ("– saturated", "g", PanelItem.Saturates, c.Saturates, true), ("Carbohydrate", "g", PanelItem.Macronutrient, c.Carbohydrate, true), ("– sugars", "g", PanelItem.Macronutrient, c.Sugars, true),
            ("Sodium", "mg", PanelItem.Sodium, c.SodiumMilligrams, true),
        ],
    };

    private static Parsed<NutritionPanel> Refuse(string code, string message, string hint) => new Parsed<NutritionPanel>.Failed([new Problem(code, 0, message, hint)]);
}
