using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;

namespace Coulisse.Kitchen.Needs;

/// <summary>All needs of an occasion: its batches and what the diet table asks for besides.</summary>
public static class OccasionNeeds
{
    /// <summary>Needs of an occasion, or why its dishes cannot be scaled.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="extra">Spares, anything added by hand.</param>
    /// <param name="twins">Also what the twins of the live slot take beyond the batches for service.</param>
    public static Parsed<NeedsList> Of(Occasion occasion, IEnumerable<Need>? extra = null, bool twins = false)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        return OccasionBatches.Make(occasion).Match<Parsed<NeedsList>>(
            batches =>
            {
                (ImmutableArray<Need> diets, ImmutableArray<Problem> problems) = Diets(occasion);
                (ImmutableArray<Need> beside, ImmutableArray<string> left) = twins && !occasion.People.IsEmpty && occasion.SlotLength > NodaTime.Duration.Zero ? TwinNeeds.Of(LiveSlot.Decide(occasion).Twins, occasion, batches) : ([], []);
                NeedsList list = NeedsList.From(batches, diets.Concat(beside).Concat(extra ?? []));
                return new Parsed<NeedsList>.Ok(list with { Problems = list.Problems.AddRange(problems), NotCounted = list.NotCounted.AddRange(left) });
            },
            problems => new Parsed<NeedsList>.Failed(problems));
    }

    private static (ImmutableArray<Need> Needs, ImmutableArray<Problem> Problems) Diets(Occasion occasion)
    {
        ImmutableArray<Need>.Builder needs = ImmutableArray.CreateBuilder<Need>();
        ImmutableArray<Problem>.Builder problems = ImmutableArray.CreateBuilder<Problem>();
        string[] made = [.. occasion.Dishes.Select(d => d.Dish).Distinct().SelectMany(Made)];
        foreach (SheetDiet diet in occasion.Diets)
        {
            foreach ((string column, string text) in diet.ByDish.OrderBy(d => d.Key, StringComparer.Ordinal))
            {
                (ImmutableArray<Need> found, ImmutableArray<Problem> asked) = NeedsList.Diet(column, text, diet.Seats.Length, made, HouseFoods.Of(occasion));
                needs.AddRange(found.Select(n => n with { For = $"seat {string.Join(", ", diet.Seats)}: {diet.Declared}" }));
                problems.AddRange(asked.Select(p => p with { Line = diet.Line }));
            }
        }

        return (needs.ToImmutable(), problems.ToImmutable());
    }

    // What the kitchen makes anyway may be named by its component, its yield or a step ("10 g of plain reduction").
    private static IEnumerable<string> Made(Dish dish) => dish.Components.SelectMany(c => c.Steps.Select(s => s.Text).Concat(c.Makes.Select(m => m.Text)).Append(c.Name));
}
