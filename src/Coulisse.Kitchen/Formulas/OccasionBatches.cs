using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Formulas;

/// <summary>One batch for each dish of an occasion: plates by covers, pieces in whole tins, a part asked for by name alone.</summary>
public static class OccasionBatches
{
    /// <summary>Weighs and scales every dish.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="measures">Size system of spoons and cups; null lets each card decide.</param>
    public static Parsed<ImmutableArray<Batch>> Make(Occasion occasion, string? measures = null)
    {
        ImmutableArray<Batch>.Builder batches = ImmutableArray.CreateBuilder<Batch>();
        ImmutableArray<Problem>.Builder problems = ImmutableArray.CreateBuilder<Problem>();
        foreach (OccasionDish dish in occasion.Dishes)
        {
            Dish only = LearntCard.Onto(Only(occasion, dish), occasion.LearntCards);
            Scaling.Scale(Weighing.Weigh(only, measures), Target(only, dish)).Match<int>(
                batch => { batches.Add(batch); return 0; },
                found => { problems.AddRange(found.Select(p => p with { Message = $"{dish.Name}: {p.Message}" })); return 0; });
        }

        return problems.Count > 0 ? new Parsed<ImmutableArray<Batch>>.Failed(problems.ToImmutable()) : new Parsed<ImmutableArray<Batch>>.Ok(batches.ToImmutable());
    }

    /// <summary>Tins (or other whole vessels) a dish is made in: pieces wanted over pieces a vessel, rounded up; 1 when the card does not count pieces.</summary>
    public static int WholeVessels(Dish dish, int count, string unit)
    {
        double? pieces = Pieces(dish, unit);
        return pieces is > 0 ? Math.Max(1, (int)Math.Ceiling(count / pieces.Value - 1e-9)) : 1;
    }

    private static ScaleTo Target(Dish only, OccasionDish dish)
    {
        if (dish.Unit is "plates" or "portions" or "covers")
        {
            return new ScaleTo.Covers(dish.Count);
        }

        return Pieces(only, dish.Unit) is not null
            ? new ScaleTo.Factor(WholeVessels(only, dish.Count, dish.Unit))
            : new ScaleTo.Factor(dish.Count);
    }

    private static double? Pieces(Dish dish, string unit) => unit != "pieces" ? null : dish.Yields.Concat(dish.Components.SelectMany(c => c.Makes))
        .Where(y => y.Unit == "pieces" && y.Amount > 0).Select(y => (double?)y.Amount).FirstOrDefault();

    /// <summary>The card's part that a dish of the occasion means: a part that is a dish of its own ("one ramekin") is made alone when asked for by name, and the dish without it.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="dish">One of its dishes.</param>
    public static Dish Only(Occasion occasion, OccasionDish dish)
    {
        bool Named(OccasionDish d, Component c) => c.Name.Length > 0 && c.Name.Contains(d.Unit, StringComparison.OrdinalIgnoreCase) && d.Unit.Length > 3;
        if (dish.Dish.Components.FirstOrDefault(c => Named(dish, c)) is { } alone)
        {
            return dish.Dish with { Components = [alone], Yields = [] };
        }

        OccasionDish[] others = [.. occasion.Dishes.Where(o => o != dish && o.CardPath == dish.CardPath)];
        return dish.Dish with { Components = [.. dish.Dish.Components.Where(c => !others.Any(o => Named(o, c)))] };
    }
}
