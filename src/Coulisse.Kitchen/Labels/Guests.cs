using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Labels;

/// <summary>Allergens seat by seat, and the foods that only a diets row names.</summary>
public static class Guests
{
    /// <summary>Works out each declared seat against each dish.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="regime">Whose names.</param>
    public static ImmutableArray<GuestRow> Of(Occasion occasion, AllergenRegime regime)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        HashSet<Component> apart = [.. occasion.Dishes.Select(MadeAlone.In).OfType<Component>()];
        WeighedDish[] weighed = [.. occasion.Dishes.Select(d => Weighing.Weigh(d.Dish))];
        return [.. occasion.Diets.Select(diet =>
        {
            ImmutableArray<string> codes = Declared.Codes(diet.Declared);
            return new GuestRow(diet.Seats, diet.Declared, codes, [.. occasion.Dishes.Select((d, i) => (Dish: d, Weighed: weighed[i])).Where(x => x.Dish.Unit is "plates" or "pieces" or "portions" or "covers" || Means(diet, x.Dish))
                .Select(x => Plate(diet, x.Dish, x.Weighed, codes, regime, apart))], diet.Line);
        })];
    }

    /// <summary>Foods named in diets rows only, each with its grams: they must reach the allergen sheet and the order.</summary>
    /// <param name="diets">Rows of the sheet.</param>
    /// <param name="language">Language of the sheet.</param>
    /// <param name="foods">Foods of the house; null for those that ship.</param>
    public static ImmutableArray<DietFood> Foods(ImmutableArray<SheetDiet> diets, string language = "en", FoodTable? foods = null) =>
    [.. diets.SelectMany(d => d.ByDish.OrderBy(b => b.Key, StringComparer.Ordinal).SelectMany(cell => DietText.Read(cell.Value, language).Instead.SelectMany(l => l.Foods)
        .Where(f => f.Amount is not null || f.Grams is not null)
        .Select(f => new DietFood(Known(f, language, foods ?? FoodTable.Default), Grams(f), d.Seats, cell.Key, d.Line))))];

    private static GuestPlate Plate(SheetDiet diet, OccasionDish dish, WeighedDish weighed, ImmutableArray<string> codes, AllergenRegime regime, HashSet<Component> apart)
    {
        string text = diet.ByDish.Where(b => Column(b.Key, dish)).Select(b => b.Value).FirstOrDefault() ?? "";
        string language = dish.Dish.Language;
        DietText said = DietText.Read(text, language);
        bool asked = Means(diet, dish);
        bool served = asked || !(said.Nothing || said.Without.Any(w => Names(w, dish)));
        Component[] instead = [.. said.Instead.SelectMany(l => l.Foods.Select(f => Takes.Find(dish.Dish, f.Food) ?? Takes.Find(dish.Dish, l.Text))).OfType<Component>()];
        HashSet<Component> left = [.. said.Without.Select(w => Takes.Find(dish.Dish, w)).OfType<Component>()];

        // A variant (C1v) stands in a card beside what it replaces; who does not get it by name does not get it at all.
        left.UnionWith(dish.Dish.Components.Where(c => !instead.Contains(c) && IsVariant(c, dish.Dish)));
        // A part asked for by name is served alone; the dish is then served without it.
        Component? alone = MadeAlone.In(dish);
        left.UnionWith(dish.Dish.Components.Where(c => alone is null ? apart.Contains(c) : !ReferenceEquals(c, alone)));
        WeighedComponent[] on = served ? [.. weighed.Components.Where(c => !left.Contains(c.Component))] : [];
        AllergenReason[] reasons =
        [
            .. on.Where(c => !c.Component.IsAssembly).SelectMany(c => Allergens.Reached(weighed, c)).Distinct().SelectMany(c => Allergens.Reasons(c, language, dish.Dish.Foods)),
            .. said.Instead.SelectMany(l => l.Foods.Where(f => Takes.Find(dish.Dish, f.Food) is null && Takes.Find(dish.Dish, l.Text) is null)
                .SelectMany(f => Allergens.Of(f with { FromComponent = null }, language, "instead", diet.Line, l.Text, null, dish.Dish.Foods))),
        ];
        ImmutableArray<AllergenLine> all = Allergens.Merge(served ? reasons : [], regime);
        ImmutableArray<AllergenReason> declared = [.. (served ? reasons : []).Where(r => r.Code is null || codes.Contains(r.Code))];
        string[] cross = served && alone is null ? [.. weighed.Components.Where(c => left.Contains(c.Component) && !IsVariant(c.Component, dish.Dish))
            .SelectMany(c => Allergens.Reasons(c, language, dish.Dish.Foods).Where(r => r.Code is { } code && codes.Contains(code) && r.Status == AllergenStatus.Contains).Select(r => $"{c.Component.Name} holds {r.Code} ({r.Food}): clean tools, plate before it")).Distinct()] : [];
        return new GuestPlate(dish.Name, text, served, [.. left.Where(c => alone is null && !apart.Contains(c) && !IsVariant(c, dish.Dish)).Select(c => c.Name)], [.. said.Instead.Select(l => l.Text)], codes.IsEmpty ? [] : MergeDeclared(declared, regime), all, [.. cross], said.Minds);
    }

    // A declared allergen is named even where the law asked for does not list it: the guest did.
    private static ImmutableArray<AllergenLine> MergeDeclared(ImmutableArray<AllergenReason> reasons, AllergenRegime regime) =>
    [.. reasons.Distinct().GroupBy(r => r.Code ?? "?" + r.Food, StringComparer.Ordinal)
        .Select(g => new AllergenLine(g.First().Code is { } code ? AllergenNames.Name(code, regime) ?? AllergenNames.Name(code, AllergenRegime.Eu) ?? code : g.First().Food, g.First().Code, g.Min(r => r.Status), [.. g.OrderBy(r => r.Status)]))
        .OrderBy(l => l.Status).ThenBy(l => l.Name, StringComparer.Ordinal)];

    private static FoodAmount Known(FoodAmount f, string language, FoodTable foods) => foods.Match(f.Food, language) is { } m && (f.FoodId is null || foods.IsOwn(m.Id)) ? f with { FoodId = m.Id, FoodConfidence = m.Confidence } : f;

    private static double? Grams(FoodAmount f) => f.Grams ?? (f.Unit == "g" ? f.Amount : f.Unit == "kg" ? f.Amount * 1000 : null);

    private static bool Column(string column, OccasionDish dish) => Holds(dish.CardPath, column) || Holds(dish.Name, column) || Holds(dish.For, column) || Holds(dish.Unit, column);

    private static bool Holds(string text, string word) => word.Length > 2 && text.Contains(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>True when a cell of the row names this dish as what the seat gets.</summary>
    private static bool Means(SheetDiet diet, OccasionDish dish) => diet.ByDish.Values.SelectMany(v => v.Split([';', ',', '.'], StringSplitOptions.TrimEntries)).Any(c => string.Equals(c, dish.Name, StringComparison.OrdinalIgnoreCase));

    // "no walnut slice" names the dish whose name holds both words.
    private static bool Names(string words, OccasionDish dish)
    {
        string[] w = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return w.Length >= 2 && w.All(x => dish.Name.Contains(x, StringComparison.OrdinalIgnoreCase));
    }

    private static bool IsVariant(Component c, Dish dish) => c.Code is { Length: > 1 } code && char.IsLetter(code[^1]) && dish.Components.Any(o => string.Equals(o.Code, code[..^1], StringComparison.OrdinalIgnoreCase));
}
