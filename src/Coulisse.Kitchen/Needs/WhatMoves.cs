using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Formulas.Targets;
using Coulisse.Kitchen.Labels;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Needs;

/// <summary>Everything that moves when a card is changed, side by side, before anyone decides.</summary>
/// <param name="Parts">Components whose mixture moves, those that take from a changed one included.</param>
/// <param name="AllergensIn">Allergens that come or become surer, in the law's names, with their status.</param>
/// <param name="AllergensOut">Allergens that go or become less sure.</param>
/// <param name="IngredientsBefore">List of ingredients before.</param>
/// <param name="IngredientsAfter">List of ingredients after.</param>
/// <param name="Panel">Rows of the panel before and after, declared figures; empty when a food is not known.</param>
/// <param name="CostBefore">Value of the whole card as written; null without prices.</param>
/// <param name="CostAfter">Value after.</param>
/// <param name="NotPriced">Why a line has no value; both costs leave it out.</param>
public sealed record WhatMoves(ImmutableArray<MovedPart> Parts, ImmutableArray<string> AllergensIn, ImmutableArray<string> AllergensOut, string IngredientsBefore, string IngredientsAfter, ImmutableArray<MovedText> Panel, Money? CostBefore, Money? CostAfter, ImmutableArray<string> NotPriced)
{
    /// <summary>Compares two states of a card.</summary>
    /// <param name="before">As written.</param>
    /// <param name="after">As tried.</param>
    /// <param name="regime">Whose names and panel.</param>
    /// <param name="prices">Prices; null leaves the cost out.</param>
    public static Parsed<WhatMoves> Of(WeighedDish before, WeighedDish after, AllergenRegime regime, PriceList? prices = null)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return Blending.Of(before).Match(
            old => Blending.Of(after).Match<Parsed<WhatMoves>>(now => new Parsed<WhatMoves>.Ok(Build(before, after, old, now, regime, prices)), p => new Parsed<WhatMoves>.Failed(p)),
            p => new Parsed<WhatMoves>.Failed(p));
    }

    private static WhatMoves Build(WeighedDish before, WeighedDish after, ImmutableArray<MixedComponent> old, ImmutableArray<MixedComponent> now, AllergenRegime regime, PriceList? prices)
    {
        ImmutableArray<AllergenLine> had = Allergens.Of(before, regime).Dish;
        ImmutableArray<AllergenLine> has = Allergens.Of(after, regime).Dish;
        (Money? was, ImmutableArray<string> lacking) = Cost(before, prices);
        (Money? is2, ImmutableArray<string> lackingNow) = Cost(after, prices);
        return new WhatMoves(
            [.. old.Zip(now).Select(x => Part(x.First, x.Second)).Where(p => !p.Figures.IsEmpty || !p.Set.IsEmpty)],
            [.. has.Where(a => !had.Any(b => Same(a, b) && b.Status <= a.Status)).Select(Words)],
            [.. had.Where(a => !has.Any(b => Same(a, b) && b.Status <= a.Status)).Select(Words)],
            Ingredients.Of(before, regime).Text, Ingredients.Of(after, regime).Text, Rows(before, after, regime), was, is2, [.. lacking.Union(lackingNow)]);
    }

    private static MovedPart Part(MixedComponent old, MixedComponent now)
    {
        List<MovedFigure> figures = [];
        if (Math.Abs(old.Grams - now.Grams) > 0.005)
        {
            figures.Add(new("weight", "g", old.Grams, now.Grams, 1));
        }

        foreach (MixtureProperty p in MixtureProperty.All)
        {
            double? a = old.Composition is { } c ? p.Of(c) : null;
            double? b = now.Composition is { } d ? p.Of(d) : null;
            if ((a is null) != (b is null) || Math.Abs((a ?? 0) - (b ?? 0)) > p.Close)
            {
                figures.Add(new(p.Name, p.Unit, a, b, p.Decimals));
            }
        }

        string[] set = [.. old.Agents.Concat(now.Agents).Select(a => a.FoodId).Distinct().Select(id => (Old: old.Agents.FirstOrDefault(a => a.FoodId == id), Now: now.Agents.FirstOrDefault(a => a.FoodId == id)))
            .Where(x => x.Old is null || x.Now is null || x.Old.Verdict != x.Now.Verdict || Math.Abs(x.Old.Percent - x.Now.Percent) > 0.005 || !x.Old.Remarks.SequenceEqual(x.Now.Remarks))
            .Select(x => $"{(x.Old ?? x.Now)!.FoodId}: {Set(x.Old)} → {Set(x.Now)}")];
        return new MovedPart(now.Name, [.. figures], [.. set]);
    }

    private static string Set(AgentVerdict? v) => v is null ? "none" : System.FormattableString.Invariant($"{v.Percent:0.00} %, {v.Verdict} its usual levels") + (v.Remarks.IsEmpty ? "" : $" ({string.Join("; ", v.Remarks)})");

    private static (Money? Cost, ImmutableArray<string> Lacking) Cost(WeighedDish dish, PriceList? prices)
    {
        if (prices is null || Scaling.Scale(dish, new ScaleTo.Factor(1)) is not Parsed<Batch>.Ok(var batch))
        {
            return (null, []);
        }

        NeedsList needs = NeedsList.From([batch]);
        Costing cost = Costing.Of(needs.Needs, prices);
        return (cost.Total, [.. needs.Problems.Concat(cost.Problems).Select(p => p.Message).Distinct()]);
    }

    private static ImmutableArray<MovedText> Rows(WeighedDish before, WeighedDish after, AllergenRegime regime) => Panels.Of(before, regime) is Parsed<NutritionPanel>.Ok(var a) && Panels.Of(after, regime) is Parsed<NutritionPanel>.Ok(var b)
        ? [.. a.Rows.Join(b.Rows, r => (r.Name, r.Unit), r => (r.Name, r.Unit), (x, y) => new MovedText(x.Name, x.Unit, x.Declared, y.Declared)).Where(r => r.Before != r.After)]
        : [];

    private static bool Same(AllergenLine a, AllergenLine b) => a.Code == b.Code && (a.Code is not null || a.Name == b.Name);

    private static string Words(AllergenLine a) => $"{a.Name} ({a.Status.ToString().ToLowerInvariant()}: {a.Because[0].Because})";
}

/// <summary>A component before and after.</summary>
/// <param name="Component">Name.</param>
/// <param name="Figures">Figures that move by more than a kitchen can tell.</param>
/// <param name="Set">Setting agents whose dose or verdict moves.</param>
public sealed record MovedPart(string Component, ImmutableArray<MovedFigure> Figures, ImmutableArray<string> Set);

/// <summary>A figure before and after; null where it cannot be worked out.</summary>
/// <param name="Name">Name.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Before">Before.</param>
/// <param name="After">After.</param>
/// <param name="Decimals">Decimals worth showing.</param>
public sealed record MovedFigure(string Name, string Unit, double? Before, double? After, int Decimals);

/// <summary>A declared figure before and after.</summary>
/// <param name="Name">Row.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Before">Before.</param>
/// <param name="After">After.</param>
public sealed record MovedText(string Name, string Unit, string Before, string After);
